import { useState } from "react";
import { type Conflict, conflictKinds, momentLabel, publicationLine, type RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { asHeading } from "../shared/claim-words.ts";
import { counted } from "../shared/count.ts";
import { Ask } from "../shared/dialog.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { recordingPlace } from "../shared/place.ts";
import { checkActionOf } from "./check-shortcuts.ts";
import { mattersLeft, openWords } from "./matters-at-hand.ts";
import "./publish.css";
import {
  alsoLines,
  changesSince,
  matterLine,
  openConflictLine,
  openGroups,
  type PublishLine,
  publishedAsItStands,
} from "./publish-lines.ts";
import { countedOfKind, kindWords } from "./queue-filter.ts";

export interface PublishViewProps {
  readonly detail: RecordingDetail;
  readonly edit: Edit;
}

/** Whether a recording may be let out: said plainly where nothing is open, and with each open thing named where something is. */
export function PublishView({ detail, edit }: PublishViewProps) {
  const { analysis, openConflictKeys, publications } = detail;
  const [asking, setAsking] = useState(false);
  const conflicts = analysis.conflicts.filter(({ key }) => openConflictKeys.includes(key));
  const matters = mattersLeft(detail);
  const analysed = analysis.analysisVersion > 0;
  const ready = conflicts.length + matters.length === 0;
  const open = openWords(conflicts.length, matters);
  const publish = () => {
    setAsking(false);
    void edit(
      "recording.publish",
      { openConflictKeys: conflicts.map(({ key }) => key), openMatters: matters.map(({ about, key }) => ({ about, key })) },
      ready ? "Recorded as published" : `Recorded as published, open: ${open}`,
    );
  };
  const letOut = () => {
    if (!analysed) return;
    if (ready) publish();
    else setAsking(true);
  };
  useShortcuts((key) => {
    if (checkActionOf(key) !== "let-out") return false;
    letOut();
    return true;
  });
  const last = publications.at(-1);
  const since = last ? changesSince(detail, last) : 0;
  const asItStands = publishedAsItStands(detail);
  return (
    <article className="conflict publish" aria-labelledby="publish-heading">
      <header className="publish-head" data-ready={ready && analysed ? "yes" : "no"}>
        <h2 id="publish-heading" className="conflict-topic">
          {!analysed
            ? "Not analyzed yet"
            : !ready
              ? "Not ready to publish"
              : asItStands
                ? `Published ${momentLabel(asItStands.at)} by ${asItStands.initials}`
                : "Ready to publish"}
        </h2>
        {readyLines(detail, conflicts.length, openWords(0, matters)).map((words) => (
          <p key={words}>{words}</p>
        ))}
      </header>
      {ready ? null : (
        <section className="check-part" aria-labelledby="publish-open">
          <h3 id="publish-open">What is open</h3>
          {conflictGroups(conflicts, detail).map(({ name, words, lines }) => (
            <OpenLines key={name} name={name} words={words} lines={lines} />
          ))}
          {openGroups(detail).map(({ kind, words, lines }) => (
            <OpenLines key={kind} name={words.replace(/^\d+ /, "")} words={words} lines={lines} />
          ))}
        </section>
      )}
      <section className="check-part" aria-labelledby="publish-also">
        <h3 id="publish-also">Read before it goes out, not counted as open</h3>
        <ul className="publish-also">
          {alsoLines(detail).map(({ words, href }) => (
            <li key={words}>{href !== null ? <a href={href}>{words}</a> : words}</li>
          ))}
        </ul>
      </section>
      <div className="row">
        <Button weight={asItStands ? "plain" : ready ? "main" : "grave"} shortcut="Shift+P" disabled={!analysed} onClick={letOut}>
          {!ready ? "Publish with these open…" : asItStands ? "Record as published again" : "Record as published"}
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
                  {(publication.openMatters?.length ?? 0) > 0 ? (
                    <details>
                      <summary>What nobody had dealt with</summary>
                      <ul className="publish-also">
                        {publication.openMatters?.map((words) => (
                          <li key={words}>{words}</li>
                        ))}
                      </ul>
                    </details>
                  ) : null}
                </li>
              ))}
            </ol>
            {since > 0 ? (
              <p>Since then {counted(since, "ruling or note was", "rulings or notes were")} made: what is out does not have them.</p>
            ) : null}
          </>
        ) : (
          <p className="soft">Never.</p>
        )}
      </section>
      <Ask
        title={`Publish with ${open} open?`}
        open={asking}
        yes="Publish all the same"
        no="Do not publish"
        onYes={publish}
        onNo={() => setAsking(false)}
      >
        <p>Still open:</p>
        <ul className="publish-asked">
          {conflicts.map((conflict) => (
            <li key={conflict.key}>{asHeading(openConflictLine(conflict, detail.rulings))}</li>
          ))}
          {matters.map((matter) => (
            <li key={`${matter.about} ${matter.key}`}>{asHeading(matterLine(matter))}</li>
          ))}
        </ul>
        <p>A buyer may hold the dealer to what was said, and to either side of a conflict. It is kept that you published them open.</p>
      </Ask>
    </article>
  );
}

