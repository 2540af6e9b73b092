import {
  alongX,
  type BodyStyle,
  bodyBox,
  bodyPath,
  bodyShapes,
  type ConditionIndex,
  centreY,
  gradeLabels,
  gradeShapes,
  outlines,
  type PlanShape,
  type PositionName,
  planSize,
  type RecordingDetail,
  shapesUnder,
  timeLabel,
  undersideShapes,
  undersideSize,
  walkRing,
  type ZoneName,
  type ZoneTally,
  zoneLabels,
  zoneTallies,
} from "../../../shared-types/index.ts";
import { html, type Markup, raw } from "./markup.ts";

/** What the drawing of an index shows: time, findings and open conflicts of each zone. */
export type IndexPlan = Readonly<Record<ZoneName, ZoneTally>>;

export function planOf(detail: RecordingDetail): IndexPlan {
  return zoneTallies(detail);
}

type IndexFinding = ConditionIndex["findings"][number];
type Vehicle = ConditionIndex["recording"]["vehicle"];

/** How far in from the body's edge a mark stands, in the drawing's units. */
const inset = 13;
/** Marks that fit beside each other at one place, and how far apart. */
const marksInRow = 3;
const marksAtSide = 5;
const apart = 17;

/** Zones below the drawing: no place around or in the body as it is seen from above. */
const besides = ["roof", "underside", "documents", "opening", "drive", "closing"] as const satisfies readonly ZoneName[];

/** The vehicle from above, with every finding's number at its place and what each zone holds. Nose to the left. */
export function planDrawing(index: ConditionIndex, plan: IndexPlan): Markup {
  const { bodyStyle, drive } = index.recording.vehicle;
  const outline = outlines[bodyStyle];
  const inside = insideOf(bodyStyle);
  const side = drive === "left-hand" ? "left" : "right";
  return html`<svg class="plan" viewBox="0 0 ${planSize.width} ${planSize.height}" role="img" aria-label="The ${bodyStyle} from above, nose to the left, driver on the ${side}; findings by number. The list beside it says the same in words.">
<g class="plan-wheels">${shapesUnder(bodyStyle).map(drawn)}</g>
${walkRing(drive).map((piece) => html`<path class="${areaClass(plan[piece.zone])}" d="${piece.path}"/>`)}
<clipPath id="plan-clip"><path d="${bodyPath(outline)}"/></clipPath>
<g clip-path="url(#plan-clip)">${inside.map(({ zone, from, to }) => html`<rect class="${areaClass(plan[zone])} plan-inside" x="${alongX(from)}" y="${bodyBox.top}" width="${alongX(to) - alongX(from)}" height="${bodyBox.halfWidth * 2}"/>`)}</g>
<g class="plan-lines">${bodyShapes(bodyStyle, drive).map(drawn)}</g>
${walkRing(drive).map((piece) => areaName(piece.zone, plan[piece.zone], piece.labelX, piece.labelY, piece.lines))}
${inside.map(({ zone, from, to }) => areaName(zone, plan[zone], alongX((from + to) / 2), centreY, 2))}
${placedFindings(index).placed.map(findingMark)}
</svg>`;
}

function drawn({ element, attributes, tone }: PlanShape): Markup {
  const written = Object.entries(attributes).map(([name, value]) => html` ${name}="${value}"`);
  return html`<${raw(element)}${tone ? html` class="plan-${tone}"` : ""}${written}/>`;
}

/** Shown, disputed or never shown: told by the area's line as well as by its ground. */
function areaClass({ seconds, openConflicts }: ZoneTally): string {
  if (openConflicts > 0) return "plan-area plan-disputed";
  return seconds > 0 ? "plan-area" : "plan-area plan-unseen";
}

function areaName(zone: ZoneName, tally: ZoneTally, x: number, y: number, lines: 1 | 2): Markup {
  const time = `${tally.seconds > 0 ? timeLabel(tally.seconds) : "no stretch"}${tally.openConflicts > 0 ? " ▼" : ""}`;
  if (lines === 1)
    return html`<text class="plan-name" x="${x}" y="${y + 4}">${zoneLabels[zone]} <tspan class="plan-time">${time}</tspan></text>`;
  return html`<text class="plan-name" x="${x}" y="${y - 2}">${zoneLabels[zone]}</text><text class="plan-name plan-time" x="${x}" y="${y + 11}">${time}</text>`;
}

