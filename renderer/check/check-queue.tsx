import { Progress } from "@base-ui/react/progress";
import {
  type Conflict,
  matterCounts,
  matterCountWords,
  promiseLabels,
  promiseMatter,
  publicationLine,
  questionMatter,
  type RecordingDetail,
  timeLabel,
} from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { asHeading, sideLetter, sideValues } from "../shared/claim-words.ts";
import { leftWords, MatterSign } from "./matter-sign.tsx";
import { matterStates, mattersLeft } from "./matters-at-hand.ts";
import { publishedAsItStands } from "./publish-lines.ts";
import { type CheckItem, checkItems, publishItem, sameItem, waitsForLook, weightWord } from "./queue.ts";
import { emptyQueueLine, isShownIn, keptBackLine, leftByKind, type QueueFilter, shownConflicts, stateFilter } from "./queue-filter.ts";
import { QueueFilters } from "./queue-filters.tsx";
import { SheetQueue } from "./sheet-queue.tsx";

export interface CheckQueueProps {
  readonly detail: RecordingDetail;
  readonly filter: QueueFilter;
  readonly onFilter: (filter: QueueFilter) => void;
  readonly shown: CheckItem | null;
  readonly onChoose: (item: CheckItem) => void;
  /** Opens the sheet of keys. */
  readonly onKeys: () => void;
}