function conflictGroups(open: readonly Conflict[], { rulings, summary }: RecordingDetail) {
  return conflictKinds.flatMap((kind) => {
    const ofKind = open.filter((conflict) => conflict.kind === kind).toSorted((a, b) => b.weight - a.weight);
    const lines = ofKind.map((conflict) => ({
      words: openConflictLine(conflict, rulings),
      href: recordingPlace(summary.id, "check", { conflict: conflict.key }),
    }));
    return ofKind.length === 0 ? [] : [{ name: kindWords[kind][1], words: countedOfKind(ofKind.length, kind), lines }];
  });
}

function OpenLines({ name, words, lines }: { readonly name: string; readonly words: string; readonly lines: readonly PublishLine[] }) {
  return (
    <div className="publish-kind">
      <span className="soft">{words}</span>
      <ul aria-label={`Open: ${name}`}>
        {lines.map(({ words: line, href }) => (
          <li key={line}>{href === null ? asHeading(line) : <a href={href}>{asHeading(line)}</a>}</li>
        ))}
      </ul>
    </div>
  );
}

/** What is open and what is settled, in sentences. @param rest the other matters left, counted in words. */
function readyLines({ analysis, rulings, seenNotes }: RecordingDetail, open: number, rest: string): string[] {
  if (analysis.analysisVersion === 0) return ["Nobody can say what is open before the recording is analyzed. Analyze it from the library."];
  const { length } = analysis.conflicts;
  const conflicts =
    open > 0
      ? `${counted(open, "conflict is", "conflicts are")} open, of ${length}.`
      : length === 0
        ? "No conflict was found. That does not make the claims true: the stock sheet and the vehicle decide."
        : `No conflict is open. All ${length} were settled${byWhom(rulings)}.`;
  const matters =
    rest !== ""
      ? `Nobody has dealt with ${rest}.`
      : analysis.denials.length + analysis.promises.length + analysis.questions.length > 0
        ? `What the stock sheet denies, promises and questions were all dealt with${byWhom(seenNotes)}.`
        : "The stock sheet denies nothing, no promise was heard, and nothing usual is left unnamed.";
  return [conflicts, matters, ...(open > 0 || rest !== "" ? ["Settle them, or publish knowing it."] : [])];
}

/** " by RT and MK, the last at 2026-11-26 02:31 UTC" */
function byWhom(rows: readonly { readonly initials: string; readonly at: string; readonly supersededBy: string | null }[]): string {
  const standing = rows.filter(({ supersededBy }) => supersededBy === null);
  const people = [...new Set(standing.map(({ initials }) => initials))].join(", ");
  const latest = standing
    .map(({ at }) => at)
    .toSorted()
    .at(-1);
  return `${people ? ` by ${people}` : ""}${latest ? `, the last at ${momentLabel(latest)}` : ""}`;
}
