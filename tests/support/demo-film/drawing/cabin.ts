import { box, type FlatDrawing, repeat, ring } from "./flat-drawing.ts";
import { words } from "./stroke-letters.ts";

function dial(x: number, y: number, radius: number, share: number): string {
  const ticks = repeat(11, (i) => {
    const turn = ((i / 10) * 270 + 135) * (Math.PI / 180);
    const at = (share: number) => `${(x + Math.cos(turn) * radius * share).toFixed(1)} ${(y + Math.sin(turn) * radius * share).toFixed(1)}`;
    return `<path d="M${at(0.74)}L${at(0.9)}" stroke="#e9e4d6" stroke-width="3"/>`;
  });
  const needle = ((share * 270 + 135) * Math.PI) / 180;
  return `<circle cx="${x}" cy="${y}" r="${radius + 8}" fill="url(#metal)"/><circle cx="${x}" cy="${y}" r="${radius}" fill="#121416"/>${ticks}<path d="M${x} ${y}L${(x + Math.cos(needle) * radius * 0.78).toFixed(1)} ${(y + Math.sin(needle) * radius * 0.78).toFixed(1)}" stroke="#f0793a" stroke-width="5" stroke-linecap="round"/><circle cx="${x}" cy="${y}" r="8" fill="#2e3236"/>`;
}

function steeringWheel(x: number, y: number, radiusX: number, radiusY: number): string {
  return [
    `<path d="M${x - radiusX} ${y + 6}L${x - 60} ${y + 26}L${x + 60} ${y + 26}L${x + radiusX} ${y + 6}L${x + radiusX - 8} ${y + 34}L${x + 40} ${y + 66}L${x - 40} ${y + 66}L${x - radiusX + 8} ${y + 34}Z" fill="#a9b0b6"/>`,
    `<ellipse cx="${x}" cy="${y + 40}" rx="66" ry="44" fill="#1b1c1f" stroke="#a9b0b6" stroke-width="4"/>`,
    `<ellipse cx="${x}" cy="${y}" rx="${radiusX}" ry="${radiusY}" fill="none" stroke="#17181a" stroke-width="30"/>`,
    `<ellipse cx="${x}" cy="${y - 4}" rx="${radiusX}" ry="${radiusY}" fill="none" stroke="#3a3c41" stroke-width="8"/>`,
  ].join("");
}

/** Where each needle points: 0 at the left end of its scale, 1 at the right. */
export interface Needles {
  readonly speed: number;
  readonly engineSpeed: number;
  readonly oilPressure: number;
  readonly fuel: number;
}

/** The dash as it looks from the back seat, bucket seats in front of it. Also the base of the driving view. */
export function dashboard(needles: Needles): string {
  return [
    // Pad, face, and the dials before the driver.
    `<path d="M60 436Q300 372 800 372T1540 436L1560 500L40 500Z" fill="#17181a"/><path d="M90 440Q320 388 800 388T1510 440" fill="none" stroke="#34373c" stroke-width="6"/>`,
    `<path d="M40 498L1560 498L1530 690L70 690Z" fill="#5b3a22"/>`,
    repeat(
      8,
      (i) =>
        `<path d="M60 ${516 + i * 22}Q460 ${508 + i * 22} 800 ${520 + i * 21}T1540 ${514 + i * 22}" fill="none" stroke="#6d482c" stroke-width="4"/>`,
    ),
    `<path d="M44 498L1556 498" stroke="#cfd3d6" stroke-width="5"/><path d="M70 690L1530 690" stroke="#cfd3d6" stroke-width="4"/>`,
    `<rect x="230" y="508" width="480" height="166" rx="24" fill="#1a1b1e"/>`,
    dial(350, 590, 68, needles.speed),
    dial(520, 590, 68, needles.engineSpeed),
    dial(632, 560, 36, needles.oilPressure),
    dial(632, 640, 30, needles.fuel),
    `<rect x="312" y="612" width="76" height="24" fill="#050505" stroke="#888" stroke-width="2"/>${words("61240", 318, 616, 15, "#f4f1e4", 2.2)}`,
    // Radio, heater, clock and glovebox.
    `<rect x="780" y="512" width="240" height="66" rx="6" fill="#16171a" stroke="#cfd3d6" stroke-width="4"/><rect x="830" y="524" width="140" height="26" fill="#dfe8c9"/><path d="M840 538h120" stroke="#444" stroke-width="2"/><path d="M902 526v24" stroke="#c22" stroke-width="3"/><circle cx="804" cy="545" r="16" fill="url(#metal)"/><circle cx="996" cy="545" r="16" fill="url(#metal)"/>`,
    repeat(5, (i) => `<rect x="${834 + i * 28}" y="556" width="22" height="14" fill="#cfd3d6"/>`),
    `<rect x="780" y="596" width="240" height="70" rx="6" fill="#202226" stroke="#8d9499" stroke-width="3"/><path d="M806 618h190M806 644h190" stroke="#6d737a" stroke-width="6"/><rect x="846" y="608" width="14" height="20" fill="#e9e4d6"/><rect x="920" y="634" width="14" height="20" fill="#e9e4d6"/>`,
    `<circle cx="1090" cy="540" r="34" fill="#121416" stroke="#cfd3d6" stroke-width="4"/><path d="M1090 540v-22M1090 540l14 8" stroke="#e9e4d6" stroke-width="3"/>`,
    `<rect x="1160" y="520" width="320" height="146" rx="8" fill="#66432a" stroke="#3a2313" stroke-width="4"/><circle cx="1320" cy="548" r="11" fill="url(#metal)"/>${words("TARROW", 1250, 604, 28, "#d9c08a", 4)}`,
    steeringWheel(440, 640, 236, 150),
  ].join("");
}

