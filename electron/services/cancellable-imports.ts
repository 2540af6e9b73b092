import type { Input, Output, RecordingSummary } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import { importRecording } from "./import-recording.ts";
import type { Parts } from "./parts.ts";

/** Most tickets remembered whose cancellation came before their import. */
const rememberedTickets = 200;

export interface CancellableImports {
  readonly run: (input: Input<"recording.import">) => Promise<RecordingSummary>;
  readonly cancel: (input: Input<"import.cancel">) => Output<"import.cancel">;
}

/** Imports that whoever asked can follow and cancel by the ticket that came with them. */
export function createCancellableImports(parts: Parts, analyst: Analyst): CancellableImports {
  const running = new Map<string, AbortController>();
  // The two calls travel apart, and the cancellation may be here first.
  const cancelledBefore = new Set<string>();
  return {
    async run({ ticket, ...input }) {
      if (ticket === undefined) return importRecording(parts, analyst, input);
      const abort = new AbortController();
      if (cancelledBefore.delete(ticket)) abort.abort();
      running.set(ticket, abort);
      const recording: { id: string | null } = { id: null };
      const unsubscribe = parts.events.subscribe(({ name, payload }) => {
        if (name !== "analysis.progress" || payload.recordingId !== recording.id) return;
        parts.events.publish("import.progress", { ticket, pass: payload.pass, done: payload.done, of: payload.of });
      });
      try {
        return await importRecording(parts, analyst, input, {
          signal: abort.signal,
          onAdded: (id) => {
            recording.id = id;
          },
        });
      } finally {
        unsubscribe();
        running.delete(ticket);
      }
    },
    cancel({ ticket }) {
      const known = running.get(ticket);
      known?.abort();
      if (!known) {
        cancelledBefore.add(ticket);
        for (const oldest of cancelledBefore) {
          if (cancelledBefore.size <= rememberedTickets) break;
          cancelledBefore.delete(oldest);
        }
      }
      return {};
    },
  };
}
