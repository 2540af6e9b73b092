import { useEffect, useRef, useState } from "react";
import { cautions } from "../../shared-types/index.ts";
import { useLibrary } from "../client/use-library.ts";
import { counted } from "../shared/count.ts";
import { Head } from "../shared/head.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { hashOfPlace, replaceHash } from "../shared/place.ts";
import { ProblemNote } from "../shared/problem-note.tsx";
import "./call.css";
import { CallPlayer } from "./call-player.tsx";
import { HitAnswer } from "./hit-answer.tsx";
import { HitList, hitId } from "./hit-list.tsx";
import { useSearch } from "./use-search.ts";

const examples = ["underside", "rear tires", "boot floor", "4.11", "spare"] as const;

/** A moment that was asked to be played; the count tells a second Enter on the same hit from the first. */
interface Played {
  readonly recordingId: string;
  readonly start: number;
  readonly count: number;
}

/** The salesperson's desk: one field over the whole library. */
export function CallScreen({ asked }: { readonly asked: string }) {
  const { recordings } = useLibrary();
  const [query, setQuery] = useState(asked);
  const { hits, answered, problem } = useSearch(query);
  const [at, setAt] = useState(0);
  const [played, setPlayed] = useState<Played | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const chosen = Math.min(at, hits.length - 1);
  const hit = hits[chosen];
  const shownId = played?.recordingId ?? null;
  const recording = recordings?.find(({ id }) => id === shownId);

  // The question stands in the address, so that coming back from a recording comes back to it.
  const written = useRef(asked);
  useEffect(() => {
    if (asked === written.current) return;
    written.current = asked;
    setQuery(asked);
  }, [asked]);
  const settled = query.trim() === answered ? answered : null;
  useEffect(() => {
    if (settled === null || settled === written.current) return;
    written.current = settled;
    replaceHash(hashOfPlace({ screen: "call", query: settled }));
  }, [settled]);

  const play = (index: number) => {
    const wanted = hits[index];
    setAt(index);
    if (wanted) setPlayed((before) => ({ recordingId: wanted.recordingId, start: wanted.start, count: (before?.count ?? 0) + 1 }));
  };
  const move = (by: number) => setAt(Math.min(hits.length - 1, Math.max(0, chosen + by)));
  useShortcuts((key) => {
    if (key !== "/") return false;
    field.current?.focus();
    return true;
  });

  return (
    <div className="screen">
      <Head desk="call" title="Call" subject={<h1>The whole library</h1>} />
      <main className="call">
        <search className="call-search">
          <label htmlFor="call-field" className="visually-hidden">
            Ask the library
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
            placeholder="Stock number, vehicle, zone, part or value"
            value={query}
            onChange={(event) => {
              setQuery(event.target.value);
              setAt(0);
            }}
            onKeyDown={(event) => {
              const by = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 }[event.key];
              if (by !== undefined) move(by);
              else if (event.key === "Enter" && hits.length > 0) play(chosen);
              else return;
              event.preventDefault();
            }}
          />
          <p className="small soft" role="status">
            {answered === ""
              ? "Arrow keys choose, Enter plays."
              : hits.length === 0
                ? `Nothing for “${answered}”.`
                : `${counted(hits.length, "moment", "moments")} for “${answered}”`}
          </p>
        </search>
        {problem ? <ProblemNote problem={problem} /> : null}
        <div className="call-halves">
          {hits.length > 0 ? (
            <HitList hits={hits} chosen={chosen} onChoose={setAt} onPlay={play} />
          ) : (
            <section className="call-hints" aria-label="What can be asked">
              {answered === "" ? <p>Ask as the caller asks. Trade and British words find the same things.</p> : null}
              {answered === "" ? (
                <ul className="row">
                  {examples.map((example) => (
                    <li key={example}>
                      <button type="button" className="button" onClick={() => setQuery(example)}>
                        {example}
                      </button>
                    </li>
                  ))}
                </ul>
              ) : (
                <p>Try a part (“rear tires”), a place (“underside”), a value (“4.11”) or a stock number.</p>
              )}
            </section>
          )}
          <div className="call-side">
            {recording && played ? <CallPlayer key={recording.id} recording={recording} start={played.start} asked={played.count} /> : null}
            {hit ? (
              <HitAnswer key={`${hit.recordingId} ${hit.kind} ${hit.start} ${hit.text}`} hit={hit} onPlay={() => play(chosen)} />
            ) : null}
            <div className="call-cautions">
              <p className="caution">{cautions.inspection}</p>
              {hit?.zone === "underside" ? <p className="caution">{cautions.underside}</p> : null}
            </div>
          </div>
        </div>
      </main>
    </div>
  );
}
