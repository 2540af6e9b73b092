import { memo, useState } from "react";
import { timeLabel } from "../../../shared-types/index.ts";
import type { StripConflict } from "./conflict-arcs.ts";
import { type StripView, xOf } from "./geometry.ts";

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
  readonly onOpen: (conflictKey: string) => void;
  /** The conflict that has the keyboard; its arc is drawn strongly and named. */
  readonly onPoint: (conflictKey: string | null) => void;
  readonly onLeave: () => void;
  /** Goes to another conflict; a view that does not show it is moved. */
  readonly onGo: (index: number) => void;
}

/** The conflicts' arcs for the keyboard and for screen readers: one tab stop, arrows from one to the next, Enter opens it at Check. */
export const ConflictStops = memo(function ConflictStops({ conflicts, view, onOpen, onPoint, onLeave, onGo }: ConflictStopsProps) {
  const [stop, setStop] = useState(0);
  const tabStop = Math.min(stop, conflicts.length - 1);
  return (
    // biome-ignore lint/a11y/useSemanticElements: no form fields in it
    <div className="conflict-stops" role="group" aria-label="Conflicts">
      {conflicts.map((one, index) => {
        const left = Math.max(0, xOf(view, one.moments[0] ?? 0));
        const right = Math.min(view.width, xOf(view, one.moments.at(-1) ?? 0));
        return (
          <button
            key={one.conflict.key}
            type="button"
            className="conflict-stop"
            data-conflict={index}
            tabIndex={index === tabStop ? 0 : -1}
            aria-label={`${conflictName(one)}. Opens at Check`}
            style={{ transform: `translateX(${Math.min(left, view.width - 8)}px)`, width: Math.max(8, right - left) }}
            onFocus={() => {
              setStop(index);
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
        );
      })}
    </div>
  );
});
