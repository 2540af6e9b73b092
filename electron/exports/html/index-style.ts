/** The page's own style sheet: no font, picture or style from elsewhere; prints in black on white. */
export const indexStyle = `
:root { color-scheme: light dark; --paper: #fbfaf7; --ink: #23262b; --faint: #5b6069; --line: #d7d3c8; --plate: #f1eee6; --warn-ink: #7a2e0e; --warn-plate: #fbeadf; --link: #1d4e6b; }
@media (prefers-color-scheme: dark) { :root { --paper: #17191c; --ink: #e6e4de; --faint: #a6abb3; --line: #3a3e45; --plate: #202328; --warn-ink: #f6b58f; --warn-plate: #3a2419; --link: #8cc3e2; } }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 70rem; padding: 1.5rem; background: var(--paper); color: var(--ink); font: 16px/1.5 system-ui, "Segoe UI", Roboto, "Noto Sans", sans-serif; }
h1 { font-size: 1.6rem; margin: 0 0 .25rem; } h2 { font-size: 1.15rem; margin: 2rem 0 .5rem; border-bottom: 1px solid var(--line); padding-bottom: .25rem; } h3 { font-size: 1rem; margin: 1rem 0 .25rem; }
p { margin: .25rem 0 .5rem; } .faint { color: var(--faint); }
.cautions { border: 1px solid var(--line); background: var(--plate); padding: .5rem .75rem; font-size: .9rem; } .cautions li { margin: .25rem 0; }
.beside { display: grid; grid-template-columns: minmax(0, 3fr) minmax(14rem, 2fr); gap: 1.25rem; align-items: start; } @media (max-width: 46rem) { .beside { grid-template-columns: minmax(0, 1fr); } }
video { width: 100%; background: #000; max-height: 60vh; } .open-video { margin: .5rem 0; font-size: .9rem; }
ol.chapters { list-style: none; margin: 0; padding: 0; } ol.chapters li { padding: .2rem 0; border-bottom: 1px dotted var(--line); }
button.jump { font: inherit; color: var(--link); background: none; border: 0; padding: .1rem .2rem; text-decoration: underline; cursor: pointer; font-variant-numeric: tabular-nums; min-width: 3.5rem; min-height: 1.5rem; text-align: left; }
button.jump:focus-visible, input:focus-visible, a:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.scroll { overflow-x: auto; } table { border-collapse: collapse; width: 100%; font-size: .92rem; } th, td { text-align: left; vertical-align: top; padding: .3rem .5rem .3rem 0; border-bottom: 1px solid var(--line); } th { color: var(--faint); font-weight: 600; }
.open { border-left: .35rem double var(--warn-ink); background: var(--warn-plate); padding: .5rem .75rem; margin: .75rem 0; } .settled { border-left: .35rem solid var(--line); padding: .5rem .75rem; margin: .75rem 0; }
.mark { font-weight: 600; color: var(--warn-ink); } q { font-style: italic; }
@media print { :root { --paper: #fff; --ink: #000; --faint: #333; --plate: #fff; --warn-plate: #fff; --warn-ink: #000; --link: #000; } video, .open-video { display: none; } body { max-width: none; padding: 0; } .open, .settled, tr, li { break-inside: avoid; } }
`;

/** Jumps in the video beside the page; where it is not there, the person can open it, and nothing leaves the machine. */
export const indexScript = `
(() => {
  const video = document.querySelector("video");
  const opener = document.querySelector(".open-video");
  const status = document.querySelector("[role=status]");
  if (!video) return;
  const missing = () => { opener.hidden = false; video.hidden = true; };
  video.addEventListener("error", missing);
  if (video.error || !video.getAttribute("src")) missing();
  document.querySelector("input[type=file]").addEventListener("change", (event) => {
    const file = event.target.files[0];
    if (!file) return;
    video.hidden = false;
    video.src = URL.createObjectURL(file);
  });
  document.addEventListener("click", (event) => {
    const button = event.target.closest("button.jump");
    if (!button) return;
    if (video.hidden) { status.textContent = "Open the video file first; then the times jump in it."; opener.scrollIntoView({ block: "nearest" }); return; }
    video.currentTime = Number(button.dataset.at);
    video.play().catch(() => {});
    status.textContent = "Playing from " + button.textContent.trim();
  });
})();
`;
