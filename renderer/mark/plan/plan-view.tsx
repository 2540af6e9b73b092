import { memo, useId, useMemo } from "react";
import {
  alongX,
  bodyBox,
  bodyPath,
  centreY,
  outlines,
  planSize,
  type RecordingDetail,
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
import { type AreaLabel, areaLabel, disputeSign, findingSign, labelLeading, shownTime } from "./area-label.ts";
import { BodyLines, BodyUnder } from "./body-drawing.tsx";
import "./plan-view.css";
import { UndersideDrawing } from "./underside-drawing.tsx";
import { tallySentence } from "./zone-tallies.ts";

export interface PlanViewProps {
  readonly detail: RecordingDetail;
  readonly clock: Clock;
}

/** The zones that are no place around or in the body, before and behind the drawing. */
const asidesBefore = ["opening", "documents", "roof"] as const satisfies readonly ZoneName[];
const asidesBehind = ["underside", "drive", "closing"] as const satisfies readonly ZoneName[];

/** Room for a label in the drawing's units: along the flanks, at nose and tail, and inside the body, where a second line is easier to read than a long one. */
const sideRoom = 260;
const endRoom = 52;
const insideRoom = 92;

/** Middle of the cabin's label: on the far side of the centre line from the steering wheel, whose rim comes within nine units of it. */
export function cabinLabelY(drive: RecordingDetail["summary"]["vehicle"]["drive"], height: number): number {
  const driverSide = drive === "left-hand" ? 1 : -1;
  return centreY - driverSide * (height / 2 - 8);
}

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
  const aside = (zone: ZoneName) => (
    <Aside key={zone} zone={zone} tally={tallies[zone]} here={here === zone} onPick={go}>
      {zone === "underside" ? <UndersideDrawing bodyStyle={bodyStyle} /> : null}
    </Aside>
  );
  return (
    <section className="plan" aria-label="Plan view">
      <div className="plan-asides">{asidesBefore.map(aside)}</div>
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
      </svg>
      {/* Words on a sheet of their own: the lines of the lap's conflicts run below them and above the areas. */}
      <svg viewBox={`0 0 ${planSize.width} ${planSize.height}`} className="plan-svg plan-words" aria-hidden="true">
        {ring.map((piece) => (
          <AreaName
            key={piece.zone}
            label={areaLabel(zoneLabels[piece.zone], tallies[piece.zone], piece.lines === 1 ? sideRoom : endRoom)}
            x={piece.labelX}
            y={piece.labelY}
          />
        ))}
        {inside.map(({ zone, from, to }) => {
          // The hood's own line stands before the engine bay's label, the deck's shut line before the load space's.
          const label = areaLabel(zoneLabels[zone], tallies[zone], Math.min(insideRoom, alongX(to) - alongX(from) - 2));
          return (
            <AreaName
              key={zone}
              label={label}
              x={alongX((from + to) / 2) + (zone === "engine-bay" ? 2 : 0)}
              y={zone === "cabin" ? cabinLabelY(drive, label.height) : centreY}
            />
          );
        })}
      </svg>
      <div className="plan-asides">{asidesBehind.map(aside)}</div>
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

interface AreaNameProps {
  readonly label: AreaLabel;
  readonly x: number;
  readonly y: number;
}

function AreaName({ label: { lines, width, height }, x, y }: AreaNameProps) {
  const first = y - ((lines.length - 1) * labelLeading) / 2 + 4;
  return (
    <g className="plan-name">
      <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
      {lines.map(({ words, disputes }, index) => (
        <text key={`${words} ${disputes}`} x={x} y={first + index * labelLeading} className={index > 0 ? "plan-signs" : undefined}>
          {words}
          {disputes ? <tspan className="plan-disputes">{words ? ` ${disputes}` : disputes}</tspan> : null}
        </text>
      ))}
    </g>
  );
}

interface AsideProps {
  readonly zone: ZoneName;
  readonly tally: ZoneTally;
  readonly here: boolean;
  readonly onPick: (zone: ZoneName) => void;
  readonly children?: React.ReactNode;
}

function Aside({ zone, tally, here, onPick, children }: AsideProps) {
  return (
    <button
      type="button"
      className="plan-aside"
      {...keepFocus}
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
        {[shownTime(tally), findingSign(tally)].filter(Boolean).join(" ")}
        <span className="plan-disputes">{tally.openConflicts > 0 ? ` ${disputeSign(tally)}` : ""}</span>
      </span>
      <span className="visually-hidden"> {tallySentence(tally)}</span>
      {children}
    </button>
  );
}
