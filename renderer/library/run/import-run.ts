import type { Input, Problem, Vehicle } from "../../../shared-types/index.ts";
import { type Client, ProblemError, problemOf } from "../../client/client.ts";
import { type FoundFile, offeredId } from "../files/found-file.ts";
import type { ImportPart } from "../sort-files.ts";

/** One recording to import. */
export interface ImportOrder {
  readonly title: string;
  readonly stockNumber: string;
  readonly vehicle: Vehicle;
  readonly transcript: FoundFile;
  readonly video: FoundFile | null;
  readonly stockSheet: FoundFile | null;
  /** The vehicle's body style is only one to begin with: that of the stock sheet counts, where it tells one. */
  readonly bodyStyleFromSheet?: boolean;
  /** The person was asked and means it, although the library has a recording of this stock number. */
  readonly besideKnown?: boolean;
}

export type LineState =
  | { readonly kind: "waiting" }
  | { readonly kind: "handing-over"; readonly part: ImportPart; readonly sentBytes: number; readonly ofBytes: number }
  | { readonly kind: "reading" }
  | { readonly kind: "analysing"; readonly pass: string; readonly done: number; readonly of: number }
  | { readonly kind: "cancelling" }
  | { readonly kind: "cancelled" }
  | { readonly kind: "failed"; readonly problem: Problem }
  | { readonly kind: "imported"; readonly recordingId: string };

export interface RunLine {
  readonly ticket: string;
  readonly order: ImportOrder;
  readonly state: LineState;
}

/** As many at once: while one is analysed, the next is on its way. */
const lanes = 2;

const settledKinds: ReadonlySet<LineState["kind"]> = new Set(["imported", "failed", "cancelled"]);
export function isSettled({ state }: RunLine): boolean {
  return settledKinds.has(state.kind);
}

function isKnownNumber({ state }: RunLine): boolean {
  return state.kind === "failed" && state.problem.code === "stock-number-known";
}

/** Lines whose transcript or stock number the library has: only a person can say whether they are meant. */
export function knownLines(lines: readonly RunLine[]): RunLine[] {
  return lines.filter((line) => isKnownNumber(line) || (line.state.kind === "failed" && line.state.problem.code === "transcript-known"));
}

export type ImportRun = ReturnType<typeof createImportRun>;

