import { memo, useId, useMemo } from "react";
import {
  alongX,
  bodyBox,
  bodyPath,
  centreY,
  outlines,
  planSize,
  type RecordingDetail,
  timeLabel,
  walkRing,
  type ZoneName,
  type ZoneTally,
  zoneLabels,
  zoneTallies,
} from "../../../shared-types/index.ts";
import type { Clock } from "../../player/clock.ts";
import { useClockValue } from "../../player/use-clock.ts";
import { keepFocus } from "../../shared/keep-focus.ts";
import { patternId, ZoneSwatch } from "../../shared/zone-patterns.tsx";
import { nextSpanOfZone, spanAt } from "../lap.ts";
import { BodyLines, BodyUnder } from "./body-drawing.tsx";
import "./plan-view.css";
import { UndersideDrawing } from "./underside-drawing.tsx";
import { tallySentence } from "./zone-tallies.ts";

export interface PlanViewProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
}

/** The zones that are no place around or in the body, below the drawing. */
const asides = ["roof", "documents", "opening", "closing", "drive"] as const satisfies readonly ZoneName[];

/** The vehicle from above with the way round it: pick an area to go there, and again for its next span. */
export const PlanView = memo(function PlanView({ detail, clock }: PlanViewProps) {
  const clipId = useId();
  const here = useClockValue(clock, (reading) => spanAt(detail.lap, reading.time)?.zone ?? null);
  const tallies = useMemo(() => zoneTallies(detail), [detail]);
  const { bodyStyle, drive } = detail.summary.vehicle;
  const outline = outlines[bodyStyle];
  const ring = walkRing(drive);
  const go = (zone: ZoneName) => {
    const span = nextSpanOfZone(detail.lap, zone, clock.read().time);
    if (span) clock.seek(span.start);
  };
  const inside = [
    { zone: "engine-bay", from: 0, to: outline.cowl },
    { zone: "cabin", from: outline.cowl, to: outline.deck },
    { zone: "cargo", from: outline.deck, to: 1 },
  ] as const;
  return (
    <section className="plan" aria-label="Plan view">
      {/* biome-ignore lint/a11y/useSemanticElements: no form fields in it */}
      <svg
        viewBox={`0 0 ${planSize.width} ${planSize.height}`}
        className="plan-svg"
        role="group"
        aria-label={`${bodyStyle}, seen from above, nose to the left`}
      >
        <clipPath id={clipId}>
          <path d={bodyPath(outline)} />
        </clipPath>
        <BodyUnder bodyStyle={bodyStyle} />
        {ring.map((piece) => (
          <Area key={piece.zone} zone={piece.zone} tally={tallies[piece.zone]} here={here === piece.zone} onPick={go}>
            <path
              className="plan-area zone-outline"
              data-zone={piece.zone}
              d={piece.path}
              fill={here === piece.zone ? `url(#${patternId(piece.zone)})` : undefined}
            />
          </Area>
        ))}
        {inside.map(({ zone, from, to }) => (
          <Area key={zone} zone={zone} tally={tallies[zone]} here={here === zone} onPick={go}>
            <rect
              className="plan-area plan-inside"
              data-zone={zone}
              clipPath={`url(#${clipId})`}
              x={alongX(from)}
              width={alongX(to) - alongX(from)}
              y={bodyBox.top}
              height={bodyBox.halfWidth * 2}
              fill={here === zone ? `url(#${patternId(zone)})` : undefined}
            />
          </Area>
        ))}
        <BodyLines bodyStyle={bodyStyle} drive={drive} />
        {ring.map((piece) => (
          <AreaName key={piece.zone} zone={piece.zone} tally={tallies[piece.zone]} x={piece.labelX} y={piece.labelY} lines={piece.lines} />
        ))}
        {inside.map(({ zone, from, to }) => (
          <AreaName
            key={zone}
            zone={zone}
            tally={tallies[zone]}
            x={alongX((from + to) / 2) + (zone === "engine-bay" ? 2 : 0)}
            y={centreY}
            lines={2}
          />
        ))}
      </svg>
      <div className="plan-asides">
        <Aside zone="underside" tally={tallies.underside} here={here === "underside"} onPick={go} wide>
          <UndersideDrawing bodyStyle={bodyStyle} />
        </Aside>
        {asides.map((zone) => (
          <Aside key={zone} zone={zone} tally={tallies[zone]} here={here === zone} onPick={go} />
        ))}
      </div>
    </section>
  );
});

