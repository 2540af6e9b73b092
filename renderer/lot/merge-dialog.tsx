import { useState } from "react";
import { type BundleLook, type MergeDifference, mergeGroupLabels } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import {
  answerAll,
  clashWords,
  type MergeAnswer,
  type MergeAnswers,
  mergeAnswerWords,
  settledChoices,
  unanswered,
} from "./merge-answers.ts";

export interface MergeDialogProps {
  readonly look: BundleLook;
  readonly onClose: () => void;
  readonly onChosen: (choices: ReturnType<typeof settledChoices>) => void;
}

/** What people did otherwise on the two machines, side by side, and what is to count. */
export function MergeDialog({ look, onClose, onChosen }: MergeDialogProps) {
  const [answers, setAnswers] = useState<MergeAnswers>({});
  const [tried, setTried] = useState(false);
  const open = unanswered(look, answers);
  return (
    <Modal
      title={`Merge “${look.title}”`}
      open
      onClose={onClose}
      wide
      foot={
        <>
          {tried && open.length > 0 ? (
            <ProblemNote
              problem={{
                code: "merge-open",
                message: `Choose what counts for: ${open.map((group) => mergeGroupLabels[group]).join(", ")}.`,
              }}
            />
          ) : null}
          <Button onClick={onClose}>Leave it unmerged</Button>
          <Button weight="main" onClick={() => (open.length > 0 ? setTried(true) : onChosen(settledChoices(look, answers)))}>
            Merge
          </Button>
        </>
      }
    >
      <p className="small soft">
        Both machines went on working on this recording. Choose for each kind of work; what is changed here becomes one change, which one
        undo takes back; where nothing is changed, there is nothing to undo. Rulings are never lost: one that gives way stays on record as
        superseded.
      </p>
      <div className="row">
        <span className="small soft">For all of them:</span>
        {(["mine", "theirs", "both"] as const).map((choice) => (
          <Button key={choice} onClick={() => setAnswers(answerAll(look, choice))}>
            {mergeAnswerWords[choice]}
          </Button>
        ))}
      </div>
      {look.adds.length > 0 ? <p className="small">In any case it brings along: {look.adds.join("; ")}.</p> : null}
      {look.stays.length > 0 ? <p className="small">Not merged: {look.stays.join("; ")}.</p> : null}
      {look.groups.map(({ group, takesBoth, differences, clashes }) => (
        <section key={group} className="merge-group" aria-label={mergeGroupLabels[group]}>
          <div className="merge-head">
            <h3>{mergeGroupLabels[group]}</h3>
            <Choice<MergeAnswer>
              label={`What counts for ${mergeGroupLabels[group].toLowerCase()}`}
              labelHidden
              value={answers[group] ?? "open"}
              options={[
                ...(answers[group] === undefined || answers[group] === "open" ? [{ value: "open" as const, label: "Choose…" }] : []),
                { value: "mine", label: mergeAnswerWords.mine },
                { value: "theirs", label: mergeAnswerWords.theirs },
                ...(takesBoth ? [{ value: "both" as const, label: mergeAnswerWords.both }] : []),
              ]}
              onChange={(answer) => setAnswers({ ...answers, [group]: answer })}
            />
          </div>
          <p className="small" role="status">
            {clashWords({ group, takesBoth, differences, clashes }, answers[group] === "both")}
          </p>
          <table className="merge-table">
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Here</th>
                <th scope="col">In the bundle</th>
              </tr>
            </thead>
            <tbody>
              {differences.map((difference, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes while it is shown
                <DifferenceRow key={place} difference={difference} />
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </Modal>
  );
}

function DifferenceRow({ difference: { what, mine, theirs, mineBy, theirsBy } }: { readonly difference: MergeDifference }) {
  return (
    <tr>
      <th scope="row">{what}</th>
      <Side words={mine} by={mineBy} />
      <Side words={theirs} by={theirsBy} />
    </tr>
  );
}

function Side({ words, by }: { readonly words: string | null; readonly by: string }) {
  return (
    <td>
      {words ?? <span className="soft">nothing</span>}
      {by ? <span className="merge-by">{by}</span> : null}
    </td>
  );
}
