import {
  type ConditionIndex,
  claimSubject,
  decisionLabels,
  findingSubject,
  type ToldMoment,
  timeLabel,
  valueLabel,
  type ZoneName,
  zoneLabels,
  zoneNames,
} from "../../../shared-types/index.ts";
import { bothHoldWords } from "../both-hold.ts";
import { stanceWords } from "../claim-standing.ts";
import { gradeSign } from "./index-plan.ts";
import { html, type Markup } from "./markup.ts";

type IndexClaim = ConditionIndex["claims"][number];
type IndexConflict = ConditionIndex["conflicts"][number];
type IndexFinding = ConditionIndex["findings"][number];

/** A picture of the video as a page carries it. */
export interface IndexStill {
  readonly atSeconds: number;
  /** `data:image/jpeg;base64,…`, or PNG or WebP. */
  readonly dataUri: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** A time that plays where there is a video, and is only read where there is none. */
export type Jump = (seconds: number) => Markup;

export function jumpFor(plays: boolean): Jump {
  return (seconds) =>
    plays
      ? html`<button type="button" class="jump" data-at="${seconds.toFixed(3)}" aria-label="Play from ${timeLabel(seconds)}">${timeLabel(seconds)}</button>`
      : html`<span class="at">${timeLabel(seconds)}</span>`;
}

/** What a page may hold as a picture; anything else is left out. */
const pictureUri = /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+=*$/;

/** The still nearest after the beginning of a stretch of time, within it; a moment before counts too, since a person may have stopped early. */
export function stillWithin(stills: readonly IndexStill[], start: number, end: number): IndexStill | undefined {
  const leewaySeconds = 0.5;
  return stills
    .filter(
      ({ atSeconds, dataUri }) =>
        atSeconds >= start - leewaySeconds && atSeconds < Math.max(end, start + leewaySeconds) && pictureUri.test(dataUri),
    )
    .toSorted((a, b) => Math.abs(a.atSeconds - start) - Math.abs(b.atSeconds - start))[0];
}

export function stillPicture(still: IndexStill | undefined, of: string): Markup | false {
  return (
    still !== undefined &&
    html`<img src="${still.dataUri}" width="${still.width}" height="${still.height}" alt="${of}, at ${timeLabel(still.atSeconds)} in the recording">`
  );
}

export function openMarkup(topics: readonly string[]): Markup | false {
  return topics.length > 0 && html`<span class="open-mark">▼ in dispute: ${topics.join(", ")}</span>`;
}

function hedge(stance: IndexClaim["stance"] | null): Markup | false {
  const words = stanceWords(stance);
  return words !== "" && html`<span class="hedge">${words}</span>`;
}

/** Quotes with their times, doubts and disputes; the dispute that the block itself is about is not said again. */
function moments(told: readonly ToldMoment[], jump: Jump, ownTopic: string | null = null): Markup {
  return html`<ul class="moments">${told.map(
    (moment) =>
      html`<li>${jump(moment.start)} <q>${moment.quote}</q> ${hedge(moment.stance)} ${openMarkup(moment.openConflicts.filter((topic) => topic !== ownTopic))}</li>`,
  )}</ul>`;
}

export function findingList(findings: readonly IndexFinding[], stills: readonly IndexStill[], jump: Jump): Markup {
  if (findings.length === 0)
    return html`<p>No findings were marked. That nothing is noted here does not mean that there is nothing to note.</p>`;
  return html`<ol class="findings">${findings.map((finding) => {
    const picture = stillPicture(stillWithin(stills, finding.start, finding.end), finding.seen);
    return html`
<li class="${picture ? "finding pictured" : "finding"}">
<div class="finding-words">
<p class="finding-head">${jump(finding.start)} <b class="finding-subject">${findingSubject(finding)}</b> ${gradeSign(finding.grade)}</p>
<p>${finding.seen}</p>
${finding.note !== "" && html`<p class="note">${finding.note}</p>`}
<p class="faint">${zoneLabels[finding.zone]} · noted by ${finding.initials} ${hedge(finding.stance)} ${openMarkup(finding.openConflicts)}</p>
</div>${picture}</li>`;
  })}</ol>`;
}

export function claimLists(claims: readonly IndexClaim[], conflicts: readonly IndexConflict[], jump: Jump): Markup {
  const zones = zoneNames.filter((zone) => claims.some((claim) => claim.zone === zone));
  if (zones.length === 0) return html`<p>No checkable claims were read.</p>`;
  return html`${zones.map((zone) =>
    zoneClaims(
      zone,
      claims.filter((claim) => claim.zone === zone),
      conflicts,
      jump,
    ),
  )}`;
}

function zoneClaims(zone: ZoneName, claims: readonly IndexClaim[], conflicts: readonly IndexConflict[], jump: Jump): Markup {
  return html`<h3 id="said-${zone}">${zoneLabels[zone]}</h3><ul class="claims">${claims.map(
    (claim) => html`
<li class="${claimClass(claim)}">${jump(claim.start)}
<div><span class="claim-subject">${claimSubject(claim)}</span> <b class="claim-value">${valueLabel(claim.value, claim.unit, claim.attribute)}</b> ${standing(claim, bothHoldWords(claim, conflicts))}</div>
<q>${claim.quote}</q></li>`,
  )}</ul>`;
}

function claimClass({ openConflicts, status, ruledOut }: IndexClaim): string {
  return ["claim", openConflicts.length > 0 || status === "denied" ? "disputed" : "", ruledOut !== null ? "overruled" : ""]
    .filter(Boolean)
    .join(" ");
}

const ruledOutWords = { overruled: "not so: overruled in review", misheard: "misheard: ruled the recognizer's error" } as const;

/** A hedged claim carries its hedge, a disputed one its dispute, and one that was ruled out says so beside either. */
function standing(claim: IndexClaim, bothHold: readonly string[]): Markup {
  const doubt = html`${bothHold.map((words) => html`<span class="upheld-mark">${words}</span> `)}${hedge(claim.stance)}`;
  const ruled = claim.ruledOut !== null && html`<span class="overruled-mark">${ruledOutWords[claim.ruledOut]}</span>`;
  if (claim.status === "disputed") return html`${ruled} ${openMarkup(claim.openConflicts)} ${doubt}`;
  if (claim.status === "denied") return html`<span class="open-mark">▼ the stock sheet says otherwise</span> ${doubt}`;
  if (ruled) return html`${ruled} ${doubt}`;
  return html`${claim.status === "upheld" && bothHold.length === 0 && html`<span class="upheld-mark">stands after review</span>`} ${doubt}`;
}

export function supportList({ supports }: ConditionIndex, jump: Jump): Markup {
  return html`<ul class="borne">${supports.map(
    (support) => html`
<li><p><b>${support.topic}</b>: ${support.why}</p>${moments(support.moments, jump)}</li>`,
  )}</ul>`;
}

/** A bare figure of five digits or more as the spoken ones stand beside it, 61,240; a number of the vehicle's own stays as it is stamped. */
function sheetFigure({ field, sheetValue }: ConditionIndex["denials"][number]): string {
  return /^\d{5,7}$/.test(sheetValue) && !/vin|serial|number|\bno\b/i.test(field) ? Number(sheetValue).toLocaleString("en-US") : sheetValue;
}

export function denialBlock(denial: ConditionIndex["denials"][number], jump: Jump): Markup {
  return html`<article class="case open">
<h3>${denial.field}: the sheet says ${sheetFigure(denial)}</h3>
<p>${denial.why}</p>
${moments(denial.moments, jump)}
</article>`;
}

export function conflictBlock(conflict: IndexConflict, jump: Jump): Markup {
  const { ruling, standard } = conflict;
  return html`<article class="case ${conflict.state}">
<h3>${conflict.state === "open" ? "▼ Open: " : ""}${conflict.topic}</h3>
<p>${conflict.why}</p>
<dl class="sides">${conflict.sides.map(
    (side, position) =>
      html`<div><dt>${valueLabel(side.value, side.unit, side.attribute)}${ruling?.decision === "side-stands" && ruling.side === position && html` <span class="upheld-mark">stands</span>`}</dt><dd>${moments(side.moments, jump, conflict.topic)}</dd></div>`,
  )}</dl>
${standard && html`<p class="faint">${standard.name}: ${standard.working} Source: ${standard.source}</p>`}
${ruling && html`<p>${decisionLabels[ruling.decision]}: ${ruling.reason}${ruling.rightWords ? html` Right words: <q>${ruling.rightWords}</q>` : ""} <span class="faint">(${ruling.initials}, ${ruling.at.slice(0, 10)})</span></p>`}
</article>`;
}
