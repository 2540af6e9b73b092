import {
  decisionLabels,
  gradeLabels,
  promiseLabels,
  type RecordedNote,
  type ReviewRecord,
  type ToldMoment,
  timeLabel,
  valueLabel,
} from "../../../shared-types/index.ts";
import { openMark, stanceWords } from "../claim-standing.ts";
import { html, type Markup, raw } from "../html/markup.ts";
import { policyFor } from "../html/page-policy.ts";
import { notAnalyzed, publicationWords } from "../publication-words.ts";

type RecordConflict = ReviewRecord["conflicts"][number];

/** Print first: this page is kept and shown, not worked with. */
const recordStyle = `
:root { color-scheme: light; --ink: #1d2730; --faint: #4b5058; --line: #cfd2d6; --lead: #14505c; --open: #8c1d2f; --upheld: #1f5c3a; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 0 1.25rem 2rem; background: #fff; color: var(--ink); font: 15px/1.5 "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", system-ui, sans-serif; overflow-wrap: anywhere; }
header { border-top: .5rem solid var(--lead); padding-top: 1rem; }
h1, h2, h3 { font-family: Charter, "Bitstream Charter", "Sitka Text", Cambria, Georgia, "Noto Serif", serif; line-height: 1.2; }
h1 { font-size: 1.7rem; margin: 0 0 .4rem; } h2 { font-size: 1.2rem; margin: 1.75rem 0 .5rem; padding-top: .4rem; border-top: 3px solid var(--ink); } h3 { font-size: 1rem; margin: 0 0 .2rem; }
p { margin: .2rem 0 .4rem; } ul, ol { margin: .2rem 0 .4rem; padding-inline-start: 1.25rem; } .faint { color: var(--faint); } code { font: .85em/1.4 ui-monospace, "Liberation Mono", monospace; overflow-wrap: anywhere; }
article { border: 1px solid var(--line); border-inline-start: .4rem solid var(--upheld); padding: .5rem .75rem; margin: .6rem 0; break-inside: avoid; } article.open { border-inline-start: .4rem double var(--open); }
table { border-collapse: collapse; width: 100%; } th, td { text-align: start; vertical-align: top; padding: .25rem .6rem .25rem 0; border-bottom: 1px solid var(--line); } tr { break-inside: avoid; } tbody th { font-weight: 500; } thead th { white-space: nowrap; } .rules th:first-child { width: 32%; } caption { text-align: start; font-weight: 600; padding: .5rem 0 .2rem; }
.former { text-decoration: line-through; } q { font-style: italic; } dt { font-weight: 600; } dd { margin: 0 0 .35rem; } .cautions { border: 2px solid var(--ink); padding: .6rem 1rem .6rem 2rem; break-inside: avoid; }
@page { margin: 15mm 14mm 17mm; @bottom-left { content: "Review record"; font: 8.5pt sans-serif; color: #444; } @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8.5pt sans-serif; color: #444; } }
@media print { body { max-width: none; padding: 0; font-size: 10pt; line-height: 1.4; } header { padding-top: .5rem; } h2 { margin-top: 1.2rem; } h2, h3 { break-after: avoid; } li { break-inside: avoid; } thead { display: table-header-group; } * { print-color-adjust: exact; } }
`;

/** The review record as a page that needs nothing else; made to be printed and kept. */
export function recordHtml(record: ReviewRecord): string {
  const { recording, leftOpen } = record;
  const vehicle = [recording.vehicle.year, recording.vehicle.name].filter(Boolean).join(" ");
  const left = leftOpen.conflicts.length;
  return html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyFor({ style: recordStyle })}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Review record: ${recording.title}</title>
