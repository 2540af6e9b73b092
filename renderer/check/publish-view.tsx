import { useState } from "react";
import { conflictKinds, momentLabel, publicationLine, type RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { asHeading } from "../shared/claim-words.ts";
import { counted } from "../shared/count.ts";
import { Ask } from "../shared/dialog.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { recordingPlace } from "../shared/place.ts";
import { checkActionOf } from "./check-shortcuts.ts";
import "./publish.css";
import { alsoLines } from "./publish-lines.ts";
import { countedOfKind, kindWords } from "./queue-filter.ts";

export interface PublishViewProps {
  readonly detail: RecordingDetail;
  readonly edit: Edit;
}

/** Whether a recording may be let out: said plainly where nothing is open, and with each open conflict named where something is. */
export function PublishView({ detail, edit }: PublishViewProps) {
  const { analysis, openConflictKeys, publications, summary } = detail;
  const [asking, setAsking] = useState(false);
  const open = analysis.conflicts.filter(({ key }) => openConflictKeys.includes(key));
  const analysed = analysis.analysisVersion > 0;
  const publish = () => {
    setAsking(false);
    void edit(
      "recording.publish",
      { openConflictKeys: open.map(({ key }) => key) },
      open.length === 0 ? "Recorded as published" : `Recorded as published with ${counted(open.length, "conflict", "conflicts")} open`,
    );
  };
  const letOut = () => {
    if (!analysed) return;
    if (open.length === 0) publish();
    else setAsking(true);
  };
  useShortcuts((key) => {
    if (checkActionOf(key) !== "let-out") return false;
    letOut();
    return true;
  });
  const last = publications.at(-1);
  const since = last ? detail.rulings.filter(({ at }) => at > last.at).length : 0;
  return (
    <article className="conflict publish" aria-labelledby="publish-heading">
      <header className="publish-head" data-ready={open.length === 0 && analysed ? "yes" : "no"}>
        <h2 id="publish-heading" className="conflict-topic">
          {!analysed ? "Not analysed yet" : open.length === 0 ? "Ready to publish" : "Not ready to publish"}
        </h2>
        <p>{readyLine(detail, open.length)}</p>
      </header>
      {open.length > 0 ? (
        <section className="check-part" aria-labelledby="publish-open">
          <h3 id="publish-open">What is open</h3>
          {conflictKinds.map((kind) => {
            const ofKind = open.filter((conflict) => conflict.kind === kind).toSorted((a, b) => b.weight - a.weight);
            if (ofKind.length === 0) return null;
            return (
              <div key={kind} className="publish-kind">
                <span className="soft">{countedOfKind(ofKind.length, kind)}</span>
                <ul aria-label={`Open: ${kindWords[kind][1]}`}>
                  {ofKind.map(({ key, topic }) => (
                    <li key={key}>
                      <a href={recordingPlace(summary.id, "check", { conflict: key })}>{asHeading(topic)}</a>
                    </li>
                  ))}
                </ul>
              </div>
            );
          })}
        </section>
      ) : null}
      <section className="check-part" aria-labelledby="publish-also">
        <h3 id="publish-also">Read before it goes out, not counted as open</h3>
        <ul className="publish-also">
          {alsoLines(detail).map(({ words, href, details }) => (
            <li key={words}>
              {href !== null ? <a href={href}>{words}</a> : details.length === 0 ? words : null}
              {details.length > 0 ? (
                <details>
                  <summary>{words}</summary>
                  <ul>
                    {details.map((told) => (
                      <li key={told}>{told}</li>
                    ))}
                  </ul>
                </details>
              ) : null}
            </li>
          ))}
        </ul>
      </section>
      <div className="row">
        <Button weight={open.length === 0 ? "main" : "grave"} shortcut="Shift+P" disabled={!analysed} onClick={letOut}>
          {open.length === 0 ? "Record as published" : `Publish with ${counted(open.length, "conflict", "conflicts")} open…`}
        </Button>
        <span className="small soft">Keeps who, when and what was open. It sends nothing: the files are written under Export.</span>
      </div>
      <section className="check-part" aria-labelledby="publish-past">
        <h3 id="publish-past">Published before</h3>
        {last ? (
          <>
            <ol className="rulings" aria-label="Publications" reversed>
              {publications.toReversed().map((publication) => (
                <li key={publication.at} className="ruling-past">
                  {publicationLine(publication)}.
                </li>
              ))}
            </ol>
            {since > 0 ? <p>Since then {counted(since, "ruling was", "rulings were")} made: what is out does not have them.</p> : null}
          </>
        ) : (
          <p className="soft">Never.</p>
        )}
      </section>
      <Ask
        title={`Publish with ${counted(open.length, "conflict", "conflicts")} open?`}
        open={asking}
        yes="Publish all the same"
        no="Do not publish"
        onYes={publish}
        onNo={() => setAsking(false)}
      >
        <p>Nobody has settled:</p>
        <ul className="publish-asked">
          {open.map(({ key, topic }) => (
            <li key={key}>{asHeading(topic)}</li>
          ))}
        </ul>
        <p>A buyer may hold the dealer to either side of each. It is kept that you published them open.</p>
      </Ask>
    </article>
  );
}

function readyLine({ analysis, rulings }: RecordingDetail, open: number): string {
  if (analysis.analysisVersion === 0) return "Nobody can say what is open before the recording is analysed. Analyse it from the library.";
  const { length } = analysis.conflicts;
  if (open > 0) return `${counted(open, "conflict is", "conflicts are")} open, of ${length}. Settle them, or publish knowing it.`;
  if (length === 0) return "No conflict was found. That does not make the claims true: the stock sheet and the vehicle decide.";
  const standing = rulings.filter(({ supersededBy }) => supersededBy === null);
  const people = [...new Set(standing.map(({ initials }) => initials))].join(", ");
  const latest = standing
    .map(({ at }) => at)
    .toSorted()
    .at(-1);
  return `No conflict is open. All ${length} were settled${people ? ` by ${people}` : ""}${latest ? `, the last at ${momentLabel(latest)}` : ""}.`;
}
