import { box, type FlatDrawing, repeat, ring } from "./flat-drawing.ts";

function wheelFromBelow(x: number, y: number): string {
  return `<rect x="${x - 112}" y="${y - 42}" width="224" height="84" rx="24" fill="#131416"/>${repeat(12, (i) => `<path d="M${x - 98 + i * 18} ${y - 36}v72" stroke="#26282c" stroke-width="6"/>`)}`;
}

function frontBrake(x: number, y: number, inward: 1 | -1): string {
  return [
    `<rect x="${x - 70}" y="${y - 9}" width="140" height="18" rx="4" fill="url(#metal)"/>`,
    `<rect x="${x - 96}" y="${y - 24}" width="60" height="48" rx="8" fill="#c9472f" stroke="#84281a" stroke-width="4"/>`,
    `<path d="M${x - 66} ${y + inward * 24}q-10 ${inward * 40} 30 ${inward * 60}" fill="none" stroke="#cfd3d6" stroke-width="8"/>`,
  ].join("");
}

function leafSpring(y: number): string {
  return `<rect x="1010" y="${y - 13}" width="420" height="26" rx="8" fill="#34383d"/><rect x="1070" y="${y - 8}" width="290" height="16" rx="6" fill="#4d5359"/><circle cx="1016" cy="${y}" r="15" fill="#8d9499"/><circle cx="1424" cy="${y}" r="15" fill="#8d9499"/><rect x="1186" y="${y - 24}" width="60" height="48" fill="#25282c"/>`;
}

