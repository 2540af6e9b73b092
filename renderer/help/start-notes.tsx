import { useCallback, useEffect, useState } from "react";
import type { Output } from "../../shared-types/index.ts";
import { useClient, useHostEvent } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { useInitials } from "../shared/initials.tsx";
import { DeskCards } from "./desk-cards.tsx";
import "./help.css";
import { pairText } from "./help-texts.ts";
import { NewsList } from "./news-list.tsx";
import { updateWords } from "./update-words.ts";
import { useHelp } from "./use-help.ts";

export interface StartNotesProps {
  /** How many recordings the library has: with the first of one's own the first minutes are over. */
  readonly recordings: number;
  readonly onImport: () => void;
}

/** What the library's screen says before the recordings: the first minutes, or what is new. Nothing of it is in anybody's way. */
export function StartNotes({ recordings, onImport }: StartNotesProps) {
  const client = useClient();
  const [state, setState] = useState<Output<"start.state"> | null>(null);
  const [update, setUpdate] = useState<Output<"update.look">>(null);
  const ask = useCallback(() => {
    // Whatever fails here, the recordings below are what the person came for.
    client.call("start.state", {}).then(setState, () => {});
  }, [client]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the demo that comes in, and the first recording of one's own, change the answer
  useEffect(ask, [ask, recordings]);
  useHostEvent("library.changed", ask);
  useEffect(() => {
    client.call("update.look", { now: false }).then(setUpdate, () => {});
  }, [client]);
  const told = (what: "first-minutes" | "news") => client.call("start.told", { what }).then(ask, () => {});
  if (!state) return null;
  return (
    <>
      {state.introduce ? <FirstMinutes demoId={state.demoId} onImport={onImport} onEnd={() => told("first-minutes")} /> : null}
      {state.news.length > 0 ? (
        <section className="start-note" aria-labelledby="news-heading">
          <div className="start-head">
            <h2 id="news-heading">What is new</h2>
            <Button onClick={() => told("news")}>Read; do not show again</Button>
          </div>
          <NewsList news={state.news} />
        </section>
      ) : null}
      {update?.newer ? (
        <p className="start-note" role="status">
          {updateWords(update)}
        </p>
      ) : null}
    </>
  );
}

interface FirstMinutesProps {
  readonly demoId: string | null;
  readonly onImport: () => void;
  readonly onEnd: () => void;
}

function FirstMinutes({ demoId, onImport, onEnd }: FirstMinutesProps) {
  const { initials, askInitials } = useInitials();
  const help = useHelp();
  return (
    <section className="start-note" aria-labelledby="first-minutes-heading">
      <div className="start-head">
        <h2 id="first-minutes-heading">Your first minutes</h2>
        <Button weight="quiet" onClick={onEnd}>
          End; do not show again
        </Button>
      </div>
      <ol className="first-steps">
        <li>
          <h3>See the three desks{demoId === null ? "" : " on the demo"}</h3>
          <DeskCards demoId={demoId} />
        </li>
        <li>
          <h3>Say who you are</h3>
          <div className="row">
            {initials ? (
              <span>
                You sign as <strong>{initials}</strong>.
              </span>
            ) : (
              <Button onClick={askInitials}>Sign with your initials…</Button>
            )}
            <span className="soft">
              Every edit and ruling carries them. They leave this machine only in what you hand on: bundles, indexes and review records.
            </span>
          </div>
        </li>
        <li>
          <h3>Bring in your first pair of files</h3>
          <div className="row">
            <Button onClick={onImport}>Choose your first pair…</Button>
            <span className="soft first-pair">{pairText}</span>
          </div>
        </li>
      </ol>
      <p className="soft">
        All of this, the keys and the cautions are in the{" "}
        <button type="button" className="link-button" onClick={() => help.open()}>
          help
        </button>
        : <kbd>F1</kbd> opens it from everywhere.
      </p>
    </section>
  );
}
