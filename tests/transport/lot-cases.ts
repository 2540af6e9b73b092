import { expect } from "vitest";
import type { MethodName, Output } from "../../shared-types/index.ts";
import type { ContractHost, Ground, MethodCase } from "./contract.suite.ts";

const initials = "AB";
const unknownId = "00000000-0000-4000-8000-000000000000";
const ticket = "00000000-0000-4000-8000-00000000000a";

async function answerOf<Name extends MethodName>(host: ContractHost, name: Name, input: unknown): Promise<Output<Name>> {
  const reply = await host.call(name, input);
  if (!reply.ok) throw new Error(`${name}: ${reply.problem.message}`);
  return reply.value as Output<Name>;
}

const keeping = (recordingIds: string[] | null) => ({ ticket, recordingIds, withVideo: true, folder: null, overwrite: false });
const indexing = { ticket, formats: ["index-json"], granularity: "zones", template: "Listing text", folder: null, overwrite: false };

/** A bundle of the recording, offered by way of its folder. */
async function offeredBundle({ host, id }: Ground): Promise<string> {
  await answerOf(host, "bundle.keep", keeping([id]));
  const { bundles } = await answerOf(host, "bundle.lookAtFolder", { ticket, folder: null });
  return bundles[0]?.look?.file ?? "";
}

/** The same of a recording that was then taken out. */
async function bundleOfRemoved(ground: Ground): Promise<string> {
  const file = await offeredBundle(ground);
  await answerOf(ground.host, "recording.remove", { id: ground.id });
  return file;
}

const lot = "Stock #,Odometer\nFK-1971,68000\nFK-9,1\n";

/** A row for each method that concerns recordings as wholes, and many at once. */
export const lotCases = {
  "work.cancel": { good: () => ({ ticket: unknownId }), expectation: (value) => expect(value).toEqual({}), refused: null },
  "bundle.place": {
    good: () => ({}),
    expectation: (value: Output<"bundle.place">) => expect(value.folder).toMatch(/bundles$/),
    refused: null,
  },
  "video.copyAbility": {
    good: ({ id }) => ({ recordingId: id }),
    // The ground's recording has no video, or there is FFmpeg or not: a sentence or nothing.
    expectation: (value: Output<"video.copyAbility">) => expect(value.whyNot === null || value.whyNot.length > 20).toBe(true),
    refused: [() => ({ recordingId: unknownId }), "recording-unknown"],
  },
  "video.copy": {
    // A copy takes FFmpeg and a real video: tests/services/video-copies.test.ts makes them.
    good: () => undefined,
    expectation: () => {},
    refused: [() => ({ ticket, recordingId: unknownId, granularity: "zones", captions: false, overwrite: false }), "recording-unknown"],
  },
  "bundle.keep": {
    good: ({ id }) => keeping([id]),
    expectation: (value: Output<"bundle.keep">, { id }) =>
      expect(value).toMatchObject({ written: [{ recordingId: id }], unchanged: [], failed: [], cancelled: false }),
    refused: [() => keeping([unknownId]), "recording-unknown"],
  },
  "bundle.look": {
    good: async (ground) => ({ file: await offeredBundle(ground) }),
    expectation: (value: Output<"bundle.look">, { id }) => expect(value).toMatchObject({ recordingId: id, state: "same", seen: true }),
    refused: [() => ({ file: unknownId }), "file-not-offered"],
  },
  "bundle.lookAtFolder": {
    good: async (ground) => {
      await bundleOfRemoved(ground);
      return { ticket, folder: null };
    },
    expectation: (value: Output<"bundle.lookAtFolder">, { id }) =>
      expect(value.bundles).toMatchObject([{ problem: null, look: { recordingId: id, state: "new" } }]),
    refused: [() => ({ ticket, folder: "no/full/path" }), "folder-relative"],
  },
  "bundle.take": {
    good: async (ground) => ({ ticket, file: await bundleOfRemoved(ground), choices: null, again: false, initials }),
    expectation: (value, { id }) => expect(value).toEqual({ recordingId: id, title: "Kestrel walk round", outcome: "imported" }),
    refused: [() => ({ ticket, file: unknownId, choices: null, again: false, initials }), "file-not-offered"],
  },
  "lot.ready": {
    good: () => ({}),
    expectation: (value: Output<"lot.ready">, { id }) =>
      expect(value).toMatchObject([{ recordingId: id, ready: false, why: "1 conflict is open" }]),
    refused: null,
  },
  "lot.match": {
    good: async ({ host }) => ({ stockSheet: (await host.offer("lot.csv", lot)).id }),
    expectation: (value: Output<"lot.match">, { id }) =>
      expect(value).toMatchObject({ rows: 2, matched: [{ recordingId: id, line: 2 }], rowsLeft: [{ line: 3 }], twice: [] }),
    refused: [() => ({ stockSheet: unknownId }), "file-not-offered"],
  },
  "lot.take": {
    good: async ({ host, id }) => ({ stockSheet: (await host.offer("lot.csv", lot)).id, recordingIds: [id] }),
    expectation: (value) => expect(value).toEqual({ recordings: 1 }),
    refused: [() => ({ stockSheet: unknownId, recordingIds: [unknownId] }), "file-not-offered"],
  },
  "lot.index": {
    good: ({ id }) => ({ ...indexing, recordingIds: [id] }),
    expectation: (value: Output<"lot.index">, { id }) => {
      expect(value).toMatchObject({ failed: [], left: [], cancelled: false, written: [{ recordingId: id }] });
      expect(value.written[0]?.files).toHaveLength(2);
    },
    refused: [({ id }) => ({ ...indexing, recordingIds: [id], template: "No such text" }), "template-unknown"],
  },
  "template.list": {
    good: () => ({}),
    expectation: (value: Output<"template.list">) => expect(value.map(({ name }) => name)).toEqual(["Listing text"]),
    refused: null,
  },
  "template.keep": {
    good: () => ({ template: { name: "Short", text: "{title}" } }),
    expectation: (value: Output<"template.keep">) => expect(value.map(({ name }) => name)).toEqual(["Listing text", "Short"]),
    refused: [() => ({ template: { name: "Short", text: "{nothing}" } }), "template-fault"],
  },
  "template.remove": {
    good: () => ({ name: "Listing text" }),
    expectation: (value) => expect(value).toEqual([]),
    refused: null,
  },
  "template.preview": {
    good: ({ id }) => ({ recordingId: id, text: "{title}" }),
    expectation: (value: Output<"template.preview">) => expect(value.text).toMatch(/^Kestrel walk round\n/),
    refused: [() => ({ recordingId: unknownId, text: "{title}" }), "recording-unknown"],
  },
} satisfies Partial<Record<MethodName, MethodCase>>;
