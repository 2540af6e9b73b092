import {
  type ChapterGranularity,
  type ConditionIndex,
  claimSubject,
  findingSubject,
  gradeLabels,
  type RecordingDetail,
  timeLabel,
  valueLabel,
} from "../../../shared-types/index.ts";
import { bothHoldWords } from "../both-hold.ts";
import { openMark, stanceWords } from "../claim-standing.ts";
import { conditionIndex } from "../condition-index.ts";
import { chapterMarks, markedTitle } from "./chapter-marks.ts";

/** A chapter as the formats write it. Zones cover the recording in order; what lies inside one neither leaves it nor overlaps its neighbours. */
export interface ChapterEntry {
  /** Seconds. */
  readonly start: number;
  readonly end: number;
  /** With the mark of every open conflict that touches it. */
  readonly title: string;
  readonly inside: readonly InnerEntry[];
  /** Nobody drew or accepted it yet. A title stays clear of that for players; each format says it where it has room for a remark. */
  readonly proposed?: boolean;
}

export interface InnerEntry {
  readonly start: number;
  readonly end: number;
  readonly title: string;
}

/** A flat chapter: what formats without nesting write. */
export type FlatChapter = InnerEntry;

/**
 * Zones as chapters and, where asked for, what people found and what was claimed inside them. Proposals that nobody accepted and claims
 * that a ruling overruled stay out; doubt and disputes are said in the title.
 */
export function chapterEntries(detail: RecordingDetail, granularity: ChapterGranularity): ChapterEntry[] {
  const marks = granularity === "zones" ? [] : innerMarks(conditionIndex(detail, ""), granularity);
  return chapterMarks(detail).map((chapter) => ({
    start: chapter.start,
    end: chapter.end,
    title: markedTitle(chapter),
    proposed: !chapter.accepted,
    inside: besideOneAnother(
      marks.filter((mark) => mark.start >= chapter.start && mark.start < chapter.end),
      chapter.end,
    ),
  }));
}

interface Mark {
  readonly start: number;
  readonly title: string;
}

function innerMarks({ findings, claims, conflicts }: ConditionIndex, granularity: "findings" | "everything"): Mark[] {
  const found = findings.map((finding) => ({
    start: finding.start,
    title: [
      `${sentence(findingSubject(finding))}: ${finding.seen} (${gradeLabels[finding.grade].toLowerCase()})`,
      finding.stance && bracketed(stanceWords(finding.stance)),
      openMark(finding.openConflicts),
    ]
      .filter(Boolean)
      .join(" "),
  }));
  if (granularity === "findings") return inOrder(found);
  const told = new Set<string>();
  const said = claims
    .filter(({ status }) => status !== "overruled")
    .flatMap((claim) => {
      const title = `${sentence(claimSubject(claim))}: ${valueLabel(claim.value, claim.unit, claim.attribute)}${caveat(claim, conflicts)}`;
      if (told.has(title)) return [];
      told.add(title);
      return [{ start: claim.start, title }];
    });
  return inOrder([...found, ...said]);
}

/** The doubt it was said with, and the dispute it is in: one never hides the other. */
function caveat(claim: ConditionIndex["claims"][number], conflicts: ConditionIndex["conflicts"]): string {
  const { status, stance, openConflicts } = claim;
  const marks = [
    bracketed(stanceWords(stance)),
    openMark(openConflicts),
    status === "denied" ? "[the stock sheet says otherwise]" : "",
    ...bothHoldWords(claim, conflicts).map((words) => `[${words}]`),
  ];
  return marks
    .filter(Boolean)
    .map((mark) => ` ${mark}`)
    .join("");
}

const bracketed = (words: string): string => (words ? `(${words})` : "");

function inOrder(marks: readonly Mark[]): Mark[] {
  return marks.toSorted((a, b) => a.start - b.start);
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Each ends where the next begins; what begins at one moment is one entry. */
function besideOneAnother(marks: readonly Mark[], end: number): InnerEntry[] {
  const joined: { start: number; title: string }[] = [];
  for (const mark of marks) {
    const last = joined.at(-1);
    if (last && milliseconds(last.start) === milliseconds(mark.start)) last.title = `${last.title}; ${mark.title}`;
    else joined.push({ ...mark });
  }
  return joined.map((mark, position) => ({ ...mark, end: joined[position + 1]?.start ?? end }));
}

export function milliseconds(seconds: number): number {
  return Math.round(seconds * 1000);
}

/** "Proposed by the analysis, accepted by nobody yet: 0:00 Opening, 1:40 Cabin."; nothing where every one was drawn or accepted. */
export function proposedWords(entries: readonly ChapterEntry[]): string {
  const proposed = entries.filter((entry) => entry.proposed === true);
  if (proposed.length === 0) return "";
  const each = proposed.map(({ start, title }) => `${timeLabel(start)} ${title.replaceAll(/\s+/g, " ").trim()}`).join(", ");
  return `Proposed by the analysis, accepted by nobody yet: ${each}.`;
}

/** The chapters one after another: a zone up to the first thing inside it, then each thing, named after its zone. */
export function flatChapters(entries: readonly ChapterEntry[]): FlatChapter[] {
  return entries.flatMap(({ start, end, title, inside }): FlatChapter[] => {
    const [first] = inside;
    if (!first) return [{ start, end, title }];
    const inner = inside.map((entry) => ({ ...entry, title: `${title}: ${entry.title}` }));
    return milliseconds(first.start) === milliseconds(start) ? inner : [{ start, end: first.start, title }, ...inner];
  });
}
