import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { beforeEach, describe, expect, onTestFinished, test } from "vitest";
import {
  contract,
  type HostEvent,
  type MethodName,
  type OfferedFile,
  type Output,
  type RecordingDetail,
  type Reply,
} from "../../shared-types/index.ts";
import { sampleQuestion, sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { sampleVehicle } from "../support/builders/sample-application.ts";
import { lotCases } from "./lot-cases.ts";
import { startCases } from "./start-cases.ts";

/** One way into the application, seen from the page's end. */
export interface ContractHost {
  readonly call: (name: string, input: unknown) => Promise<Reply>;
  readonly offer: (fileName: string, text: string) => Promise<OfferedFile>;
  readonly listen: (listener: (event: HostEvent) => void) => Promise<() => void>;
  readonly close: () => Promise<void>;
}

const initials = "AB";
const question = { about: "question", key: sampleQuestion.key } as const;
const unknownId = "00000000-0000-4000-8000-000000000000";

/** What a case may use: a recording that is in the library, and the page's way in. */
export interface Ground {
  readonly host: ContractHost;
  readonly id: string;
  readonly detail: RecordingDetail;
}

export interface MethodCase {
  /** Builds a good input; may take steps first. */
  readonly good: (ground: Ground) => unknown | Promise<unknown>;
  readonly expectation: (value: never, ground: Ground) => void;
  /** An input that the schema lets pass and the application refuses, with the refusal's code; null where there is none. */
  readonly refused: readonly [input: (ground: Ground) => unknown, code: string] | null;
}

/** A row for each method of the contract. */
const cases = {
  "host.abilities": {
    good: () => ({}),
    expectation: (value: Output<"host.abilities">) => expect(value).toMatchObject({ host: "browser", revealFiles: false }),
    refused: null,
  },
  "settings.get": { good: () => ({}), expectation: (value) => expect(value).toEqual({ initials: "" }), refused: null },
  "settings.set": { good: () => ({ initials }), expectation: (value) => expect(value).toEqual({ initials }), refused: null },
  "playing.get": {
    good: () => ({}),
    expectation: (value) => expect(value).toEqual({ volume: 1, muted: false, rate: 1 }),
    refused: null,
  },
  "playing.set": {
    good: () => ({ volume: 0.4, muted: true, rate: 1.5 }),
    expectation: (value) => expect(value).toEqual({ volume: 0.4, muted: true, rate: 1.5 }),
    refused: null,
  },
  "recording.list": {
    good: () => ({}),
    expectation: (value: Output<"recording.list">, { id }) => expect(value.map((row) => row.id)).toEqual([id]),
    refused: null,
  },
  "recording.get": {
    good: ({ id }) => ({ id }),
    expectation: (value: Output<"recording.get">) => {
      expect(value.captions).toHaveLength(7);
      expect(value.lap.map(({ zone }) => zone)).toEqual(["opening", "front", "rear", "underside"]);
      expect(value.openConflictKeys).toEqual(["measure/rear tire size"]);
      expect(value.findingProposals.map(({ grade }) => grade)).toEqual(["as-new", "damaged"]);
    },
    refused: [() => ({ id: unknownId }), "recording-unknown"],
  },
  "recording.import": {
    good: async ({ host }) => ({
      transcript: (await host.offer("second.txt", sampleTranscriptText)).id,
      video: null,
      stockSheet: (await host.offer("sheet.csv", "Stock Number,Mileage\nFK-2,68000\n")).id,
      title: "Second",
      stockNumber: "FK-2",
      vehicle: sampleVehicle,
      again: true,
    }),
    expectation: (value: Output<"recording.import">) => {
      expect(value).toMatchObject({ title: "Second", hasVideo: false, counts: { captions: 7, claims: 6, conflicts: 1, openConflicts: 1 } });
    },
    refused: [
      () => ({ transcript: unknownId, video: null, stockSheet: null, title: "x", stockNumber: "", vehicle: sampleVehicle }),
      "file-not-offered",
    ],
  },
  "import.cancel": {
    // A cancellation may arrive before its import: the import that comes after it is refused.
    good: () => ({ ticket: unknownId }),
    expectation: (value) => expect(value).toEqual({}),
    refused: null,
  },
  "file.letGo": {
    good: async ({ host }) => ({ files: [(await host.offer("walk.txt", "words")).id, unknownId] }),
    expectation: (value) => expect(value).toEqual({}),
    refused: null,
  },
  "file.handedOver": {
    good: () => ({}),
    expectation: (value: Output<"file.handedOver">) => expect(value).toEqual({ files: [] }),
    refused: null,
  },
  "folder.choose": {
    // This host has no window for it: its refusal is its good answer.
    good: () => undefined,
    expectation: () => {},
    refused: [() => ({}), "folder-choice-impossible"],
  },
  "folder.place": {
    // The same: without a window of its own it refuses, and says what to do instead.
    good: () => undefined,
    expectation: () => {},
    refused: [() => ({}), "folder-choice-impossible"],
  },
  "video.wanted": { good: () => ({}), expectation: (value) => expect(value).toEqual([]), refused: null },
  "video.take": {
    good: async ({ host, id }) => ({ recordingId: id, video: (await host.offer("walk.mp4", smallVideo)).id, replace: false }),
    expectation: (value: Output<"video.take">) => expect(value).toMatchObject({ hasVideo: true, videoFound: true }),
    refused: [({ id }) => ({ recordingId: id, video: unknownId, replace: true }), "file-not-offered"],
  },
  "recording.describe": {
    good: ({ id }) => ({ id, title: "Renamed", stockNumber: "N-1", vehicle: sampleVehicle }),
    expectation: (value: Output<"recording.describe">) => expect(value).toMatchObject({ title: "Renamed", stockNumber: "N-1" }),
    refused: [() => ({ id: unknownId, title: "x", stockNumber: "", vehicle: sampleVehicle }), "recording-unknown"],
  },
  "recording.remove": {
    good: ({ id }) => ({ id }),
    expectation: (value) => expect(value).toEqual({}),
    refused: [() => ({ id: unknownId }), "recording-unknown"],
  },
  "recording.analyse": {
    good: ({ id }) => ({ id }),
    expectation: (value: Output<"recording.analyse">) => expect(value.analysis.analysisVersion).toBe(7),
    refused: [() => ({ id: unknownId }), "recording-unknown"],
  },
  "recording.measured": {
    good: ({ id }) => ({ id, duration: 130.5 }),
    expectation: (value) => expect(value).toEqual({}),
    refused: [() => ({ id: unknownId, duration: 1 }), "recording-unknown"],
  },
  "stockSheet.look": {
    good: async ({ host }) => ({ stockSheet: (await host.offer("lot.csv", lotSheet)).id }),
    expectation: (value: Output<"stockSheet.look">) => {
      expect(value).toMatchObject({ form: lotForm, rows: 2 });
      expect(value.columns.map(({ name, standing, field, samples }) => [name, standing, field, samples[0]])).toEqual([
        ["Stock #", "known", "stock-number", "FK-1"],
        ["Tacho", "unknown", null, "68000"],
      ]);
    },
    refused: [() => ({ stockSheet: unknownId }), "file-not-offered"],
  },
  "stockSheet.columns": {
    good: async ({ host }) => ({ id: await importedWithSheet(host) }),
    expectation: (value: Output<"stockSheet.columns">) =>
      expect(value.columns.map(({ name, field }) => [name, field])).toEqual([
        ["stock #", "stock-number"],
        ["tacho", null],
      ]),
    refused: [({ id }) => ({ id }), "stock-sheet-missing"],
  },
  "stockSheet.map": {
    good: async ({ host }) => {
      await importedWithSheet(host);
      return { form: lotForm, columns: [{ name: "Tacho", field: "mileage" }] };
    },
    expectation: (value) => expect(value).toEqual({ recordings: 1 }),
    refused: [
      () => ({
        form: lotForm,
        columns: [
          { name: "Tacho", field: "mileage" },
          { name: "Stock #", field: "mileage" },
        ],
      }),
      "sheet-field-twice",
    ],
  },
  "zone.paint": {
    good: ({ id }) => ({ recordingId: id, start: 20, end: 40, zone: "roof", title: null, initials }),
    expectation: (value: RecordingDetail) => {
      expect(value.lap.map(({ zone, start, zoneSpanId }) => [zone, start, zoneSpanId !== null])).toEqual([
        ["opening", 0, false],
        ["front", 10, false],
        ["roof", 20, true],
        ["rear", 40, false],
        ["underside", 90, false],
      ]);
      expect(value.undoLabel).toBe("mark Roof 0:20 to 0:40");
    },
    refused: [({ id }) => ({ recordingId: id, start: 40, end: 20, zone: "roof", title: null, initials }), "range-empty"],
  },
  "zone.accept": {
    good: ({ id }) => ({ recordingId: id, start: 0, end: 1000, initials }),
    expectation: (value: RecordingDetail) => expect(value.lap.every(({ zoneSpanId }) => zoneSpanId !== null)).toBe(true),
    refused: [({ id }) => ({ recordingId: id, start: 5, end: 5, initials }), "range-empty"],
  },
  "zone.moveBorder": {
    good: ({ id }) => ({ recordingId: id, from: 30, to: 35, initials }),
    expectation: (value: RecordingDetail) => expect(value.lap.map(({ start }) => start)).toEqual([0, 10, 35, 90]),
    refused: [({ id }) => ({ recordingId: id, from: 31, to: 35, initials }), "border-unknown"],
  },
  "zone.split": {
    good: ({ id }) => ({ recordingId: id, at: 60, initials }),
    expectation: (value: RecordingDetail) => expect(value.lap.map(({ start }) => start)).toEqual([0, 10, 30, 60, 90]),
    refused: [({ id }) => ({ recordingId: id, at: 30, initials }), "split-at-border"],
  },
  "zone.join": {
    good: ({ id }) => ({ recordingId: id, border: 30, initials }),
    expectation: (value: RecordingDetail) => expect(value.lap.map(({ zone, end }) => [zone, end])[1]).toEqual(["front", 90]),
    refused: [({ id }) => ({ recordingId: id, border: 31, initials }), "border-unknown"],
  },
  "zone.retitle": {
    good: async ({ host, id }) => ({ recordingId: id, zoneSpanId: await paintedSpan(host, id), title: "The roof", initials }),
    expectation: (value: RecordingDetail) => expect(value.lap.some(({ title }) => title === "The roof")).toBe(true),
    refused: [({ id }) => ({ recordingId: id, zoneSpanId: unknownId, title: "x", initials }), "zone-span-unknown"],
  },
  "zone.remove": {
    good: async ({ host, id }) => ({ recordingId: id, zoneSpanId: await paintedSpan(host, id), initials }),
    expectation: (value: RecordingDetail, { detail }) => expect(value.lap).toEqual(detail.lap),
    refused: [({ id }) => ({ recordingId: id, zoneSpanId: unknownId, initials }), "zone-span-unknown"],
  },
  "finding.add": {
    good: ({ id }) => ({ recordingId: id, ...finding, initials }),
    expectation: (value: RecordingDetail) =>
      expect(value.findings).toEqual([expect.objectContaining({ ...finding, initials, proposalKey: null })]),
    refused: [({ id }) => ({ recordingId: id, ...finding, start: 500, end: 501, initials }), "range-empty"],
  },
  "finding.change": {
    good: async ({ host, id }) => ({ recordingId: id, id: await addedFinding(host, id), ...finding, seen: "a deep dent", initials: "CD" }),
    expectation: (value: RecordingDetail) =>
      expect(value.findings).toEqual([expect.objectContaining({ seen: "a deep dent", initials: "CD" })]),
    refused: [({ id }) => ({ recordingId: id, id: unknownId, ...finding, initials }), "finding-unknown"],
  },
  "finding.remove": {
    good: async ({ host, id }) => ({ recordingId: id, id: await addedFinding(host, id), initials }),
    expectation: (value: RecordingDetail) => expect(value.findings).toEqual([]),
    refused: [({ id }) => ({ recordingId: id, id: unknownId, initials }), "finding-unknown"],
  },
  "finding.accept": {
    good: ({ id, detail }) => ({ recordingId: id, proposalKeys: detail.findingProposals.map(({ key }) => key), initials }),
    expectation: (value: RecordingDetail) => {
      expect(value.findings.map(({ component, grade }) => [component, grade])).toEqual([
        ["glass", "as-new"],
        ["floors", "damaged"],
      ]);
      expect(value.findingProposals).toEqual([]);
    },
    refused: [({ id }) => ({ recordingId: id, proposalKeys: ["nothing"], initials }), "proposal-unknown"],
  },
  "conflict.rule": {
    good: ({ id, detail }) => ({ recordingId: id, ...ruling(detail), initials }),
    expectation: (value: RecordingDetail) => {
      expect(value.openConflictKeys).toEqual([]);
      expect(value.rulings).toEqual([expect.objectContaining({ side: 0, supersededBy: null, sideValues: ["235/60R15", "255/60R15"] })]);
    },
    refused: [({ id, detail }) => ({ recordingId: id, ...ruling(detail), side: 2, initials }), "side-unknown"],
  },
  "edit.undo": {
    good: async ({ host, id }) => {
      await addedFinding(host, id);
      return { recordingId: id, initials };
    },
    expectation: (value: RecordingDetail) =>
      expect([value.findings, value.undoLabel, value.redoLabel]).toEqual([[], null, "add finding body at 0:33"]),
    refused: [({ id }) => ({ recordingId: id, initials }), "nothing-to-undo"],
  },
  "edit.redo": {
    good: async ({ host, id }) => {
      await addedFinding(host, id);
      await answerOf(host, "edit.undo", { recordingId: id, initials });
      return { recordingId: id, initials };
    },
    expectation: (value: RecordingDetail) => expect(value.findings).toHaveLength(1),
    refused: [({ id }) => ({ recordingId: id, initials }), "nothing-to-redo"],
  },
  "matter.note": {
    good: ({ id }) => ({ recordingId: id, matters: [question], state: "seen", reason: "It has none, and none is listed.", initials }),
    expectation: (value: RecordingDetail) => {
      expect(value.seenNotes).toMatchObject([{ ...question, state: "seen", initials, supersededBy: null, told: sampleQuestion.question }]);
      expect(value.summary.counts.openQuestions).toBe(0);
      expect(value.undoLabel).toBe("note of spare wheel as seen");
    },
    refused: [
      ({ id }) => ({ recordingId: id, matters: [{ about: "promise", key: "none" }], state: "seen", reason: "x", initials }),
      "matter-unknown",
    ],
  },
  "caption.trust": {
    // Taking back what was never given changes nothing, and is no mistake.
    good: ({ id }) => ({ recordingId: id, caption: 0, trusted: false, initials }),
    expectation: (value: Output<"caption.trust">) => expect(value.trustedCaptions).toEqual([]),
    refused: [({ id }) => ({ recordingId: id, caption: 0, trusted: true, initials }), "caption-not-doubtful"],
  },
  "caption.correct": {
    good: ({ id }) => ({ recordingId: id, caption: 0, words: "Good  morning\nfrom the forecourt.", initials }),
    expectation: (value: Output<"caption.correct">, { detail }) => {
      const original = detail.captions[0]?.text;
      expect(value.captions[0]?.text).toBe("Good morning from the forecourt.");
      expect(value.captionCorrections).toEqual([{ caption: 0, words: "Good morning from the forecourt.", initials, original }]);
      expect(value.undoLabel).toBe("correct caption 1");
    },
    refused: [({ id }) => ({ recordingId: id, caption: 7, words: "x", initials }), "caption-unknown"],
  },
  "still.keep": {
    good: ({ id }) => ({ recordingId: id, atMilliseconds: 33_000, image: onePixelPng }),
    expectation: (value) => expect(value).toEqual({ atMilliseconds: 33_000, width: 1, height: 1, mediaType: "image/png" }),
    refused: [({ id }) => ({ recordingId: id, atMilliseconds: 33_000, image: btoa("<svg/>") }), "still-unreadable"],
  },
  "still.get": {
    good: async ({ host, id }) => {
      await answerOf(host, "still.keep", { recordingId: id, atMilliseconds: 33_000, image: onePixelPng });
      return { recordingId: id, atMilliseconds: 33_000 };
    },
    expectation: (value: Output<"still.get">) => expect(value).toMatchObject({ width: 1, mediaType: "image/png", image: onePixelPng }),
    refused: [({ id }) => ({ recordingId: id, atMilliseconds: 33_000 }), "still-unknown"],
  },
  "search.find": {
    good: ({ id }) => ({ query: "chassis", limit: 5, recordingId: id }),
    expectation: (value: Output<"search.find">) =>
      expect(value[0]).toMatchObject({
        kind: "zone",
        zone: "underside",
        start: 90,
        answer: expect.stringMatching(/^Stock FK-1971: underside from 1:30 to \d:\d\d\.$/),
      }),
    refused: null,
  },
  "search.compare": {
    good: ({ id }) => ({ query: "axle ratio", recordingIds: [id] }),
    expectation: (value: Output<"search.compare">) => {
      expect(value.vehicles.map(({ stockNumber }) => stockNumber)).toEqual(["FK-1971"]);
      expect(value.subjects).toMatchObject([
        { subject: "final drive ratio", said: [[{ start: 70, value: "4.11:1", withheld: { reason: "hedged" }, answer: null }]] },
      ]);
    },
    refused: [() => ({ query: "axle ratio", recordingIds: [unknownId] }), "recording-unknown"],
  },
  "recording.publish": {
    good: ({ id, detail }) => ({ recordingId: id, openConflictKeys: detail.openConflictKeys, openMatters: [question], initials }),
    expectation: (value: RecordingDetail) => {
      expect(value.publications).toMatchObject([{ initials, openConflicts: 1, openMatters: [sampleQuestion.question] }]);
      expect(value.summary.published).toEqual(value.publications[0]);
    },
    refused: [({ id }) => ({ recordingId: id, openConflictKeys: [], openMatters: [question], initials }), "open-conflicts-changed"],
  },
  "still.wanted": {
    // The ground's recording has no video to take a picture from; tests/services/take-stills.test.ts has one.
    good: ({ id }) => ({ recordingId: id }),
    expectation: (value: Output<"still.wanted">) => expect(value.moments).toEqual([]),
    refused: [() => ({ recordingId: unknownId }), "recording-unknown"],
  },
  "export.preview": {
    good: ({ id }) => ({ recordingId: id, format: "chapters-webvtt", granularity: "zones" }),
    expectation: (value: Output<"export.preview">) => expect(value.text).toMatch(/^WEBVTT/),
    refused: [() => ({ recordingId: unknownId, format: "chapters-list", granularity: "zones" }), "recording-unknown"],
  },
  "export.write": {
    good: ({ id }) => ({ recordingId: id, formats: ["index-json", "chapters-list"], granularity: "findings", overwrite: false }),
    expectation: (value: Output<"export.write">, { id }) => {
      expect(value.files.map(({ path }) => existsSync(path))).toEqual([true, true]);
      expect(value.files[0]?.downloadUrl).toBe(`/exports/${id}/index-json/findings`);
    },
    refused: [() => ({ recordingId: unknownId, formats: ["index-json"], granularity: "zones", overwrite: false }), "recording-unknown"],
  },
  "export.cancel": {
    // Nothing is being written: there is nothing to end, and that is no fault.
    good: ({ id }) => ({ recordingId: id }),
    expectation: (value) => expect(value).toEqual({ ended: false }),
    refused: [() => ({ recordingId: unknownId }), "recording-unknown"],
  },
  "export.reveal": {
    // The only method that this host cannot do: its refusal is its good answer.
    good: () => undefined,
    expectation: () => {},
    refused: [({ id }) => ({ recordingId: id }), "reveal-impossible"],
  },
  ...lotCases,
  ...startCases,
} satisfies Record<MethodName, MethodCase>;

/** What an MP4 file begins with: a box of type "ftyp" (ISO/IEC 14496-12). */
const smallVideo = "\0\0\0\x18ftypisom\0\0\0\0isommp42";

/** The smallest picture there is: one transparent pixel. */
const onePixelPng = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";

/** A sheet of two vehicles, with a column that nobody knows. */
const lotSheet = "Stock #,Tacho\nFK-1,68000\nFK-2,71000\n";
const lotForm = "stock|tacho";

async function importedWithSheet(host: ContractHost): Promise<string> {
  const { id } = await answerOf(host, "recording.import", {
    transcript: (await host.offer("again.txt", sampleTranscriptText)).id,
    video: null,
    stockSheet: (await host.offer("lot.csv", lotSheet)).id,
    title: "Out of a lot",
    stockNumber: "fk2",
    vehicle: sampleVehicle,
    again: true,
  });
  return id;
}

const finding = {
  start: 33,
  end: 36,
  zone: "rear",
  component: "body",
  position: "rear",
  seen: "a dent",
  grade: "damaged",
  note: "left of the latch",
} as const;

function ruling(detail: RecordingDetail) {
  return { conflictKey: detail.openConflictKeys[0], decision: "side-stands", side: 0, reason: "Read on the tire.", rightWords: null };
}

async function paintedSpan(host: ContractHost, recordingId: string): Promise<string> {
  const detail = await answerOf(host, "zone.paint", { recordingId, start: 20, end: 40, zone: "roof", title: null, initials });
  return detail.lap.find(({ zoneSpanId }) => zoneSpanId !== null)?.zoneSpanId as string;
}

async function addedFinding(host: ContractHost, recordingId: string): Promise<string> {
  const detail = await answerOf(host, "finding.add", { recordingId, ...finding, initials });
  return detail.findings[0]?.id as string;
}

async function answerOf<Name extends MethodName>(host: ContractHost, name: Name, input: unknown): Promise<Output<Name>> {
  const reply = await host.call(name, input);
  if (!reply.ok) throw new Error(`${name}: ${reply.problem.message}`);
  return reply.value as Output<Name>;
}

/** What every host must do alike. */
export function contractSuite(hostName: string, open: () => Promise<ContractHost>): void {
  describe(`the contract over ${hostName}`, () => {
    let ground: Ground;
    beforeEach(async () => {
      const host = await open();
      const transcript = await host.offer("kestrel.txt", sampleTranscriptText);
      const summary = await answerOf(host, "recording.import", {
        transcript: transcript.id,
        video: null,
        stockSheet: null,
        title: "Kestrel walk round",
        stockNumber: "FK-1971",
        vehicle: sampleVehicle,
      });
      ground = { host, id: summary.id, detail: await answerOf(host, "recording.get", { id: summary.id }) };
      return () => host.close();
    });

    test("has a case for every method", () => {
      expect(Object.keys(cases).sort()).toEqual(Object.keys(contract).sort());
    });

    test.for(Object.keys(contract) as MethodName[])("%s with good and with bad input", async (name) => {
      const { good, expectation, refused } = cases[name] as MethodCase;
      if (refused) {
        const [input, code] = refused;
        expect(await ground.host.call(name, await input(ground))).toMatchObject({
          ok: false,
          problem: { code, message: expect.stringMatching(/\w/) },
        });
      }
      const input = await good(ground);
      if (input !== undefined) {
        const value = await answerOf(ground.host, name, input);
        expectation(value as never, ground);
        // What came over the wire is what the contract promises, nothing more.
        expect(contract[name].output.parse(value)).toEqual(value);
      }
      expect(await ground.host.call(name, { unheardOf: 1 })).toMatchObject({ ok: false, problem: { code: "input-invalid" } });
      expect(await ground.host.call(name, null)).toMatchObject({ ok: false, problem: { code: "input-invalid" } });
    });

    test.for(["constructor", "__proto__", "toString", "recording.nothing", ""])("there is no method %j", async (name) => {
      expect(await ground.host.call(name, {})).toMatchObject({ ok: false, problem: { code: "method-unknown" } });
    });

    test("values that are no JSON never arrive", async () => {
      const { id } = ground;
      for (const duration of [Number.NaN, Number.POSITIVE_INFINITY, -1, "3", new Date(0)]) {
        expect(await ground.host.call("recording.measured", { id, duration })).toMatchObject({
          ok: false,
          problem: { code: "input-invalid" },
        });
      }
    });

    test("an edit is told to whoever listens, and an analysis tells its passes", async () => {
      const heard: HostEvent[] = [];
      const { host, id } = ground;
      onTestFinished(await host.listen((event) => heard.push(event)));
      await answerOf(host, "recording.analyse", { id });
      await addedFinding(host, id);
      await expect
        .poll(() => heard.map(({ name }) => name))
        .toEqual(["analysis.progress", "analysis.progress", "library.changed", "library.changed"]);
      expect(heard[0]).toEqual({ name: "analysis.progress", payload: { recordingId: id, pass: "transcript", done: 1, of: 2 } });
      expect(heard.at(-1)).toEqual({ name: "library.changed", payload: { recordingId: id } });
    });

    test("two pages that edit at once both find their edit on record", async () => {
      const { host, id } = ground;
      await Promise.all(
        Array.from({ length: 20 }, (_, position) =>
          answerOf(host, "finding.add", { recordingId: id, ...finding, note: String(position), initials }),
        ),
      );
      const detail = await answerOf(host, "recording.get", { id });
      expect(new Set(detail.findings.map(({ note }) => note)).size).toBe(20);
    });

    test("a transcript that cannot be read is refused with its file and line", async () => {
      const { host } = ground;
      const transcript = await host.offer("broken.vtt", `WEBVTT\n\n00:10.000 --> 00:05.000\nbackwards\n${randomUUID()}\n`);
      const reply = await host.call("recording.import", {
        transcript: transcript.id,
        video: null,
        stockSheet: null,
        title: "Broken",
        stockNumber: "",
        vehicle: sampleVehicle,
      });
      expect(reply).toMatchObject({ ok: false, problem: { code: "ends-before-start", file: "broken.vtt", line: 3 } });
      expect(await answerOf(host, "recording.list", {})).toHaveLength(1);
    });
  });
}
