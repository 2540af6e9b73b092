import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { readTranscript } from "../../electron/transcripts/read-transcript.ts";
import {
  AttributeName,
  ClaimValue,
  ComponentName,
  ConflictKind,
  PositionName,
  Stance,
  type Transcript,
  ZoneName,
} from "../../shared-types/index.ts";

/** An annotated walkaround: what a careful person finds in a transcript. */
export const GoldCase = z.object({
  id: z.string(),
  /** Who speaks and which recogniser wrote: scores are also kept per style. */
  style: z.string().optional(),
  vehicle: z.object({ year: z.number().nullable(), name: z.string(), kind: z.string() }),
  duration: z.number(),
  zones: z.array(z.object({ zone: ZoneName, i: z.int(), from: z.string() })).min(1),
  claims: z.array(
    z.object({
      i: z.int(),
      quote: z.string(),
      component: ComponentName,
      position: PositionName.nullable(),
      attribute: AttributeName,
      value: ClaimValue,
      unit: z.string().nullable(),
      stance: Stance,
    }),
  ),
  conflicts: z.array(
    z.object({
      id: z.string(),
      kind: ConflictKind,
      topic: z.string(),
      sides: z.array(z.object({ value: ClaimValue, at: z.array(z.int()) })).min(2),
    }),
  ),
  look_alikes: z.array(z.object({ topic: z.string(), at: z.array(z.int()), why: z.string() })),
  repairs: z.array(z.object({ i: z.int(), heard: z.string(), meant: z.coerce.string() })),
  unreliable: z.array(z.object({ i: z.int(), why: z.string() })),
});
export type GoldCase = z.infer<typeof GoldCase>;

export interface AnnotatedCase {
  readonly gold: GoldCase;
  readonly transcript: Transcript;
  readonly file: string;
}

const endings = [".txt", ".srt", ".vtt", ".json"];

/** Every case of a folder, by name. A gold file without a transcript is left out; one of the wrong form throws with its name. */
export function readCases(folder: string): AnnotatedCase[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".gold.json"))
    .sort()
    .flatMap((name) => {
      const stem = join(folder, name.slice(0, -".gold.json".length));
      const file = endings.map((ending) => stem + ending).find((path) => existsSync(path));
      if (!file) return [];
      const parsed = GoldCase.safeParse(JSON.parse(readFileSync(join(folder, name), "utf8")));
      if (!parsed.success) throw new Error(`${name}: ${z.prettifyError(parsed.error)}`);
      return [{ gold: parsed.data, transcript: readTranscript(readFileSync(file), file.split("/").at(-1)!), file }];
    });
}
