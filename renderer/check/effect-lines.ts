import { type Conflict, isOverruled, type RecordingDetail } from "../../shared-types/index.ts";
import { sideLetter, sideValues } from "../shared/claim-words.ts";

/** What a conflict, as it stands now, makes of one of its sides. */
export interface EffectLine {
  readonly letter: string;
  readonly value: string;
  /** How the condition index tells it. */
  readonly index: string;
  /** What the Call desk says of it. */
  readonly call: string;
}

type Ground = Pick<RecordingDetail, "analysis" | "rulings" | "openConflictKeys">;

/** For each side, what the index and the Call desk say of it as long as nothing is ruled otherwise: the same rules that those two go by. */
export function effectLines(conflict: Conflict, detail: Ground): EffectLine[] {
  const values = sideValues(conflict, detail.analysis.claims);
  return conflict.sides.map(({ claims }, side) => ({
    letter: sideLetter(side),
    value: values[side] ?? "",
    ...effectOf(conflict, side, claims, detail),
  }));
}

function effectOf(conflict: Conflict, side: number, claims: readonly string[], detail: Ground): Pick<EffectLine, "index" | "call"> {
  const { analysis, rulings, openConflictKeys } = detail;
  if (openConflictKeys.includes(conflict.key)) return { index: "marked as in dispute", call: "no sentence: it is being checked" };
  const ruling = rulings.find(({ conflictKey, supersededBy }) => conflictKey === conflict.key && supersededBy === null);
  if (ruling && isOverruled(ruling, side)) {
    return ruling.decision === "recogniser-error"
      ? { index: `marked as misheard; the captions say “${ruling.rightWords ?? ""}”`, call: "no sentence: it was misheard" }
      : { index: "marked as not so: overruled", call: "no sentence: it was overruled" };
  }
  const stands = ruling?.decision === "both-hold" ? "told, with your reason" : "told, as standing after review";
  const other = analysis.conflicts.find(
    ({ key, sides }) =>
      key !== conflict.key && openConflictKeys.includes(key) && sides.some((one) => one.claims.some((id) => claims.includes(id))),
  );
  if (other) return { index: `marked as in dispute: ${other.topic}`, call: `no sentence while “${other.topic}” is open` };
  const denied = analysis.denials.find((denial) => denial.claims.some((id) => claims.includes(id)));
  if (denied) return { index: "marked: the stock sheet says otherwise", call: `no sentence: the sheet says ${denied.sheetValue}` };
  const said = analysis.claims.filter(({ id }) => claims.includes(id));
  const firm = said.some(({ stance, time }) => stance === "stated" && time === "today");
  return {
    index: firm ? stands : `${stands}, and with its doubt`,
    call: firm ? "told as a fact" : "no sentence: it was not said flat out",
  };
}
