import { describe, expect, test, vi } from "vitest";
import { type Client, ProblemError } from "../../../renderer/client/client.ts";
import type { FoundFile } from "../../../renderer/library/files/found-file.ts";
import { createImportRun, type ImportOrder, knownLines } from "../../../renderer/library/run/import-run.ts";
import { lineActs, lineShare, lineWords, runWords, sizeLabel } from "../../../renderer/library/run/line-words.ts";
import type { EventPayload } from "../../../shared-types/index.ts";

const vehicle = { name: "", year: null, bodyStyle: "sedan", drive: "left-hand" } as const;

/** `offered` files stand at the host already; the others are the browser's. */
function order(title: string, { video = false, offered = true } = {}): ImportOrder {
  const file = (name: string): FoundFile => ({
    key: name,
    name,
    folder: "",
    bytes: 10,
    source: offered ? `id of ${name}` : new File(["0123456789"], name),
  });
  return {
    title,
    stockNumber: "",
    vehicle,
    transcript: file(`${title}.vtt`),
    video: video ? file(`${title}.mp4`) : null,
    stockSheet: null,
  };
}

/** A host whose imports end when the test says so. */
function ground() {
  const imports = new Map<string, { ticket: string; resolve: (value: unknown) => void; reject: (failure: unknown) => void }>();
  const calls: [string, unknown][] = [];
  let tell: (payload: EventPayload<"import.progress">) => void = () => {};
  const client = {
    call: (name: string, input: { title?: string; ticket?: string }) => {
      calls.push([name, input]);
      if (name !== "recording.import") return Promise.resolve({});
      return new Promise((resolve, reject) => imports.set(input.title ?? "", { ticket: input.ticket ?? "", resolve, reject }));
    },
    on: (_: string, listener: typeof tell) => {
      tell = listener;
      return () => {};
    },
    offerFile: vi.fn(
      (file: File, watch: { signal: AbortSignal }) =>
        new Promise((resolve, reject) => {
          watch.signal.addEventListener("abort", () => reject(new ProblemError({ code: "file-cancelled", message: "Cancelled." })));
          if (!file.name.endsWith(".mp4")) resolve({ id: `received ${file.name}` });
        }),
    ),
  } as unknown as Client;
  let count = 0;
  const run = createImportRun(client, () => `ticket ${++count}`);
  const states = () => Object.fromEntries(run.lines().map(({ order: { title }, state }) => [title, state.kind]));
  return { run, imports, calls, states, tell: (payload: EventPayload<"import.progress">) => tell(payload) };
}

const settle = () => new Promise((done) => setTimeout(done, 0));

test("what is known is asked about by what is known of it: the words, or the stock number alone", async () => {
  const { run, imports, calls } = ground();
  run.add([order("a"), { ...order("b"), besideKnown: true }]);
  await settle();
  const inputOf = (title: string) =>
    calls.filter(([name, input]) => name === "recording.import" && (input as { title: string }).title === title);
  expect(inputOf("a").at(-1)?.[1]).toMatchObject({ asksOfStockNumber: true, bodyStyleFromSheet: false });
  expect(inputOf("b").at(-1)?.[1]).toMatchObject({ asksOfStockNumber: false });
  imports.get("a")?.reject(new ProblemError({ code: "stock-number-known", message: "There." }));
  imports.get("b")?.reject(new ProblemError({ code: "transcript-known", message: "There." }));
  await settle();
  expect(knownLines(run.lines()).map((line) => line.order.title)).toEqual(["a", "b"]);
  for (const { ticket } of knownLines(run.lines())) run.retry(ticket, true);
  await settle();
  // The same words are still asked about where only the stock number was meant.
  expect(inputOf("a").at(-1)?.[1]).toMatchObject({ asksOfStockNumber: false });
  expect(inputOf("a").at(-1)?.[1]).not.toHaveProperty("again");
  expect(inputOf("b").at(-1)?.[1]).toMatchObject({ again: true });
  expect(knownLines(run.lines())).toEqual([]);
});