interface Place {
  readonly x: number;
  /** One for each row of marks. */
  readonly rows: readonly number[];
  readonly inRow: number;
}

type Inside = readonly { readonly zone: ZoneName; readonly from: number; readonly to: number }[];

function insideOf(bodyStyle: BodyStyle): Inside {
  const { cowl, deck } = outlines[bodyStyle];
  return [
    { zone: "engine-bay", from: 0, to: cowl },
    { zone: "cabin", from: cowl, to: deck },
    { zone: "cargo", from: deck, to: 1 },
  ];
}

/** Where on the vehicle a finding's mark stands: by its position, else by its zone; undefined for what has no place on it. */
function placeOf({ position, zone }: IndexFinding, { bodyStyle, drive }: Vehicle): Place | undefined {
  const within = insideOf(bodyStyle).find((one) => one.zone === zone);
  if (within) {
    // Inside the vehicle its own area is nearer than a corner of the body. Its name stands in the middle, and the marks above and below it.
    const inRow = Math.max(1, Math.floor((alongX(within.to) - alongX(within.from)) / apart));
    return { x: alongX((within.from + within.to) / 2), rows: zone === "cabin" ? [centreY - 21, centreY + 25] : [centreY - 21], inRow };
  }
  const driverSign = drive === "left-hand" ? 1 : -1;
  const edge = (share: number, sign: number, inRow: number): Place => ({
    x: alongX(share),
    rows: [centreY + sign * (bodyBox.halfWidth - inset)],
    inRow,
  });
  const end = (x: number): Place => ({ x, rows: [centreY + 28, centreY + 43], inRow: marksInRow });
  const positions: Partial<Record<PositionName, Place>> = {
    front: end(alongX(0) + inset + 6),
    rear: end(alongX(1) - inset - 6),
    driver: edge(0.5, driverSign, marksAtSide),
    passenger: edge(0.5, -driverSign, marksAtSide),
    "driver-front": edge(0.17, driverSign, marksInRow),
    "driver-rear": edge(0.8, driverSign, marksInRow),
    "passenger-front": edge(0.17, -driverSign, marksInRow),
    "passenger-rear": edge(0.8, -driverSign, marksInRow),
  };
  const ofZone: Partial<Record<ZoneName, PositionName>> = {
    front: "front",
    rear: "rear",
    "driver-side": "driver",
    "passenger-side": "passenger",
  };
  return (position && positions[position]) ?? positions[ofZone[zone] ?? "all"];
}

interface NumberedFinding {
  readonly finding: IndexFinding;
  /** As the list of findings counts. */
  readonly number: number;
}

/** Findings at their places, and those that stand in the list alone: without a place here, or more than its place has room for. */
function placedFindings({ findings, recording }: ConditionIndex) {
  const numbered = findings.map((finding, position) => ({ finding, number: position + 1, place: placeOf(finding, recording.vehicle) }));
  const placed: (NumberedFinding & { readonly x: number; readonly y: number })[] = [];
  const left: NumberedFinding[] = [];
  for (const group of Map.groupBy(numbered, ({ place }) => (place ? `${place.x} ${place.rows[0]}` : "")).values()) {
    const place = group[0]?.place;
    const room = place ? place.inRow * place.rows.length : 0;
    left.push(...group.slice(room));
    if (!place) continue;
    const here = group.slice(0, room);
    here.forEach(({ finding, number }, position) => {
      const row = Math.floor(position / place.inRow);
      const inRow = Math.min(place.inRow, here.length - row * place.inRow);
      placed.push({ finding, number, x: place.x + ((position % place.inRow) - (inRow - 1) / 2) * apart, y: place.rows[row] ?? centreY });
    });
  }
  return { placed, left: left.toSorted((a, b) => a.number - b.number) };
}

function findingMark({ finding: { grade, openConflicts }, number, x, y }: ReturnType<typeof placedFindings>["placed"][number]): Markup {
  const filled = grade === "worn" || grade === "damaged" ? " plan-mark-filled" : "";
  const open = openConflicts.length > 0 ? " plan-mark-open" : "";
  return html`<g class="plan-mark${filled}${open}" transform="translate(${x.toFixed(1)} ${y.toFixed(1)})"><path d="${gradeShapes[grade]}" transform="scale(1.65)"/><text y="3.4">${number}</text></g>`;
}

