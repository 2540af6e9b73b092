import { type Conflict, type RecordingDetail, timeLabel, valueLabel, zoneLabels } from "../../shared-types/index.ts";

/** What a person wants to know after a run without a window: zones, claims, repairs, and each conflict with its quotes and times. */
export function summaryLines({ summary, analysis, lap, sheetMeanings }: RecordingDetail): string[] {
  const { claims, repairs, conflicts, denials, supports, silences, doubtful, remarks } = analysis;
  const unsure = repairs.filter((repair) => !repair.sure).length;
  return [
    `${summary.title}: ${timeLabel(summary.duration)}, ${summary.counts.captions} captions`,
    `Zones (${lap.length}): ${lap.map((span) => `${timeLabel(span.start)} ${zoneLabels[span.zone]}`).join(", ")}`,
    `Claims: ${claims.length} (${claims.filter((claim) => claim.stance !== "stated").length} hedged or reported)`,
    `Repairs: ${repairs.length}${unsure ? ` (${unsure} unsure)` : ""}${repairs.length ? `: ${repairs.map(({ heard, meant }) => `“${heard}” = ${meant}`).join(", ")}` : ""}`,
    ...doubtful.map(({ caption, why }) => `Doubtful caption ${caption + 1}: ${why}`),
    `Conflicts: ${conflicts.length}`,
    ...conflicts.flatMap((conflict) => conflictLines(conflict, claims)),
    ...(denials.length ? [`The stock sheet denies: ${denials.length}`, ...denials.map((denial) => `  ${denial.why}`)] : []),
    ...(supports.length ? [`The stock sheet bears out: ${supports.length}`, ...supports.map((support) => `  ${support.why}`)] : []),
    ...(silences.length ? [`On the stock sheet, not spoken: ${silences.length}`, ...silences.map((silence) => `  ${silence.why}`)] : []),
    ...leftOut(sheetMeanings),
    ...(remarks.length ? [`Remarks: ${remarks.length}`, ...remarks.map((remark) => `  ${remark.topic}: ${remark.why}`)] : []),
  ];
}

/** Columns of the sheet that no claim was held against: nobody was asked what they mean, or a person left them out. */
function leftOut(meanings: RecordingDetail["sheetMeanings"]): string[] {
  const fields = Object.entries(meanings ?? {}).flatMap(([field, meaning]) => (meaning === null ? [field] : []));
  return fields.length ? [`Columns of the stock sheet left out: ${fields.join(", ")}`] : [];
}

function conflictLines(conflict: Conflict, claims: RecordingDetail["analysis"]["claims"]): string[] {
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  return [
    `  ${conflict.topic} (${conflict.kind}): ${conflict.why}`,
    ...conflict.sides.map((side) => {
      const moments = side.claims.flatMap((id) => byId.get(id) ?? []);
      return `    ${valueLabel(side.value, side.unit, moments[0]?.attribute ?? null)}: ${moments.map((claim) => `${timeLabel(claim.start)} “${claim.quote}”`).join("; ")}`;
    }),
  ];
}
