import type { Paper } from "../../shared-types/index.ts";
import type { AnalysisRunner } from "../jobs/run-analysis.ts";
import type { Library } from "../library/open-library.ts";
import type { EventHub } from "./event-hub.ts";
import type { OfferedFiles } from "./offered-files.ts";

/** Prints a page to a PDF by a browser's engine. */
export interface PdfPrinter {
  /** Why this machine cannot print, and what to do; null where it can. */
  readonly whyNot: () => string | null;
  /**
   * @param page HTML that needs nothing from elsewhere.
   * @returns The PDF's bytes.
   * @throws What the signal was aborted with, or an Error that says what the engine did.
   */
  readonly print: (page: string, paper: Paper, signal: AbortSignal) => Promise<Uint8Array>;
}

/** What the services work with; made once when the application opens. */
export interface Parts {
  readonly library: Library;
  readonly analysis: AnalysisRunner;
  readonly events: EventHub;
  readonly files: OfferedFiles;
  readonly pdf: PdfPrinter;
  /** ISO 8601, UTC. */
  readonly now: () => string;
  /** For what went wrong without anybody having asked. */
  readonly log: (line: string) => void;
}
