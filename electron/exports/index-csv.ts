import { stringify } from "csv-stringify/sync";
import { type ConditionIndex, type ToldMoment, timeLabel, valueLabel, zoneLabels } from "../../shared-types/index.ts";
import { bothHoldWords } from "./both-hold.ts";
import { openMark, stanceWords } from "./claim-standing.ts";
import { denialWords, notAnalyzed, openWords, publicationWords } from "./publication-words.ts";

const columns = [
  "kind",
  "start",
  "start_seconds",
  "end_seconds",
  "zone",
  "component",
  "part",
  "position",
  "attribute",
  "value",
  "unit",
  "stance",
  "grade",
  "status",
  "text",
  "note",
] as const;
type Row = Partial<Record<(typeof columns)[number], string | number>>;

/**
 * The condition index as one table: a row that says how far it stands, then one for each chapter, finding, claim and conflict (RFC 4180: CRLF, quotes doubled), with a byte
 * order mark because spreadsheets guess the encoding without one. Cells that a spreadsheet would run as a formula are defused.
 */
export function indexCsv(index: ConditionIndex): string {
  const open = index.conflicts.filter(({ state }) => state === "open").length;
  const rows: Row[] = [
    {
      kind: "standing",
      status: index.analysisVersion === 0 ? "not analyzed" : open > 0 ? `${open} open` : "none open",
      text: publicationWords(index.published),
      note:
        index.analysisVersion === 0 ? notAnalyzed : [open > 0 ? openWords(open) : "", denialWords(index.denials)].filter(Boolean).join(" "),
    },
    ...index.chapters.map(
      (chapter): Row => ({
        kind: "chapter",
        ...moment(chapter),
        zone: zoneLabels[chapter.zone],
        text: chapter.title,
        status: chapter.openConflicts ? `${chapter.openConflicts} open` : chapter.accepted ? "accepted" : "proposed",
      }),
    ),
    ...index.findings.map(
      (finding): Row => ({
        kind: "finding",
        ...moment(finding),
        zone: zoneLabels[finding.zone],
        component: finding.component,
        part: finding.part ?? "",
        position: finding.position ?? "",
        grade: finding.grade,
        stance: finding.stance ?? "",
        text: finding.seen,
        note: [finding.note, openMark(finding.openConflicts)].filter(Boolean).join(" "),
        status: finding.openConflicts.length > 0 ? `disputed; marked by ${finding.initials}` : `marked by ${finding.initials}`,
      }),
    ),
    ...index.claims.map(
      (claim): Row => ({
        kind: "claim",
        ...moment(claim),
        zone: zoneLabels[claim.zone],
        component: claim.component,
        part: claim.part ?? "",
        position: claim.position ?? "",
        attribute: claim.attribute,
        value: claim.value,
        unit: claim.unit ?? "",
        stance: claim.stance,
        status: claim.status,
        text: claim.quote,
        note: [
          claim.conflictTopics.join("; "),
          claim.ruledOut === null ? "" : `[${claim.ruledOut} in review]`,
          ...bothHoldWords(claim, index.conflicts).map((words) => `[${words}]`),
          openMark(claim.openConflicts),
        ]
          .filter(Boolean)
          .join(" "),
      }),
    ),
    ...index.conflicts.map(
      (conflict): Row => ({
        kind: "conflict",
        ...moment({ start: firstMoment(conflict) }),
        status: conflict.state,
        value: conflict.sides.map((side) => valueLabel(side.value, side.unit, side.attribute)).join(" | "),
        text: conflict.topic,
        note: conflict.ruling ? `${conflict.ruling.decision}: ${conflict.ruling.reason} (${conflict.ruling.initials})` : conflict.why,
      }),
    ),
    ...index.denials.map(
      (denial): Row => ({
        kind: "stock sheet",
        ...moment({ start: Math.min(...denial.moments.map((at) => at.start)) }),
        status: "denied",
        value: denial.sheetValue,
        text: denial.field,
        note: told(denial.why, denial.moments),
      }),
    ),
    ...index.supports.map(
      (support): Row => ({
        kind: "stock sheet",
        ...moment({ start: Math.min(...support.moments.map((at) => at.start)) }),
        status: "borne out",
        value: support.sheetValue,
        text: support.field,
        note: told(support.why, support.moments),
      }),
    ),
    ...index.unspoken.map(
      (fact): Row => ({ kind: "stock sheet", status: "not spoken", value: fact.sheetValue, text: fact.field, note: fact.why }),
    ),
  ];
  return stringify(rows, { header: true, columns: [...columns], bom: true, record_delimiter: "windows", escape_formulas: true });
}

/** Why, with every doubt and dispute of the claims behind it. */
function told(why: string, moments: readonly ToldMoment[]): string {
  const doubts = [...new Set(moments.map(({ stance }) => stanceWords(stance)).filter(Boolean))];
  const topics = [...new Set(moments.flatMap(({ openConflicts }) => openConflicts))];
  return [why, doubts.length > 0 ? `(${doubts.join(", ")})` : "", openMark(topics)].filter(Boolean).join(" ");
}

function moment({ start, end }: { start: number; end?: number }): Row {
  return { start: timeLabel(start), start_seconds: start.toFixed(3), ...(end === undefined ? {} : { end_seconds: end.toFixed(3) }) };
}

function firstMoment(conflict: ConditionIndex["conflicts"][number]): number {
  return Math.min(...conflict.sides.flatMap((side) => side.moments.map((at) => at.start)));
}
