import type { Analysis, CoverageQuestion, SpokenPromise, StockSheetDenial } from "./analysis.ts";
import { promiseLabels } from "./labels.ts";
import { openDenials } from "./misheard.ts";
import type { LapSpan, Ruling } from "./recording.ts";
import type { MatterKind, MatterRef, SeenNote } from "./seen-note.ts";

/** A matter with the words that name it. */
export interface Matter extends MatterRef {
  readonly topic: string;
  readonly told: string;
}

/** The name of a matter within its recording. */
export function matterName({ about, key }: MatterRef): string {
  return `${about}:${key}`;
}

/** A view shorter than this shows next to nothing (common practice). */
const shortestViewSeconds = 5;

/** What was never shown or said, less the zones that a person has meanwhile marked as shown. */
export function unansweredQuestions<Question extends Pick<CoverageQuestion, "about" | "key">>(
  questions: readonly Question[],
  spans: readonly Pick<LapSpan, "zone" | "start" | "end">[],
): Question[] {
  const marked = new Map<string, number>();
  for (const span of spans) marked.set(span.zone, (marked.get(span.zone) ?? 0) + span.end - span.start);
  return questions.filter(({ about, key }) => about !== "zone" || (marked.get(key.replace("zone:", "")) ?? 0) < shortestViewSeconds);
}

export function denialMatter({ key, field, sheetValue, why }: StockSheetDenial): Matter {
  return { about: "denial", key, topic: `${field}: the stock sheet says ${sheetValue}`, told: why };
}

export function promiseMatter({ key, kind, quote, why }: SpokenPromise): Matter {
  return { about: "promise", key, topic: `“${quote}”`, told: `${promiseLabels[kind]}. ${why}` };
}

export function questionMatter({ key, topic, question }: CoverageQuestion): Matter {
  return { about: "question", key, topic, told: question };
}

/** Everything that a note can be made on; the same words said twice are one matter. */
export function mattersOf({ denials, promises, questions }: Pick<Analysis, "denials" | "promises" | "questions">): Matter[] {
  const matters = [...denials.map(denialMatter), ...promises.map(promiseMatter), ...questions.map(questionMatter)];
  return [...new Map(matters.map((matter) => [matterName(matter), matter])).values()];
}

/** The note that stands on each matter, by the matter's name. */
export function standingNotes(notes: readonly SeenNote[]): Map<string, SeenNote> {
  return new Map(notes.filter(({ supersededBy }) => supersededBy === null).map((note) => [matterName(note), note]));
}

/** What decides whether a matter is open. */
export interface MatterGround {
  readonly analysis: Pick<Analysis, "denials" | "promises" | "questions" | "conflicts">;
  /** Zone spans of people; a lap's own, less what is only proposed, will do. */
  readonly spans: readonly Pick<LapSpan, "zone" | "start" | "end">[];
  readonly rulings: readonly Ruling[];
  readonly seenNotes: readonly SeenNote[];
}

/**
 * What nobody has dealt with: no note says that it was seen, no ruling has taken out every claim that a denial is about, and no person has
 * marked the zone that a question asks for.
 */
export function openMatters({ analysis, spans, rulings, seenNotes }: MatterGround): Matter[] {
  const standing = standingNotes(seenNotes);
  const waiting = mattersOf({
    denials: openDenials(analysis.denials, analysis.conflicts, rulings),
    promises: analysis.promises,
    questions: unansweredQuestions(analysis.questions, spans),
  });
  return waiting.filter((matter) => standing.get(matterName(matter))?.state !== "seen");
}

/** How many of each kind. */
export function matterCounts(matters: readonly MatterRef[]): Record<MatterKind, number> {
  const of = (kind: MatterKind) => matters.filter(({ about }) => about === kind).length;
  return { denial: of("denial"), promise: of("promise"), question: of("question") };
}

const matterWords = {
  denial: ["denial by the stock sheet", "denials by the stock sheet"],
  promise: ["promise", "promises"],
  question: ["question", "questions"],
} as const satisfies Record<MatterKind, readonly [string, string]>;

/** "1 denial by the stock sheet, 3 promises and 2 questions"; empty where there is none. */
export function matterCountWords(counts: Readonly<Record<MatterKind, number>>): string {
  const parts = (Object.keys(matterWords) as MatterKind[]).flatMap((kind) => {
    const count = counts[kind];
    return count > 0 ? [`${count} ${matterWords[kind][count === 1 ? 0 : 1]}`] : [];
  });
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
