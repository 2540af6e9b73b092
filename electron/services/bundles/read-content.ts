import type { z } from "zod";
import {
  BundleAnalysis,
  BundleCaptions,
  BundleRecording,
  BundleStills,
  BundleWork,
  BundleWorkOfForm1,
  type Caption,
  matterName,
  type ZoneSpan,
} from "../../../shared-types/index.ts";
import { type BundleContent, entryNames, stillName } from "./bundle-content.ts";
import { broken, firstIssue, type OpenBundle } from "./read-bundle.ts";
import { videoEntryName } from "./write-bundle.ts";

/**
 * Everything of a bundle but the bytes of its stills and its video, each entry held against the manifest and its own form, and all of
 * them against each other: what is then believed could have stood in a library.
 * @throws Refusal
 */
export async function readContent(bundle: OpenBundle): Promise<BundleContent> {
  const json = async <Schema extends z.ZodType>(name: string, schema: Schema): Promise<z.output<Schema>> => {
    let written: unknown;
    try {
      written = JSON.parse((await bundle.read(name)).toString("utf8"));
    } catch (failure) {
      if (failure instanceof SyntaxError) throw broken(bundle.fileName, `${name} is no JSON`);
      throw failure;
    }
    const parsed = schema.safeParse(written);
    if (!parsed.success) throw broken(bundle.fileName, `${name} is not as it should be (${firstIssue(parsed.error)})`);
    // As it stands in the file: parsing puts the keys into another order, and an edit is kept letter by letter.
    return written as z.output<Schema>;
  };
  const content: BundleContent = {
    recording: await json(entryNames.recording, BundleRecording),
    transcript: await bundle.read(entryNames.transcript),
    captions: await json(entryNames.captions, BundleCaptions),
    analysis: await json(entryNames.analysis, BundleAnalysis),
    work:
      bundle.manifest.version === 1 ? workOfForm1(await json(entryNames.work, BundleWorkOfForm1)) : await json(entryNames.work, BundleWork),
    stills: await json(entryNames.stills, BundleStills),
  };
  const complaint = complaintOf(content, bundle);
  if (complaint !== null) throw broken(bundle.fileName, complaint);
  return content;
}

/** What came with form 2 is lacking in it. */
function workOfForm1(work: z.output<typeof BundleWorkOfForm1>): BundleWork {
  return { ...work, seenNotes: [], publications: work.publications.map((publication) => ({ ...publication, openMatters: null })) };
}

/** What does not go together in it, in words; null where all does. */
function complaintOf(content: BundleContent, { manifest, video }: OpenBundle): string | null {
  const { recording, captions, work, stills } = content;
  if (recording.id !== manifest.recordingId) return "its manifest names another recording than it holds";
  if (video !== null && (recording.video === null || videoEntryName(recording.video) !== video))
    return `it holds ${video}, which its recording does not name`;
  if (captions.some(({ index }, place) => index !== place)) return "its captions are not counted from first to last";
  const named = new Set(manifest.entries.map(({ name }) => name).filter((name) => name.startsWith("stills/")));
  const stillNames = stills.map(stillName);
  if (new Set(stillNames).size !== stillNames.length || named.size !== stillNames.length || stillNames.some((name) => !named.has(name)))
    return "its stills and their list do not match";
  return workComplaint(work, captions);
}

function workComplaint(work: BundleWork, captions: readonly Caption[]): string | null {
  const { zoneSpans, findings, rulings, seenNotes, trustedCaptions, captionCorrections } = work;
  for (const [what, ids] of [
    ["zone spans", zoneSpans.map(({ id }) => id)],
    ["findings", findings.map(({ id }) => id)],
    ["rulings", rulings.map(({ id }) => id)],
    ["notes", seenNotes.map(({ id }) => id)],
    ["trusted captions", trustedCaptions.map(({ caption }) => String(caption))],
    ["corrected captions", captionCorrections.map(({ caption }) => String(caption))],
    ["standing notes", seenNotes.filter(({ supersededBy }) => supersededBy === null).map(matterName)],
    ["standing rulings", rulings.filter(({ supersededBy }) => supersededBy === null).map(({ conflictKey }) => conflictKey)],
  ] as const) {
    if (new Set(ids).size !== ids.length) return `one of its ${what} stands in it twice`;
  }
  if (overlaps(zoneSpans)) return "its zone spans run over each other";
  if (findings.some(({ start, end }) => start > end)) return "one of its findings ends before it starts";
  if ([...trustedCaptions, ...captionCorrections].some(({ caption }) => caption >= captions.length))
    return "it corrects or trusts a caption that it does not have";
  return null;
}

function overlaps(spans: readonly ZoneSpan[]): boolean {
  const inTime = spans.toSorted((a, b) => a.start - b.start);
  return inTime.some(({ start, end }, place) => start >= end || (inTime[place + 1]?.start ?? Number.POSITIVE_INFINITY) < end);
}
