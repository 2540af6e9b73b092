import { useEffect, useRef, useState } from "react";
import { cautions } from "../../shared-types/index.ts";
import { useLibrary } from "../client/use-library.ts";
import type { Clock } from "../player/clock.ts";
import { Button } from "../shared/button.tsx";
import { Head } from "../shared/head.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { hashOfPlace, replaceHash } from "../shared/place.ts";
import "./call.css";
import { CallPlayer } from "./call-player.tsx";
import { ComparePart } from "./compare-part.tsx";
import { FindPart } from "./find-part.tsx";
import type { Told } from "./hit-answer.tsx";
import { useCopying } from "./use-copying.ts";
import { vehicleName } from "./vehicle-choice.tsx";

/** A moment that was asked to be played; the count tells a second Enter on the same one from the first. */
interface Played {
  readonly recordingId: string;
  readonly start: number;
  readonly count: number;
}

export interface CallScreenProps {
  /** The question in the address. */
  readonly asked: string;
  /** Recordings that the address puts side by side; null while the whole library is asked. */
  readonly compared: readonly string[] | null;
  /** The one recording that the address asks of; null for the whole library. */
  readonly only: string | null;
}

/** The salesperson's desk: one field over the whole library, or over chosen vehicles side by side. */
export function CallScreen({ asked, compared, only }: CallScreenProps) {
  const { recordings } = useLibrary();
  const [query, setQuery] = useState(asked);
  const [played, setPlayed] = useState<Played | null>(null);
  const [underside, setUnderside] = useState(false);
  const copying = useCopying();
  const clock = useRef<Clock | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const narrowed = only === null ? null : (recordings?.find(({ id }) => id === only) ?? null);
  const recording = recordings?.find(({ id }) => id === played?.recordingId);

  // The question stands in the address, so that coming back from a recording comes back to it.
  const written = useRef(asked);
  useEffect(() => {
    if (asked === written.current) return;
    written.current = asked;
    setQuery(asked);
  }, [asked]);
  const settle = (settled: string) => {
    if (settled === written.current) return;
    written.current = settled;
    replaceHash(hashOfPlace({ screen: "call", query: settled, compared, ...(only === null ? {} : { only }) }));
  };
  /** Vehicles side by side, or the whole library again: a place of its own to come back to. */
  const show = (next: readonly string[] | null, question = query.trim()) => {
    written.current = question;
    setQuery(question);
    window.location.hash = hashOfPlace({ screen: "call", query: question, compared: next });
  };
  const play = ({ recordingId, start }: Pick<Told, "recordingId" | "start">) =>
    setPlayed((before) => ({ recordingId, start, count: (before?.count ?? 0) + 1 }));
  const pause = () => clock.current?.toggle();
  const askAll = () => show(null);
  useShortcuts((key) => {
    if (key === "Escape" && only !== null) {
      askAll();
      return true;
    }
    if (key !== "/") return false;
    field.current?.focus();
    return true;
  });

  const desk = {
    query,
    onQuery: setQuery,
    field,
    onSettled: settle,
    onPlay: play,
    onPause: pause,
    copying,
    onUnderside: setUnderside,
    side: (answer: React.ReactNode, of: Told | null) => (
      <div className="call-side">
        {recording && played ? (
          <CallPlayer
            key={recording.id}
            recording={recording}
            start={played.start}
            asked={played.count}
            answered={of && of.recordingId !== recording.id ? vehicleName(of) : null}
            onClock={(own) => {
              clock.current = own;
            }}
          />
        ) : null}
        {answer}
        <div className="call-cautions">
          <p className="caution">{cautions.inspection}</p>
          {underside ? <p className="caution">{cautions.underside}</p> : null}
        </div>
      </div>
    ),
  };
  return (
    <div className="screen">
      <Head
        desk="call"
        recordingId={compared === null && narrowed ? narrowed.id : undefined}
        title={compared === null ? "Call" : "Call: compare"}
        subject={
          only !== null && compared === null ? (
            <>
              <h1 title={narrowed?.title}>{narrowed ? `Only ${narrowed.title}` : "Only one vehicle"}</h1>
              <span className="soft stock">{narrowed?.stockNumber}</span>
            </>
          ) : (
            <h1>{compared === null ? "The whole library" : "Side by side"}</h1>
          )
        }
      >
        {only !== null && compared === null ? (
          <Button onClick={askAll} shortcut="Escape">
            Ask the whole library
          </Button>
        ) : null}
        {compared === null ? null : (
          <Button onClick={() => show(null)} shortcut="Ctrl+K">
            Ask the whole library
          </Button>
        )}
      </Head>
      <main className="call">
        {compared === null ? (
          <FindPart {...desk} only={only} onAll={askAll} onCompare={show} recordings={recordings ?? []} />
        ) : (
          <ComparePart {...desk} compared={compared} onCompared={show} recordings={recordings} />
        )}
      </main>
    </div>
  );
}
