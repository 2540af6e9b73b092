/**
 * The page's own style sheet: no font, picture or style from elsewhere. Inks are chosen for 4.5:1 or more on their grounds (WCAG 2.2,
 * 1.4.3); what is in dispute has a sign and words beside its colour. On paper: black on white, running page numbers, nothing cut.
 */
export const indexStyle = `
:root { color-scheme: light dark; --paper: #fcfbf8; --sheet: #f3f1ea; --ink: #1d2730; --faint: #535d66; --line: #d5d1c6; --edge: #767d83; --lead: #14505c; --open: #8c1d2f; --open-sheet: #faeced; --upheld: #1f5c3a; --hedge: #6b4a00; }
@media (prefers-color-scheme: dark) { :root { --paper: #151a1e; --sheet: #1e252a; --ink: #e8e6df; --faint: #a9b1b7; --line: #39424a; --edge: #7d868d; --lead: #8fd0dc; --open: #ffb0b8; --open-sheet: #38191f; --upheld: #9ad9b4; --hedge: #e9c877; } }
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0 auto; max-width: 72rem; padding: 0 1.25rem 3rem; background: var(--paper); color: var(--ink); font: 16px/1.5 "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", system-ui, sans-serif; overflow-wrap: anywhere; }
h1, h2, h3 { font-family: Charter, "Bitstream Charter", "Sitka Text", Cambria, Georgia, "Noto Serif", serif; line-height: 1.2; text-wrap: balance; }
h1 { font-size: clamp(1.6rem, 5vw, 2.4rem); margin: .1rem 0 .75rem; }
h2 { font-size: 1.35rem; margin: 2.5rem 0 .75rem; padding-top: .5rem; border-top: 3px solid var(--ink); }
h3 { font-size: 1.05rem; margin: 1.25rem 0 .4rem; }
p { margin: .25rem 0 .5rem; } ul, ol { margin: .25rem 0 .5rem; padding-inline-start: 1.25rem; } q { font-style: italic; } a { color: var(--lead); }
.faint { color: var(--faint); font-size: .92em; } .note { white-space: pre-line; }
.masthead { padding-top: 1.5rem; border-top: .5rem solid var(--lead); }
.overline { font-size: .8rem; letter-spacing: .14em; text-transform: uppercase; color: var(--lead); font-weight: 700; margin: 0; }
.facts { display: flex; flex-wrap: wrap; gap: .5rem 2rem; margin: 0 0 1rem; } .facts dt { font-size: .8rem; color: var(--faint); } .facts dd { margin: 0; font-weight: 600; }
.plate { border: 1.5px solid var(--ink); border-radius: 3px; padding: 0 .45rem; font-variant-numeric: tabular-nums; letter-spacing: .04em; }
.standing { border: 1px solid var(--edge); border-inline-start: .4rem solid var(--upheld); background: var(--sheet); padding: .6rem .9rem; }
.standing p { margin: .1rem 0; } .standing-open { border-inline-start: .4rem double var(--open); background: var(--open-sheet); } .standing-open b { color: var(--open); }
.status:empty { display: none; } .status { color: var(--faint); font-size: .92em; }
.band { display: block; width: 100%; margin-top: .75rem; } .band-even { fill: var(--lead); } .band-odd { fill: var(--edge); } .band-open { fill: var(--open); } .band-finding { fill: var(--paper); stroke: var(--ink); stroke-width: 1.5; }
.contents ul { list-style: none; display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; padding: 0; margin: .75rem 0 0; font-size: .95rem; } .contents a { display: inline-block; min-height: 1.5rem; } .count { color: var(--faint); font-variant-numeric: tabular-nums; }
video { display: block; width: 100%; max-height: 58vh; margin-top: 1rem; background: #000; } .open-video { border: 1px solid var(--edge); padding: .75rem; } video[hidden], .open-video[hidden] { display: none; }
.back { position: fixed; inset-block-end: 0; inset-inline: 0; margin: 0; padding: .5rem; display: flex; justify-content: center; pointer-events: none; } .back[hidden] { display: none; } .back button { pointer-events: auto; font: inherit; font-weight: 600; min-height: 2.75rem; padding: .3rem 1rem; color: var(--paper); background: var(--lead); border: 1px solid var(--paper); border-radius: 2px; cursor: pointer; } .back button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
.times-of { color: var(--faint); font-size: .92em; } .on-paper { display: none; }
.plan-beside { display: grid; grid-template-columns: minmax(0, 8fr) minmax(15rem, 5fr); gap: 1.5rem; align-items: start; }
figure { margin: 0; } figcaption { color: var(--faint); font-size: .85rem; margin-top: .5rem; }
.plan { display: block; width: 100%; } .plan-area { fill: var(--sheet); stroke: var(--edge); } .plan-disputed { fill: var(--open-sheet); stroke: var(--open); stroke-width: 1.6; } .plan-unseen { fill: none; stroke-dasharray: 3 4; }
.plan-inside { stroke: none; } .plan-unseen.plan-inside { fill: none; } .plan-wheels { fill: var(--faint); } .plan-lines { fill: none; stroke: var(--ink); stroke-width: 1.1; } .plan-lines > path:first-child { stroke-width: 1.8; } .plan-faint { stroke: var(--edge); } .plan-tread { stroke-width: 4; stroke: var(--faint); } .plan-pipe { stroke-dasharray: 3 2; }
.plan text { font: 600 11px "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", system-ui, sans-serif; text-anchor: middle; } .plan-name { fill: var(--ink); stroke: var(--sheet); stroke-width: 3px; paint-order: stroke; } .plan .plan-time { font-weight: 400; fill: var(--faint); }
.plan-mark path { fill: var(--paper); stroke: var(--ink); stroke-width: .9; } .plan-mark-open path { fill: var(--open-sheet); stroke: var(--open); } .plan .plan-mark text { font-size: 9px; fill: var(--ink); stroke: var(--paper); stroke-width: 2px; paint-order: stroke; }
.plan-mark-filled path { fill: var(--ink); } .plan-mark-filled.plan-mark-open path { fill: var(--open); } .plan .plan-mark-filled text { fill: var(--paper); stroke: var(--ink); } .plan .plan-mark-filled.plan-mark-open text { stroke: var(--open); }
.beneath { margin-top: .4rem; display: flex; align-items: center; gap: .75rem; color: var(--faint); font-size: .85rem; } .plan-beneath { width: 9rem; }
table { border-collapse: collapse; width: 100%; } caption { text-align: start; font-weight: 600; padding-bottom: .25rem; } th, td { text-align: start; vertical-align: top; padding: .3rem .6rem .3rem 0; border-bottom: 1px solid var(--line); font-variant-numeric: tabular-nums; } thead th { color: var(--faint); font-size: .85rem; } tbody th { font-weight: 500; } .zones a { display: inline-block; min-height: 1.5rem; }
.unseen { border: 1px dashed var(--edge); padding: .5rem .75rem; }
.grade { display: inline-flex; align-items: center; gap: .3rem; white-space: nowrap; margin-inline-end: .5rem; } .grade svg { width: .95em; height: .95em; } .grade path { fill: none; stroke: currentColor; stroke-width: 1.6; } .grade-worn path, .grade-damaged path { fill: currentColor; }
button.jump { font: inherit; font-weight: 600; color: var(--lead); background: none; border: 1px solid var(--edge); border-radius: 2px; padding: 0 .4rem; cursor: pointer; font-variant-numeric: tabular-nums; min-width: 3.4rem; min-height: 1.75rem; } button.jump:hover { background: var(--sheet); } button.jump[aria-current] { background: var(--lead); color: var(--paper); } .at { font-weight: 600; font-variant-numeric: tabular-nums; }
button.jump:focus-visible, input:focus-visible, a:focus-visible, video:focus-visible { outline: 3px solid var(--lead); outline-offset: 2px; }
img { display: block; width: 100%; height: auto; background: var(--sheet); border: 1px solid var(--line); }
.chapters { list-style: none; padding: 0; columns: 2 20rem; column-gap: 2rem; } .chapters li { padding: .25rem 0; border-bottom: 1px solid var(--line); break-inside: avoid; }
.chapters.pictured { columns: auto; display: grid; grid-template-columns: repeat(auto-fill, minmax(13rem, 1fr)); gap: 1rem; } .chapters.pictured li { border: 0; padding: 0; } .chapters.pictured img { aspect-ratio: 16 / 9; object-fit: contain; margin-bottom: .35rem; }
.open-mark { color: var(--open); font-weight: 600; } .chapters .open-mark { white-space: nowrap; } .hedge { color: var(--hedge); font-weight: 600; border-bottom: 2px dotted currentColor; } .overruled-mark { color: var(--open); } .upheld-mark { color: var(--upheld); font-weight: 600; }
.case { border: 1px solid var(--line); padding: .6rem .9rem; margin: .75rem 0; } .case.open { border-inline-start: .4rem double var(--open); background: var(--open-sheet); } .case.settled { border-inline-start: .4rem solid var(--upheld); } .case h3 { margin-top: 0; } .case .faint { color: var(--ink); }
.sides { display: grid; grid-template-columns: repeat(auto-fit, minmax(16rem, 1fr)); gap: .5rem 1.5rem; margin: .5rem 0; } .sides dt { font-weight: 700; font-size: 1.1rem; } .sides dd { margin: 0; } .moments { list-style: none; padding: 0; } .moments li { margin: .25rem 0; }
.findings { list-style: none; counter-reset: finding; padding: 0; } .finding { counter-increment: finding; border-bottom: 1px solid var(--line); padding: .6rem 0 .6rem 2.6rem; position: relative; } .finding::before { content: counter(finding); position: absolute; inset-inline-start: 0; top: .65rem; min-width: 1.8rem; text-align: center; border: 1.5px solid var(--ink); border-radius: 2px; font-weight: 700; font-variant-numeric: tabular-nums; } .finding.pictured { display: grid; grid-template-columns: minmax(0, 1fr) 15rem; gap: 1rem; } .finding-subject::first-letter { text-transform: uppercase; } .finding-head .grade { margin-inline-start: .5rem; }
.claims { list-style: none; padding: 0; } .claim { display: grid; grid-template-columns: 4rem minmax(0, 5fr) minmax(0, 6fr); gap: .25rem 1rem; align-items: baseline; padding: .35rem 0 .35rem .5rem; border-bottom: 1px solid var(--line); border-inline-start: .3rem solid transparent; } .claim.disputed { border-inline-start: .3rem double var(--open); } .claim.overruled .claim-value { text-decoration: line-through; } .claim q { color: var(--faint); }
.borne { padding-inline-start: 1.1rem; } .cautions { border: 2px solid var(--ink); padding: .75rem 1rem .75rem 2rem; } .cautions li { margin: .35rem 0; } footer { margin-top: 2rem; color: var(--faint); font-size: .85rem; }
@media (max-width: 46rem) {
body { padding: 0 .9rem 2rem; } .plan-beside { grid-template-columns: minmax(0, 1fr); } .claim { grid-template-columns: 4rem minmax(0, 1fr); } .claim q { grid-column: 2; } .finding.pictured { grid-template-columns: minmax(0, 1fr); } .plan text { font-size: 13px; } .band { height: 1.9rem; } .chapters.pictured { grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); }
}
@page { margin: 15mm 14mm 17mm; @bottom-left { content: "Condition index"; font: 8.5pt sans-serif; color: #444; } @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8.5pt sans-serif; color: #444; } }
@media print {
:root { color-scheme: light; --paper: #fff; --sheet: #f4f3ef; --ink: #000; --faint: #333; --line: #bbb; --edge: #666; --lead: #12424c; --open: #7a1020; --open-sheet: #fbf1f2; --upheld: #174a2e; --hedge: #4a3300; }
html { font-size: 10pt; } body { max-width: none; padding: 0; font-size: 1rem; line-height: 1.4; } .zones a { min-height: 0; } h1 { font-size: 2rem; } .masthead { padding-top: .5rem; } h2 { margin-top: 1.4rem; font-size: 13pt; } h2, h3 { break-after: avoid; }
.video, .contents, .status, .back { display: none; } .on-paper { display: block; } a { color: inherit; text-decoration: none; } button.jump { border: 0; padding: 0; min-width: 0; min-height: 0; color: var(--ink); }
.case, .finding, .claim, tr, figure, .standing, .chapters li, .cautions, .borne li { break-inside: avoid; } thead { display: table-header-group; } p, li { orphans: 3; widows: 3; }
.plan-beside { grid-template-columns: minmax(0, 7fr) minmax(0, 5fr); gap: 1.2rem; } table { font-size: 9pt; } th, td { padding: .18rem .4rem .18rem 0; } .zones th, .zones td { white-space: nowrap; } .finding { padding-block: .35rem; } .finding::before { top: .35rem; } .finding p, .claim, .moments li { margin-block: .1rem; } .claim { padding-block: .22rem; } .chapters.pictured { grid-template-columns: repeat(4, 1fr); gap: .6rem; } .finding.pictured { grid-template-columns: minmax(0, 1fr) 11rem; } .sides { grid-template-columns: 1fr 1fr; }
* { print-color-adjust: exact; }
}
`;
