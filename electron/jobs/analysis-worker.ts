import { parentPort } from "node:worker_threads";
import { analyse, analysisVersion } from "../analysis/analyse.ts";
import type { AnalysisMessage, AnalysisRequest } from "./analysis-messages.ts";

class Cancelled extends Error {}

const port = parentPort;
if (!port) throw new Error("analysis-worker.ts runs as a worker thread only.");
const tell = (message: AnalysisMessage): void => port.postMessage(message);

port.on("message", ({ job, transcript, stockSheet, sheetMeanings, recordedOn, trustedCaptions, cancelled }: AnalysisRequest) => {
  const flag = new Int32Array(cancelled);
  const stopIfCancelled = () => {
    if (Atomics.load(flag, 0) === 1) throw new Cancelled();
  };
  try {
    stopIfCancelled();
    const analysis = analyse(transcript, { stockSheet, sheetMeanings, recordedOn, trustedCaptions }, (pass, done, of) => {
      stopIfCancelled();
      tell({ kind: "pass", job, pass, done, of });
    });
    tell({ kind: "done", job, analysis });
  } catch (failure) {
    if (failure instanceof Cancelled) tell({ kind: "cancelled", job });
    else {
      const error = failure instanceof Error ? failure : new Error(String(failure));
      tell({ kind: "failed", job, message: error.message, stack: error.stack ?? "" });
    }
  }
});

tell({ kind: "ready", analysisVersion });
