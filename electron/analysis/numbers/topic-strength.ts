import { type Topic, type TopicCue, topicCues } from "../vocabulary/topic-cues.ts";
import type { Line } from "./pieces.ts";

const reachBack = 26;
const reachAhead = 8;

interface Cue {
  readonly first: number;
  readonly end: number;
  readonly cue: TopicCue;
}

/** Cue phrases by the piece they start at. Phrases are at most three words long. */
export function findCues(line: Line): readonly (readonly Cue[])[] {
  return line.pieces.map((_, at) => {
    const found: Cue[] = [];
    for (const length of [1, 2, 3]) {
      if (at + length > line.pieces.length) break;
      const words = line.text.slice(line.starts[at], line.starts[at + length]! - 1);
      for (const cue of cuesByPhrase.get(words.endsWith("'s") ? words.slice(0, -2) : words) ?? [])
        found.push({ first: at, end: at + length, cue });
    }
    return found;
  });
}

const cuesByPhrase: ReadonlyMap<string, readonly TopicCue[]> = (() => {
  const byPhrase = new Map<string, TopicCue[]>();
  for (const cue of topicCues) for (const phrase of cue.words) byPhrase.set(phrase, [...(byPhrase.get(phrase) ?? []), cue]);
  return byPhrase;
})();

/** A number whose reading is sure enough to tell what the ones near it are about ("three oh oh … I'd put a 391 in it"). */
export interface Anchor {
  readonly at: number;
  readonly topic: Topic;
}

const anchorReachAhead = 70;
const anchorReachBack = 24;
const anchorStrength = 0.65;
/** A number colours what comes after it far more than what came before. */
const anchorBackShare = 0.45;

/** How much sure readings around a place speak of each topic; adds to what the words say. `anchors` in order of place. */
export function addAnchorStrengths(strengths: Map<Topic, number>, anchors: readonly Anchor[], first: number, end: number): void {
  let low = 0;
  let high = anchors.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (anchors[middle]!.at < first - anchorReachAhead) low = middle + 1;
    else high = middle;
  }
  for (let index = low; index < anchors.length && anchors[index]!.at < end + anchorReachBack; index += 1) {
    const { at, topic } = anchors[index]!;
    if (at >= first && at < end) continue;
    const fade = at < first ? 1 - (first - at) / (anchorReachAhead + 1) : anchorBackShare * (1 - (at - end + 1) / (anchorReachBack + 1));
    strengths.set(topic, Math.max(strengths.get(topic) ?? 0, anchorStrength * fade));
  }
}

/** How much the words around the pieces [first, end) speak of each topic, 0 to 1. A full stop halves what lies beyond it. */
export function topicStrengths(line: Line, cues: readonly (readonly Cue[])[], first: number, end: number): Map<Topic, number> {
  const strengths = new Map<Topic, number>();
  const add = (topic: Topic, strength: number) => strengths.set(topic, Math.max(strengths.get(topic) ?? 0, strength));
  let fade = 1;
  for (let at = first - 1, steps = 0; at >= 0 && steps < reachBack; at -= 1, steps += 1) {
    if (line.pieces[at]!.text === ".") fade *= 0.5;
    for (const { cue, end: cueEnd } of cues[at]!) if (cueEnd <= first) add(cue.topic, cue.before * fade * (1 - steps / (reachBack + 2)));
  }
  fade = 1;
  for (let at = end, steps = 0; at < line.pieces.length && steps < reachAhead; at += 1, steps += 1) {
    if (line.pieces[at]!.text === ".") fade *= 0.35;
    if (line.pieces[at]!.text === ",") fade *= 0.8;
    for (const { cue } of cues[at]!) add(cue.topic, cue.after * fade * (1 - steps / (reachAhead + 1)));
  }
  return strengths;
}
