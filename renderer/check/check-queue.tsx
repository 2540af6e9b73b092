import { Toggle } from "@base-ui/react/toggle";
import { ToggleGroup } from "@base-ui/react/toggle-group";
import { type Conflict, promiseLabels, type RecordingDetail, timeLabel } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { asHeading, sideLetter, sideValues } from "../shared/claim-words.ts";
import { type CheckItem, type ConflictFilter, conflictFilters, conflictQueue, openQuestions, sameItem, weightWord } from "./queue.ts";
import { SheetQueue } from "./sheet-queue.tsx";

const filterLabels = { open: "Open", settled: "Settled", all: "All" } as const satisfies Record<ConflictFilter, string>;

export interface CheckQueueProps {
  readonly detail: RecordingDetail;
  readonly filter: ConflictFilter;
  readonly onFilter: (filter: ConflictFilter) => void;
  readonly shown: CheckItem | null;
  readonly onChoose: (item: CheckItem) => void;
  /** Opens the sheet of keys. */
  readonly onKeys: () => void;
}

/** What waits for the reviewer: conflicts by weight, then what is milder, each under its own heading. */
export function CheckQueue({ detail, filter, onFilter, shown, onChoose, onKeys }: CheckQueueProps) {
  const { analysis, openConflictKeys, captions, trustedCaptions } = detail;
  const queue = conflictQueue(analysis.conflicts, openConflictKeys, filter);
  const left = analysis.conflicts.filter((conflict) => openConflictKeys.includes(conflict.key)).length;
  const questions = openQuestions(detail);
  const line = (item: CheckItem, title: string, more: string, sign?: React.ReactNode) => (
    <li key={item.key}>
      <button type="button" className="queue-item" aria-current={sameItem(shown, item) ? "true" : undefined} onClick={() => onChoose(item)}>
        <span className="queue-title">{asHeading(title)}</span>
        {sign}
        <span className="queue-more">{more}</span>
      </button>
    </li>
  );
  return (
    <nav className="queue" aria-label="What to check">
      <div className="queue-head">
        <h2>Conflicts</h2>
        <span className="soft" role="status">
          {left} left of {analysis.conflicts.length}
        </span>
      </div>
      <ToggleGroup
        className="queue-filter"
        aria-label="Which conflicts"
        value={[filter]}
        onValueChange={(next) => {
          const [one] = next;
          if (one) onFilter(one as ConflictFilter);
        }}
      >
        {conflictFilters.map((one) => (
          <Toggle key={one} value={one} className="button">
            {filterLabels[one]}
          </Toggle>
        ))}
      </ToggleGroup>
      <ol className="queue-list" aria-label="Conflicts by weight">
        {queue.map((conflict) => {
          const open = openConflictKeys.includes(conflict.key);
          return line(
            { kind: "conflict", key: conflict.key },
            conflict.topic,
            sidesLine(conflict, detail),
            <span className="queue-sign" data-open={open || undefined} title={`Weight ${conflict.weight} of 100`}>
              {open ? weightWord(conflict.weight) : "settled"}
            </span>,
          );
        })}
      </ol>
      {queue.length === 0 ? <p className="queue-none">None under “{filterLabels[filter].toLowerCase()}”.</p> : null}
      <SheetQueue detail={detail} line={line} />
      <QueuePart name="Promises" none="No promise was heard." empty={analysis.promises.length === 0}>
        {analysis.promises.map((promise) =>
          line({ kind: "promise", key: promise.id }, `“${promise.quote}”`, `${promiseLabels[promise.kind]}, ${timeLabel(promise.start)}`),
        )}
      </QueuePart>
      <QueuePart name="Remarks" none="No remarks." empty={analysis.remarks.length === 0}>
        {analysis.remarks.map((remark) => line({ kind: "remark", key: remark.key }, remark.topic, remark.why))}
      </QueuePart>
      <QueuePart name="Questions" none="Everything usual is shown and spoken of." empty={questions.length === 0}>
        {questions.map(({ key, question }) => (
          <li key={key} className="queue-question">
            {question}
          </li>
        ))}
      </QueuePart>
      <QueuePart name="Doubtful captions" none="No doubtful captions." empty={analysis.doubtful.length + trustedCaptions.length === 0}>
        {analysis.doubtful.map(({ caption, why }) =>
          line(
            { kind: "doubtful", key: String(caption) },
            `${timeLabel(captions[caption]?.start ?? 0)} ${captions[caption]?.text ?? ""}`,
            why,
          ),
        )}
        {trustedCaptions.map(({ caption, initials }) =>
          line(
            { kind: "doubtful", key: String(caption) },
            `${timeLabel(captions[caption]?.start ?? 0)} ${captions[caption]?.text ?? ""}`,
            `held for speech by ${initials}`,
          ),
        )}
      </QueuePart>
      <div className="queue-foot">
        <Button weight="quiet" shortcut="?" onClick={onKeys}>
          Keys
        </Button>
      </div>
    </nav>
  );
}

interface QueuePartProps {
  readonly name: string;
  readonly none: string;
  readonly empty: boolean;
  readonly children: React.ReactNode;
}

function QueuePart({ name, none, empty, children }: QueuePartProps) {
  return (
    <section className="queue-part" aria-label={name}>
      <h3>{name}</h3>
      {empty ? <p className="queue-none">{none}</p> : <ol className="queue-list">{children}</ol>}
    </section>
  );
}

/** "A 235/60R15 at 2:18, B 255/60R15 at 4:36". */
function sidesLine(conflict: Conflict, { analysis }: RecordingDetail): string {
  const values = sideValues(conflict, analysis.claims);
  return conflict.sides
    .map((side, index) => {
      const claim = analysis.claims.find(({ id }) => id === side.claims[0]);
      return `${sideLetter(index)} ${values[index]}${claim ? ` at ${timeLabel(claim.start)}` : ""}`;
    })
    .join(", ");
}