describe("a run of imports", () => {
  test("goes on past a failure, two at a time, a line for each", async () => {
    const { run, imports, states } = ground();
    run.add([order("a"), order("b"), order("c")]);
    await settle();
    expect(states()).toEqual({ a: "reading", b: "reading", c: "waiting" });
    imports.get("a")?.reject(new ProblemError({ code: "captions-backwards", message: "a.vtt, line 6: …" }));
    await settle();
    expect(states()).toEqual({ a: "failed", b: "reading", c: "reading" });
    imports.get("b")?.resolve({ id: "B" });
    imports.get("c")?.resolve({ id: "C" });
    await settle();
    expect(states()).toEqual({ a: "failed", b: "imported", c: "imported" });
    expect(runWords(run.lines())).toBe("2 of 3 recordings imported, 1 failed");
  });

  test("one that waits is cancelled without the host; one that is read, by its ticket", async () => {
    const { run, imports, calls, states } = ground();
    run.add([order("a"), order("b"), order("c")]);
    await settle();
    run.cancel("ticket 3");
    run.cancel("ticket 1");
    expect(states()).toEqual({ a: "cancelling", b: "reading", c: "cancelled" });
    expect(calls.filter(([name]) => name === "import.cancel")).toEqual([["import.cancel", { ticket: "ticket 1" }]]);
    imports.get("a")?.reject(new ProblemError({ code: "import-cancelled", message: "…" }));
    await settle();
    expect(states()).toEqual({ a: "cancelled", b: "reading", c: "cancelled" });
  });

  test("one that was imported before its cancellation arrived is told as imported", async () => {
    const { run, imports, states } = ground();
    run.add([order("a")]);
    await settle();
    run.cancel("ticket 1");
    imports.get("a")?.resolve({ id: "A" });
    await settle();
    expect(states()).toEqual({ a: "imported" });
  });

  test("cancelled while its film is handed over, it lets go what has arrived and is never imported", async () => {
    const { run, calls, states } = ground();
    run.add([order("a", { video: true, offered: false })]);
    await settle();
    expect(states()).toEqual({ a: "handing-over" });
    run.cancelAll();
    await settle();
    expect(states()).toEqual({ a: "cancelled" });
    expect(calls.map(([name]) => name)).toEqual(["import.cancel", "file.letGo"]);
    expect(calls[1]?.[1]).toEqual({ files: ["received a.vtt"] });
  });

  test("progress is told by ticket; what comes late changes nothing", async () => {
    const { run, imports, states, tell } = ground();
    run.add([order("a"), order("b")]);
    await settle();
    tell({ ticket: "ticket 2", pass: "claims", done: 3, of: 8 });
    expect(states()).toEqual({ a: "reading", b: "analysing" });
    imports.get("b")?.resolve({ id: "B" });
    await settle();
    tell({ ticket: "ticket 2", pass: "claims", done: 4, of: 8 });
    expect(states()).toEqual({ a: "reading", b: "imported" });
  });

  test("a failed one is tried again under a new ticket, and known words only where a person says so", async () => {
    const { run, imports, calls } = ground();
    run.add([order("a")]);
    await settle();
    imports.get("a")?.reject(new ProblemError({ code: "transcript-known", message: "…" }));
    await settle();
    run.retry("ticket 1", true);
    await settle();
    const inputs = calls.filter(([name]) => name === "recording.import").map(([, input]) => input);
    expect(inputs).toMatchObject([{ ticket: "ticket 1" }, { ticket: "ticket 2", again: true }]);
    expect(inputs[0]).not.toHaveProperty("again");
  });

  test("only what has come to its end is cleared", async () => {
    const { run, imports, states } = ground();
    run.add([order("a"), order("b")]);
    await settle();
    imports.get("a")?.resolve({ id: "A" });
    await settle();
    run.clear();
    expect(states()).toEqual({ b: "reading" });
  });
});

test("how a line stands is said in words, with sizes people know", () => {
  const state = { kind: "handing-over", part: "video", sentBytes: 1_250_000, ofBytes: 3_400_000_000 } as const;
  expect(lineWords(state)).toBe("handing over the video, 1.3 MB of 3.4 GB");
  expect(lineShare(state)).toBeLessThan(0.01);
  expect(lineShare({ kind: "imported", recordingId: "x" })).toBe(1);
  expect(lineShare({ kind: "reading" })).toBeNull();
  expect([0, 999, 1000, 999_600, 12_340_000].map(sizeLabel)).toEqual(["0 bytes", "999 bytes", "1.0 kB", "1.0 MB", "12 MB"]);
});

describe("a line that was mended in the window for one recording", () => {
  async function oneFailed() {
    const { run, imports, states } = ground();
    run.add([order("a"), order("b")]);
    await settle();
    imports.get("a")?.reject(new ProblemError({ code: "captions-backwards", message: "a.vtt, line 6: …" }));
    imports.get("b")?.resolve({ id: "B" });
    await settle();
    return { run, states };
  }

  test.for([
    ["by its own button", { ticket: "ticket 1", transcript: "a, mended.vtt" }],
    ["by a transcript of its name", { transcript: "a.vtt" }],
  ] as const)("%s counts as imported", async ([, by]) => {
    const { run, states } = await oneFailed();
    run.mended("A", by);
    expect(states()).toEqual({ a: "imported", b: "imported" });
    expect(runWords(run.lines())).toBe("2 of 2 recordings imported");
  });

  test("another recording mends nothing", async () => {
    const { run } = await oneFailed();
    run.mended("C", { transcript: "c.vtt" });
    run.mended("B", { transcript: "b.vtt" });
    expect(runWords(run.lines())).toBe("1 of 2 recordings imported, 1 failed");
  });
});

describe("what can be done about a line", () => {
  const failed = (code: string, offered: boolean) => ({
    ticket: "t",
    order: order("a", { offered }),
    state: { kind: "failed", problem: { code, message: "" } } as const,
  });

  test.for([
    ["file-unreadable", false, ["other-files", "retry", "off"]],
    ["file-not-sent", false, ["retry", "other-files", "off"]],
    ["captions-backwards", false, ["retry", "other-files", "off"]],
    ["captions-backwards", true, ["retry", "off"]],
    ["transcript-known", true, ["again", "off"]],
    ["stock-number-known", false, ["again", "other-files", "off"]],
  ] as const)("after %s, files at the host %s: %j", ([code, offered, acts]) => {
    expect(lineActs(failed(code, offered))).toEqual(acts);
  });
});
