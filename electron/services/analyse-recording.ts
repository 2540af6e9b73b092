import type { RecordingDetail, Transcript } from "../../shared-types/index.ts";
import { AnalysisCancelled } from "../jobs/run-analysis.ts";
import { effectiveCaptions } from "./effective-captions.ts";
import { indexRecording } from "./index-for-search.ts";
import type { Parts } from "./parts.ts";
import { findRecording, recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

export interface Analyst {
  /** Analyses and stores; who asks again while it runs waits for the same run. People's work is not touched. */
  readonly analyse: (recordingId: string) => Promise<RecordingDetail>;
  /** Analyses what an edit has just changed: a run that began before it is waited for, and does not count. */
  readonly analyseAnew: (recordingId: string) => Promise<RecordingDetail>;
  /** Stops a run, whose askers get a refusal. */
  readonly stop: (recordingId: string) => void;
  /** Analyses, one by one, what was never analysed or by another version; failures go to the log. */
  readonly catchUp: () => Promise<void>;
  /** The same behind the back of whoever asks; `idle` resolves when it is done. */
  readonly catchUpSoon: () => void;
  readonly idle: () => Promise<void>;
  readonly close: () => void;
}

export function createAnalyst(parts: Parts): Analyst {
  const running = new Map<string, { readonly result: Promise<void>; readonly abort: AbortController }>();
  let closed = false;
  let background: Promise<void> = Promise.resolve();

  const tellUnlessClosed = (what: string, failure: unknown) => {
    if (!closed) parts.log(`${what}: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
  };
  const run = (recordingId: string): Promise<void> => {
    const known = running.get(recordingId);
    if (known) return known.result;
    const abort = new AbortController();
    const result = analyseAndStore(parts, recordingId, abort.signal).finally(() => running.delete(recordingId));
    running.set(recordingId, { result, abort });
    return result;
  };

  const catchUp = async (): Promise<void> => {
    if (closed || parts.library.recordings.count() === 0) return;
    try {
      const version = await parts.analysis.version();
      for (const recordingId of parts.library.proposals.outdated(version)) {
        if (closed) return;
        await run(recordingId).catch((failure) => tellUnlessClosed(`Recording ${recordingId} could not be analyzed`, failure));
      }
    } catch (failure) {
      tellUnlessClosed("The analysis cannot run", failure);
    }
  };

  return {
    async analyse(recordingId) {
      await run(recordingId);
      return recordingDetail(parts, recordingId);
    },
    async analyseAnew(recordingId) {
      await running.get(recordingId)?.result.catch(() => undefined);
      await run(recordingId);
      return recordingDetail(parts, recordingId);
    },
    stop: (recordingId) => running.get(recordingId)?.abort.abort(),
    catchUp,
    catchUpSoon() {
      // Twice: a run that had begun before still knew the old state, and left its recording outdated.
      background = background.then(catchUp).then(catchUp);
    },
    idle: () => background,
    close() {
      closed = true;
      for (const { abort } of running.values()) abort.abort();
    },
  };
}

async function analyseAndStore(parts: Parts, recordingId: string, signal: AbortSignal): Promise<void> {
  const { library, events } = parts;
  const row = findRecording(parts, recordingId);
  const transcript: Transcript = {
    format: row.transcriptFormat,
    captions: effectiveCaptions(library, recordingId),
    duration: row.duration,
  };
  try {
    const analysis = await parts.analysis.run({
      transcript,
      stockSheet: row.stockSheet,
      sheetMeanings: row.sheetMeanings,
      // Nothing was filmed after it came into the library: without a date of its own, a recording is at most as young as that.
      recordedOn: row.recordedOn ?? row.importedAt.slice(0, "2026-05-01".length),
      trustedCaptions: library.trustedCaptions.of(recordingId).map(({ caption }) => caption),
      signal,
      onPass: (pass, done, of) => events.publish("analysis.progress", { recordingId, pass, done, of }),
    });
    library.transaction(() => {
      // Removed while it ran: there is nothing left to keep it with.
      const now = findRecording(parts, recordingId);
      library.proposals.replace(recordingId, analysis, parts.now());
      // Its sheet's columns were given another meaning meanwhile.
      if (JSON.stringify(now.sheetMeanings) !== JSON.stringify(row.sheetMeanings)) library.proposals.markOutdated(recordingId);
      indexRecording(parts, recordingId);
    });
  } catch (failure) {
    if (failure instanceof AnalysisCancelled)
      throw new Refusal("analysis-stopped", `The analysis of “${row.title}” was stopped. Start it again when you want it.`);
    throw failure;
  }
  events.publish("library.changed", { recordingId });
}
