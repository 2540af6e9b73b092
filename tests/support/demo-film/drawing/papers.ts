import { type FlatDrawing, repeat } from "./flat-drawing.ts";
import { words } from "./stroke-letters.ts";

const ink = "#39465c";

function linesOfText(x: number, y: number, widths: readonly number[], gap = 26): string {
  return widths
    .map((width, row) => `<path d="M${x} ${y + row * gap}h${width}" stroke="#9aa0a6" stroke-width="5" stroke-linecap="round"/>`)
    .join("");
}

/** The papers laid out on a light table. */
export const papers: FlatDrawing = {
  sheet: [
    `<rect width="1600" height="900" fill="#8a6746"/>`,
    repeat(
      7,
      (i) =>
        `<rect y="${i * 130}" width="1600" height="124" fill="${i % 2 ? "#93704d" : "#876443"}"/><path d="M0 ${i * 130 + 40}Q400 ${i * 130 + 20} 800 ${i * 130 + 52}T1600 ${i * 130 + 36}" fill="none" stroke="#7a583a" stroke-width="3"/>`,
    ),
    `<rect x="90" y="60" width="1420" height="780" rx="18" fill="#f7f3e4" fill-opacity=".5"/>`,
    // Title certificate.
    `<g transform="rotate(-4 420 420)"><rect x="176" y="168" width="520" height="560" fill="#000" fill-opacity=".2"/><rect x="166" y="156" width="520" height="560" fill="#eef1e3"/>`,
    `<rect x="186" y="176" width="480" height="520" fill="none" stroke="#5f8a72" stroke-width="14" stroke-dasharray="10 5"/><rect x="206" y="196" width="440" height="480" fill="none" stroke="#5f8a72" stroke-width="3"/>`,
    words("CERTIFICATE", 268, 226, 34, "#2f5a46", 5),
    words("OF TITLE", 318, 278, 34, "#2f5a46", 5),
    linesOfText(240, 350, [370, 330, 350, 300]),
    `<rect x="240" y="462" width="370" height="64" fill="none" stroke="#8a9a90" stroke-width="3"/>${words("HAVELIN", 254, 480, 24, ink, 3.4)}${words("1971", 500, 480, 24, ink, 3.4)}`,
    linesOfText(240, 562, [370, 280]),
    `<circle cx="560" cy="622" r="42" fill="none" stroke="#b3873a" stroke-width="6"/><circle cx="560" cy="622" r="28" fill="#d9b866"/><path d="M250 640q30 -36 50 0t60 -10t50 6" fill="none" stroke="#27418a" stroke-width="4"/></g>`,
    // Bill of sale, two sheets.
    `<g transform="rotate(5 930 320)"><rect x="776" y="120" width="330" height="420" fill="#000" fill-opacity=".18"/><rect x="766" y="110" width="330" height="420" fill="#fbf8ee"/></g>`,
    `<g transform="rotate(1 930 320)"><rect x="770" y="124" width="330" height="420" fill="#fffdf5" stroke="#d8d2c0" stroke-width="2"/>${words("BILL OF SALE", 800, 152, 26, ink, 3.6)}${linesOfText(800, 216, [270, 240, 260, 200, 250, 230, 180])}<path d="M806 452q26 -44 46 -4t54 -8t60 4" fill="none" stroke="#27418a" stroke-width="4"/><path d="M800 474h270" stroke="${ink}" stroke-width="3"/></g>`,
    // Window sticker.
    `<g transform="rotate(-3 1290 520)"><rect x="1150" y="300" width="300" height="470" fill="#000" fill-opacity=".18"/><rect x="1142" y="290" width="300" height="470" fill="#f3ead0"/><rect x="1142" y="290" width="300" height="74" fill="#7d1f2b"/>${words("TARROW", 1172, 310, 34, "#f3ead0", 5)}${linesOfText(1168, 408, [190, 170, 200, 150, 180, 160, 190])}${repeat(7, (i) => `<path d="M1384 ${408 + i * 26}h34" stroke="#6f6a5a" stroke-width="5"/>`)}<rect x="1168" y="620" width="250" height="70" fill="none" stroke="#7d1f2b" stroke-width="5"/><path d="M1190 655h130M1350 655h48" stroke="#7d1f2b" stroke-width="8"/></g>`,
    // Keys, and the kettle shop's mug.
    `<circle cx="860" cy="690" r="34" fill="none" stroke="url(#metal)" stroke-width="9"/><path d="M880 716l96 66l-12 16l-16 -10l-8 10l-14 -10l-54 -40z" fill="#c7a64b"/><path d="M842 722l-38 92l20 8l8 -20l14 6l32 -70z" fill="#b9bfc4"/>`,
    `<circle cx="1400" cy="170" r="92" fill="#23403d"/><circle cx="1400" cy="170" r="76" fill="#4a2f1d"/><circle cx="1400" cy="170" r="76" fill="none" stroke="#e9e4d6" stroke-width="8"/><path d="M1484 140q60 -10 60 40t-66 34" fill="none" stroke="#23403d" stroke-width="22"/>`,
    `<rect width="1600" height="900" fill="url(#lamp)"/>`,
  ].join(""),
  parts: {
    title: {
      name: "TITLE",
      outlines: [
        [
          [142, 196],
          [660, 158],
          [702, 678],
          [184, 716],
        ],
      ],
      focus: [420, 300],
    },
    "bill-of-sale": {
      name: "BILLS OF SALE",
      outlines: [
        [
          [772, 120],
          [1102, 126],
          [1096, 546],
          [766, 540],
        ],
      ],
      focus: [930, 300],
    },
    "window-sticker": {
      name: "WINDOW STICKER",
      outlines: [
        [
          [1130, 304],
          [1430, 288],
          [1454, 756],
          [1154, 772],
        ],
      ],
      focus: [1280, 460],
    },
  },
};
