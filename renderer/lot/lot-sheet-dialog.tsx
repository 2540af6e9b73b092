import { useState } from "react";
import { type LotMatch, lostFields, type Problem, type SheetColumns } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { FileSlot } from "../library/file-slot.tsx";
import { acceptOf } from "../library/sort-files.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import { Modal } from "../shared/dialog.tsx";
import { Tick } from "../shared/tick.tsx";
import { isAsked } from "../sheet/sheet-answers.ts";
import { SheetColumnsDialog } from "../sheet/sheet-columns-dialog.tsx";
import "./lot.css";

export interface LotSheetDialogProps {
  readonly onClose: () => void;
  readonly onTaken: () => void;
}

/** A sheet of the whole lot against all recordings at once, by stock number. */
export function LotSheetDialog({ onClose, onTaken }: LotSheetDialogProps) {
  const client = useClient();
  const [file, setFile] = useState<File | null>(null);
  const [offered, setOffered] = useState<string | null>(null);
  const [asking, setAsking] = useState<SheetColumns | null>(null);
  const [match, setMatch] = useState<LotMatch | null>(null);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [taken, setTaken] = useState<number | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);

  const held = async (stockSheet: string) => {
    try {
      const found = await client.call("lot.match", { stockSheet });
      setMatch(found);
      // What reads the same already need not be given again; where the former sheet told more, a person says so.
      setLeft(new Set(found.matched.filter((row) => row.standing === "same" || lostFields(row) > 0).map(({ recordingId }) => recordingId)));
    } catch (thrown) {
      setProblem(problemOf(thrown));
    }
  };
  const choose = async (chosen: File | null) => {
    setFile(chosen);
    setMatch(null);
    setTaken(null);
    setProblem(null);
    if (!chosen) return;
    try {
      const { id } = await client.offerFile(chosen);
      setOffered(id);
      const sheet = await client.call("stockSheet.look", { stockSheet: id });
      if (sheet.columns.some(isAsked)) setAsking(sheet);
      else await held(id);
    } catch (thrown) {
      setProblem(problemOf(thrown));
    }
  };
  const askAgain = async () => {
    if (!offered) return;
    try {
      setAsking(await client.call("stockSheet.look", { stockSheet: offered }));
    } catch (thrown) {
      setProblem(problemOf(thrown));
    }
  };
  const ids = match?.matched.map(({ recordingId }) => recordingId).filter((id) => !left.has(id)) ?? [];
  const take = () => {
    if (!offered || ids.length === 0) return;
    client.call("lot.take", { stockSheet: offered, recordingIds: ids }).then(
      ({ recordings }) => {
        setTaken(recordings);
        onTaken();
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };

  return (
    <Modal
      title="Match a sheet of the whole lot"
      open
      onClose={onClose}
      wide
      foot={
        <>
          <span className="soft import-state" role="status">
            {taken === null
              ? ""
              : taken === 1
                ? "One recording has its row now and is read anew."
                : `${taken} recordings have their rows now and are read anew.`}
          </span>
          <Button weight="main" onClick={take} disabled={ids.length === 0 || taken !== null}>
            {ids.length === 0
              ? "Give the rows"
              : `Give ${counted(ids.length, "row", "rows")} to ${ids.length === 1 ? "its recording" : "their recordings"}`}
          </Button>
        </>
      }
    >
      <FileSlot
        label="Lot sheet"
        hint="CSV with a row for each vehicle and a column of stock numbers."
        accept={acceptOf.stockSheet}
        file={file}
        onFile={(chosen) => void choose(chosen)}
        problem={problem}
        more={
          <Button weight="quiet" onClick={() => void askAgain()} disabled={!offered}>
            Columns…
          </Button>
        }
      />
      {match ? <MatchLists match={match} left={left} onLeft={setLeft} locked={taken !== null} /> : null}
      {asking ? (
        <SheetColumnsDialog
          sheet={asking}
          onClose={() => setAsking(null)}
          onSettled={() => {
            setAsking(null);
            setProblem(null);
            if (offered) void held(offered);
          }}
        />
      ) : null}
    </Modal>
  );
}

interface MatchListsProps {
  readonly match: LotMatch;
  readonly left: ReadonlySet<string>;
  readonly onLeft: (left: ReadonlySet<string>) => void;
  readonly locked: boolean;
}

function MatchLists({ match, left, onLeft, locked }: MatchListsProps) {
  const { matched, rowsLeft, recordingsLeft, twice, unreadable } = match;
  return (
    <>
      <p role="status">
        {matched.length} of {counted(match.rows, "row", "rows")} matched; {rowsLeft.length} without a recording,{" "}
        {counted(recordingsLeft.length + unreadable.length, "recording", "recordings")} without a row,{" "}
        {counted(twice.length, "number", "numbers")} twice.
      </p>
      {matched.length > 0 ? (
        <section aria-label="Matched">
          <h3>Matched</h3>
          <ul className="lot-lines">
            {matched.map(({ recordingId, title, stockNumber, line, standing, changes }) => (
              <li key={recordingId}>
                <Tick
                  on={!left.has(recordingId)}
                  disabled={locked}
                  onChange={(on) => onLeft(on ? new Set([...left].filter((id) => id !== recordingId)) : new Set([...left, recordingId]))}
                >
                  <strong>{stockNumber}</strong> {title}, line {line}
                  <span className="merge-by">{standingWords(standing, changes)}</span>
                </Tick>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      <Leftovers
        name="Numbers that stand twice; none of their rows is taken"
        rows={twice.map(({ stockNumber, lines }) => `${stockNumber}: lines ${lines.join(", ")}`)}
      />
      <Leftovers name="Rows that cannot be read" rows={unreadable.map(({ title, why }) => `${title}: ${why}`)} />
      <Leftovers name="Rows without a recording" rows={rowsLeft.map(({ line, cells }) => `line ${line}: ${cells}`)} />
      <Leftovers
        name="Recordings without a row"
        rows={recordingsLeft.map(({ title, stockNumber, why }) => `${stockNumber ? `${stockNumber}, ` : ""}${title}: ${why}`)}
      />
    </>
  );
}

function standingWords(standing: LotMatch["matched"][number]["standing"], changes: LotMatch["matched"][number]["changes"]): string {
  if (standing === "first") return "has no sheet so far";
  if (standing === "same") return "has this very row already";
  const lost = lostFields({ changes });
  const warning =
    lost > 0 ? `tick it to lose ${counted(lost, "field", "fields")} of its former sheet: ` : "in the place of its former sheet: ";
  return `${warning}${changes.map(({ field, before, after }) => `${field} ${before ?? "none"} → ${after ?? "none"}`).join("; ")}`;
}

/** So many are named; of a lot of a thousand rows nobody reads every one. */
const mostNamed = 60;

function Leftovers({ name, rows }: { readonly name: string; readonly rows: readonly string[] }) {
  if (rows.length === 0) return null;
  return (
    <details open={rows.length <= 6}>
      <summary>
        {name} ({rows.length})
      </summary>
      <ul className="lot-lines" aria-label={name}>
        {rows.slice(0, mostNamed).map((row) => (
          <li key={row} className="small">
            {row}
          </li>
        ))}
        {rows.length > mostNamed ? <li className="small soft">and {rows.length - mostNamed} more</li> : null}
      </ul>
    </details>
  );
}
