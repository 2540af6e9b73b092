import { useState } from "react";
import { type SearchHit, timeLabel } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { recordingPlace } from "../shared/place.ts";
import { cautionOf } from "./answer-words.ts";

/** What to tell the caller about the chosen moment: a sentence to copy, or why there is none. */
export function HitAnswer({ hit, onPlay }: { readonly hit: SearchHit; readonly onPlay: () => void }) {
  const [copied, setCopied] = useState<"no" | "yes" | "refused">("no");
  const caution = cautionOf(hit);
  const copy = () => {
    if (hit.answer === null) return;
    navigator.clipboard.writeText(hit.answer).then(
      () => setCopied("yes"),
      () => setCopied("refused"),
    );
  };
  useShortcuts((key) => {
    if (key !== "Ctrl+Enter") return false;
    copy();
    return true;
  });
  return (
    <section className="answer" aria-label="Answer" data-disputed={hit.disputed || undefined}>
      {caution ? (
        <p className="answer-caution" data-grave={hit.withheld !== null || undefined}>
          {caution}
        </p>
      ) : null}
      {hit.rightWords ? <p>Said to be misheard: “{hit.rightWords}”</p> : null}
      {hit.answer !== null ? <p className="answer-line">{hit.answer}</p> : null}
      <div className="row">
        <Button onClick={onPlay}>Play {timeLabel(hit.start)}</Button>
        {hit.answer !== null ? <Button onClick={copy}>Copy the answer</Button> : null}
        <a href={recordingPlace(hit.recordingId, "mark", { at: hit.start })}>Open at the Mark desk</a>
        {hit.disputed ? <a href={recordingPlace(hit.recordingId, "check")}>See the conflict</a> : null}
        <span className="small soft" role="status">
          {copied === "yes" ? "copied" : copied === "refused" ? "This window may not copy; select the line instead." : ""}
        </span>
      </div>
    </section>
  );
}