/** Which findings the drawing does not show, by number; nothing where it shows all. */
export function notDrawn(index: ConditionIndex): Markup | false {
  const { left } = placedFindings(index);
  return (
    left.length > 0 &&
    html`Not on the drawing, in the list alone: ${left.map(({ finding, number }) => `${number} (${zoneLabels[finding.zone].toLowerCase()})`).join(", ")}.`
  );
}

/** Every zone in words: how long it is shown, what was found, what is open; and what no stretch is marked for. */
export function zoneList(index: ConditionIndex, plan: IndexPlan): Markup {
  const order: readonly ZoneName[] = ["front", "driver-side", "passenger-side", "rear", "engine-bay", "cabin", "cargo", ...besides];
  const shown = order.filter((zone) => plan[zone].seconds > 0);
  // Words at the beginning and the end belong to every recording's form; their absence tells a buyer nothing.
  const unseen = order.filter((zone) => plan[zone].seconds === 0 && zone !== "opening" && zone !== "closing");
  return html`<table class="zones"><caption>Zones in this recording</caption><thead><tr><th scope="col">Zone</th><th scope="col">Shown</th><th scope="col">Findings</th><th scope="col">Open</th></tr></thead><tbody>${shown.map(
    (zone) => {
      const { seconds, findings, openConflicts } = plan[zone];
      const said = index.claims.some((claim) => claim.zone === zone);
      return html`
<tr><th scope="row">${said ? html`<a href="#said-${zone}">${zoneLabels[zone]}</a>` : zoneLabels[zone]}</th><td>${timeLabel(seconds)}</td><td>${findings || "–"}</td><td>${openConflicts > 0 ? html`<span class="open-mark">▼ ${openConflicts}</span>` : "–"}</td></tr>`;
    },
  )}</tbody></table>
${unseen.length > 0 && html`<p class="unseen"><b>No stretch of the recording is marked for:</b> ${unseen.map((zone) => zoneLabels[zone].toLowerCase()).join(", ")}.</p>`}`;
}

/** The vehicle from beneath, small, where the recording shows it. */
export function undersideDrawing(index: ConditionIndex): Markup {
  const { width, height } = undersideSize;
  return html`<svg class="plan-beneath" viewBox="0 0 ${width} ${height}" aria-hidden="true" focusable="false"><g class="plan-lines">${undersideShapes(index.recording.vehicle.bodyStyle).map(drawn)}</g></svg>`;
}

/** The sign of a grade with its name: never the one without the other. */
export function gradeSign(grade: IndexFinding["grade"]): Markup {
  return html`<span class="grade grade-${grade}"><svg viewBox="-7 -7 14 14" aria-hidden="true" focusable="false"><path d="${gradeShapes[grade]}"/></svg>${gradeLabels[grade]}</span>`;
}

/** The recording as one band of chapters, with findings below and open conflicts above, in step with time. */
export function lapBand({ chapters, findings, conflicts, recording }: ConditionIndex): Markup {
  const width = 1000;
  const x = (seconds: number) => ((Math.min(seconds, recording.duration) / Math.max(recording.duration, 0.001)) * width).toFixed(1);
  const open = conflicts.filter(({ state }) => state === "open").flatMap(({ sides }) => sides.flatMap(({ moments }) => moments));
  return html`<svg class="band" viewBox="-8 0 ${width + 16} 48" preserveAspectRatio="none" aria-hidden="true" focusable="false">
${open.map((moment) => html`<path class="band-open" d="M0 12L-6 1H6Z" transform="translate(${x(moment.start)} 0)"/>`)}
${chapters.map((chapter, position) => html`<rect class="${position % 2 ? "band-odd" : "band-even"}" x="${x(chapter.start)}" y="14" width="${Math.max(0, Number(x(chapter.end)) - Number(x(chapter.start)) - 1.5).toFixed(1)}" height="16"/>`)}
${findings.map((finding) => html`<path class="band-finding" d="${gradeShapes[finding.grade]}" transform="translate(${x(finding.start)} 40)"/>`)}
</svg>`;
}
