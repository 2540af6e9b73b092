import { useEffect, useState } from "react";
import { cautions, type RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { recordingPlace, replaceHash } from "../shared/place.ts";
import { ShortcutSheet } from "../shared/shortcut-sheet.tsx";
import { redo, undo } from "../shared/undo-bar.tsx";
import "./check.css";
import { CheckQueue } from "./check-queue.tsx";
import { type CheckAction, checkActionOf, checkSheet, filterStepOf } from "./check-shortcuts.ts";
import { ConflictView } from "./conflict-view.tsx";
import { isMatter, matterOf, matterStates, mattersLeft, notesWithoutMatter } from "./matters-at-hand.ts";
import { MomentsView } from "./moments-view.tsx";
import { NextButton, type NextStep } from "./next-button.tsx";
import { PublishView } from "./publish-view.tsx";
import { type CheckItem, checkItems, itemOfPlace, nextOpen, placeOfItem, publishItem, rulingsWithoutConflict, sameItem } from "./queue.ts";
import { filterChoices, type QueueFilter, shownConflicts, shownItems, stepped, steppedState, wholeQueue } from "./queue-filter.ts";
import type { RulingDrafts } from "./ruling-draft.ts";
import { RulingList } from "./ruling-list.tsx";
import type { SeenDrafts } from "./seen-draft.ts";
import { SeenList } from "./seen-list.tsx";

export interface CheckScreenProps {
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  /** What the address names, so that going back in the browser comes to the same item. */
  readonly conflictKey: string | null;
  readonly itemName: string | null;
  readonly drafts: CheckDrafts;
}

/** What was begun and not decided yet; kept while the recording is open. */
export interface CheckDrafts {
  readonly rulings: RulingDrafts;
  readonly notes: SeenDrafts;
}

/** The reviewer's desk. */
export function CheckScreen({ detail, edit, conflictKey, itemName, drafts }: CheckScreenProps) {
  const { analysis } = detail;
  const [filter, keepFilter] = useState<QueueFilter>(() => ({
    ...wholeQueue,
    state: startsWithOpen(detail, itemOfPlace(conflictKey, itemName)) ? "open" : "all",
  }));
  const [sheet, setSheet] = useState(false);
  const items = shownItems(detail, filter);
  // In the address from the start: what was just ruled on stays before the reviewer although the filter no longer lists it.
  const chosen = itemOfPlace(conflictKey, itemName);
  const shown = chosen ?? items[0] ?? null;
  const hashOf = (item: CheckItem) => recordingPlace(detail.summary.id, "check", placeOfItem(item));
  const unnamed = chosen === null && shown ? hashOf(shown) : null;
  useEffect(() => {
    if (unnamed !== null) replaceHash(unnamed);
  }, [unnamed]);
  const setChosen = (item: CheckItem) => {
    window.location.hash = hashOf(item);
  };
  const conflict = shown?.kind === "conflict" ? analysis.conflicts.find(({ key }) => key === shown.key) : undefined;

  const setFilter = (next: QueueFilter) => {
    keepFilter(next);
    // Who narrows the list wants to see what is left in it; what is no conflict stays.
    const left = shownConflicts(detail, next);
    const [first] = left;
    if (first && shown?.kind === "conflict" && !left.some(({ key }) => key === shown.key)) {
      replaceHash(hashOf({ kind: "conflict", key: first.key }));
    }
  };
  const move = (by: 1 | -1) => {
    const at = items.findIndex((item) => sameItem(shown, item));
    const next = items[Math.min(items.length - 1, Math.max(0, at + by))];
    // A step through the list is no place to go back to.
    if (next) replaceHash(hashOf(next));
  };
  const next = nextStep(detail, shown, setChosen);
  const stepFilter = (action: CheckAction, by: 1 | -1) => {
    const choices = filterChoices(detail);
    if (action === "filter-state") setFilter({ ...filter, state: steppedState(filter.state, by) });
    else if (action === "filter-kind") setFilter({ ...filter, kind: stepped(choices.kind, filter.kind, by) });
    else if (action === "filter-zone") setFilter({ ...filter, zone: stepped(choices.zone, filter.zone, by) });
    else if (action === "filter-weight") setFilter({ ...filter, weight: stepped(choices.weight, filter.weight, by) });
    else setFilter({ ...wholeQueue, state: filter.state });
  };
  // What the keys choose must also be seen in a long list.
  const shownName = shown ? `${shown.kind} ${shown.key}` : null;
  useEffect(() => {
    if (shownName !== null) document.querySelector(".queue [aria-current]")?.scrollIntoView({ block: "nearest" });
  }, [shownName]);
  useShortcuts((key) => {
    const step = filterStepOf(key);
    if (step) {
      stepFilter(step.action, step.by);
      return true;
    }
    const action = checkActionOf(key);
    if (action === "before") move(-1);
    else if (action === "after") move(1);
    else if (action === "next-open") next?.go();
    else if (action === "publish") setChosen(publishItem);
    else if (action === "undo") undo(detail, edit);
    else if (action === "redo") redo(detail, edit);
    else if (action === "sheet") setSheet(true);
    else return false;
    return true;
  });

  return (
    <main className="check">
      <CheckQueue detail={detail} filter={filter} onFilter={setFilter} shown={shown} onChoose={setChosen} onKeys={() => setSheet(true)} />
      <div className="check-view">
        {conflict ? (
          <ConflictView key={conflict.key} conflict={conflict} detail={detail} edit={edit} drafts={drafts.rulings} next={next} />
        ) : null}
        {shown?.kind === "publish" ? <PublishView detail={detail} edit={edit} /> : null}
        {shown && shown.kind !== "conflict" && shown.kind !== "publish" ? (
          <MomentsView key={`${shown.kind} ${shown.key}`} item={shown} detail={detail} edit={edit} next={next} drafts={drafts.notes} />
        ) : null}
        {shown?.kind === "conflict" && !conflict ? (
          <section className="check-gone">
            <h2>This conflict is no longer found</h2>
            <p>The analysis has changed since, or the address is wrong. Rulings that were made on it are kept below.</p>
            <NextButton next={next} />
          </section>
        ) : null}
        {shown === null ? <NothingOpen detail={detail} filter={filter} onAll={() => setFilter(wholeQueue)} /> : null}
        <OldRulings detail={detail} />
        <footer className="check-cautions">
          <p className="caution">{cautions.legal}</p>
          <p className="caution">{cautions.inspection}</p>
          <p className="caution">{cautions.tires}</p>
          <p className="caution">{cautions.underside}</p>
        </footer>
      </div>
      <ShortcutSheet open={sheet} onClose={() => setSheet(false)} groups={checkSheet} />
    </main>
  );
}

function OldRulings({ detail }: { readonly detail: RecordingDetail }) {
  const rulings = rulingsWithoutConflict(detail.rulings, detail.analysis.conflicts);
  const notes = notesWithoutMatter(detail);
  return (
    <>
      {rulings.length > 0 ? (
        <section className="check-part" aria-labelledby="old-rulings">
          <h3 id="old-rulings">Rulings on conflicts that are no longer found</h3>
          <RulingList rulings={rulings} withTopic />
        </section>
      ) : null}
      {notes.length > 0 ? (
        <section className="check-part" aria-labelledby="old-notes">
          <h3 id="old-notes">Notes on what is no longer found</h3>
          <SeenList notes={notes} withTopic />
        </section>
      ) : null}
    </>
  );
}

/** Where N leads: to what is open besides this; to publishing once nothing is; nowhere where this alone is open. */
function nextStep(detail: RecordingDetail, shown: CheckItem | null, goTo: (item: CheckItem) => void): NextStep | null {
  const isOpen = openIn(detail);
  const next = nextOpen(checkItems(detail, "all"), isOpen, shown);
  if (next !== null) return { to: "open", go: () => goTo(next) };
  // What is not analyzed has nothing open, and cannot go out all the same.
  if (detail.analysis.analysisVersion === 0 || shown?.kind === "publish" || (shown !== null && isOpen(shown))) return null;
  return { to: "publish", go: () => goTo(publishItem) };
}

/** Whether something of the list waits for a person. */
function openIn(detail: RecordingDetail): (item: CheckItem) => boolean {
  const stateOf = matterStates(detail);
  const open = new Set(detail.openConflictKeys);
  return (item) => {
    if (item.kind === "conflict") return open.has(item.key);
    const matter = isMatter(item) ? matterOf(item, detail) : undefined;
    return matter !== undefined && stateOf(matter).open;
  };
}

/** What is open comes first, unless the address names something that is not. */
function startsWithOpen(detail: RecordingDetail, named: CheckItem | null): boolean {
  const anyOpen = detail.openConflictKeys.length + mattersLeft(detail).length > 0;
  if (!anyOpen || named === null) return anyOpen;
  return (named.kind !== "conflict" && !isMatter(named)) || openIn(detail)(named);
}

function NothingOpen({
  detail,
  filter,
  onAll,
}: {
  readonly detail: RecordingDetail;
  readonly filter: QueueFilter;
  readonly onAll: () => void;
}) {
  const { length } = detail.analysis.conflicts;
  return (
    <section className="check-gone">
      <h2>{length === 0 ? "No conflicts were found" : "Nothing here under these filters"}</h2>
      <p>
        {length === 0
          ? "No two claims in this recording exclude one another. That does not make them true: the stock sheet and the vehicle decide."
          : "Choose another filter to see the rest."}
      </p>
      {length > 0 && filter !== wholeQueue ? <Button onClick={onAll}>Show all conflicts</Button> : null}
    </section>
  );
}
