import {
  type ConditionIndex,
  claimSubject,
  componentLabel,
  decisionLabels,
  gradeLabels,
  positionLabel,
  timeLabel,
  valueLabel,
  zoneLabels,
  zoneNames,
} from "../../../shared-types/index.ts";
import { indexScript, indexStyle } from "./index-style.ts";
import { html, type Markup, raw } from "./markup.ts";
import { policyFor } from "./page-policy.ts";

type IndexClaim = ConditionIndex["claims"][number];
type IndexConflict = ConditionIndex["conflicts"][number];

/**
 * The condition index as one page that needs nothing else: no script, style, font or picture from elsewhere. Its content security policy
 * allows just its own script and style, by their hashes.
 * @param videoHref where the video lies, seen from the page, as an address (percent-encoded); null where there is none. A person may also open the file by hand.
 */
export function indexHtml(index: ConditionIndex, videoHref: string | null = encodeName(index.recording.videoFile)): string {
  const { recording } = index;
  const title = `Condition index: ${recording.title}`;
  const policy = policyFor({ style: indexStyle, script: indexScript, video: true, pictures: true });
  const open = index.conflicts.filter((conflict) => conflict.state === "open");
  const settled = index.conflicts.filter((conflict) => conflict.state === "settled");
  const page = html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${raw(indexStyle)}</style>
</head>
<body>
<header>
<h1>${recording.title}</h1>
<p>${[recording.vehicle.year, recording.vehicle.name].filter(Boolean).join(" ")}${recording.stockNumber ? html` · stock number <b>${recording.stockNumber}</b>` : ""} · ${timeLabel(recording.duration)} long</p>
<p class="faint">Written ${index.writtenAt.slice(0, 10)} · ${index.findings.length} findings · ${index.claims.length} claims · ${open.length} open and ${settled.length} settled conflicts</p>
${open.length > 0 && html`<p class="mark">${open.length === 1 ? "One conflict is" : `${open.length} conflicts are`} still open: claims marked “in dispute” are not given as fact.</p>`}
<p role="status" class="faint"></p>
</header>
<main>
<div class="beside">
<section aria-labelledby="h-video"><h2 id="h-video">Recording</h2>${video(recording.videoFile, videoHref)}</section>
<section aria-labelledby="h-chapters"><h2 id="h-chapters">Chapters</h2><ol class="chapters">${index.chapters.map(
    (chapter) => html`
<li>${jump(chapter.start)} ${chapter.title}${chapter.openConflicts > 0 && html` <span class="mark">[${chapter.openConflicts} open]</span>`}${!chapter.accepted && html` <span class="faint">(proposed)</span>`}</li>`,
  )}</ol></section>
</div>
<section aria-labelledby="h-open"><h2 id="h-open">Open conflicts</h2>${open.length ? open.map((conflict) => conflictBlock(conflict)) : html`<p>None.</p>`}</section>
${index.denials.length > 0 && html`<section aria-labelledby="h-sheet"><h2 id="h-sheet">The stock sheet says otherwise</h2>${index.denials.map((denial) => denialBlock(denial))}</section>`}
${index.supports.length > 0 && html`<section aria-labelledby="h-borne"><h2 id="h-borne">The stock sheet bears out</h2>${supportTable(index)}</section>`}
${index.unspoken.length > 0 && html`<section aria-labelledby="h-unspoken"><h2 id="h-unspoken">On the stock sheet, not spoken</h2><ul>${index.unspoken.map((fact) => html`<li>${fact.why}</li>`)}</ul></section>`}
<section aria-labelledby="h-findings"><h2 id="h-findings">Findings</h2>${findingTable(index)}</section>
<section aria-labelledby="h-claims"><h2 id="h-claims">What was said, by zone</h2>${claimTables(index.claims)}</section>
<section aria-labelledby="h-settled"><h2 id="h-settled">Settled conflicts</h2>${settled.length ? settled.map((conflict) => conflictBlock(conflict)) : html`<p>None.</p>`}</section>
<section aria-labelledby="h-cautions"><h2 id="h-cautions">Cautions</h2><ul class="cautions">${index.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>
</main>
<script>${raw(indexScript)}</script>
</body>
</html>
`;
  return page.text;
}

function encodeName(fileName: string | null): string | null {
  return fileName === null ? null : encodeURIComponent(fileName);
}

function jump(seconds: number): Markup {
  return html`<button type="button" class="jump" data-at="${seconds.toFixed(3)}" aria-label="Play from ${timeLabel(seconds)}">${timeLabel(seconds)}</button>`;
}

function video(fileName: string | null, href: string | null): Markup {
  if (fileName === null || href === null) return html`<p>This recording is a transcript without a video.</p>`;
  return html`<video controls preload="metadata" src="${href}" aria-label="The recording"></video>
<p class="open-video" hidden>The video is not beside this page. <label>Open ${fileName}: <input type="file" accept="video/*"></label></p>`;
}

function findingTable({ findings }: ConditionIndex): Markup {
  if (findings.length === 0) return html`<p>No findings were marked.</p>`;
  return html`<div class="scroll"><table><thead><tr><th scope="col">At</th><th scope="col">Zone</th><th scope="col">Part</th><th scope="col">Grade</th><th scope="col">Seen</th><th scope="col">Note</th></tr></thead><tbody>${findings.map(
    (finding) => html`
<tr><td>${jump(finding.start)}</td><td>${zoneLabels[finding.zone]}</td><td>${[positionLabel(finding.position), componentLabel(finding.component)].filter(Boolean).join(" ")}</td><td>${gradeLabels[finding.grade]}</td><td>${finding.seen}</td><td>${finding.note}</td></tr>`,
  )}</tbody></table></div>`;
}

function claimTables(claims: readonly IndexClaim[]): Markup {
  const zones = zoneNames.filter((zone) => claims.some((claim) => claim.zone === zone));
  if (zones.length === 0) return html`<p>No checkable claims were read.</p>`;
  return html`${zones.map(
    (zone) =>
      html`<h3>${zoneLabels[zone]}</h3><div class="scroll"><table><thead><tr><th scope="col">At</th><th scope="col">What</th><th scope="col">Value</th><th scope="col">Words</th><th scope="col">Standing</th></tr></thead><tbody>${claims
        .filter((claim) => claim.zone === zone)
        .map(
          (claim) => html`
<tr><td>${jump(claim.start)}</td><td>${claimSubject(claim)}</td><td>${valueLabel(claim.value, claim.unit, claim.attribute)}</td><td><q>${claim.quote}</q></td><td>${standing(claim)}</td></tr>`,
        )}</tbody></table></div>`,
  )}`;
}

/** A hedged claim carries its hedge, and a disputed one its dispute, wherever it stands. */
function standing(claim: IndexClaim): Markup {
  const stance = claim.stance === "stated" ? "" : claim.stance === "hedged" ? "said with a doubt" : "reported, not seen";
  if (claim.status === "disputed") return html`<span class="mark">in dispute: ${claim.conflictTopics.join(", ")}</span> ${stance}`;
  if (claim.status === "denied") return html`<span class="mark">the stock sheet says otherwise</span> ${stance}`;
  if (claim.status === "overruled") return html`<span class="mark">overruled in review</span> ${stance}`;
  return html`${[claim.status === "upheld" ? "stands after review" : "", stance].filter(Boolean).join(", ")}`;
}

function supportTable({ supports }: ConditionIndex): Markup {
  return html`<div class="scroll"><table><thead><tr><th scope="col">At</th><th scope="col">What</th><th scope="col">Sheet</th><th scope="col">Why</th></tr></thead><tbody>${supports.map(
    (support) => html`
<tr><td>${support.moments.map((at) => html`${jump(at.start)} `)}</td><td>${support.topic}</td><td>${support.sheetValue}</td><td>${support.why}</td></tr>`,
  )}</tbody></table></div>`;
}

function denialBlock(denial: ConditionIndex["denials"][number]): Markup {
  return html`<article class="open">
<h3>${denial.field}: the sheet says ${denial.sheetValue}</h3>
<p>${denial.why}</p>
<ul>${denial.moments.map((at) => html`<li>${jump(at.start)} <q>${at.quote}</q></li>`)}</ul>
</article>`;
}

function conflictBlock(conflict: IndexConflict): Markup {
  const { ruling, standard } = conflict;
  return html`<article class="${conflict.state}">
<h3>${conflict.state === "open" ? "Open: " : ""}${conflict.topic}</h3>
<p>${conflict.why}</p>
<ul>${conflict.sides.map(
    (side, position) =>
      html`<li><b>${valueLabel(side.value, side.unit)}</b>${ruling?.decision === "side-stands" && ruling.side === position && html` <b>(stands)</b>`}: ${side.moments.map((at) => html`${jump(at.start)} <q>${at.quote}</q> `)}</li>`,
  )}</ul>
${standard && html`<p class="faint">${standard.name}: ${standard.working} Source: ${standard.source}</p>`}
${ruling && html`<p>${decisionLabels[ruling.decision]}: ${ruling.reason}${ruling.rightWords ? html` Right words: <q>${ruling.rightWords}</q>` : ""} <span class="faint">(${ruling.initials}, ${ruling.at.slice(0, 10)})</span></p>`}
</article>`;
}
