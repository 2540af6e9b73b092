import { type KeyboardEvent, useEffect, useEffectEvent, useState } from "react";
import type { RecordingSummary } from "../../shared-types/index.ts";
import { useHelp } from "../help/use-help.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import { keyName, useShortcuts } from "../shared/keys.ts";
import { ProblemNote } from "../shared/problem-note.tsx";
import { noMoment, noMomentWords } from "./answer-words.ts";
import { callActionOf } from "./call-keys.ts";
import { type ChosenMoment, CompareTable } from "./compare-table.tsx";
import { type CallPartProps, KeyLine } from "./find-part.tsx";
import { HitAnswer, momentOf, placeOfTold } from "./hit-answer.tsx";
import { useComparison } from "./use-search.ts";
import { VehicleChoice } from "./vehicle-choice.tsx";

const examples = ["axle ratio", "rear tire size", "mileage", "engine size", "paint color"] as const;

export interface ComparePartProps extends CallPartProps {
  /** Recordings side by side, as the address names them. */
  readonly compared: readonly string[];
  readonly onCompared: (recordingIds: readonly string[] | null) => void;
  /** Null until the library has answered. */
  readonly recordings: readonly RecordingSummary[] | null;
}

/** Two or more vehicles by one claim. */
export function ComparePart(props: ComparePartProps) {
  const { query, onQuery, field, onSettled, onPlay, onPause, copying, onUnderside, side, onCompared, recordings } = props;
  // What was removed since the address was written is left out.
  const compared = recordings === null ? [] : props.compared.filter((id) => recordings.some((recording) => recording.id === id));
  const { value: comparison, answered, problem } = useComparison(query, compared);
  const help = useHelp();
  const [chosen, setChosen] = useState<ChosenMoment | null>(null);
  const all = comparison?.subjects.flatMap(({ subject, said }) =>
    said.flatMap((moments, at) =>
      moments.flatMap((moment) => {
        const vehicle = comparison.vehicles[at];
        return vehicle ? [{ ...moment, subject, ...vehicle }] : [];
      }),
    ),
  );
  // By place, since a ruling made elsewhere brings the same moment with another standing.
  const moment = all?.find(
    ({ recordingId, start, value }) => recordingId === chosen?.recordingId && start === chosen.start && value === chosen.value,
  );
  const settled = query.trim() === answered ? answered : null;
  const tellSettled = useEffectEvent(onSettled);
  useEffect(() => {
    if (settled !== null) tellSettled(settled);
  }, [settled]);
  const under = moment?.zone === "underside";
  const tellUnderside = useEffectEvent(onUnderside);
  useEffect(() => tellUnderside(under), [under]);

  const act = (key: string, typing: boolean): boolean => {
    // In an empty field it is no part of a question.
    if (key === "?" && typing && query === "") {
      help.open("keys");
      return true;
    }
    const action = callActionOf(key);
    if (action === "compare") onCompared(null);
    else if (action === "pause") onPause();
    else if (typing && (action === "next" || action === "play")) document.querySelector<HTMLElement>(".compare-moment")?.focus();
    else if (action === "copy") copying.copy(moment?.answer ?? null, moment ? momentOf(moment) : noMoment);
    else if (action === "open" && moment) window.location.hash = placeOfTold(moment);
    else return false;
    return true;
  };
  const onKey = (event: KeyboardEvent) => !event.nativeEvent.isComposing && act(keyName(event), event.target === field.current);
  // The same keys from a button or a link of the answer.
  useShortcuts((key) => act(key, false));

  return (
    <>
      <search className="call-search">
        <label htmlFor="compare-field" className="visually-hidden">
          Which claim
        </label>
        <input
          ref={field}
          id="compare-field"
          className="call-field"
          type="search"
          autoComplete="off"
          spellCheck={false}
          // biome-ignore lint/a11y/noAutofocus: the desk is this field; a caller is on the line
          autoFocus
          placeholder="Which claim: axle ratio, mileage, rear tire size"
          value={query}
          maxLength={200}
          onChange={(event) => onQuery(event.target.value)}
          onKeyDown={(event) => {
            if (onKey(event)) event.preventDefault();
          }}
        />
        <VehicleChoice recordings={recordings ?? []} chosen={compared} onChosen={onCompared} />
        <div className="call-told">
          <p className="small soft" role="status">
            {statusOf(comparison?.subjects.length ?? 0, answered, comparison?.readAs ?? null, compared.length)}
            {copying.refused === noMoment ? ` ${noMomentWords}` : ""}
          </p>
          <KeyLine />
        </div>
      </search>
      {problem ? <ProblemNote problem={problem} /> : null}
      <div className="call-halves">
        {comparison && comparison.subjects.length > 0 ? (
          <CompareTable
            comparison={comparison}
            onChoose={setChosen}
            onPlay={(wanted) => {
              setChosen(wanted);
              onPlay(wanted);
            }}
            onKey={onKey}
            onLeave={() => field.current?.focus()}
          />
        ) : (
          <section className="call-hints" aria-label="What can be compared">
            {compared.length < 2 ? <p>Choose two vehicles or more, by stock number or name.</p> : null}
            {answered !== "" && compared.length > 0 ? (
              <p>
                No claim about “{answered}” was heard of {compared.length === 1 ? "this vehicle" : "any of these vehicles"}. A claim is a
                part and what is said of it; a place alone (“underside”) is asked of the library.
              </p>
            ) : (
              <p>Then name a claim: a part and what is asked of it.</p>
            )}
            <ul className="row">
              {examples.map((example) => (
                <li key={example}>
                  <Button
                    onClick={() => {
                      onQuery(example);
                      field.current?.focus();
                    }}
                  >
                    {example}
                  </Button>
                </li>
              ))}
            </ul>
          </section>
        )}
        {side(moment ? <HitAnswer told={moment} onPlay={() => onPlay(moment)} copying={copying} /> : null, moment ?? null)}
      </div>
    </>
  );
}

function statusOf(subjects: number, answered: string, readAs: string | null, vehicles: number): string {
  if (vehicles === 0) return "No vehicle chosen yet.";
  if (answered === "") return "No claim named yet.";
  if (subjects === 0) return `No claim about “${answered}”.`;
  const found = `${counted(subjects, "claim", "claims")} of ${counted(vehicles, "vehicle", "vehicles")}`;
  return readAs === null ? `${found} for “${answered}”` : `Nothing is called “${answered}”. ${found} for “${readAs}”`;
}
