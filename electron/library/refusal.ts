import type { Problem } from "../../shared-types/index.ts";

/** A failure that was foreseen: the person gets its sentence as it stands, the log needs no stack. */
export class Refusal extends Error {
  readonly problem: Problem;

  constructor(code: string, message: string, place: { file?: string; line?: number } = {}) {
    super(message);
    this.name = "Refusal";
    this.problem = { code, message, ...place };
  }
}
