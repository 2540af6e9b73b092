import { memo, useState } from "react";
import { timeLabel } from "../../../shared-types/index.ts";
import type { StripConflict } from "./conflict-arcs.ts";
import { type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";
import { middleOf } from "./lap-hits.ts";
import { pointOn, type TrackPiece } from "./track.ts";

/** "Rear tire size, open conflict, at 1:02 and 3:40": an arc for whoever cannot see it. */
export function conflictName({ conflict, open, moments }: StripConflict): string {
  const stamps = [...new Set(moments.map(timeLabel))];
  const last = stamps.pop() ?? "";
  const at = stamps.length > 0 ? `${stamps.join(", ")} and ${last}` : last;
  const topic = conflict.topic.charAt(0).toUpperCase() + conflict.topic.slice(1);
  return `${topic}, ${open ? "open conflict" : "settled conflict"}, at ${at}`;
}

/**
 * The conflict that C goes to.
 * @param conflicts in order of their first moments.
 * @param from index of the one that has the keyboard, or a moment in seconds where none has.
 */
export function conflictBeside(
  conflicts: readonly StripConflict[],
  from: { readonly index: number } | { readonly seconds: number },
  direction: 1 | -1,
): number {
  const count = conflicts.length;
  if ("index" in from) return (from.index + direction + count) % count;
  const first = ({ moments }: StripConflict): number => moments[0] ?? 0;
  const found =
    direction === 1
      ? conflicts.findIndex((one) => first(one) >= from.seconds)
      : conflicts.findLastIndex((one) => first(one) < from.seconds);
  if (found >= 0) return found;
  return direction === 1 ? 0 : count - 1;
}

export interface ConflictStopsProps {
  /** In order of their first moments. */
  readonly conflicts: readonly StripConflict[];
  readonly view: StripView;
  readonly pieces: readonly TrackPiece[];
  readonly radius: number;
  /** Key of the conflict that has the keyboard; its line is drawn strongly, and its name is beside it. */
  readonly focused: string | null;
  readonly onOpen: (conflictKey: string) => void;
  readonly onPoint: (conflictKey: string | null) => void;
  readonly onLeave: () => void;
  /** Goes to another conflict; a view that does not show it is moved. */
  readonly onGo: (index: number) => void;
}

/** The conflicts for the keyboard and for screen readers: one tab stop, arrows from one to the next, Enter opens it at Check. */
export function ConflictStops({ conflicts, view, pieces, radius, focused, onOpen, onPoint, onLeave, onGo }: ConflictStopsProps) {
  const [stop, setStop] = useState(0);
  const here = conflicts.find(({ conflict }) => conflict.key === focused);
  // Only the one that has the keyboard is seen, so only its place is reckoned: the others need none.
  const place = here ? pointOn(pieces, radius, xOf(view, here.moments[0] ?? 0), middleOf(lanes.feet)) : null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: no form fields in it
    <div className="conflict-stops" role="group" aria-label="Conflicts" style={place ? { left: place.x, top: place.y } : undefined}>
      <StopList conflicts={conflicts} stop={stop} onStop={setStop} {...{ onOpen, onPoint, onLeave, onGo }} />
      {here ? (
        <p className="lap-note" data-side={place && place.x > 320 ? "before" : "after"} aria-hidden="true">
          {here.conflict.topic}
          {here.open ? "" : ", settled"}
        </p>
      ) : null}
    </div>
  );
}

interface StopListProps extends Pick<ConflictStopsProps, "conflicts" | "onOpen" | "onPoint" | "onLeave" | "onGo"> {
  readonly stop: number;
  readonly onStop: (index: number) => void;
}

const StopList = memo(function StopList({ conflicts, stop, onStop, onOpen, onPoint, onLeave, onGo }: StopListProps) {
  const tabStop = Math.min(stop, conflicts.length - 1);
  return conflicts.map((one, index) => (
    <button
      key={one.conflict.key}
      type="button"
      className="conflict-stop"
      data-conflict={index}
      tabIndex={index === tabStop ? 0 : -1}
      aria-label={`${conflictName(one)}. Opens at Check`}
      onFocus={() => {
        onStop(index);
        onPoint(one.conflict.key);
      }}
      onBlur={() => onPoint(null)}
      onClick={() => onOpen(one.conflict.key)}
      onKeyDown={(event) => {
        const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
        if (by !== undefined) onGo((index + by + conflicts.length) % conflicts.length);
        else if (event.key === "Home") onGo(0);
        else if (event.key === "End") onGo(conflicts.length - 1);
        else if (event.key === "Escape") onLeave();
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    />
  ));
});
