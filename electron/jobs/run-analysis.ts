import { Worker } from "node:worker_threads";
import type { Analysis, SheetMeanings, StockSheetFields, Transcript } from "../../shared-types/index.ts";
import type { AnalysisMessage, AnalysisRequest } from "./analysis-messages.ts";

/** Thrown to whoever waits for an analysis that was stopped. */
export class AnalysisCancelled extends Error {
  constructor() {
    super("The analysis was stopped.");
    this.name = "AnalysisCancelled";
  }
}

export interface AnalysisWork {
  readonly transcript: Transcript;
  readonly stockSheet: StockSheetFields | null;
  /** What the sheet's columns mean, where that was settled; else their names tell. */
  readonly sheetMeanings?: SheetMeanings | null;
  readonly recordedOn: string | null;
  /** Doubtful captions that a person holds for speech. */
  readonly trustedCaptions?: readonly number[];
  readonly onPass?: (pass: string, done: number, of: number) => void;
  readonly signal?: AbortSignal;
}

export interface AnalysisRunner {
  /** One after the other in a thread of their own, so that the window never waits. @throws AnalysisCancelled */
  readonly run: (work: AnalysisWork) => Promise<Analysis>;
  /** The version of the analysis that the thread runs: the window's own thread never loads it. */
  readonly version: () => Promise<number>;
  /** Stops the thread; whoever still waits gets AnalysisCancelled. */
  readonly close: () => Promise<void>;
}

interface Waiting {
  readonly onPass: AnalysisWork["onPass"];
  readonly done: (analysis: Analysis) => void;
  readonly failed: (failure: Error) => void;
}

/** @param workerFile the worker's file: beside this one in the sources, built beside main.mjs in the desktop. */
export function createAnalysisRunner(workerFile: URL = defaultWorkerFile()): AnalysisRunner {
  const waiting = new Map<number, Waiting>();
  let askingVersion: { readonly told: (version: number) => void; readonly failed: (failure: Error) => void }[] = [];
  let knownVersion: number | undefined;
  let worker: Worker | null = null;
  let nextJob = 1;

  const giveUpAll = (failure: Error) => {
    for (const { failed } of waiting.values()) failed(failure);
    waiting.clear();
    for (const { failed } of askingVersion) failed(failure);
    askingVersion = [];
  };
  const restIfIdle = () => {
    // A thread that waits for work must not keep the program from ending.
    if (waiting.size === 0 && askingVersion.length === 0) worker?.unref();
  };
  const hear = (message: AnalysisMessage) => {
    if (message.kind === "ready") {
      knownVersion = message.analysisVersion;
      for (const { told } of askingVersion) told(message.analysisVersion);
      askingVersion = [];
      restIfIdle();
      return;
    }
    const job = waiting.get(message.job);
    if (!job) return;
    if (message.kind === "pass") {
      job.onPass?.(message.pass, message.done, message.of);
      return;
    }
    waiting.delete(message.job);
    if (message.kind === "done") job.done(message.analysis);
    else if (message.kind === "cancelled") job.failed(new AnalysisCancelled());
    else job.failed(Object.assign(new Error(`The analysis failed: ${message.message}`), { stack: message.stack }));
    restIfIdle();
  };
  const start = (): Worker => {
    const started = new Worker(workerFile);
    started.on("message", hear);
    started.on("error", (failure) => {
      if (worker === started) worker = null;
      giveUpAll(failure instanceof Error ? failure : new Error(String(failure)));
    });
    started.on("exit", () => {
      if (worker !== started) return;
      worker = null;
      giveUpAll(new Error("The analysis' thread ended before its work was done."));
    });
    return started;
  };

  return {
    run: ({ transcript, stockSheet, sheetMeanings = null, recordedOn, trustedCaptions = [], onPass, signal }) =>
      new Promise<Analysis>((resolve, reject) => {
        if (signal?.aborted) {
          reject(new AnalysisCancelled());
          return;
        }
        const job = nextJob++;
        const cancelled = new SharedArrayBuffer(4);
        const cancel = () => {
          Atomics.store(new Int32Array(cancelled), 0, 1);
        };
        signal?.addEventListener("abort", cancel, { once: true });
        const finish = () => signal?.removeEventListener("abort", cancel);
        waiting.set(job, {
          onPass,
          done: (analysis) => {
            finish();
            resolve(analysis);
          },
          failed: (failure) => {
            finish();
            reject(failure);
          },
        });
        worker ??= start();
        worker.ref();
        worker.postMessage({
          job,
          transcript,
          stockSheet,
          sheetMeanings,
          recordedOn,
          trustedCaptions,
          cancelled,
        } satisfies AnalysisRequest);
      }),
    version: () =>
      new Promise<number>((resolve, reject) => {
        if (knownVersion !== undefined) {
          resolve(knownVersion);
          return;
        }
        askingVersion.push({ told: resolve, failed: reject });
        worker ??= start();
        worker.ref();
      }),
    async close() {
      const ending = worker;
      worker = null;
      giveUpAll(new AnalysisCancelled());
      await ending?.terminate();
    },
  };
}

function defaultWorkerFile(): URL {
  return new URL(import.meta.url.endsWith(".mjs") ? "./analysis-worker.mjs" : "./analysis-worker.ts", import.meta.url);
}
