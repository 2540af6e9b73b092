import { randomUUID } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BundleTaken, MergeChoices, RecordingDetail } from "../../../shared-types/index.ts";
import { sampleQuestion, sampleTranscriptText } from "../../support/builders/sample-analysis.ts";
import { importSample, sampleApplication, sampleVehicle } from "../../support/builders/sample-application.ts";
import { temporaryFolder } from "../../support/builders/temporary-folder.ts";

export type Machine = ReturnType<typeof sampleApplication>;

export const initials = "AB";

/** A file that begins as an ISO base media file does (ISO/IEC 14496-12: a box of type "ftyp"), and is long enough to come in pieces. */
export function sampleVideo(bytes = 300_000): Buffer {
  const film = Buffer.alloc(bytes);
  for (let at = 0; at < bytes; at += 1) film[at] = (at * 31 + (at >> 8)) & 0xff;
  film.writeUInt32BE(24, 0);
  film.write("ftypisom", 4, "latin1");
  return film;
}

/** A PNG of one point (RFC 2083), as a person's still. */
const onePoint = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** A recording with everything that a library can have of one: video, sheet, edits undone and dropped, rulings superseded, stills. */
export async function workedRecording(machine: Machine, folder = machine.folder): Promise<RecordingDetail> {
  const { handlers, parts } = machine;
  mkdirSync(folder, { recursive: true });
  const offer = (name: string, content: string | Buffer) => {
    const path = join(folder, name);
    writeFileSync(path, content);
    return parts.files.offerPath(path).id;
  };
  const { id: recordingId } = await handlers["recording.import"]({
    transcript: offer("kestrel.txt", sampleTranscriptText),
    video: offer("Kestrel walk.MP4", sampleVideo()),
    stockSheet: offer("sheet.csv", "Stock Number,Mileage,Tacho\nFK-1971,68000,metric\n"),
    title: "Kestrel walk round",
    stockNumber: "FK-1971",
    vehicle: sampleVehicle,
  });
  const seen = { recordingId, matters: [{ about: "question" as const, key: sampleQuestion.key }], initials };
  await handlers["matter.note"]({ ...seen, state: "waits", reason: "Nobody looked yet." });
  await handlers["matter.note"]({ ...seen, state: "seen", reason: "It has none, as the sheet says." });
  const { findingProposals } = await handlers["zone.paint"]({
    recordingId,
    start: 20,
    end: 40,
    zone: "roof",
    title: "From above",
    initials,
  });
  await handlers["finding.accept"]({ recordingId, proposalKeys: findingProposals.map(({ key }) => key), initials });
  await handlers["still.keep"]({ recordingId, atMilliseconds: 33_000, image: onePoint });
  await handlers["finding.add"]({ recordingId, ...dent, initials });
  const ruling = { recordingId, conflictKey: "measure/rear tire size", reason: "Read on the tire.", rightWords: null, initials };
  await handlers["conflict.rule"]({ ...ruling, decision: "look-at-vehicle", side: null });
  await handlers["conflict.rule"]({ ...ruling, decision: "side-stands", side: 1 });
  await handlers["caption.correct"]({ recordingId, caption: 0, words: "Good morning from the forecourt.", initials });
  await handlers["caption.trust"]({ recordingId, caption: 6, trusted: true, initials: "CD" });
  await handlers["recording.publish"]({ recordingId, openConflictKeys: [], openMatters: [], initials });
  await handlers["zone.split"]({ recordingId, at: 60, initials });
  await handlers["edit.undo"]({ recordingId, initials: "CD" });
  await handlers["finding.add"]({ recordingId, ...dent, seen: "a scratch", initials });
  await handlers["finding.add"]({ recordingId, ...dent, seen: "a chip", initials });
  return handlers["edit.undo"]({ recordingId, initials });
}

export const dent = {
  start: 33,
  end: 36,
  zone: "rear",
  component: "body",
  part: "trunk lid",
  position: "rear",
  seen: "a dent",
  grade: "damaged",
  note: "left of the latch",
  stillAt: 33_000,
} as const;

/** Writes a bundle and gives its path. */
export async function bundleOf(
  machine: Machine,
  recordingId: string,
  { withVideo = true, folder = temporaryFolder() } = {},
): Promise<string> {
  const kept = await machine.handlers["bundle.keep"]({
    ticket: randomUUID(),
    recordingIds: [recordingId],
    withVideo,
    folder,
    overwrite: false,
  });
  const [written] = kept.written;
  if (!written) throw new Error(JSON.stringify(kept));
  return join(kept.folder, written.fileName);
}

export function takeBundle(
  machine: Machine,
  path: string,
  { choices = null, again = false, by = initials }: { choices?: MergeChoices | null; again?: boolean; by?: string } = {},
): Promise<BundleTaken> {
  const { id } = machine.parts.files.offerPath(path);
  return Promise.resolve(machine.handlers["bundle.take"]({ ticket: randomUUID(), file: id, choices, again, initials: by }));
}

export function lookAt(machine: Machine, path: string) {
  return Promise.resolve(machine.handlers["bundle.look"]({ file: machine.parts.files.offerPath(path).id }));
}

/** Two machines with the same recording, as it stood when it was handed over. */
export async function twoMachines() {
  const mine = sampleApplication();
  const theirs = sampleApplication();
  const { summary } = await workedRecording(theirs);
  await takeBundle(mine, await bundleOf(theirs, summary.id));
  return { mine, theirs, recordingId: summary.id };
}

export { importSample, sampleApplication, temporaryFolder };