/** What waits for the reviewer: conflicts by weight, then what is milder, each under its own heading. */
export function CheckQueue({ detail, filter, onFilter, shown, onChoose, onKeys }: CheckQueueProps) {
  const { analysis, openConflictKeys, captions, trustedCaptions } = detail;
  const queue = shownConflicts(detail, filter);
  const last = detail.publications.at(-1);
  const left = analysis.conflicts.filter((conflict) => openConflictKeys.includes(conflict.key)).length;
  const matters = mattersLeft(detail);
  const stateOf = matterStates(detail);
  const inState = stateFilter(detail, filter.state);
  const openLine = stateFilter(detail, "open");
  const keptBack = (items: readonly CheckItem[]) =>
    [keptBackLine(items.filter(inState), detail, filter.zone), stateLine(items.length, items.filter(inState).length, filter.state)]
      .filter((words) => words !== null)
      .join(" ") || null;
  const everything = checkItems(detail, "all");
  // Words that were said twice are one matter, and two lines.
  const openOf = (kind: "promise" | "question") => everything.filter((item) => item.kind === kind && openLine(item)).length;
  const keptBackOf = (kind: CheckItem["kind"]) => keptBack(everything.filter((item) => item.kind === kind));
  const line = (item: CheckItem, title: string, more: string, sign?: React.ReactNode) =>
    item.kind !== "conflict" && !(isShownIn(item, detail, filter.zone) && inState(item)) ? null : (
      <li key={item.key}>
        <button
          type="button"
          className="queue-item"
          aria-current={sameItem(shown, item) ? "true" : undefined}
          onClick={() => onChoose(item)}
        >
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
          {queue.length < analysis.conflicts.length ? <span className="visually-hidden">, {queue.length} shown</span> : null}
        </span>
      </div>
      <Progress.Root className="queue-progress" value={analysis.conflicts.length - left} max={Math.max(1, analysis.conflicts.length)}>
        <Progress.Label className="visually-hidden">Conflicts settled</Progress.Label>
        <Progress.Track className="queue-track">
          <Progress.Indicator className="queue-done" />
        </Progress.Track>
      </Progress.Root>
      <p className="queue-none">
        <span className="queue-kinds">
          {left > 0 ? `Left: ${leftByKind(analysis.conflicts, openConflictKeys)}. ` : "No conflict left. "}
        </span>
        {matters.length > 0 ? `Also not dealt with: ${matterCountWords(matterCounts(matters))}.` : ""}
      </p>
      <button
        type="button"
        className="queue-item queue-publish"
        aria-current={sameItem(shown, publishItem) ? "true" : undefined}
        aria-keyshortcuts="P"
        onClick={() => onChoose(publishItem)}
      >
        <span className="queue-title">
          {left + matters.length > 0 ? "Not ready to publish" : publishedAsItStands(detail) ? "Published" : "Ready to publish"}
        </span>
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus; the button tells its key itself */}
        <kbd aria-hidden="true">P</kbd>
        <span className="queue-more">{last ? publicationLine(last) : "Never published"}</span>
      </button>
      <QueueFilters detail={detail} filter={filter} onFilter={onFilter} />
      <ol className="queue-list" aria-label="Conflicts by weight">
        {queue.map((conflict) => {
          const open = openConflictKeys.includes(conflict.key);
          const waits = open ? waitsForLook(detail.rulings, conflict.key) : null;
          return line(
            { kind: "conflict", key: conflict.key },
            conflict.topic,
            `${sidesLine(conflict, detail)}${waits ? `. To be looked at on the vehicle, says ${waits.initials}` : ""}`,
            <span className="queue-sign" data-open={open || undefined} title={`Weight ${conflict.weight} of 100`}>
              {open ? weightWord(conflict.weight) : "settled"}
            </span>,
          );
        })}
      </ol>
      {queue.length === 0 ? <p className="queue-none">{emptyQueueLine(detail, filter)}</p> : null}
      <SheetQueue detail={detail} line={line} keptBack={keptBack} />
      <QueuePart
        name="Promises"
        left={leftWords(openOf("promise"), analysis.promises.length)}
        none="No promise was heard."
        empty={analysis.promises.length === 0}
        keptBack={keptBackOf("promise")}
      >
        {analysis.promises.map((promise) =>
          line(
            { kind: "promise", key: promise.id },
            `“${promise.quote}”`,
            `${promiseLabels[promise.kind]}, ${timeLabel(promise.start)}`,
            <MatterSign state={stateOf(promiseMatter(promise))} />,
          ),
        )}
      </QueuePart>
      <QueuePart name="Remarks" none="No remarks." empty={analysis.remarks.length === 0} keptBack={keptBackOf("remark")}>
        {analysis.remarks.map((remark) => line({ kind: "remark", key: remark.key }, remark.topic, remark.why))}
      </QueuePart>
      <QueuePart
        name="Questions"
        left={leftWords(openOf("question"), analysis.questions.length)}
        none="Everything usual is named in the words."
        empty={analysis.questions.length === 0}
        keptBack={keptBackOf("question")}
      >
        {analysis.questions.map((question) =>
          line(
            { kind: "question", key: question.key },
            question.topic,
            question.question,
            <MatterSign state={stateOf(questionMatter(question))} />,
          ),
        )}
      </QueuePart>
      <QueuePart
        name="Doubtful captions"
        none="No doubtful captions."
        empty={analysis.doubtful.length + trustedCaptions.length === 0}
        keptBack={keptBackOf("doubtful")}
      >
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
  /** How many nobody has dealt with; nothing of what nobody has to. */
  readonly left?: string;
  readonly none: string;
  readonly empty: boolean;
  /** What the zone filter keeps back: without it the bare heading reads as if there were none. */
  readonly keptBack: string | null;
  readonly children: React.ReactNode;
}

function QueuePart({ name, left, none, empty, keptBack, children }: QueuePartProps) {
  return (
    <section className="queue-part" aria-label={name}>
      <h3>
        {name}
        {left ? <span className="queue-left">{left}</span> : null}
      </h3>
      {empty ? <p className="queue-none">{none}</p> : <ol className="queue-list">{children}</ol>}
      {keptBack === null ? null : <p className="queue-none">{keptBack}</p>}
    </section>
  );
}

/** What the state filter keeps back of a part; null where it keeps nothing back. */
function stateLine(all: number, shown: number, state: QueueFilter["state"]): string | null {
  if (state === "all" || shown === all) return null;
  return state === "open" ? `${all - shown} dealt with: shown under “All”.` : `${all - shown} open: shown under “Open”.`;
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
