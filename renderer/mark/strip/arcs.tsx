import { useState } from "react";
import type { StripConflict } from "./conflict-arcs.ts";
import { arcHeight, arcPath, type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";

export interface ArcsProps {
  readonly conflicts: readonly StripConflict[];
  readonly view: StripView;
  /** The conflict that has the keyboard, if any. */
  readonly focused: string | null;
  readonly onOpenConflict: (conflictKey: string) => void;
}

/** Arcs over the strip, one for each conflict; a settled one is thin and dotted. A click opens it at the Check desk. */
export function Arcs({ conflicts, view, focused, onOpenConflict }: ArcsProps) {
  const [hovered, setPointed] = useState<string | null>(null);
  const pointed = hovered ?? focused;
  const baseline = lanes.arcs.top + lanes.arcs.height;
  const named = conflicts.find((one) => one.conflict.key === pointed);
  return (
    <g className="lap-arcs">
      {conflicts
        .filter((one) => reaches(one, view))
        .map(({ conflict, open, arcs, moments }) => (
          // biome-ignore lint/a11y/noStaticElementInteractions: the pointer's short cut; the conflict stops are the keyboard's way
          <g
            key={conflict.key}
            className="lap-arc"
            data-open={open || undefined}
            data-pointed={pointed === conflict.key || undefined}
            onPointerEnter={() => setPointed(conflict.key)}
            onPointerLeave={() => setPointed(null)}
            onPointerDown={(event) => event.stopPropagation()}
            onClick={() => onOpenConflict(conflict.key)}
          >
            {arcs.map((arc) => {
              const x1 = xOf(view, arc.from);
              const x2 = xOf(view, arc.to);
              const path = arcPath(x1, x2, baseline, arcHeight(x2 - x1, view.width, lanes.arcs.height));
              return (
                <g key={arc.to}>
                  <path d={path} className="lap-arc-reach" />
                  <path d={path} className="lap-arc-line" />
                </g>
              );
            })}
            {moments.map((moment) => (
              <path key={moment} className="lap-arc-foot" d={`M${xOf(view, moment) - 3.5} ${baseline - 3}h7l-3.5 6z`} />
            ))}
          </g>
        ))}
      {named ? <ArcName conflict={named} view={view} /> : null}
    </g>
  );
}

/** Whether any of it is in the view; a conflict's feet reach a little past its moments. */
function reaches({ moments }: StripConflict, view: StripView): boolean {
  return xOf(view, moments.at(-1) ?? 0) > -8 && xOf(view, moments[0] ?? 0) < view.width + 8;
}

function ArcName({ conflict: { conflict, moments, open }, view }: { readonly conflict: StripConflict; readonly view: StripView }) {
  const middle = xOf(view, ((moments[0] ?? 0) + (moments.at(-1) ?? 0)) / 2);
  const words = `${conflict.topic}${open ? "" : ", settled"}`;
  const width = words.length * 6.6 + 12;
  const left = Math.min(view.width - width, Math.max(0, middle - width / 2));
  return (
    <g className="lap-arc-name">
      <rect x={left} y={lanes.arcs.top + 12} width={width} height="18" />
      <text x={left + 6} y={lanes.arcs.top + 25}>
        {words}
      </text>
    </g>
  );
}
