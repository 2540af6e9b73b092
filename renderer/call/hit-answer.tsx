import { type SearchHit, timeLabel } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { asHeading } from "../shared/claim-words.ts";
import { recordingPlace } from "../shared/place.ts";
import { cautionOf, nothingToCopy, thingOf } from "./answer-words.ts";
import type { Copying } from "./use-copying.ts";

/** A moment as far as something can be told of it. */
export type Told = Pick<
  SearchHit,
  "recordingId" | "recordingTitle" | "stockNumber" | "subject" | "start" | "withheld" | "conflictKey" | "rightWords" | "answer"
>;

/** Tells a moment from another, for what copying says of it. */
export function momentOf({ recordingId, start, subject }: Told): string {
  return `${recordingId} ${start} ${subject}`;
}

/** Where a moment is looked at: its conflict where there is one that is not settled in its favour, else the Mark desk. */
export function placeOfTold({ recordingId, start, withheld, conflictKey }: Told): string {
  return conflictKey !== null && withheld !== null
    ? recordingPlace(recordingId, "check", { conflict: conflictKey })
    : recordingPlace(recordingId, "mark", { at: start });
}

/** What to tell the caller about the chosen moment: a sentence to copy, or why there is none. */
export function HitAnswer({ told, onPlay, copying }: { readonly told: Told; readonly onPlay: () => void; readonly copying: Copying }) {
  const { answer, withheld, rightWords, conflictKey, recordingId, start } = told;
  const caution = cautionOf(told);
  const copied = copying.last !== null && copying.last.text === answer ? copying.last : null;
  return (
    <section className="answer" aria-label="Answer" data-disputed={withheld?.reason === "disputed" || undefined}>
      {caution ? (
        <p className="answer-caution" data-grave={withheld !== null || undefined}>
          <strong>{asHeading(thingOf(told))}.</strong> {caution}
        </p>
      ) : null}
      {rightWords ? <p>Misheard; said: “{rightWords}”</p> : null}
      {answer !== null ? <p className="answer-line">{answer}</p> : null}
      <div className="row">
        <Button onClick={onPlay} shortcut="Enter">
          Play {timeLabel(start)}
        </Button>
        {answer !== null ? (
          <Button onClick={() => copying.copy(answer, momentOf(told))} shortcut="Ctrl+Enter">
            Copy the answer
          </Button>
        ) : null}
        {conflictKey !== null ? <a href={recordingPlace(recordingId, "check", { conflict: conflictKey })}>See the conflict</a> : null}
        <a href={recordingPlace(recordingId, "mark", { at: start })}>Open at the Mark desk</a>
        <span className="small soft" role="status">
          {copied ? (copied.done ? "copied" : "This window may not copy; select the line instead.") : ""}
          {answer === null && copying.refused === momentOf(told) ? nothingToCopy(told) : ""}
        </span>
      </div>
    </section>
  );
}
