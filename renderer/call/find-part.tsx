import { type ReactNode, type RefObject, useEffect, useEffectEvent, useState } from "react";
import { mostCompared, type RecordingSummary } from "../../shared-types/index.ts";
import { useHelp } from "../help/use-help.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import { keyCaps, keyName, useShortcuts } from "../shared/keys.ts";
import { ProblemNote } from "../shared/problem-note.tsx";
import "./compare.css";
import { noMoment, noMomentWords } from "./answer-words.ts";
import { callActionOf, callShortcuts, toldKeys } from "./call-keys.ts";
import { HitAnswer, momentOf, placeOfTold, type Told } from "./hit-answer.tsx";
import { HitList, hitId } from "./hit-list.tsx";
import type { Copying } from "./use-copying.ts";
import { useSearch } from "./use-search.ts";
import { namedVehicles } from "./vehicle-words.ts";

const examples = ["underside", "rear tires", "boot floor", "4.11", "spare"] as const;

/** What both ways of asking share. */
export interface CallPartProps {
  readonly query: string;
  readonly onQuery: (query: string) => void;
  readonly field: RefObject<HTMLInputElement | null>;
  /** A question that was answered, for the address. */
  readonly onSettled: (query: string) => void;
  readonly onPlay: (moment: Pick<Told, "recordingId" | "start">) => void;
  readonly onPause: () => void;
  readonly copying: Copying;
  /** Whether the chosen moment lies under the vehicle. */
  readonly onUnderside: (underside: boolean) => void;
  /** The right half: the player, what there is to tell, and the cautions. */
  readonly side: (answer: ReactNode, of: Told | null) => ReactNode;
}

export interface FindPartProps extends CallPartProps {
  readonly recordings: readonly RecordingSummary[];
  readonly onCompare: (recordingIds: readonly string[], question: string) => void;
  /** The one recording that is asked of; null for the whole library. */
  readonly only: string | null;
  /** Asks the whole library again. */
  readonly onAll: () => void;
}

