import { useState } from "react";
import { type Problem, type RecordingDetail, type SheetColumns, timeLabel } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { SheetColumnsDialog } from "../sheet/sheet-columns-dialog.tsx";
import { type CheckItem, foreignStockNumber } from "./queue.ts";

export interface SheetQueueProps {
  readonly detail: RecordingDetail;
  /** A line of the queue. */
  readonly line: (item: CheckItem, title: string, more: string) => React.ReactNode;
}

/** What the dealer's own record says otherwise, bears out, and tells that nobody spoke; and what its columns are read as. */
export function SheetQueue({ detail, line }: SheetQueueProps) {
  const { denials, supports, silences } = detail.analysis;
  const startOf = new Map(detail.analysis.claims.map(({ id, start }) => [id, start]));
  const said = (claims: readonly string[]) => `said at ${claims.map((id) => timeLabel(startOf.get(id) ?? 0)).join(", ")}`;
  const foreign = foreignStockNumber(detail);
  const hasSheet = detail.stockSheet !== null;
  return (
    <section className="queue-part" aria-label="What the stock sheet says">
      <div className="queue-part-head">
        <h3>The stock sheet</h3>
        {hasSheet ? <ColumnsButton recordingId={detail.summary.id} /> : null}
      </div>
      {hasSheet ? (
        <>
          {foreign === null ? null : (
            <p className="queue-warning">
              The sheet is of stock number {foreign}, and this recording of {detail.summary.stockNumber}. Is it this vehicle's?
            </p>
          )}
          <SheetPart name="Says otherwise" none="It denies nothing that was said." empty={denials.length === 0}>
            {denials.map((denial) =>
              line({ kind: "denial", key: denial.key }, denial.field, `sheet ${denial.sheetValue}, ${said(denial.claims)}`),
            )}
          </SheetPart>
          <SheetPart name="Bears out" none="It bears out nothing that was said." empty={supports.length === 0}>
            {supports.map((support) =>
              line({ kind: "support", key: support.key }, support.topic, `sheet ${support.sheetValue}, ${said(support.claims)}`),
            )}
          </SheetPart>
          <SheetPart name="On it, and not spoken" none="Everything that is understood on it was spoken of." empty={silences.length === 0}>
            {silences.map((silence) => line({ kind: "silence", key: silence.key }, silence.topic, `sheet ${silence.sheetValue}`))}
          </SheetPart>
        </>
      ) : (
        <p className="queue-none">This recording has no stock sheet.</p>
      )}
    </section>
  );
}

interface SheetPartProps {
  readonly name: string;
  readonly none: string;
  readonly empty: boolean;
  readonly children: React.ReactNode;
}

function SheetPart({ name, none, empty, children }: SheetPartProps) {
  return (
    <section aria-label={`The stock sheet: ${name.toLowerCase()}`}>
      <h4 className="queue-sub">{name}</h4>
      {empty ? <p className="queue-none">{none}</p> : <ol className="queue-list">{children}</ol>}
    </section>
  );
}

/** Opens what the sheet's columns are read as; another answer has the recording analysed again. */
function ColumnsButton({ recordingId }: { readonly recordingId: string }) {
  const client = useClient();
  const [sheet, setSheet] = useState<SheetColumns | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const open = () => {
    setProblem(null);
    client.call("stockSheet.columns", { id: recordingId }).then(setSheet, (thrown: unknown) => setProblem(problemOf(thrown)));
  };
  return (
    <>
      <Button weight="quiet" onClick={open}>
        Columns…
      </Button>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {sheet ? <SheetColumnsDialog sheet={sheet} onClose={() => setSheet(null)} onSettled={() => setSheet(null)} /> : null}
    </>
  );
}
