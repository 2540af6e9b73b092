import { type ReactNode, useState, useSyncExternalStore } from "react";
import { Button } from "../../shared/button.tsx";
import { recordingPlace } from "../../shared/place.ts";
import { ProblemNote } from "../../shared/problem-note.tsx";
import { keepPlace, placeOfImports } from "../keep-place.ts";
import { KnownDialog } from "../known-dialog.tsx";
import { type ImportRun, isSettled, knownLines, type RunLine } from "./import-run.ts";
import { type LineAct, lineActs, lineShare, lineWords, runWords } from "./line-words.ts";
import "./run-panel.css";

export interface RunPanelProps {
  readonly run: ImportRun;
  /** Opens a failed line's files in the window for one recording, where they can be exchanged. */
  readonly onMend: (line: RunLine) => void;
}

/** What is being imported, a line for each recording; absent while there is nothing to tell. */
export function RunPanel({ run, onMend }: RunPanelProps) {
  const lines = useSyncExternalStore(run.subscribe, run.lines);
  const [asking, setAsking] = useState(false);
  if (lines.length === 0) return null;
  const known = knownLines(lines);
  const open = lines.filter((line) => !isSettled(line)).length;
  return (
    <section className="run" aria-labelledby="run-heading" id="imports" tabIndex={-1}>
      <div className="run-head">
        <h2 id="run-heading">{open > 0 ? "Importing" : "Imported"}</h2>
        <p role="status" className="soft">
          {runWords(lines)}
        </p>
        {open === 0 && known.length > 1 ? (
          <Button weight="main" onClick={() => setAsking(true)}>
            Decide about {known.length} that are here already…
          </Button>
        ) : null}
        {open > 0 ? (
          <Button
            onClick={() => {
              run.cancelAll();
              keepPlace(placeOfImports);
            }}
          >
            Cancel all
          </Button>
        ) : (
          <Button
            weight="quiet"
            onClick={() => {
              run.clear();
              keepPlace(placeOfImports);
            }}
          >
            Clear this list
          </Button>
        )}
      </div>
      {asking ? (
        <KnownDialog
          title={`${known.length} recordings are in the library already`}
          lines={known.map(({ ticket, order, state }) => ({
            key: ticket,
            title: order.title,
            why: state.kind === "failed" ? state.problem.message : "",
          }))}
          otherwise="off the list"
          onClose={() => setAsking(false)}
          onSettled={(meant) => {
            setAsking(false);
            for (const { ticket } of known) {
              if (meant.has(ticket)) run.retry(ticket, true);
              else run.clear(ticket);
            }
            keepPlace(placeOfImports);
          }}
        />
      ) : null}
      <ul className="run-lines" aria-label="Imports">
        {lines.map((line) => (
          <Line key={line.ticket} line={line} run={run} onMend={() => onMend(line)} />
        ))}
      </ul>
    </section>
  );
}

function Line({ line, run, onMend }: { readonly line: RunLine; readonly run: ImportRun; readonly onMend: () => void }) {
  const { state, order, ticket } = line;
  const share = lineShare(state);
  const title = order.title;
  const againWords = state.kind === "failed" && state.problem.code === "stock-number-known" ? "Import it beside it" : "Import it again";
  /** Each act takes its own button away. */
  const act = (change: () => void) => () => {
    change();
    keepPlace(placeOfImports);
  };
  const buttons: Readonly<Record<LineAct, ReactNode>> = {
    cancel: (
      <Button
        key="cancel"
        onClick={act(() => run.cancel(ticket))}
        disabled={state.kind === "cancelling"}
        aria-label={`Cancel the import of ${title}`}
      >
        Cancel
      </Button>
    ),
    again: (
      <Button key="again" onClick={act(() => run.retry(ticket, true))} aria-label={`${againWords}: ${title}`}>
        {againWords}
      </Button>
    ),
    retry: (
      <Button key="retry" onClick={act(() => run.retry(ticket))} aria-label={`Try again: ${title}`}>
        Try again
      </Button>
    ),
    "other-files": (
      <Button key="other-files" onClick={onMend} aria-label={`Other files… for ${title}`}>
        Other files…
      </Button>
    ),
    off: (
      <Button key="off" weight="quiet" onClick={act(() => run.clear(ticket))} aria-label={`Off the list: ${title}`}>
        Off the list
      </Button>
    ),
  };
  return (
    <li className="run-line" data-state={state.kind}>
      <div className="run-what">
        {state.kind === "imported" ? <a href={recordingPlace(state.recordingId, "mark")}>{title}</a> : <strong>{title}</strong>}
        <span className="small soft">{lineWords(state)}</span>
      </div>
      {isSettled(line) ? (
        <span />
      ) : (
        <progress className="run-bar" aria-label={`Import of ${title}`} max={1} {...(share === null ? {} : { value: share })} />
      )}
      <div className="row run-acts">{lineActs(line).map((one) => buttons[one])}</div>
      {state.kind === "failed" ? <ProblemNote problem={state.problem} /> : null}
    </li>
  );
}
