import { type LapSpan, zoneLabels } from "../../../shared-types/index.ts";
import { patternId } from "../../shared/zone-patterns.tsx";
import { nameThatFits, type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";
import { zoneSigns } from "./zone-signs.ts";

/** The zone spans: names above, patterns below; proposals thin and with a dashed edge until accepted. */
export function SpanBand({ lap, view }: { readonly lap: readonly LapSpan[]; readonly view: StripView }) {
  return lap.map((span) => {
    const left = xOf(view, span.start);
    const right = xOf(view, span.end);
    if (right < 0 || left > view.width) return null;
    const shownLeft = Math.max(0, left);
    const name = nameThatFits(
      [span.title, zoneLabels[span.zone], zoneLabels[span.zone].replace(/^(Driver|Passenger)'s side$/, "$1")],
      zoneSigns[span.zone],
      Math.min(right, view.width) - shownLeft,
    );
    const proposed = span.zoneSpanId === null;
    const inset = proposed ? 5 : 0;
    return (
      <g key={`${span.start}-${span.zone}`} className="lap-span" data-proposed={proposed || undefined}>
        <title>{`${span.title}${proposed ? ", proposed" : ""}`}</title>
        {name ? (
          <text
            {...(name.upright
              ? { transform: `translate(${(shownLeft + Math.min(right, view.width)) / 2 + 4} ${lanes.names.top + 15.5}) rotate(-90)` }
              : { x: shownLeft + 4, y: lanes.names.top + 13 })}
          >
            {name.text}
          </text>
        ) : null}
        <rect
          className="zone-outline"
          data-zone={span.zone}
          x={left + 1}
          width={Math.max(1, right - left - 2)}
          y={lanes.band.top + inset + 0.5}
          height={lanes.band.height - inset - 1}
          fill={`url(#${patternId(span.zone)})`}
        />
      </g>
    );
  });
}
