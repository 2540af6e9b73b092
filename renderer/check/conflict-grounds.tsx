import type { Conflict, RecordingDetail } from "../../shared-types/index.ts";
import { sideLetter } from "../shared/claim-words.ts";
import { sheetFieldsAbout } from "./queue.ts";
import { TiresToScale } from "./tires-to-scale.tsx";
import "./conflict-grounds.css";

export interface ConflictGroundsProps {
  readonly conflict: Conflict;
  readonly detail: RecordingDetail;
  readonly pair: readonly [number, number];
}

/** Why the sides cannot all hold: the rule, the standard with its working, the stock sheet, and tires drawn to scale. */
export function ConflictGrounds({ conflict, detail, pair }: ConflictGroundsProps) {
  const tires = pair.flatMap((index) => {
    const side = conflict.sides[index];
    return side ? [{ letter: sideLetter(index), value: side.value }] : [];
  });
  return (
    <div className="grounds" data-settled={detail.openConflictKeys.includes(conflict.key) ? undefined : true}>
      <section aria-labelledby="grounds-why">
        <h3 id="grounds-why">Why this is a conflict</h3>
        {conflict.standard ? (
          <>
            <p>{conflict.standard.name}</p>
            <p className="grounds-working">{conflict.standard.working}</p>
            <p className="small soft">Source: {conflict.standard.source}</p>
          </>
        ) : (
          <p>Two claims about the same part of the same vehicle, compared as they were said.</p>
        )}
        <p className="small soft">
          Rule: {conflict.rule.replaceAll("-", " ")}. Weight {conflict.weight} of 100.
        </p>
      </section>
      <SheetPart conflict={conflict} detail={detail} />
      <TiresToScale tires={tires} />
    </div>
  );
}

function SheetPart({
  conflict,
  detail: { stockSheet, sheetMeanings, analysis },
}: {
  readonly conflict: Conflict;
  readonly detail: RecordingDetail;
}) {
  const claims = new Set(conflict.sides.flatMap((side) => side.claims));
  const denials = analysis.denials.filter((denial) => denial.claims.some((id) => claims.has(id)));
  const supports = analysis.supports.filter((support) => support.claims.some((id) => claims.has(id)));
  // A column that was left out says nothing of a claim, however its name reads.
  const read = Object.entries(stockSheet ?? {}).filter(([field]) => sheetMeanings === null || sheetMeanings[field] !== null);
  const about = sheetFieldsAbout(conflict.topic, Object.fromEntries(read));
  return (
    <section aria-labelledby="grounds-sheet">
      <h3 id="grounds-sheet">The stock sheet</h3>
      {stockSheet === null ? <p className="soft">This recording has no stock sheet.</p> : null}
      {stockSheet !== null && about.length === 0 && denials.length + supports.length === 0 ? (
        <p className="soft">Says nothing about this.</p>
      ) : null}
      {about.length > 0 ? (
        <dl className="sheet-fields">
          {about.map(([field, value]) => (
            <div key={field}>
              <dt>{field}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      ) : null}
      {[...denials, ...supports].map(({ id, why }) => (
        <p key={id} className="small">
          {why}
        </p>
      ))}
      {stockSheet !== null ? (
        <details>
          <summary>The whole sheet</summary>
          <dl className="sheet-fields">
            {Object.entries(stockSheet).map(([field, value]) => (
              <div key={field}>
                <dt>{field}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </details>
      ) : null}
    </section>
  );
}
