import { existsSync } from "node:fs";
import type { BundleLook, Publication } from "../../../shared-types/index.ts";
import type { Library } from "../../library/open-library.ts";
import type { RecordingRow } from "../../library/recordings.ts";
import { isOwnedTable } from "../../library/row-owners.ts";
import type { KnownFile } from "../offered-files.ts";
import type { Parts } from "../parts.ts";
import { videoPath } from "../recording-detail.ts";
import { type BundleContent, stillName, workOf } from "./bundle-content.ts";
import { differencesBetween, type Side } from "./differences.ts";
import { broken, type OpenBundle, openBundle } from "./read-bundle.ts";
import { readContent } from "./read-content.ts";
import { wasSeen } from "./seen-bundles.ts";

/** A bundle beside what the library has: read and checked, nothing written. The video's own bytes are checked when they are taken. */
export async function lookAtBundle({ library, files }: Pick<Parts, "library" | "files">, id: string): Promise<BundleLook> {
  const file = files.find(id);
  const bundle = await openBundle(file.path, file.name);
  try {
    return lookOf(library, file, bundle, await readContent(bundle));
  } finally {
    bundle.close();
  }
}

export function lookOf(library: Library, file: Pick<KnownFile, "id" | "name">, bundle: OpenBundle, content: BundleContent): BundleLook {
  const { recording } = content;
  const row = library.recordings.get(recording.id);
  const shared = {
    file: file.id,
    fileName: file.name,
    bytes: bundle.bytes,
    recordingId: recording.id,
    title: recording.title,
    stockNumber: recording.stockNumber,
    hasVideo: bundle.video !== null,
    seen: wasSeen(library, recording.id, bundle.seal),
  };
  refuseForeignRows(library, content, file.name);
  if (!row) return { ...shared, state: "new", adds: [], stays: [], groups: [], sameWords: sameWords(library, content) };
  refuseOtherWords(library, row, content, file.name);
  const adds = additionWords(library, row, bundle, content);
  const groups = differencesBetween(sideHere(library, row), sideThere(content));
  const differs = groups.length > 0 || adds.length > 0;
  return { ...shared, state: differs ? "differs" : "same", adds, stays: stayingWords(row, content), groups, sameWords: null };
}

export function sideHere(library: Library, row: RecordingRow): Side {
  const { title, stockNumber, vehicle } = row;
  return { description: { title, stockNumber, vehicle }, work: workOf(library, row.id) };
}

export function sideThere({ recording, work }: BundleContent): Side {
  const { title, stockNumber, vehicle } = recording;
  return { description: { title, stockNumber, vehicle }, work };
}

/** Publications of theirs that are not on record here. They have happened, on whichever machine. */
export function newPublications(library: Library, { recording, work }: BundleContent): Publication[] {
  const known = new Set(library.publications.of(recording.id).map((each) => JSON.stringify([each.at, each.initials, each.openConflicts])));
  return work.publications.filter((each) => !known.has(JSON.stringify([each.at, each.initials, each.openConflicts])));
}

/** Stills of theirs at moments that have none here. */
export function newStills(library: Library, { recording, stills }: BundleContent) {
  const times = new Set(library.stills.times(recording.id));
  return stills.filter(({ atMilliseconds }) => !times.has(atMilliseconds)).map((still) => ({ ...still, name: stillName(still) }));
}

export function lacksVideo(library: Library, row: RecordingRow): boolean {
  return row.video === null || !existsSync(videoPath(library, row.video));
}

/** The sheet comes along where there is none; one that is there is the lot's, and changed from a lot sheet. */
export function bringsSheet(row: RecordingRow, { recording }: BundleContent): boolean {
  return row.stockSheet === null && recording.stockSheet !== null;
}

function additionWords(library: Library, row: RecordingRow, bundle: OpenBundle, content: BundleContent): string[] {
  const stills = newStills(library, content).length;
  const published = newPublications(library, content);
  return [
    ...(bundle.video !== null && lacksVideo(library, row) ? ["its video, which is not here"] : []),
    ...(bringsSheet(row, content) ? ["its stock sheet"] : []),
    ...(stills > 0 ? [`${stills} ${stills === 1 ? "still" : "stills"}`] : []),
    ...published.map(({ at, initials }) => `that it was published on ${at.slice(0, 10)} by ${initials}`),
  ];
}

/** Two sheets of one vehicle: the lot's own is matched again where another is wanted. */
function stayingWords({ stockSheet }: RecordingRow, { recording }: BundleContent): string[] {
  const other = stockSheet !== null && recording.stockSheet !== null && JSON.stringify(stockSheet) !== JSON.stringify(recording.stockSheet);
  return other ? ["its stock sheet is another than the one here, which stays"] : [];
}

function sameWords(library: Library, { transcript }: BundleContent): string | null {
  const known = library.recordings.ofTranscript(transcript);
  if (!known) return null;
  const stock = known.stockNumber ? `stock ${known.stockNumber}, ` : "";
  return `The library has this very transcript as “${known.title}” (${stock}imported ${known.importedAt.slice(0, 10)}), from an import of its own.`;
}

/** Ids are drawn at random: a row of another recording under the same id is no accident. */
function refuseForeignRows(library: Library, { recording, work }: BundleContent, fileName: string): void {
  for (const [table, rows] of [
    ["zone_spans", work.zoneSpans],
    ["findings", work.findings],
    ["rulings", work.rulings],
    ["seen_notes", work.seenNotes],
  ] as const) {
    for (const { id } of rows) {
      const owner = library.rows.ownerOf(table, id);
      if (owner !== undefined && owner !== recording.id) throw broken(fileName, "it holds work that belongs to another recording here");
    }
  }
  for (const { changes } of work.edits) {
    for (const { table, id } of changes) {
      if (table === "recordings" && id !== recording.id) throw broken(fileName, "one of its edits is of another recording");
      const owner = isOwnedTable(table) ? library.rows.ownerOf(table, id) : undefined;
      if (owner !== undefined && owner !== recording.id) throw broken(fileName, "one of its edits reaches into another recording here");
    }
  }
}

function refuseOtherWords(library: Library, row: RecordingRow, { transcript, captions }: BundleContent, fileName: string): void {
  const here = library.recordings.transcriptBytes(row.id) ?? new Uint8Array();
  const same = Buffer.compare(here, transcript) === 0 && library.captions.count(row.id) === captions.length;
  if (!same) throw broken(fileName, `it goes by the id of “${row.title}”, whose transcript is another one`);
}
