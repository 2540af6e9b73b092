import {
  type BundleWork,
  decisionLabels,
  type Finding,
  findingSubject,
  gradeLabels,
  groupsThatTakeBoth,
  type MergeDifference,
  type MergeGroup,
  matterName,
  mergeGroups,
  type RecordingDescription,
  type Ruling,
  type SeenNote,
  timeLabel,
  type ZoneSpan,
  zoneLabels,
} from "../../../shared-types/index.ts";
import { cutOut } from "../span-algebra.ts";

/** People's work on one recording, on one of two machines. */
export interface Side {
  readonly description: RecordingDescription;
  readonly work: Pick<BundleWork, "zoneSpans" | "findings" | "rulings" | "seenNotes" | "trustedCaptions" | "captionCorrections" | "edits">;
}

export interface GroupDifferences {
  readonly group: MergeGroup;
  readonly takesBoth: boolean;
  readonly differences: MergeDifference[];
  readonly clashes: string[];
}

/** What stands otherwise on the two sides, group by group; groups that are alike are left out. */
export function differencesBetween(mine: Side, theirs: Side): GroupDifferences[] {
  const of: Record<MergeGroup, () => MergeDifference[]> = {
    description: () => descriptionDifferences(mine.description, theirs.description),
    zones: () => zoneDifferences(mine, theirs),
    findings: () => findingDifferences(mine, theirs),
    rulings: () => recordDifferences(mine.work.rulings.map(ruledRow), theirs.work.rulings.map(ruledRow), "ruling"),
    seen: () => recordDifferences(mine.work.seenNotes.map(notedRow), theirs.work.seenNotes.map(notedRow), "note"),
    corrections: () =>
      captionDifferences(
        mine.work.captionCorrections.map((row) => ({ ...row, said: `“${row.words}”` })),
        theirs.work.captionCorrections.map((row) => ({ ...row, said: `“${row.words}”` })),
      ),
    trusted: () =>
      captionDifferences(
        mine.work.trustedCaptions.map((row) => ({ ...row, said: "held for speech" })),
        theirs.work.trustedCaptions.map((row) => ({ ...row, said: "held for speech" })),
      ),
  };
  return mergeGroups
    .map((group) => {
      const differences = of[group]();
      const clashes = clashesOf(group, differences, mine, theirs);
      // Where nothing could be added, both would be mine under another name.
      const takesBoth = groupsThatTakeBoth.has(group) && clashes.length < differences.length;
      return { group, takesBoth, differences, clashes };
    })
    .filter(({ differences }) => differences.length > 0);
}

/** Of one stretch of time, one finding or one caption only one wording counts. Rulings and notes are none of these: each stays on record. */
function clashesOf(group: MergeGroup, differences: readonly MergeDifference[], mine: Side, theirs: Side): string[] {
  if (group === "rulings" || group === "seen" || group === "trusted") return [];
  const hidden = group === "zones" ? hiddenSpans(mine.work.zoneSpans, theirs.work.zoneSpans).map(spanPlace) : [];
  return differences.filter((one) => (one.mine !== null && one.theirs !== null) || hidden.includes(one.what)).map(({ what }) => what);
}

/** Spans of theirs under which no moment is left free of mine. */
function hiddenSpans(mine: readonly ZoneSpan[], theirs: readonly ZoneSpan[]): ZoneSpan[] {
  return theirs.filter(
    (span) => mine.reduce<ZoneSpan[]>((left, own) => cutOut(left, own.start, own.end, () => span.id), [span]).length === 0,
  );
}

function spanPlace({ start, end }: ZoneSpan): string {
  return `${timeLabel(start)} to ${timeLabel(end)}`;
}

function descriptionDifferences(mine: RecordingDescription, theirs: RecordingDescription): MergeDifference[] {
  const rows = (side: RecordingDescription) => ({
    Title: side.title,
    "Stock number": side.stockNumber,
    Vehicle: [side.vehicle.year, side.vehicle.name].filter(Boolean).join(" "),
    "Body style": side.vehicle.bodyStyle,
    Drive: side.vehicle.drive,
  });
  const here = rows(mine);
  const there = rows(theirs);
  return (
    (Object.keys(here) as (keyof typeof here)[])
      .filter((what) => here[what] !== there[what])
      // Nobody signs a title.
      .map((what) => ({ what, mine: here[what] || null, theirs: there[what] || null, mineBy: "", theirsBy: "" }))
  );
}

function zoneDifferences(mine: Side, theirs: Side): MergeDifference[] {
  const said = ({ zone, title }: ZoneSpan) => (title ? `${zoneLabels[zone]} “${title}”` : zoneLabels[zone]);
  const same = (a: ZoneSpan, b: ZoneSpan) => a.zone === b.zone && a.start === b.start && a.end === b.end && a.title === b.title;
  const mineOnly = mine.work.zoneSpans.filter((span) => !theirs.work.zoneSpans.some((other) => same(span, other)));
  const theirsOnly = theirs.work.zoneSpans.filter((span) => !mine.work.zoneSpans.some((other) => same(span, other)));
  // Two spans of the very same time are one difference; all else stands by itself.
  const pairs = mineOnly.map((span) => [span, theirsOnly.find(({ start, end }) => start === span.start && end === span.end)] as const);
  const paired = new Set(pairs.map(([, other]) => other));
  return [
    ...pairs.map(([span, other]) => difference(spanPlace(span), span, other, said, mine, theirs)),
    ...theirsOnly.filter((span) => !paired.has(span)).map((span) => difference(spanPlace(span), undefined, span, said, mine, theirs)),
  ];
}