/** The car on the lift, seen from below: its nose is on the left. */
export const underside: FlatDrawing = {
  sheet: [
    `<rect width="1600" height="900" fill="#4a5258"/>`,
    repeat(6, (i) => `<rect x="${i * 280 - 60}" y="0" width="130" height="900" fill="#525a60"/>`),
    `<rect x="0" y="34" width="1600" height="26" fill="#eef2e6" fill-opacity=".7"/><rect x="0" y="846" width="1600" height="26" fill="#eef2e6" fill-opacity=".7"/>`,
    // The pan of the body.
    `<path d="M90 210Q60 450 90 690L200 752H1420L1530 690Q1560 450 1530 210L1420 148H200Z" fill="#3a3530" stroke="#7d1f2b" stroke-width="12"/>`,
    `<path d="M620 200H1000V700H620Z" fill="#463f38"/>${repeat(6, (i) => `<path d="M640 ${232 + i * 24}H980M640 ${548 + i * 24}H980" stroke="#564e45" stroke-width="7"/>`)}`,
    repeat(
      4,
      (i) =>
        `<circle cx="${690 + (i % 2) * 220}" cy="${290 + Math.floor(i / 2) * 320}" r="26" fill="#2c2823" stroke="#5d554c" stroke-width="5"/>`,
    ),
    // Rails and crossmembers.
    `<path d="M120 292H560L640 250H1010L1080 300H1500V346H1060L990 296H660L580 338H120Z" fill="#23272b" stroke="#5a6066" stroke-width="4"/>`,
    `<path d="M120 608H560L640 650H1010L1080 600H1500V554H1060L990 604H660L580 562H120Z" fill="#23272b" stroke="#5a6066" stroke-width="4"/>`,
    `<rect x="300" y="292" width="62" height="316" fill="#2a2e33" stroke="#5a6066" stroke-width="4"/><rect x="690" y="262" width="44" height="376" fill="#2a2e33" stroke="#5a6066" stroke-width="4"/>`,
    // Control arms, bar and links at the front.
    `<path d="M280 300L330 190L386 300ZM280 600L330 710L386 600Z" fill="#4d5359" stroke="#25282c" stroke-width="5"/><path d="M210 250H236V650H210Z" fill="#8d9499"/><path d="M430 230H446V670H430Z" fill="#6b7278"/>`,
    // Engine pan, bell, transmission, shaft.
    `<path d="M330 390H560L590 420V480L560 510H330Z" fill="#8b9298" stroke="#4a5056" stroke-width="5"/><rect x="350" y="410" width="150" height="80" rx="12" fill="#a1a8ae"/><circle cx="470" cy="450" r="14" fill="#4a5056"/>`,
    `<path d="M590 384L650 404H760L830 424V476L760 496H650L590 516Z" fill="#b7bcc0" stroke="#6f767b" stroke-width="5"/><path d="M640 410V490M690 408V492M740 408V492" stroke="#8d9499" stroke-width="6"/><path d="M812 470q8 20 2 34" stroke="#5a3d16" stroke-width="9" fill="none"/>`,
    `<rect x="830" y="434" width="330" height="32" rx="8" fill="#7b828a"/><rect x="830" y="440" width="330" height="8" fill="#b2b9bf"/><rect x="826" y="428" width="26" height="44" fill="#3c4045"/><rect x="1138" y="428" width="26" height="44" fill="#3c4045"/>`,
    // Exhaust: two pipes, an H, two mufflers, tips.
    `<path d="M460 350H780Q840 350 860 372H960M460 550H780Q840 550 860 528H960" fill="none" stroke="#a39c90" stroke-width="22"/><path d="M850 372V528" stroke="#a39c90" stroke-width="18"/>`,
    `<rect x="950" y="346" width="170" height="56" rx="26" fill="#bdb7aa" stroke="#7a746a" stroke-width="4"/><rect x="950" y="498" width="170" height="56" rx="26" fill="#bdb7aa" stroke="#7a746a" stroke-width="4"/>`,
    `<path d="M1120 374H1160Q1180 374 1200 340T1260 318H1560M1120 526H1160Q1180 526 1200 560T1260 582H1560" fill="none" stroke="#a39c90" stroke-width="20"/><path d="M1536 318h44M1536 582h44" stroke="#e6eaec" stroke-width="26"/>`,
    // Springs, axle and its drums.
    leafSpring(250),
    leafSpring(650),
    `<rect x="1192" y="196" width="48" height="508" rx="14" fill="#2e3236" stroke="#5a6066" stroke-width="4"/><path d="M1150 450Q1156 380 1216 372Q1290 384 1296 450Q1290 516 1216 528Q1156 520 1150 450Z" fill="#33383d" stroke="#6d737a" stroke-width="5"/><circle cx="1236" cy="450" r="50" fill="#43494f" stroke="#7d848a" stroke-width="4"/>${repeat(12, (i) => `<circle cx="${(1236 + Math.cos(i * 0.5236) * 42).toFixed(0)}" cy="${(450 + Math.sin(i * 0.5236) * 42).toFixed(0)}" r="5" fill="#b9bfc4"/>`)}<rect x="1262" y="480" width="34" height="20" fill="#d9c9a0" transform="rotate(20 1279 490)"/>`,
    `<rect x="1160" y="180" width="112" height="34" rx="8" fill="#5b6168" stroke="#2b2e32" stroke-width="4"/><rect x="1160" y="686" width="112" height="34" rx="8" fill="#5b6168" stroke="#2b2e32" stroke-width="4"/>`,
    wheelFromBelow(330, 140),
    wheelFromBelow(330, 760),
    wheelFromBelow(1216, 140),
    wheelFromBelow(1216, 760),
    frontBrake(330, 196, 1),
    frontBrake(330, 704, -1),
    // Tank with its straps, and the square of new metal beside it.
    `<rect x="1330" y="356" width="140" height="188" rx="22" fill="#9aa1a7" stroke="#5f666c" stroke-width="5"/><rect x="1346" y="374" width="108" height="152" rx="14" fill="none" stroke="#c2c8cc" stroke-width="5"/><path d="M1330 400H1470M1330 500H1470" stroke="#33373b" stroke-width="12"/>`,
    `<rect x="1482" y="410" width="44" height="62" fill="#c9ced2"/><rect x="1482" y="410" width="44" height="62" fill="none" stroke="#6b5a3a" stroke-width="7" stroke-dasharray="7 3"/>`,
    // Arms of the lift under the pinch welds.
    `<path d="M520 0L600 0L660 224L606 238ZM520 900L600 900L660 676L606 662ZM1010 0L1090 0L1040 238L986 224ZM1010 900L1090 900L1040 662L986 676Z" fill="#d6a437" stroke="#8a6413" stroke-width="5"/>`,
    repeat(
      4,
      (i) => `<circle cx="${i % 2 ? 1012 : 634}" cy="${i < 2 ? 222 : 678}" r="32" fill="#1d1f22" stroke="#4a4d52" stroke-width="6"/>`,
    ),
    `<rect width="1600" height="900" fill="url(#lamp)"/>`,
  ].join(""),
  parts: {
    "frame-rails": {
      name: "FRAME RAILS",
      outlines: [
        [
          [120, 292],
          [560, 292],
          [640, 250],
          [1010, 250],
          [1080, 300],
          [1500, 300],
          [1500, 346],
          [1060, 346],
          [990, 296],
          [660, 296],
          [580, 338],
          [120, 338],
        ],
        [
          [120, 608],
          [560, 608],
          [640, 650],
          [1010, 650],
          [1080, 600],
          [1500, 600],
          [1500, 554],
          [1060, 554],
          [990, 604],
          [660, 604],
          [580, 562],
          [120, 562],
        ],
      ],
      focus: [560, 316],
    },
    "front-brakes": { name: "FRONT BRAKES", outlines: [box(228, 166, 180, 60), box(228, 674, 180, 60)], focus: [300, 196] },
    transmission: {
      name: "TRANSMISSION",
      outlines: [
        [
          [590, 384],
          [650, 404],
          [760, 404],
          [830, 424],
          [830, 476],
          [760, 496],
          [650, 496],
          [590, 516],
        ],
      ],
      focus: [740, 450],
    },
    exhaust: { name: "EXHAUST", outlines: [box(450, 336, 680, 70), box(450, 494, 680, 70)], focus: [900, 372] },
    axle: { name: "REAR AXLE", outlines: [box(1188, 216, 56, 160), box(1188, 526, 56, 160), ring(1222, 450, 78, 82)], focus: [1236, 450] },
    "rear-brakes": { name: "REAR BRAKES", outlines: [box(1156, 176, 120, 42), box(1156, 682, 120, 42)], focus: [1216, 198] },
    "fuel-tank": { name: "FUEL TANK", outlines: [box(1326, 352, 148, 196)], focus: [1400, 450] },
    "trunk-floor": { name: "TRUNK FLOOR", outlines: [box(1474, 402, 60, 78)], focus: [1504, 440] },
  },
};