/** Moments over the whole library, or of one vehicle, as the caller speaks. */
export function FindPart({
  query,
  onQuery,
  field,
  onSettled,
  onPlay,
  onPause,
  copying,
  onUnderside,
  side,
  only,
  onAll,
  ...rest
}: FindPartProps) {
  const { value: hits, answered, problem } = useSearch(query, only);
  const help = useHelp();
  const [at, setAt] = useState(0);
  const chosen = Math.min(at, hits.length - 1);
  const hit = hits[chosen];
  const settled = query.trim() === answered ? answered : null;
  const tellSettled = useEffectEvent(onSettled);
  useEffect(() => {
    if (settled !== null) tellSettled(settled);
  }, [settled]);
  const under = hit?.zone === "underside";
  const tellUnderside = useEffectEvent(onUnderside);
  useEffect(() => tellUnderside(under), [under]);

  const play = (index: number) => {
    setAt(index);
    const wanted = hits[index];
    if (wanted) onPlay(wanted);
  };
  const move = (by: number) => setAt(Math.min(hits.length - 1, Math.max(0, chosen + by)));
  /** The vehicles that the question names, and those alone; else those that the hits speak of; where they speak of one alone, the other that came in last beside it. */
  const compare = () => {
    const named = namedVehicles(query.trim(), rest.recordings);
    if (named.recordingIds.length > 0) return rest.onCompare(named.recordingIds.slice(0, mostCompared), named.question);
    const found = only === null ? [...new Set(hits.map(({ recordingId }) => recordingId))] : [only];
    const others = rest.recordings.map(({ id }) => id).filter((id) => !found.includes(id));
    rest.onCompare((found.length > 1 ? found : [...found, ...others]).slice(0, found.length > 1 ? mostCompared : 2), query.trim());
  };
  const act = (key: string): boolean => {
    // In an empty field both are no part of a question.
    if (query === "" && key === "?") {
      help.open("keys");
      return true;
    }
    if (query === "" && key === "Escape" && only !== null) {
      onAll();
      return true;
    }
    const action = callActionOf(key);
    if (action === "next") move(1);
    else if (action === "before") move(-1);
    else if (action === "next-page") move(8);
    else if (action === "before-page") move(-8);
    else if (action === "compare") compare();
    else if (action === "pause") onPause();
    else if (action === "copy") copying.copy(hit?.answer ?? null, hit ? momentOf(hit) : noMoment);
    else if (!hit) return false;
    else if (action === "play") play(chosen);
    else if (action === "open") window.location.hash = placeOfTold(hit);
    else return false;
    return true;
  };
  // The same keys from a button or a link of the answer, whose Enter is its own.
  useShortcuts((key) => key !== "Enter" && act(key));

  return (
    <>
      <search className="call-search">
        <div className="call-ask">
          <label htmlFor="call-field" className="visually-hidden">
            {only === null ? "Ask the library" : "Ask of this vehicle"}
          </label>
          <input
            ref={field}
            id="call-field"
            className="call-field"
            type="search"
            role="combobox"
            aria-expanded={hits.length > 0}
            aria-controls="call-hits"
            aria-activedescendant={hit ? hitId(chosen) : undefined}
            aria-autocomplete="list"
            autoComplete="off"
            spellCheck={false}
            // biome-ignore lint/a11y/noAutofocus: the desk is this field; a caller is on the line
            autoFocus
            placeholder={only === null ? "Stock number, vehicle, zone, part or value" : "Zone, part or value of this vehicle"}
            value={query}
            maxLength={200}
            onChange={(event) => {
              onQuery(event.target.value);
              setAt(0);
            }}
            onKeyDown={(event) => {
              if (!event.nativeEvent.isComposing && act(keyName(event))) event.preventDefault();
            }}
          />
          <Button onClick={compare} shortcut="Ctrl+K" disabled={rest.recordings.length === 0}>
            Compare vehicles
          </Button>
        </div>
        <div className="call-told">
          <p className="small soft" role="status">
            {statusOf(hits.length, answered, hits[0]?.readAs ?? null)}
            {copying.refused === noMoment && !hit ? ` ${noMomentWords}` : ""}
          </p>
          <KeyLine />
        </div>
      </search>
      {problem ? <ProblemNote problem={problem} /> : null}
      <div className="call-halves">
        {hits.length > 0 ? (
          <HitList hits={hits} chosen={chosen} onChoose={setAt} onPlay={play} />
        ) : (
          <section className="call-hints" aria-label="What can be asked">
            {answered === "" ? (
              <>
                <p>Ask as the caller asks. Trade and British words find the same things, and a slip in spelling is forgiven.</p>
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
              </>
            ) : (
              <>
                <p>Try a part (“rear tires”), a place (“underside”), a value (“4.11”){only === null ? " or a stock number" : ""}.</p>
                {only === null ? null : (
                  <p className="row">
                    Only this vehicle was asked of.
                    <Button onClick={onAll}>Ask the whole library</Button>
                  </p>
                )}
              </>
            )}
          </section>
        )}
        {side(
          hit ? (
            <HitAnswer
              key={`${hit.recordingId} ${hit.kind} ${hit.start} ${hit.text}`}
              told={hit}
              onPlay={() => play(chosen)}
              copying={copying}
            />
          ) : null,
          hit ?? null,
        )}
      </div>
    </>
  );
}

function statusOf(count: number, answered: string, readAs: string | null): string {
  if (answered === "") return "Nothing asked yet.";
  if (count === 0) return `Nothing for “${answered}”.`;
  const moments = counted(count, "moment", "moments");
  return readAs === null ? `${moments} for “${answered}”` : `Nothing is called “${answered}”. ${moments} for “${readAs}”`;
}

/** What the keys do, under the field: they are of no use to someone who would have to look them up during a call. */
export function KeyLine() {
  return (
    <ul className="call-keys small soft" aria-label="Keys">
      {toldKeys.map((told) => (
        <li key={told}>
          <kbd>{told === "ArrowDown" ? "↑↓" : keyCaps(told)}</kbd>{" "}
          {told === "ArrowDown" ? "choose" : callShortcuts.find(({ key }) => key === told)?.words}
        </li>
      ))}
      <li>
        <kbd>?</kbd> all keys, while the field is empty
      </li>
    </ul>
  );
}