function findingDifferences(mine: Side, theirs: Side): MergeDifference[] {
  const said = ({ zone, seen, grade, note }: Finding) =>
    `${seen} (${gradeLabels[grade].toLowerCase()}, ${zoneLabels[zone].toLowerCase()})${note ? `, “${note}”` : ""}`;
  const there = new Map(theirs.work.findings.map((row) => [row.id, row]));
  const here = new Map(mine.work.findings.map((row) => [row.id, row]));
  const what = (row: Finding) => `${timeLabel(row.start)} ${findingSubject(row)}`;
  return [
    ...mine.work.findings
      .filter((row) => JSON.stringify(row) !== JSON.stringify(there.get(row.id)))
      .map((row) => difference(what(row), row, there.get(row.id), said, mine, theirs)),
    ...theirs.work.findings.filter(({ id }) => !here.has(id)).map((row) => difference(what(row), undefined, row, said, mine, theirs)),
  ];
}

interface Signed {
  readonly id: string;
  readonly initials: string;
}

/** With who did it and, as far as an edit tells, when. What is not there may have been taken away: the last edit that touched it tells by whom. */
function difference<Row extends Signed>(
  what: string,
  here: Row | undefined,
  there: Row | undefined,
  said: (row: Row) => string,
  mine: Side,
  theirs: Side,
): MergeDifference {
  const id = here?.id ?? there?.id ?? "";
  return {
    what,
    mine: here ? said(here) : null,
    theirs: there ? said(there) : null,
    mineBy: by(mine, id, here?.initials),
    theirsBy: by(theirs, id, there?.initials),
  };
}

function by({ work }: Side, id: string, initials: string | undefined): string {
  const last = work.edits.findLast(({ state, changes }) => state === "done" && changes.some((change) => change.id === id));
  const who = initials ?? last?.initials;
  return who === undefined ? "" : signed(who, last?.at);
}

function signed(initials: string, at: string | undefined): string {
  return at === undefined ? initials : `${initials}, ${at.slice(0, 10)} ${at.slice(11, 16)}`;
}

function rulingWords(ruling: Ruling): string {
  const side = ruling.side === null ? "" : ` (${ruling.sideValues[ruling.side] ?? `side ${ruling.side + 1}`})`;
  return `${decisionLabels[ruling.decision]}${side}: ${ruling.reason}`;
}

/** Something that is superseded and never deleted, and of which one at most stands for each subject. */
export interface RecordRow {
  readonly id: string;
  readonly supersededBy: string | null;
}

interface SignedRecord extends RecordRow {
  readonly subject: string;
  readonly topic: string;
  readonly said: string;
  readonly initials: string;
  readonly at: string;
}

const ruledRow = (ruling: Ruling): SignedRecord => ({ ...ruling, subject: ruling.conflictKey, said: rulingWords(ruling) });
const notedRow = (note: SeenNote): SignedRecord => ({
  ...note,
  subject: matterName(note),
  said: `${note.state === "seen" ? "seen" : "open again"}: ${note.reason}`,
});

export function standing<Row extends RecordRow>(rows: readonly Row[], subjectOf: (row: Row) => string): Map<string, Row> {
  return new Map(rows.filter(({ supersededBy }) => supersededBy === null).map((row) => [subjectOf(row), row]));
}

/** Of each subject what stands; a row that only one side has in its history, superseded, is a difference too. */
function recordDifferences(mine: readonly SignedRecord[], theirs: readonly SignedRecord[], noun: string): MergeDifference[] {
  const here = standing(mine, ({ subject }) => subject);
  const there = standing(theirs, ({ subject }) => subject);
  const mineIds = new Set(mine.map(({ id }) => id));
  const unknownHere = theirs.filter(({ id }) => !mineIds.has(id));
  const subjects = new Set([...here.keys(), ...there.keys(), ...unknownHere.map(({ subject }) => subject)]);
  return [...subjects].flatMap((subject) => {
    const a = here.get(subject);
    const b = there.get(subject);
    const history = unknownHere.filter((row) => row.subject === subject && row.supersededBy !== null);
    if (a?.id === b?.id && history.length === 0) return [];
    const past = history.length > 0 ? ` (and ${history.length} earlier)` : "";
    return [
      {
        what: a?.topic ?? b?.topic ?? history[0]?.topic ?? subject,
        mine: a ? a.said : null,
        theirs: b ? `${b.said}${past}` : history.length > 0 ? `no ${noun} stands${past}` : null,
        mineBy: a ? signed(a.initials, a.at) : "",
        theirsBy: b ? signed(b.initials, b.at) : "",
      },
    ];
  });
}

interface CaptionRow {
  readonly caption: number;
  readonly initials: string;
  readonly said: string;
}

function captionDifferences(mine: readonly CaptionRow[], theirs: readonly CaptionRow[]): MergeDifference[] {
  const here = new Map(mine.map((row) => [row.caption, row]));
  const there = new Map(theirs.map((row) => [row.caption, row]));
  return [...new Set([...here.keys(), ...there.keys()])]
    .filter((caption) => here.get(caption)?.said !== there.get(caption)?.said)
    .toSorted((a, b) => a - b)
    .map((caption) => ({
      what: `Caption ${caption + 1}`,
      mine: here.get(caption)?.said ?? null,
      theirs: there.get(caption)?.said ?? null,
      mineBy: here.get(caption)?.initials ?? "",
      theirsBy: there.get(caption)?.initials ?? "",
    }));
}
