import type { AnalysisRunner } from "../jobs/run-analysis.ts";
import type { Library } from "../library/open-library.ts";
import type { EventHub } from "./event-hub.ts";
import type { OfferedFiles } from "./offered-files.ts";

/** What the services work with; made once when the application opens. */
export interface Parts {
  readonly library: Library;
  readonly analysis: AnalysisRunner;
  readonly events: EventHub;
  readonly files: OfferedFiles;
  /** ISO 8601, UTC. */
  readonly now: () => string;
  /** For what went wrong without anybody having asked. */
  readonly log: (line: string) => void;
}