<style>${raw(recordStyle)}</style>
</head>
<body>
<header>
<h1>Review record: ${recording.title}</h1>
<p>${vehicle}${recording.stockNumber && html`, stock number <b>${recording.stockNumber}</b>`}, ${timeLabel(recording.duration)} long</p>
<p class="faint">Written ${record.writtenAt}, analysis version ${record.analysisVersion}</p>
<p>${record.analysisVersion === 0 ? html`<b>${notAnalyzed}</b>` : left === 0 ? "No conflict is open." : html`<b>${left === 1 ? "One conflict is" : `${left} conflicts are`} open:</b> ${leftOpen.conflicts.join(", ")}.`}</p>
<p>${leftOpen.matters.length === 0 ? "Every denial of the stock sheet, promise and question was dealt with." : html`<b>Nobody has dealt with ${leftOpen.matters.length === 1 ? "one other matter" : `${leftOpen.matters.length} other matters`}:</b> ${sentenceEnd(leftOpen.matters.join("; "))}`}</p>
<p>${leftOpen.proposedFindings + leftOpen.proposedZones > 0 && `Nobody accepted ${leftOpen.proposedFindings} proposed findings and ${leftOpen.proposedZones} proposed zones.`}</p>
${record.publications.length > 0 && html`<ul>${record.publications.map((publication) => html`<li>${publicationWords({ ...publication, openMatters: publication.openMatters?.length ?? null })}${(publication.openMatters?.length ?? 0) > 0 && html` Not dealt with then: ${publication.openMatters?.join("; ")}.`}</li>`)}</ul>`}
</header>
<main>
<section aria-labelledby="h-files"><h2 id="h-files">Files, by SHA-256</h2><dl>
<dt>Video${recording.videoFile && html` ${recording.videoFile}`}</dt><dd>${recording.videoSha256 ? html`<code>${recording.videoSha256}</code>` : "none, or not found when this was written"}</dd>
<dt>Transcript ${recording.transcriptFile}</dt><dd><code>${recording.transcriptSha256}</code></dd>
<dt>This record</dt><dd><code>${record.recordSha256}</code> <span class="faint">of the JSON file with this value left empty</span></dd></dl></section>
<section aria-labelledby="h-conflicts"><h2 id="h-conflicts">Conflicts and rulings</h2>${record.conflicts.length ? record.conflicts.map(conflictBlock) : html`<p>None was found.</p>`}</section>
${
  record.formerRulings.length > 0 &&
  html`<section aria-labelledby="h-former"><h2 id="h-former">Rulings on what is no longer found</h2><ul>${record.formerRulings.map(
    (ruling) =>
      html`<li>${ruling.topic} (${ruling.sideValues.join(" against ")}): ${decisionLabels[ruling.decision]}. ${ruling.reason} <span class="faint">(${ruling.initials}, ${ruling.at})</span></li>`,
  )}</ul></section>`
}
${listOf(
  "h-sheet",
  "The stock sheet says otherwise",
  record.denials.map(
    ({ field, sheetValue, why, moments, ...dealt }) =>
      html`<li>${field}: ${sheetValue}. ${why} ${moments.map((moment) => told(moment))} ${noted(dealt)}</li>`,
  ),
)}
${listOf(
  "h-remarks",
  "Remarks",
  record.remarks.map(({ topic, why }) => html`<li>${topic}: ${why}</li>`),
)}
${listOf(
  "h-promises",
  "Words a buyer may hold the dealer to",
  record.promises.map(
    ({ kind, start, quote, why, source, ...dealt }) =>
      html`<li>${timeLabel(start)} ${promiseLabels[kind]}: <q>${quote}</q> ${why} <span class="faint">Source: ${source}</span> ${noted(dealt)}</li>`,
  ),
)}
${listOf(
  "h-questions",
  "Not named in the words",
  record.questions.map(({ question, ...dealt }) => html`<li>${question} ${noted(dealt)}</li>`),
)}
${listOf(
  "h-former-notes",
  "Notes on what is no longer found",
  record.formerNotes.map(({ topic, told: words, ...note }) => html`<li>${topic}. ${words} ${noteLine(note)}</li>`),
)}
${listOf(
  "h-findings",
  "Findings",
  record.findings.map(
    ({ start, seen, grade, note, initials, openConflicts, stance }) =>
      html`<li>${timeLabel(start)} ${seen} (${gradeLabels[grade]})${stance && stance !== "stated" && ` (${stanceWords(stance)})`}${note && `. ${note}`} <span class="faint">(${initials})</span> ${openMark(openConflicts)}</li>`,
  ),
)}
${listOf("h-doubtful", "Captions that were not read", [
  ...record.doubtfulCaptions.map(({ caption, start, why }) => html`<li>Caption ${caption + 1} at ${timeLabel(start)}: ${why}</li>`),
  ...record.trustedCaptions.map(
    ({ caption, start, initials }) =>
      html`<li>Caption ${caption + 1} at ${timeLabel(start)} was held for speech by ${initials} and read.</li>`,
  ),
])}
<section aria-labelledby="h-rules"><h2 id="h-rules">What was checked, and by which rules</h2>${checkedBlock(record)}</section>
<section aria-labelledby="h-cautions"><h2 id="h-cautions">Cautions</h2><ul class="cautions">${record.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>
</main>
</body>
</html>
`.text;
}

/** "two figures for one thing": as the JSON names it, to be read. */
const ruleWords = (name: string): string => (name.includes(" ") ? name : name.replaceAll("-", " "));

/** A question brings its own sign to the end of a list. */
const sentenceEnd = (words: string): string => (/[.?!]$/.test(words) ? words : `${words}.`);

function checkedBlock({ checked, rules, analysisVersion }: ReviewRecord): Markup {
  if (analysisVersion === 0) return html`<p>Nothing yet. ${notAnalyzed}</p>`;
  const { captions, captionsLeftOut, repairs, claims, sheetFields } = checked;
  const table = (caption: string, rows: ReviewRecord["rules"], objected: boolean) =>
    rows.length > 0 &&
    html`<table class="rules"><caption>${caption}</caption><thead><tr><th scope="col">Rule</th><th scope="col">Source</th>${objected && html`<th scope="col">Times</th>`}</tr></thead><tbody>${rows.map(
      ({ name, source, objections }) =>
        html`<tr><th scope="row">${ruleWords(name)}</th><td>${source ?? "claims compared with each other"}</td>${objected && html`<td>${objections}</td>`}</tr>`,
    )}</tbody></table>`;
  return html`<p>${captions} captions, ${captionsLeftOut} of them held for noise and not read; ${repairs} repairs; ${claims} claims; ${
    sheetFields === null ? "no stock sheet" : `${sheetFields} fields of the stock sheet`
  }. All of it was held against the rules below, by analysis version ${analysisVersion}.</p>
${table(
  "Rules that objected",
  rules.filter(({ objections }) => objections > 0),
  true,
)}
${table(
  "Rules that found nothing",
  rules.filter(({ objections }) => objections === 0),
  false,
)}`;
}

function listOf(id: string, title: string, items: readonly Markup[]): Markup | false {
  return items.length > 0 && html`<section aria-labelledby="${id}"><h2 id="${id}">${title}</h2><ul>${items}</ul></section>`;
}

function conflictBlock(conflict: RecordConflict): Markup {
  return html`<article class="${conflict.state}">
<h3>${conflict.state === "open" ? "Open: " : "Settled: "}${conflict.topic}</h3>
<p>${conflict.why}</p>
<ul>${conflict.sides.map(
    (side) =>
      html`<li><b>${valueLabel(side.value, side.unit, side.attribute)}</b>: ${side.moments.map((moment) => told(moment, conflict.topic))}</li>`,
  )}</ul>
<p class="faint">Rule: ${ruleWords(conflict.rule)}, weight ${conflict.weight} of 100.${conflict.working && ` ${conflict.working}`}</p>
${conflict.rulings.length === 0 ? html`<p>Nobody has ruled on it.</p>` : html`<ol>${conflict.rulings.map(rulingLine)}</ol>`}
</article>`;
}

/** A quote with its time, its doubt and every dispute but the one that is being told. */
function told({ start, quote, stance, openConflicts }: ToldMoment, ownTopic: string | null = null): Markup {
  const doubt = stanceWords(stance);
  return html`${timeLabel(start)} <q>${quote}</q>${doubt && ` (${doubt})`} ${openMark(openConflicts.filter((topic) => topic !== ownTopic))} `;
}

/** What was noted on a denial, a promise or a question, and that nobody has dealt with it where that is so. */
function noted({ notes, open }: { readonly notes: readonly RecordedNote[]; readonly open: boolean }): Markup {
  return html`${notes.map(noteLine)} ${open && html`<b>Nobody has dealt with it.</b>`}`;
}

function noteLine({ state, reason, initials, at, superseded }: RecordedNote): Markup {
  return html`<br>${superseded && "Superseded: "}<span class="${superseded ? "former" : "standing"}">${state === "seen" ? "Seen" : "Open again"}: ${reason}</span> <span class="faint">(${initials}, ${at})</span>`;
}

function rulingLine(ruling: RecordConflict["rulings"][number]): Markup {
  return html`<li>${ruling.superseded && "Superseded: "}<span class="${ruling.superseded ? "former" : "standing"}">${decisionLabels[ruling.decision]}${ruling.sideValue && ` (${ruling.sideValue})`}: ${ruling.reason}${ruling.rightWords && html` Right words: <q>${ruling.rightWords}</q>`}</span> <span class="faint">(${ruling.initials}, ${ruling.at})</span></li>`;
}
