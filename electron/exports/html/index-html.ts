import { type ConditionIndex, timeLabel } from "../../../shared-types/index.ts";
import { notAnalyzed, openWords, publicationWords } from "../publication-words.ts";
import { claimsOnce } from "./claims-once.ts";
import {
  claimLists,
  conflictBlock,
  denialBlock,
  findingList,
  type IndexStill,
  type Jump,
  jumpFor,
  stillPicture,
  stillWithin,
  supportList,
} from "./index-parts.ts";
import { gradeSign, type IndexPlan, lapBand, notDrawn, planDrawing, undersideDrawing, zoneList } from "./index-plan.ts";
import { indexScript } from "./index-script.ts";
import { indexStyle } from "./index-style.ts";
import { html, type Markup, raw } from "./markup.ts";
import { policyFor } from "./page-policy.ts";

export type { IndexStill } from "./index-parts.ts";

export interface IndexPageOptions {
  readonly plan: IndexPlan;
  /** Where the video lies, seen from the page, as an address (percent-encoded); null where there is none. A person may also open the file by hand. */
  readonly videoHref?: string | null | undefined;
  readonly stills?: readonly IndexStill[] | undefined;
  /** For paper alone: no video and nothing to press. */
  readonly printed?: boolean | undefined;
}

interface Section {
  readonly id: string;
  readonly title: string;
  readonly count: number | null;
  readonly content: Markup;
}

/**
 * The condition index as one page that needs nothing else: no script, style, font or picture from elsewhere. Its content security policy
 * allows just its own script and style, by their hashes.
 */
