import type { Topic } from "../vocabulary/topic-cues.ts";
import type { Candidate } from "./match-rules.ts";
import type { Line } from "./pieces.ts";
import type { Draft } from "./rule.ts";
import { type Anchor, addAnchorStrengths, findCues, topicStrengths } from "./topic-strength.ts";

/** A stretch of pieces with its drafts weighed by the words around, likeliest first. */
export interface WeighedSpan {
  readonly first: number;
  readonly end: number;
  readonly drafts: readonly (Draft & { readonly rule: string })[];
}

/** A topic below this does not make a reading plausible that needs it. */
const leastTopic = 0.18;

/** Puts together what several rules say of one stretch, weighs each reading by its topic, and drops what lacks a needed one. */
export function weighSpans(line: Line, candidates: readonly Candidate[], anchors: readonly Anchor[] = []): WeighedSpan[] {
  const cues = findCues(line);
  const byStretch = new Map<string, Candidate[]>();
  for (const candidate of candidates) {
    const key = `${candidate.first}-${candidate.end}`;
    const same = byStretch.get(key);
    if (same) same.push(candidate);
    else byStretch.set(key, [candidate]);
  }
  const spans: WeighedSpan[] = [];
  for (const same of byStretch.values()) {
    const { first, end } = same[0]!;
    const strengths = topicStrengths(line, cues, first, end);
    addAnchorStrengths(strengths, anchors, first, end);
    const strongest = Math.max(0, ...strengths.values());
    const told = Math.max(
      0,
      ...same.flatMap(({ drafts }) => drafts.map(({ topic }) => (topic === undefined ? 0 : (strengths.get(topic) ?? 0)))),
    );
    const acrossCaptions = crossesCaption(line, first, end);
    const drafts = mergeAlike(
      same.flatMap((candidate) =>
        candidate.drafts.flatMap((draft) => {
          const weighed = weigh(draft, strengths, strongest, told);
          if (!weighed) return [];
          const doubtful = acrossCaptions && weighed.repaired === true && weighed.kind !== "tire-size";
          return doubtful ? { ...weighed, weight: weighed.weight * borderShare(line) } : weighed;
        }),
      ),
    );
    if (drafts.length > 0) spans.push({ first, end, drafts });
  }
  return spans;
}

/** Shorthand over a caption's border may as well be two numbers: the last of one sentence and the first of the next. */
function borderShare(line: Line): number {
  return line.wordsPerCaption >= 9 ? 0.6 : 0.85;
}

function crossesCaption(line: Line, first: number, end: number): boolean {
  const [from, to] = [line.tokens[line.pieces[first]!.first], line.tokens[line.pieces[end - 1]!.end - 1]];
  return from !== undefined && to !== undefined && from.caption !== to.caption;
}

const unitStrength = 0.5;

function weigh<T extends Draft>(draft: T, strengths: ReadonlyMap<Topic, number>, strongest: number, told: number): T | undefined {
  // A bare number loses where the words ask for something it could also be.
  if (draft.topic === undefined)
    return (draft.kind === "integer" || draft.kind === "decimal") && draft.unit === undefined
      ? { ...draft, weight: draft.weight * (1 - told * 0.3) }
      : draft;
  // A unit inside the stretch speaks of its topic as well as one beside it would.
  const strength = Math.max(strengths.get(draft.topic) ?? 0, draft.unitSaid ? unitStrength : 0);
  if (draft.needsTopic && strength < leastTopic) return undefined;
  // A far-fetched reading ("sixty two" for 62,000) stays behind the plain one even where its topic is spoken of.
  const gained = draft.weight + (1 - draft.weight) * strength * (draft.needsTopic && draft.weight <= 0.12 ? 0.5 : 0.8);
  // Where the words speak of something else, this reading is that much less likely.
  const lost = 1 - Math.max(0, strongest - strength) * (draft.unitSaid ? 0.08 : 0.35);
  return { ...draft, weight: Math.min(0.99, gained * lost) };
}

/** Kinds that tell a topic by themselves when they come first and likely. */
const anchoringKinds: ReadonlySet<string> = new Set(["ratio", "money", "measure", "tire-size", "date-code", "integer"]);
const leastAnchorWeight = 0.62;

export function anchorsOf(spans: readonly WeighedSpan[]): Anchor[] {
  return spans.flatMap((span) => {
    const [best] = span.drafts;
    if (!best?.topic || best.weight < leastAnchorWeight || !anchoringKinds.has(best.kind)) return [];
    return anchoringTopics.has(best.topic) ? [{ at: span.first, topic: best.topic }] : [];
  });
}

/** Topics worth carrying on: those whose numbers come in shorthand several times in a row. */
const anchoringTopics: ReadonlySet<Topic> = new Set(["ratio", "price", "mileage", "thickness", "pressure", "tire"]);

/** One reading for each kind, value and unit; the likelier rule names it. A plain reading beats a repaired one of the same value. */
function mergeAlike<T extends Draft>(drafts: readonly T[]): T[] {
  const byMeaning = new Map<string, T>();
  for (const draft of drafts) {
    const key = `${draft.kind} ${draft.value} ${draft.unit ?? ""}`;
    const known = byMeaning.get(key);
    if (!known || draft.weight > known.weight) byMeaning.set(key, draft);
  }
  return [...byMeaning.values()].toSorted((a, b) => b.weight - a.weight || Number(a.repaired ?? false) - Number(b.repaired ?? false));
}
