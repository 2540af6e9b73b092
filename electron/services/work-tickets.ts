import type { Input, Output } from "../../shared-types/index.ts";
import type { Parts } from "./parts.ts";

/** Cancellations that came before their work; a page that is closed sends some for work that never comes. */
const mostEarly = 50;

/** What a running piece of work tells: what it is at, and how far. */
export type TellProgress = (what: string, done: number, of: number) => void;

/** Between two tellings lies that much time or that share of the work: a reader sees no more, and a video has thousands of chunks. */
const tellingMilliseconds = 100;
const tellingShare = 0.01;

export type WorkTickets = ReturnType<typeof createWorkTickets>;

/** Long work that goes by a ticket of the page's: it can be followed (`work.progress`) and cancelled (`work.cancel`). */
export function createWorkTickets(parts: Pick<Parts, "events">) {
  const running = new Map<string, AbortController>();
  const early = new Set<string>();
  return {
    async run<Result>(ticket: string, work: (signal: AbortSignal, tell: TellProgress) => Promise<Result>): Promise<Result> {
      const abort = new AbortController();
      running.set(ticket, abort);
      if (early.delete(ticket)) abort.abort();
      let last = { what: "", at: 0, done: 0 };
      const tell: TellProgress = (what, done, of) => {
        const at = performance.now();
        const little = done < of && done - last.done < of * tellingShare;
        if (what === last.what && little && at - last.at < tellingMilliseconds) return;
        last = { what, at, done };
        parts.events.publish("work.progress", { ticket, what, done, of });
      };
      try {
        return await work(abort.signal, tell);
      } finally {
        running.delete(ticket);
      }
    },
    cancel({ ticket }: Input<"work.cancel">): Output<"work.cancel"> {
      const abort = running.get(ticket);
      abort?.abort();
      if (!abort) early.add(ticket);
      for (const oldest of early) {
        if (early.size <= mostEarly) break;
        early.delete(oldest);
      }
      return {};
    },
  };
}