/** Imports orders one after the other, a line for each; goes on whichever screen is shown. */
export function createImportRun(client: Client, newTicket: () => string = () => crypto.randomUUID()) {
  let lines: readonly RunLine[] = [];
  let busyLanes = 0;
  /** What a person means to have twice, by ticket. */
  const meant = new Map<string, "transcript" | "stock-number">();
  const stops = new Map<string, AbortController>();
  const listeners = new Set<() => void>();

  const show = (next: readonly RunLine[]) => {
    lines = next;
    for (const listener of listeners) listener();
  };
  const lineOf = (ticket: string) => lines.find((line) => line.ticket === ticket);
  const setState = (ticket: string, state: LineState) => show(lines.map((line) => (line.ticket === ticket ? { ...line, state } : line)));
  /** Progress that arrives late must not put a line back. */
  const setProgress = (ticket: string, state: LineState) => {
    const line = lineOf(ticket);
    if (line && !isSettled(line) && line.state.kind !== "cancelling") setState(ticket, state);
  };
  client.on("import.progress", ({ ticket, pass, done, of }) => setProgress(ticket, { kind: "analysing", pass, done, of }));

  const importLine = async ({ ticket, order }: RunLine): Promise<void> => {
    const stop = new AbortController();
    stops.set(ticket, stop);
    const received: string[] = [];
    const offer = async (part: ImportPart): Promise<string | null> => {
      const file = order[part];
      if (!file) return null;
      const progress = (sentBytes: number) => setProgress(ticket, { kind: "handing-over", part, sentBytes, ofBytes: file.bytes });
      progress(0);
      const id = await offeredId(client, file, { signal: stop.signal, onSent: progress });
      if (typeof file.source !== "string") received.push(id);
      if (stop.signal.aborted) throw new ProblemError({ code: "file-cancelled", message: "Cancelled." });
      return id;
    };
    try {
      const transcript = (await offer("transcript")) ?? "";
      const stockSheet = await offer("stockSheet");
      const video = await offer("video");
      setProgress(ticket, { kind: "reading" });
      const { title, stockNumber, vehicle, bodyStyleFromSheet = false, besideKnown = false } = order;
      const input: Input<"recording.import"> = {
        transcript,
        video,
        stockSheet,
        title,
        stockNumber,
        vehicle,
        bodyStyleFromSheet,
        ticket,
        asksOfStockNumber: !besideKnown && meant.get(ticket) !== "stock-number",
      };
      const summary = await client.call("recording.import", meant.get(ticket) === "transcript" ? { ...input, again: true } : input);
      setState(ticket, { kind: "imported", recordingId: summary.id });
    } catch (thrown) {
      const problem = problemOf(thrown);
      setState(ticket, stop.signal.aborted ? { kind: "cancelled" } : { kind: "failed", problem });
      // What was handed over for nothing; a host that is away has lost it anyway.
      if (received.length > 0) client.call("file.letGo", { files: received }).catch(() => undefined);
    } finally {
      stops.delete(ticket);
    }
  };
  const pump = (): void => {
    while (busyLanes < lanes) {
      const next = lines.find(({ ticket, state }) => state.kind === "waiting" && !stops.has(ticket));
      if (!next) return;
      busyLanes++;
      setState(next.ticket, { kind: "reading" });
      void importLine(next).finally(() => {
        busyLanes--;
        pump();
      });
    }
  };
  const cancel = (ticket: string): void => {
    const line = lineOf(ticket);
    if (!line || isSettled(line)) return;
    const stop = stops.get(ticket);
    if (!stop) {
      setState(ticket, { kind: "cancelled" });
      return;
    }
    setState(ticket, { kind: "cancelling" });
    stop.abort();
    // A host that cannot be reached fails the import's own call too.
    client.call("import.cancel", { ticket }).catch(() => undefined);
  };

  return {
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    lines: () => lines,
    add: (orders: readonly ImportOrder[]): void => {
      show([...lines, ...orders.map((order) => ({ ticket: newTicket(), order, state: { kind: "waiting" } as const }))]);
      pump();
    },
    cancel,
    cancelAll: (): void => {
      // Those that wait first, or each that ends would let the next begin.
      for (const { ticket } of lines.filter(({ state }) => state.kind === "waiting")) cancel(ticket);
      for (const { ticket } of lines) cancel(ticket);
    },
    /** Tries a line again that failed or was cancelled. @param known although the library has its transcript or its stock number. */
    retry: (ticket: string, known = false): void => {
      const line = lineOf(ticket);
      if (!line || !isSettled(line) || line.state.kind === "imported") return;
      // A new ticket: what still comes for the old one is none of its business.
      const fresh = newTicket();
      if (known) meant.set(fresh, isKnownNumber(line) ? "stock-number" : "transcript");
      show(lines.map((one) => (one.ticket === ticket ? { ...one, ticket: fresh, state: { kind: "waiting" } } : one)));
      pump();
    },
    /**
     * A line that had failed came in by the window for one recording: by its own “Other files…”, or, without a ticket, with a transcript
     * of the same name.
     */
    mended: (recordingId: string, { ticket, transcript }: { readonly ticket?: string; readonly transcript: string }): void => {
      const line =
        ticket === undefined
          ? lines.find(({ order, state }) => state.kind === "failed" && order.transcript.name === transcript)
          : lineOf(ticket);
      if (line && isSettled(line)) setState(line.ticket, { kind: "imported", recordingId });
    },
    /** Takes lines out of sight that have come to their end. */
    clear: (ticket?: string): void => show(lines.filter((line) => !isSettled(line) || (ticket !== undefined && line.ticket !== ticket))),
  };
}

const runs = new WeakMap<Client, ImportRun>();

/** The one run of a client: it outlives the screen that began it. */
export function importRunOf(client: Client): ImportRun {
  const known = runs.get(client);
  if (known) return known;
  const run = createImportRun(client);
  runs.set(client, run);
  // Files that a browser hands over come from this page: it must not go while some are on their way.
  window.addEventListener("beforeunload", (event) => {
    if (run.lines().some((line) => !isSettled(line))) event.preventDefault();
  });
  return run;
}
