import { box, type FlatDrawing, repeat, ring } from "./flat-drawing.ts";

/** One bank of the V8: head, cover with its bolts and cap, exhaust manifold and wires. `side` -1 is left on the sheet. */
function bank(side: 1 | -1): string {
  const x = 800 + side * 178;
  return [
    `<path d="M${x - side * 50} 250L${x + side * 62} 262L${x + side * 74} 640L${x - side * 44} 652Z" fill="#3b4650"/>`,
    repeat(
      4,
      (i) =>
        `<path d="M${x + side * 60} ${292 + i * 92}q${side * 54} 4 ${side * 60} 44" fill="none" stroke="#6b5a4c" stroke-width="26" stroke-linecap="round"/>`,
    ),
    `<path d="M${x + side * 122} 320L${x + side * 132} 650" stroke="#5b4c40" stroke-width="24" stroke-linecap="round"/>`,
    `<rect x="${x - 48}" y="262" width="96" height="376" rx="20" fill="#c9472f" stroke="#84281a" stroke-width="5"/><rect x="${x - 30}" y="282" width="60" height="336" rx="12" fill="none" stroke="#e0705a" stroke-width="5"/>`,
    repeat(
      4,
      (i) =>
        `<circle cx="${x - 38}" cy="${290 + i * 106}" r="7" fill="url(#metal)"/><circle cx="${x + 38}" cy="${290 + i * 106}" r="7" fill="url(#metal)"/>`,
    ),
    `<circle cx="${x}" cy="${side > 0 ? 580 : 330}" r="24" fill="url(#metal)" stroke="#555" stroke-width="3"/>`,
    repeat(
      4,
      (i) =>
        `<path d="M800 236Q${800 + side * 90} ${230 + i * 30} ${x + side * 66} ${298 + i * 92}" fill="none" stroke="#1d1f22" stroke-width="7"/>`,
    ),
  ].join("");
}

function pulley(x: number, y: number, radius: number): string {
  return `<circle cx="${x}" cy="${y}" r="${radius}" fill="#2a2d31"/><circle cx="${x}" cy="${y}" r="${radius - 8}" fill="none" stroke="#8d9499" stroke-width="4"/><circle cx="${x}" cy="${y}" r="${radius / 3}" fill="#8d9499"/>`;
}

