import {
  type ConditionIndex,
  cautions,
  findingSubject,
  gradeLabels,
  type IndexField,
  type RecordingDetail,
  type TemplateFault,
  timeLabel,
  zoneLabels,
} from "../../../shared-types/index.ts";
import { chapterMarks, markedTitle } from "../chapters/chapter-marks.ts";
import { openMark, stanceWords } from "../claim-standing.ts";
import { conditionIndex } from "../condition-index.ts";
import { settledLines } from "../corrections/settled-lines.ts";
import { denialWords, lastPublication, notAnalyzed, publicationWords } from "../publication-words.ts";
import { readTemplate } from "./read-template.ts";

export interface FilledTemplate {
  /** Null where the template cannot be filled in. */
  readonly text: string | null;
  readonly faults: readonly TemplateFault[];
}

/**
 * A template filled in from a recording as it stands. Open conflicts, what the stock sheet denies and the cautions are in every text: a template that does not place
 * them has them at its end. Pure: the same recording and time give the same text.
 * @param writtenAt ISO 8601, UTC.
 */
export function fillTemplate(template: string, detail: RecordingDetail, writtenAt: string): FilledTemplate {
  const { pieces, faults } = readTemplate(template);
  if (faults.length > 0) return { text: null, faults };
  const index = conditionIndex(detail, writtenAt);
  const values = fieldValues(detail, index);
  const placed = new Set(pieces.flatMap((piece) => ("field" in piece ? [piece.field] : [])));
  // "No conflict is open" beside what the dealer's own record denies would hide it: the denials stand right after, unless placed by hand.
  const denied = placed.has("sheet-denials") ? "" : denialWords(index.denials);
  const besideOpen = pieces.findLastIndex((piece) => "field" in piece && piece.field === "open-conflicts");
  const text = pieces
    .map((piece, position) => {
      const words = "field" in piece ? values[piece.field]() : piece.text;
      return position === besideOpen && denied !== "" ? `${words}\n${denied}` : words;
    })
    .join("");
  const published = publicationWords(lastPublication(detail));
  const closing = [
    ...(placed.has("open-conflicts") || detail.openConflictKeys.length === 0
      ? []
      : [`Not yet checked; ask before you rely on it:\n${values["open-conflicts"]()}`]),
    ...(placed.has("open-conflicts") || denied === "" ? [] : [denied]),
    ...(index.analysisVersion === 0 && !placed.has("open-conflicts") ? [notAnalyzed] : []),
    ...(published !== "" && detail.openConflictKeys.length > 0 ? [published] : []),
    ...(placed.has("cautions") ? [] : [values.cautions()]),
  ];
  const whole = closing.length === 0 ? text : `${[text.trimEnd(), ...closing].filter((part) => part !== "").join("\n\n")}\n`;
  return { text: whole, faults: [] };
}

function fieldValues(detail: RecordingDetail, index: ConditionIndex): Record<IndexField, () => string> {
  const { recording } = index;
  const { vehicle } = recording;
  const open = index.conflicts.filter(({ state }) => state === "open");
  const marks = chapterMarks(detail);
  const openAt = openTopics(detail);
  return {
    title: () => oneLine(recording.title),
    "stock-number": () => oneLine(recording.stockNumber) || "not given",
    vehicle: () => oneLine([vehicle.year, vehicle.name].filter(Boolean).join(" ")) || "vehicle not named",
    "body-style": () => vehicle.bodyStyle,
    "drive-side": () => (vehicle.drive === "left-hand" ? "left-hand drive" : "right-hand drive"),
    length: () => timeLabel(recording.duration),
    "video-file": () => oneLine(recording.videoFile ?? "") || "no video",
    chapters: () =>
      lines(
        marks.map((mark, place) => `${timeLabel(place === 0 ? 0 : mark.start)} ${oneLine(markedTitle(mark))}`),
        "No chapters.",
      ),
    findings: () =>
      lines(
        index.findings.map((finding) => {
          const note = finding.note.trim() === "" ? "" : ` (${oneLine(finding.note)})`;
          const disputed = openAt.filter(
            ({ component, position }) =>
              component === finding.component && (position === null || finding.position === null || position === finding.position),
          );
          const topics = new Set([...disputed.map(({ topic }) => topic), ...finding.openConflicts]);
          const marks = [bracketed(stanceWords(finding.stance)), openMark([...topics])].filter(Boolean).map((mark) => ` ${mark}`);
          return `${timeLabel(finding.start)} ${capital(findingSubject(finding))}: ${oneLine(finding.seen)}, ${gradeLabels[finding.grade].toLowerCase()}, ${zoneLabels[finding.zone].toLowerCase()}${note}${marks.join("")}`;
        }),
        "No findings were accepted.",
      ),
    settled: () => lines(settledLines(detail, "topic"), "Nothing that was said had to be put right."),
    "open-conflicts": () =>
      lines(
        open.map(({ topic, sides }) => {
          const moments = sides.flatMap((side) => side.moments.map(({ start }) => start)).toSorted((a, b) => a - b);
          return `${capital(topic)} (${[...new Set(moments.map(timeLabel))].join(", ")})`;
        }),
        index.analysisVersion === 0 ? notAnalyzed : "No conflict is open.",
      ),
    "sheet-denials": () =>
      lines(
        index.denials.map(({ why }) => oneLine(why)),
        "Nothing that was said is denied by the stock sheet.",
      ),
    counts: () =>
      [
        counted(marks.length, "chapter"),
        counted(detail.findings.length, "finding"),
        `${counted(index.conflicts.length - open.length, "conflict")} settled`,
        `${open.length} open`,
      ].join(", "),
    cautions: () => Object.values(cautions).join("\n"),
    "written-on": () => index.writtenAt.slice(0, 10),
  };
}

/** What parts the open conflicts are about, so that a finding on one of them is marked. */
function openTopics({ analysis, openConflictKeys }: RecordingDetail) {
  const claims = new Map(analysis.claims.map((claim) => [claim.id, claim]));
  return analysis.conflicts
    .filter(({ key }) => openConflictKeys.includes(key))
    .flatMap(({ topic, sides }) =>
      sides.flatMap((side) =>
        side.claims.flatMap((id) => {
          const claim = claims.get(id);
          return claim ? [{ topic, component: claim.component, position: claim.position }] : [];
        }),
      ),
    );
}

const bracketed = (words: string): string => (words ? `(${words})` : "");

function lines(rows: readonly string[], none: string): string {
  return rows.length === 0 ? none : rows.join("\n");
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** A title with a line break in it must not pass for a line of the list. */
function oneLine(words: string): string {
  return words.replaceAll(/\s+/g, " ").trim();
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