interface AreaProps {
  readonly zone: ZoneName;
  readonly tally: ZoneTally;
  readonly here: boolean;
  readonly onPick: (zone: ZoneName) => void;
  readonly children: React.ReactNode;
}

function Area({ zone, tally, here, onPick, children }: AreaProps) {
  const shown = tally.seconds > 0;
  return (
    // biome-ignore lint/a11y/useSemanticElements: SVG has no button element
    <g
      className="plan-pick"
      {...keepFocus}
      role="button"
      tabIndex={0}
      aria-label={`${zoneLabels[zone]} ${tallySentence(tally)}`}
      aria-disabled={shown ? undefined : true}
      aria-current={here ? "location" : undefined}
      data-shown={shown || undefined}
      onClick={() => onPick(zone)}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onPick(zone);
      }}
    >
      {children}
    </g>
  );
}

/** How long a zone is shown and how much was found there. */
function shownWords(tally: ZoneTally): string {
  const time = tally.seconds > 0 ? timeLabel(tally.seconds) : "not shown";
  return tally.findings > 0 ? `${time} ◆${tally.findings}` : time;
}

/** Open conflicts, with the foot of the strip's arcs as their sign. */
function disputeWords(tally: ZoneTally): string {
  return tally.openConflicts > 0 ? ` ▼${tally.openConflicts}` : "";
}

function AreaName({
  zone,
  tally,
  x,
  y,
  lines,
}: {
  readonly zone: ZoneName;
  readonly tally: ZoneTally;
  readonly x: number;
  readonly y: number;
  readonly lines: 1 | 2;
}) {
  const name = zoneLabels[zone];
  const signs = shownWords(tally);
  const disputes = disputeWords(tally);
  const signLength = signs.length + disputes.length;
  const width = (lines === 1 ? name.length + signLength + 2 : Math.max(name.length, signLength)) * 5.7 + 3;
  const height = lines === 1 ? 17 : 31;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: words of a drawing; the area's button says them
    <g className="plan-name" aria-hidden="true">
      <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
      {lines === 1 ? (
        <text x={x} y={y + 4}>
          {name} <tspan className="plan-signs">{signs}</tspan>
          <tspan className="plan-disputes">{disputes}</tspan>
        </text>
      ) : (
        <>
          <text x={x} y={y - 2.5}>
            {name}
          </text>
          <text x={x} y={y + 11.5} className="plan-signs">
            {signs}
            <tspan className="plan-disputes">{disputes}</tspan>
          </text>
        </>
      )}
    </g>
  );
}

interface AsideProps {
  readonly zone: ZoneName;
  readonly tally: ZoneTally;
  readonly here: boolean;
  readonly onPick: (zone: ZoneName) => void;
  readonly wide?: boolean;
  readonly children?: React.ReactNode;
}

function Aside({ zone, tally, here, onPick, wide, children }: AsideProps) {
  return (
    <button
      type="button"
      className="plan-aside"
      {...keepFocus}
      data-wide={wide || undefined}
      data-zone-name={zone}
      data-here={here || undefined}
      data-shown={tally.seconds > 0 || undefined}
      aria-disabled={tally.seconds > 0 ? undefined : true}
      aria-current={here ? "location" : undefined}
      onClick={() => onPick(zone)}
    >
      <span className="plan-aside-name">
        <ZoneSwatch zone={zone} /> {zoneLabels[zone]}
      </span>
      <span className="plan-signs" aria-hidden="true">
        {shownWords(tally)}
        <span className="plan-disputes">{disputeWords(tally)}</span>
      </span>
      <span className="visually-hidden"> {tallySentence(tally)}</span>
      {children}
    </button>
  );
}
