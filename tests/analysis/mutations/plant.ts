import { fileURLToPath } from "node:url";
import { analyse } from "../../../electron/analysis/analyse.ts";
import type { Analysis, Conflict, Transcript } from "../../../shared-types/index.ts";
import { type AnnotatedCase, readCases } from "../../corpus/read-cases.ts";
import type { PlantedRow, PlantedWalk } from "./planted-row.ts";

/** A walk as it stands, ready to be planted into. */
export interface QuietWalk {
  readonly walk: PlantedWalk;
  readonly original: AnnotatedCase;
  readonly untouched: Analysis;
}

/** How long a planted sentence is spoken, in seconds; what follows it is later by as much. */
const secondsPlanted = 5;
/** A sentence right after the one it denies would be a slip put right, which is no contradiction. */
const captionsApart = 2;

const recording = (transcript: Transcript): Analysis => analyse(transcript, { stockSheet: null, recordedOn: "2026-03-01" });

export function quietWalk(walk: PlantedWalk): QuietWalk {
  const folder = fileURLToPath(new URL(`../../../fixtures/corpus/${walk.folder}`, import.meta.url));
  const original = readCases(folder).find(({ gold }) => gold.id === walk.id);
  if (!original) throw new Error(`${walk.id} is not in ${folder}`);
  const whole = { ...original.transcript, duration: original.gold.duration };
  return { walk, original: { ...original, transcript: whole }, untouched: recording(whole) };
}

/** Captions after which a sentence can be spoken in the row's zone, away from every caption in which the slot is spoken already. */
export function placesFor({ original: { gold, transcript } }: QuietWalk, { zone, at }: PlantedRow): number[] {
  const spans = gold.zones.flatMap(({ zone: name, i }, position) =>
    name === zone ? [{ first: i, end: (gold.zones[position + 1]?.i ?? transcript.captions.length) - 1 }] : [],
  );
  const places = spans
    .flatMap(({ first, end }) => Array.from({ length: Math.max(0, end - first) }, (_, offset) => first + offset))
    .filter((place) => at.every((caption) => Math.abs(place + 0.5 - caption) >= captionsApart));
  // Not every recogniser ends a caption with a mark; where one does, no sentence is cut in two.
  const betweenSentences = places.filter((place) => /[.?!]\W*$/.test(transcript.captions[place]!.text));
  return betweenSentences.length > 0 ? betweenSentences : places;
}

/** The transcript with one more caption after caption `place`. */
export function planted(transcript: Transcript, place: number, sentence: string): Transcript {
  const at = transcript.captions[place]!.end;
  const later = transcript.captions
    .slice(place + 1)
    .map((caption) => ({ ...caption, index: caption.index + 1, start: caption.start + secondsPlanted, end: caption.end + secondsPlanted }));
  return {
    ...transcript,
    duration: (transcript.duration ?? at) + secondsPlanted,
    captions: [
      ...transcript.captions.slice(0, place + 1),
      { index: place + 1, start: at, end: at + secondsPlanted, text: sentence },
      ...later,
    ],
  };
}

/** The conflicts of the planted walk that the untouched one has not, and that rest on the planted words. */
export function raisedBy({ original, untouched }: QuietWalk, place: number, sentence: string): Conflict[] {
  const known = new Set(untouched.conflicts.map(({ key }) => key));
  const { claims, conflicts } = recording(planted(original.transcript, place, sentence));
  const ofSentence = new Set(claims.filter((claim) => claim.captions.includes(place + 1)).map(({ id }) => id));
  return conflicts.filter(({ key, sides }) => !known.has(key) && sides.some((side) => side.claims.some((id) => ofSentence.has(id))));
}

export interface Planting {
  readonly walk: string;
  readonly row: PlantedRow;
  readonly sentence: string;
  readonly found: boolean;
  /** What was shown for it, as "kind topic". */
  readonly shown: readonly string[];
}

/** A fixed choice: the same row and turn give the same sentence and place each run (a 32-bit mixing of FNV-1a). */
function chosen<Item>(items: readonly Item[], seed: string): Item {
  let mixed = 0x811c9dc5;
  for (const character of seed) mixed = Math.imul(mixed ^ character.charCodeAt(0), 0x01000193);
  return items[(mixed >>> 0) % items.length]!;
}

/** At most `each` of a row's sentences, spread over all of them, each planted at a place of its own. */
function plantings(quiet: QuietWalk, row: PlantedRow, sentences: readonly string[], each: number, verdict: (shown: Conflict[]) => boolean) {
  const places = placesFor(quiet, row);
  if (places.length === 0) throw new Error(`${quiet.walk.id}: nowhere in the ${row.zone} to speak of the ${row.slot}`);
  const count = Math.min(each, sentences.length);
  const [offset] = [chosen([...sentences.keys()], `${quiet.walk.id} ${row.slot}`)];
  return Array.from({ length: count }, (_, turn): Planting => {
    const sentence = sentences[(offset! + Math.floor((turn * sentences.length) / count)) % sentences.length]!;
    const shown = raisedBy(quiet, chosen(places, `${quiet.walk.id} ${row.slot} ${sentence}`), sentence);
    return { walk: quiet.walk.id, row, sentence, found: verdict(shown), shown: shown.map(({ kind, topic }) => `${kind} ${topic}`) };
  });
}

/** Sentences that deny what the walk says: found is whether a conflict of an allowed kind is shown for it. */
export function deniedIn(quiet: QuietWalk, row: PlantedRow, each: number): Planting[] {
  return plantings(quiet, row, row.denials, each, (shown) => shown.some(({ kind }) => row.kinds.includes(kind)));
}

/** Sentences that say the same: found is whether anything at all is shown for it, which it must not. */
export function saidAgainIn(quiet: QuietWalk, row: PlantedRow, each: number): Planting[] {
  return plantings(quiet, row, row.equals, each, (shown) => shown.length > 0);
}
