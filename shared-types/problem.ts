import { z } from "zod";

/**
 * A failure as data: both hosts carry it in the same form. `code` is for the program, `message` for the person
 * (where, what was found, what to do).
 */
export const Problem = z.strictObject({
  code: z.string(),
  message: z.string(),
  /** The file and 1-based line at fault, where there is one. */
  file: z.string().optional(),
  line: z.int().optional(),
});
export type Problem = z.infer<typeof Problem>;

export type Reply<Value = unknown> = { ok: true; value: Value } | { ok: false; problem: Problem };
