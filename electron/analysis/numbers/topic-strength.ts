import { type Topic, type TopicCue, topicCues } from "../vocabulary/topic-cues.ts";
import type { Line } from "./pieces.ts";

const reachBack = 14;
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
      for (const cue of cuesByPhrase.get(words) ?? []) found.push({ first: at, end: at + length, cue });
    }
    return found;
  });
}

const cuesByPhrase: ReadonlyMap<string, readonly TopicCue[]> = (() => {
  const byPhrase = new Map<string, TopicCue[]>();
  for (const cue of topicCues) for (const phrase of cue.words) byPhrase.set(phrase, [...(byPhrase.get(phrase) ?? []), cue]);
  return byPhrase;
})();

/** How much the words around the pieces [first, end) speak of each topic, 0 to 1. A full stop halves what lies beyond it. */
export function topicStrengths(line: Line, cues: readonly (readonly Cue[])[], first: number, end: number): ReadonlyMap<Topic, number> {
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