/** Under the hood, seen from above with the radiator nearest: the driver's side is on the right. */
export const engineBay: FlatDrawing = {
  sheet: [
    `<rect width="1600" height="900" fill="#26272a"/>`,
    // Fenders and inner aprons.
    `<path d="M0 0H170L230 900H0Z" fill="#8a2532"/><path d="M1600 0H1430L1370 900H1600Z" fill="#8a2532"/><path d="M60 0H90L150 900H120Z" fill="#a9404e"/><path d="M1540 0H1510L1450 900H1480Z" fill="#a9404e"/>`,
    `<path d="M170 0H420L440 900H230Z" fill="#1c1d20"/><path d="M1430 0H1180L1160 900H1370Z" fill="#1c1d20"/><path d="M250 330Q420 420 300 640" fill="none" stroke="#2e3035" stroke-width="16"/><path d="M1350 330Q1180 420 1300 640" fill="none" stroke="#2e3035" stroke-width="16"/>`,
    // Firewall and cowl.
    `<path d="M170 0H1430L1422 120H178Z" fill="#6a1823"/>${repeat(22, (i) => `<path d="M${330 + i * 44} 26v44" stroke="#3f0d15" stroke-width="12" stroke-linecap="round"/>`)}<rect x="186" y="116" width="1228" height="56" fill="#17181a"/>`,
    // Block, then heads, intake and carburetor.
    `<path d="M610 210H990L1010 690H590Z" fill="#b53f2a"/><rect x="700" y="620" width="200" height="90" rx="12" fill="#9c3524"/>`,
    `<rect x="892" y="650" width="86" height="46" rx="4" fill="#a8adb0" stroke="#6f767b" stroke-width="4"/>${repeat(5, (i) => `<path d="M${904 + i * 14} 664v18" stroke="#444a50" stroke-width="4"/>`)}`,
    bank(-1),
    bank(1),
    `<path d="M690 262H910L890 640H710Z" fill="#c3c8cb" stroke="#8d9499" stroke-width="4"/>${repeat(4, (i) => `<path d="M704 ${300 + i * 92}L896 ${300 + i * 92}" stroke="#9da4a9" stroke-width="16"/>`)}`,
    `<rect x="712" y="370" width="176" height="176" rx="16" fill="#d8c37a" stroke="#8d7a3a" stroke-width="5"/>`,
    repeat(
      4,
      (i) =>
        `<circle cx="${762 + (i % 2) * 76}" cy="${420 + Math.floor(i / 2) * 76}" r="29" fill="#2a2620" stroke="#a8934c" stroke-width="6"/><path d="M${738 + (i % 2) * 76} ${420 + Math.floor(i / 2) * 76}h48" stroke="#b9a45c" stroke-width="5"/>`,
    ),
    `<path d="M888 460h66M712 440h-60" stroke="#b9bfc4" stroke-width="9"/><path d="M800 546v60q-4 60 -110 70" fill="none" stroke="#3a3d42" stroke-width="12"/>`,
    `<circle cx="800" cy="222" r="44" fill="#1d1f22" stroke="#4a4d52" stroke-width="5"/>${repeat(8, (i) => `<circle cx="${(800 + Math.cos(i * 0.785) * 30).toFixed(0)}" cy="${(222 + Math.sin(i * 0.785) * 30).toFixed(0)}" r="8" fill="#3a3d42"/>`)}`,
    // Belts and pulleys, the compressor low on the passenger's side, the alternator opposite.
    `<rect x="462" y="548" width="150" height="126" rx="22" fill="#4d5257" stroke="#24272a" stroke-width="5"/>${repeat(4, (i) => `<path d="M${490 + i * 32} 556v108" stroke="#3c4045" stroke-width="8"/>`)}<path d="M470 560Q380 470 360 250T430 140" fill="none" stroke="#23262a" stroke-width="20"/><path d="M500 552Q430 430 420 300T470 150" fill="none" stroke="#8d9499" stroke-width="9"/>`,
    `<rect x="1010" y="560" width="116" height="108" rx="40" fill="#b7bcc0" stroke="#6f767b" stroke-width="5"/>${repeat(6, (i) => `<path d="M${1030 + i * 16} 576v76" stroke="#81888e" stroke-width="5"/>`)}`,
    `<path d="M536 706L800 742L1068 700" fill="none" stroke="#0f1012" stroke-width="16"/>`,
    pulley(536, 700, 42),
    pulley(800, 730, 56),
    pulley(1068, 696, 34),
    // Fan in its shroud, radiator, hoses.
    `<path d="M520 778H1080L1060 740H540Z" fill="#131416"/>${repeat(6, (i) => `<path d="M800 768L${590 + i * 84} 750L${620 + i * 84} 786Z" fill="#868d93"/>`)}`,
    `<rect x="430" y="786" width="740" height="92" rx="12" fill="#1b1c1e" stroke="#34373c" stroke-width="5"/>${repeat(44, (i) => `<path d="M${450 + i * 16} 800v64" stroke="#4b5057" stroke-width="5"/>`)}<rect x="430" y="776" width="740" height="18" rx="8" fill="#2b2d31"/><circle cx="1060" cy="786" r="26" fill="url(#metal)" stroke="#555" stroke-width="3"/>`,
    `<path d="M860 660Q940 720 930 790" fill="none" stroke="#16171a" stroke-width="34"/><path d="M860 660Q940 720 930 790" fill="none" stroke="#33363b" stroke-width="10"/>`,
    // Booster and cylinder on the driver's side, battery, washer jug.
    `<circle cx="1240" cy="214" r="86" fill="#c7b06a" stroke="#8d7a3a" stroke-width="6"/><circle cx="1240" cy="214" r="48" fill="none" stroke="#a8934c" stroke-width="6"/><rect x="1204" y="232" width="72" height="136" rx="10" fill="#3b3f44" stroke="#222" stroke-width="4"/><rect x="1198" y="250" width="84" height="14" fill="#8d9499"/>`,
    `<rect x="262" y="640" width="156" height="190" rx="8" fill="#17181b" stroke="#3c3f45" stroke-width="5"/><rect x="274" y="654" width="132" height="50" fill="#2b4a6b"/><circle cx="300" cy="738" r="18" fill="#b9bfc4"/><circle cx="380" cy="738" r="18" fill="#b9bfc4"/><path d="M300 738Q330 640 420 610" fill="none" stroke="#a32020" stroke-width="12"/><path d="M380 738Q440 780 520 690" fill="none" stroke="#111" stroke-width="12"/>`,
    `<rect x="1190" y="650" width="130" height="170" rx="18" fill="#dfe6e2" fill-opacity=".85" stroke="#9aa6a0" stroke-width="4"/><path d="M1196 740h118v66q0 10 -10 10h-98q-10 0 -10 -10z" fill="#7fb0c9" fill-opacity=".7"/><circle cx="1255" cy="664" r="24" fill="#1d1f22"/>`,
    `<rect width="1600" height="900" fill="url(#lamp)"/>`,
  ].join(""),
  parts: {
    engine: { name: "ENGINE", outlines: [box(560, 214, 480, 490)], focus: [940, 330] },
    "block-pad": { name: "BLOCK PAD", outlines: [box(888, 646, 94, 54)], focus: [935, 672] },
    carburetor: { name: "CARBURETOR", outlines: [box(706, 364, 188, 188)], focus: [800, 458] },
    compressor: { name: "A-C COMPRESSOR", outlines: [box(456, 542, 162, 138), ring(536, 700, 46)], focus: [536, 610] },
    radiator: { name: "RADIATOR", outlines: [box(430, 776, 740, 104)], focus: [760, 824] },
  },
};
