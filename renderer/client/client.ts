import type { EventName, EventPayload, Input, MethodName, OfferedFile, Output, Problem } from "../../shared-types/index.ts";

/** How the handing over of a file is followed and stopped. */
export interface FileWatch {
  readonly signal: AbortSignal;
  /** Bytes that have left the page. */
  readonly onSent: (bytes: number) => void;
}

/** The application as the page sees it; the same over the desktop's bridge and over HTTP. */
export interface Client {
  /** @throws ProblemError when the host refuses or cannot be reached. */
  call<Name extends MethodName>(name: Name, input: Input<Name>): Promise<Output<Name>>;
  /** @returns a function that stops listening. */
  on<Name extends EventName>(name: Name, listener: (payload: EventPayload<Name>) => void): () => void;
  /** Hands a picked or dropped file to the host, which answers with the id that `recording.import` takes. */
  offerFile(file: File, watch?: FileWatch): Promise<OfferedFile>;
  mediaUrl(recordingId: string): string;
  /** Tells when the host goes away and when it is back, at once with how it is now. @returns a function that stops listening. */
  onAway(listener: (away: boolean) => void): () => void;
}

/** A failure that the host described; `problem.message` is written for the person. */
export class ProblemError extends Error {
  override readonly name = "ProblemError";
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** Whatever was thrown, as a problem that can be shown. */
export function problemOf(thrown: unknown): Problem {
  if (thrown instanceof ProblemError) return thrown.problem;
  return { code: "page-failed", message: thrown instanceof Error ? thrown.message : String(thrown) };
}
