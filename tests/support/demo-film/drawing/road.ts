import { dashboard } from "./cabin.ts";
import { box, type FlatDrawing, ring } from "./flat-drawing.ts";

const vanishing = { x: 800, y: 250 };

/** A point of the road `away` car lengths ahead and `across` lanes to the side. */
function onRoad(across: number, away: number): string {
  const share = 1 / away;
  return `${(vanishing.x + across * 620 * share).toFixed(1)} ${(vanishing.y + 300 * share).toFixed(1)}`;
}

function strip(left: number, right: number, near: number, far: number, fill: string): string {
  return `<path d="M${onRoad(left, near)}L${onRoad(right, near)}L${onRoad(right, far)}L${onRoad(left, far)}Z" fill="${fill}"/>`;
}

/** The road coming towards the car at a steady pace. */
function roadAt(seconds: number): string {
  const gone = seconds * 3.2;
  const drawn = [
    `<rect width="1600" height="900" fill="url(#sky)"/>`,
    `<path d="M0 ${vanishing.y}Q220 190 420 ${vanishing.y - 22}T820 ${vanishing.y - 20}T1240 ${vanishing.y - 34}T1600 ${vanishing.y - 8}V300H0Z" fill="#8fa38c"/>`,
    `<rect y="${vanishing.y}" width="1600" height="650" fill="#93a072"/>`,
    strip(-1.35, 1.35, 0.5, 60, "#76756f"),
    strip(-1.3, -1.24, 0.5, 60, "#e8e4d6"),
    strip(1.24, 1.3, 0.5, 60, "#e8e4d6"),
  ];
  for (let dash = 0; dash < 14; dash++) {
    const away = ((((dash * 2.2 - gone) % 30.8) + 30.8) % 30.8) + 0.55;
    drawn.push(strip(-0.035, 0.035, away, away + 0.9, "#ecd27a"));
  }
  const roadside: { away: number; svg: string }[] = [];
  for (let index = 0; index < 26; index++) {
    const away = ((((index * 1.7 - gone) % 44.2) + 44.2) % 44.2) + 0.7;
    const side = index % 2 ? 1 : -1;
    const across = side * (1.9 + ((index * 7) % 5) * 0.35);
    const share = 1 / away;
    const x = vanishing.x + across * 620 * share;
    const foot = vanishing.y + 300 * share;
    const tall = (index % 4 === 0 ? 330 : 420) * share;
    const tree =
      index % 4 === 0
        ? `<path d="M${x.toFixed(1)} ${foot.toFixed(1)}v${(-tall).toFixed(1)}m${(-60 * share).toFixed(1)} ${(30 * share).toFixed(1)}h${(120 * share).toFixed(1)}" stroke="#6b5a48" stroke-width="${(14 * share + 0.6).toFixed(1)}" fill="none"/>`
        : `<path d="M${x.toFixed(1)} ${foot.toFixed(1)}v${(-tall * 0.4).toFixed(1)}" stroke="#5a4a38" stroke-width="${(30 * share + 0.6).toFixed(1)}"/><ellipse cx="${x.toFixed(1)}" cy="${(foot - tall * 0.75).toFixed(1)}" rx="${(150 * share).toFixed(1)}" ry="${(tall * 0.5).toFixed(1)}" fill="${["#648160", "#7b966b", "#6f8a63"][index % 3]}"/>`;
    roadside.push({ away, svg: tree });
  }
  roadside.sort((a, b) => b.away - a.away);
  return drawn.join("") + roadside.map((each) => each.svg).join("");
}

/** Through the windshield, on the road; its needles stand where the voice says. */
export const road: FlatDrawing = {
  moving: roadAt,
  sheet: [
    `<path d="M190 470Q800 336 1410 470Z" fill="#7d1f2b"/><path d="M600 412Q640 376 690 372M1000 412Q960 376 910 372" fill="none" stroke="#a23543" stroke-width="7"/>`,
    `<path d="M0 0H1600V90L1350 46Q800 20 250 46L0 90Z" fill="#2b2a28"/><path d="M0 88L250 46L70 470L0 520Z" fill="#24262a"/><path d="M1600 88L1350 46L1530 470L1600 520Z" fill="#24262a"/>`,
    `<path d="M800 30V90" stroke="#444" stroke-width="10"/><rect x="690" y="86" width="220" height="58" rx="22" fill="#1d1f22"/><rect x="700" y="94" width="200" height="42" rx="16" fill="#93a8a6"/>`,
    `<rect y="680" width="1600" height="220" fill="#1b1c1f"/>`,
    // 55 of 120 miles an hour, 2400 of 6000 turns a minute, 45 of 80 pounds.
    dashboard({ speed: 55 / 120, engineSpeed: 2400 / 6000, oilPressure: 45 / 80, fuel: 0.6 }),
    `<path d="M720 690L900 690L960 900L660 900Z" fill="#26282c"/><path d="M812 800L806 716" stroke="#b9bfc4" stroke-width="10"/><circle cx="806" cy="706" r="24" fill="#8a5a33" stroke="#5b3a22" stroke-width="3"/>`,
  ].join(""),
  parts: {
    road: { name: "ON THE ROAD", outlines: [], focus: [800, 300] },
    speedometer: { name: "SPEED", outlines: [ring(350, 590, 78)], focus: [350, 590] },
    "oil-gauge": { name: "OIL PRESSURE", outlines: [ring(632, 560, 46)], focus: [632, 560] },
    shifter: { name: "FOUR SPEED", outlines: [box(776, 676, 60, 130)], focus: [806, 706] },
  },
};