export function indexHtml(index: ConditionIndex, { plan, videoHref, stills = [], printed = false }: IndexPageOptions): string {
  const { recording } = index;
  const href = videoHref === undefined ? encodeName(recording.videoFile) : videoHref;
  const plays = !printed && recording.videoFile !== null && href !== null;
  const jump = jumpFor(plays);
  const policy = policyFor({ style: indexStyle, ...(plays ? { script: indexScript } : {}), video: plays, pictures: true });
  const vehicle = [recording.vehicle.year, recording.vehicle.name].filter(Boolean).join(" ");
  const sections = sectionsOf(index, stills, jump);
  const page = html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Condition index: ${recording.title}</title>
<style>${raw(indexStyle)}</style>
</head>
<body>
<header class="masthead">
<p class="overline">Condition index</p>
<h1>${recording.title}</h1>
<dl class="facts">
${vehicle !== "" && html`<div><dt>Vehicle</dt><dd>${vehicle}</dd></div>`}
${recording.stockNumber !== "" && html`<div><dt>Stock number</dt><dd class="plate">${recording.stockNumber}</dd></div>`}
<div><dt>Recording</dt><dd>${timeLabel(recording.duration)} long</dd></div>
<div><dt>Written</dt><dd>${index.writtenAt.slice(0, 10)}</dd></div>
</dl>
${standingNote(index)}
${lapBand(index)}
${plays && html`<p role="status" class="status"></p>`}
</header>
<nav aria-label="On this page" class="contents"><ul>${sections.map(({ id, title, count }) => html`<li><a href="#${id}">${title}</a>${count !== null && html` <span class="count">${count}</span>`}</li>`)}</ul></nav>
<main>
${plays && html`<section class="video" aria-label="Recording">${video(recording.videoFile!, href!)}</section>`}
<p class="${plays ? "times-of on-paper" : "times-of"}">${recording.videoFile === null ? "This recording is a transcript without a video; times are its own." : html`Times are minutes and seconds of the recording <b>${recording.videoFile}</b>.`}</p>
<section aria-labelledby="vehicle"><h2 id="vehicle">The vehicle, zone by zone</h2>
<div class="plan-beside"><figure>${planDrawing(index, plan)}${plan.underside.seconds > 0 && html`<div class="beneath">${undersideDrawing(index)}<span>Underside: ${timeLabel(plan.underside.seconds)}${plan.underside.findings > 0 && html`, ${plan.underside.findings} ${plan.underside.findings === 1 ? "finding" : "findings"}`}${plan.underside.openConflicts > 0 && html` <span class="open-mark">▼ ${plan.underside.openConflicts} open</span>`}</span></div>`}<figcaption>Numbers are the findings below, shaped by grade: ${(["as-new", "good", "worn", "damaged", "not-shown"] as const).map((grade) => html`${gradeSign(grade)} `)}▼ marks a zone where something said is in dispute. ${notDrawn(index)}</figcaption></figure><div>${zoneList(index, plan)}</div></div></section>
${sections.map(
  ({ id, title, content }) => html`<section aria-labelledby="${id}"><h2 id="${id}">${title}</h2>${content}</section>
`,
)}
</main>
<footer><p>Analysis version ${index.analysisVersion}, form ${index.version}. Everything on this page is in this one file; it loads nothing and sends nothing.</p></footer>
${plays && html`<p class="back" hidden><button type="button"></button></p><script>${raw(indexScript)}</script>`}
</body>
</html>
`;
  return page.text;
}

function encodeName(fileName: string | null): string | null {
  return fileName === null ? null : encodeURIComponent(fileName);
}

function sectionsOf(index: ConditionIndex, stills: readonly IndexStill[], jump: Jump): Section[] {
  const open = index.conflicts.filter((conflict) => conflict.state === "open");
  const settled = index.conflicts.filter((conflict) => conflict.state === "settled");
  const section = (id: string, title: string, count: number | null, content: Markup): Section => ({ id, title, count, content });
  const rows = claimsOnce(index.claims);
  return [
    section("chapters", "Chapters", index.chapters.length, chapterList(index, stills, jump)),
    section(
      "open",
      "Open conflicts",
      open.length,
      open.length > 0 ? html`${open.map((conflict) => conflictBlock(conflict, jump))}` : html`<p>None is open.</p>`,
    ),
    ...(index.denials.length > 0
      ? [
          section(
            "denied",
            "The stock sheet says otherwise",
            index.denials.length,
            html`${index.denials.map((denial) => denialBlock(denial, jump))}`,
          ),
        ]
      : []),
    section("findings", "Findings", index.findings.length, findingList(index.findings, stills, jump)),
    section(
      "said",
      "What was said, by zone",
      rows.length,
      html`${claimLists(rows, index.conflicts, jump)}${(index.formerClaims > 0 || rows.length < index.claims.length) && html`<p class="faint">${countWords(index, rows.length)}</p>`}`,
    ),
    section(
      "settled",
      "Settled conflicts",
      settled.length,
      settled.length > 0 ? html`${settled.map((conflict) => conflictBlock(conflict, jump))}` : html`<p>None was settled.</p>`,
    ),
    ...(index.supports.length > 0 ? [section("borne", "The stock sheet bears out", index.supports.length, supportList(index, jump))] : []),
    ...(index.unspoken.length > 0
      ? [
          section(
            "unspoken",
            "On the stock sheet, not spoken",
            index.unspoken.length,
            html`<ul>${index.unspoken.map((fact) => html`<li>${fact.why}</li>`)}</ul>`,
          ),
        ]
      : []),
    section("cautions", "Cautions", null, html`<ul class="cautions">${index.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`),
  ];
}

/** How far the index can be relied on, before anything else. */
function standingNote(index: ConditionIndex): Markup {
  const open = index.conflicts.filter(({ state }) => state === "open").length;
  const published = publicationWords(index.published);
  if (index.analysisVersion === 0)
    return html`<div class="standing standing-open"><p><b>${notAnalyzed}</b></p>${published !== "" && html`<p>${published}</p>`}</div>`;
  const { denials } = index;
  return html`<div class="${open > 0 || denials.length > 0 ? "standing standing-open" : "standing"}"><p>${
    open > 0
      ? html`<b>▼ ${openWords(open)}</b> What is said on either side is marked “in dispute” wherever it stands, and is not given as fact.`
      : html`<b>No conflict is open.</b> ${index.conflicts.length > 0 ? "What contradicted itself was ruled on by a person; the rulings are below." : "No two claims that were read contradict each other."}`
  }</p>${denials.length > 0 && html`<p><b>▼ The stock sheet says otherwise:</b> ${denials.map(({ why }) => html`${why} `)}<a href="#denied">More on this</a></p>`}${published !== "" && html`<p>${published}</p>`}</div>`;
}

function video(fileName: string, href: string): Markup {
  return html`<video controls preload="metadata" src="${href}" aria-label="The recording"></video>
<p class="open-video" hidden>The video is not beside this page. <label>Open ${fileName}: <input type="file" accept="video/*"></label></p>`;
}

function chapterList({ chapters }: ConditionIndex, stills: readonly IndexStill[], jump: Jump): Markup {
  const pictures = chapters.map((chapter) => stillPicture(stillWithin(stills, chapter.start, chapter.end), chapter.title));
  const pictured = pictures.some((picture) => picture !== false);
  return html`<ol class="${pictured ? "chapters pictured" : "chapters"}">${chapters.map(
    (chapter, position) => html`
<li>${pictures[position]}<span class="chapter-words">${jump(chapter.start)} <span>${chapter.title}</span>${!chapter.accepted && html` <span class="faint">(proposed)</span>`}${chapter.openConflicts > 0 && html` <span class="open-mark">▼ ${chapter.openConflicts} open</span>`}</span></li>`,
  )}</ol>`;
}

/** The desks count every claim, the index the rows that it lists: why the two differ. */
function countWords({ claims, formerClaims }: ConditionIndex, rows: number): string {
  const former = formerClaims === 1 ? "1 more is" : `${formerClaims} more are`;
  const again = claims.length - rows;
  return [
    `Of ${claims.length + formerClaims} claims, ${claims.length} are of the vehicle as it stands.`,
    again === 0 ? "" : `${again === 1 ? "1 of them says" : `${again} of them say`} what another says in the same words and shares its row.`,
    formerClaims === 0 ? "" : `${former} of an earlier state of it and not listed.`,
  ]
    .filter(Boolean)
    .join(" ");
}
