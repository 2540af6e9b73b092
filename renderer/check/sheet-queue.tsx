import { useState } from "react";
import type { Problem, RecordingDetail, SheetColumns } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { SheetColumnsDialog } from "../sheet/sheet-columns-dialog.tsx";
import { leftWords, MatterSign } from "./matter-sign.tsx";
import { type CheckItem, foreignStockNumber } from "./queue.ts";
import { type SheetLine, sheetLines } from "./sheet-lines.ts";

export interface SheetQueueProps {
  readonly detail: RecordingDetail;
  /** A line of the queue. */
  readonly line: (item: CheckItem, title: string, more: string, sign?: React.ReactNode) => React.ReactNode;
  /** What the zone filter keeps back of a part. */
  readonly keptBack: (items: readonly CheckItem[]) => string | null;
}

/** What the dealer's own record says otherwise, bears out, and tells that nobody spoke; and what its columns are read as. */
export function SheetQueue({ detail, line, keptBack }: SheetQueueProps) {
  const { denials, supports, silences } = sheetLines(detail);
  const drawn = ({ item, title, more, disputed, state }: SheetLine) =>
    line(
      item,
      title,
      // A denial's own sign says whether somebody has dealt with it.
      state && disputed ? `${more}; what was said is in dispute` : more,
      state ? <MatterSign state={state} /> : disputed ? disputeSign : undefined,
    );
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
          <SheetPart
            name="Says otherwise"
            left={leftWords(denials.filter(({ state }) => state?.open).length, denials.length)}
            none="It denies nothing that was said."
            empty={denials.length === 0}
            keptBack={keptBack(itemsOf(denials))}
          >
            {denials.map(drawn)}
          </SheetPart>
          <SheetPart
            name="Bears out"
            none="It bears out nothing that was said."
            empty={supports.length === 0}
            keptBack={keptBack(itemsOf(supports))}
          >
            {supports.map(drawn)}
          </SheetPart>
          <SheetPart
            name="On it, and not spoken"
            none="Everything that is understood on it was spoken of."
            empty={silences.length === 0}
            keptBack={keptBack(itemsOf(silences))}
          >
            {silences.map(drawn)}
          </SheetPart>
        </>
      ) : (
        <p className="queue-none">This recording has no stock sheet.</p>
      )}
    </section>
  );
}

const itemsOf = (lines: readonly SheetLine[]): CheckItem[] => lines.map(({ item }) => item);

const disputeSign = (
  <span className="queue-sign" data-open>
    in dispute
  </span>
);

interface SheetPartProps {
  readonly name: string;
  /** How many nobody has dealt with. */
  readonly left?: string;
  readonly none: string;
  readonly empty: boolean;
  readonly keptBack: string | null;
  readonly children: React.ReactNode;
}

function SheetPart({ name, left, none, empty, keptBack, children }: SheetPartProps) {
  return (
    <section aria-label={`The stock sheet: ${name.toLowerCase()}`}>
      <h4 className="queue-sub">
        {name}
        {left ? <span className="queue-left">{left}</span> : null}
      </h4>
      {empty ? <p className="queue-none">{none}</p> : <ol className="queue-list">{children}</ol>}
      {keptBack === null ? null : <p className="queue-none">{keptBack}</p>}
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