function bucketSeat(x: number): string {
  return [
    `<path d="M${x - 200} 900Q${x - 216} 742 ${x - 150} 722Q${x} 698 ${x + 150} 722Q${x + 216} 742 ${x + 200} 900Z" fill="#1e1f22" stroke="#3c3f45" stroke-width="5"/>`,
    repeat(
      9,
      (i) =>
        `<path d="M${x - 130 + i * 32.5} 742Q${x - 140 + i * 35} 820 ${x - 146 + i * 36.5} 900" fill="none" stroke="#303237" stroke-width="6"/>`,
    ),
    `<path d="M${x - 90} 716Q${x - 96} 664 ${x - 60} 656Q${x} 646 ${x + 60} 656Q${x + 96} 664 ${x + 90} 716Q${x} 700 ${x - 90} 716Z" fill="#222428" stroke="#3c3f45" stroke-width="4"/>`,
  ].join("");
}

export const cabin: FlatDrawing = {
  sheet: [
    `<rect width="1600" height="900" fill="#2a2b2e"/>`,
    `<path d="M250 70Q800 34 1350 70L1500 440L100 440Z" fill="url(#sky)"/>`,
    repeat(
      12,
      (i) =>
        `<ellipse cx="${170 + i * 116}" cy="${330 - (i % 3) * 16}" rx="84" ry="66" fill="${["#7b966b", "#6f8a63", "#879d70"][i % 3]}"/>`,
    ),
    `<rect x="96" y="350" width="1410" height="92" fill="#a3a195"/><path d="M220 440Q800 330 1380 440Z" fill="#7d1f2b"/><path d="M640 404Q660 376 690 372M960 404Q940 376 910 372" stroke="#a23543" stroke-width="6" fill="none"/>`,
    // Headliner, pillars, mirror, visors.
    `<path d="M0 0H1600V120L1350 70Q800 34 250 70L0 120Z" fill="#cfc8b6"/><path d="M0 118L250 70L96 450L0 520Z" fill="#b7b09e"/><path d="M1600 118L1350 70L1504 450L1600 520Z" fill="#b7b09e"/>`,
    `<rect x="330" y="66" width="370" height="62" rx="16" fill="#dcd6c6" stroke="#a59e8c" stroke-width="3"/><rect x="900" y="66" width="370" height="62" rx="16" fill="#dcd6c6" stroke="#a59e8c" stroke-width="3"/>`,
    `<path d="M800 52V120" stroke="#555" stroke-width="10"/><rect x="690" y="118" width="220" height="58" rx="22" fill="#2b2d31"/><rect x="700" y="126" width="200" height="42" rx="16" fill="#9fb4bd"/>`,
    // The star low in the glass.
    `<g stroke="#fff" stroke-width="3">${repeat(9, (i) => `<path d="M1150 372L${(1150 + Math.cos(i * 0.7) * (12 + (i % 3) * 6)).toFixed(0)} ${(372 + Math.sin(i * 0.7) * (12 + (i % 2) * 7)).toFixed(0)}"/>`)}</g>`,
    dashboard({ speed: 0, engineSpeed: 0, oilPressure: 0, fuel: 0.6 }),
    // Console, shifter and the two seats.
    `<path d="M720 690L900 690L960 900L660 900Z" fill="#26282c"/><path d="M740 700L880 700L900 780L720 780Z" fill="#141517"/><path d="M812 790V722" stroke="url(#metal)" stroke-width="12"/><path d="M812 790L806 716" stroke="#b9bfc4" stroke-width="10"/><circle cx="806" cy="706" r="24" fill="#8a5a33" stroke="#5b3a22" stroke-width="3"/>`,
    `<path d="M0 690H70L40 900H0ZM1530 690H1600V900H1560Z" fill="#1b1c1f"/>`,
    bucketSeat(410),
    bucketSeat(1190),
    `<path d="M150 420Q220 640 250 900" fill="none" stroke="#3c3f45" stroke-width="16"/><path d="M1450 420Q1380 640 1350 900" fill="none" stroke="#3c3f45" stroke-width="16"/>`,
    `<rect width="1600" height="900" fill="url(#lamp)"/>`,
  ].join(""),
  parts: {
    seats: { name: "SEATS", outlines: [box(200, 650, 420, 250), box(980, 650, 420, 250)], focus: [1120, 760] },
    "dash-pad": {
      name: "DASH PAD",
      outlines: [
        [
          [60, 436],
          [300, 396],
          [800, 372],
          [1300, 396],
          [1540, 436],
          [1560, 498],
          [40, 498],
        ],
      ],
      focus: [900, 430],
    },
    odometer: { name: "ODOMETER", outlines: [box(308, 608, 84, 32)], focus: [350, 624] },
    heater: { name: "HEATER", outlines: [box(780, 596, 240, 70)], focus: [900, 630] },
    windshield: { name: "WINDSHIELD", outlines: [ring(1150, 372, 44)], focus: [1150, 372] },
    radio: { name: "RADIO", outlines: [box(780, 512, 240, 66)], focus: [900, 545] },
  },
};
