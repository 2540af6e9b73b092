import { box, type FlatDrawing, repeat, ring } from "./flat-drawing.ts";
import { words } from "./stroke-letters.ts";

const paint = "#7d1f2b";
const deep = "#5a121c";

/** The open trunk, seen from behind the car: lid up, mat folded back on the right, spare on the left. */
export const trunk: FlatDrawing = {
  sheet: [
    `<rect width="1600" height="900" fill="url(#sky)"/><rect y="250" width="1600" height="650" fill="#8f9b84"/>`,
    // The lid, raised, with its inner ribs and the arms that hold it.
    `<path d="M250 -10L1350 -10L1250 236L350 236Z" fill="${paint}" stroke="${deep}" stroke-width="6"/>`,
    `<path d="M330 20L1270 20L1205 200L395 200Z" fill="#6a1823"/>`,
    repeat(
      5,
      (i) =>
        `<path d="M${430 + i * 160} 34L${570 + i * 160 - 20} 34L${545 + i * 152} 186L${440 + i * 152} 186Z" fill="${paint}" stroke="${deep}" stroke-width="3"/>`,
    ),
    `<path d="M330 330Q300 210 400 226M1270 330Q1300 210 1200 226" fill="none" stroke="#2b2d31" stroke-width="20"/>`,
    // Quarters either side, and the opening between them.
    `<path d="M0 330L240 268L1360 268L1600 330L1600 900L0 900Z" fill="${paint}"/>`,
    `<path d="M0 330L240 268L1360 268L1600 330L1600 346L1360 284L240 284L0 346Z" fill="#a23543"/>`,
    `<path d="M252 300L1348 300L1460 706L140 706Z" fill="#1a1b1e"/>`,
    `<path d="M252 300L1348 300L1460 706L140 706Z" fill="none" stroke="#0c0d0e" stroke-width="20" stroke-linejoin="round"/>`,
    `<path d="M290 318L1310 318L1330 420L270 420Z" fill="#34363b"/>`,
    repeat(9, (i) => `<path d="M${330 + i * 118} 322L${322 + i * 119} 416" stroke="#46494f" stroke-width="5"/>`),
    // Floor: mat on the left, bare painted metal with its spatter on the right.
    `<path d="M270 420L1330 420L1436 690L164 690Z" fill="#8b8d8c"/>`,
    `<path d="M270 420L930 420L880 690L164 690Z" fill="#3d4248"/>`,
    repeat(14, (row) =>
      repeat(22, (column) => {
        const share = row / 14;
        const left = 270 - 106 * share;
        const right = 930 - 50 * share;
        const x = left + ((right - left) * (column + (row % 2) / 2)) / 22.5;
        const y = 428 + 258 * share;
        return `<path d="M${x.toFixed(0)} ${y.toFixed(0)}l9 -6l10 2l-7 8z" fill="#7f868c"/>`;
      }),
    ),
    `<path d="M930 420Q1010 470 960 560Q930 640 880 690L960 690Q1030 610 1046 540Q1050 470 990 420Z" fill="#555b61" stroke="#2a2d31" stroke-width="3"/>`,
    repeat(130, (i) => {
      const x = 1075 + ((i * 73) % 300);
      const y = 436 + ((i * 131) % 240);
      return `<circle cx="${x}" cy="${y}" r="${2 + (i % 3)}" fill="${i % 2 ? "#b4b8b6" : "#5f6a70"}"/>`;
    }),
    `<path d="M1090 640L1330 640M1080 560L1310 560M1070 490L1290 490" stroke="#767a79" stroke-width="6"/>`,
    // The spare.
    `<ellipse cx="480" cy="585" rx="232" ry="118" fill="#000" fill-opacity=".35"/>`,
    `<ellipse cx="480" cy="560" rx="224" ry="116" fill="#17181a"/><ellipse cx="480" cy="540" rx="224" ry="116" fill="#232528"/>`,
    repeat(40, (i) => {
      const turn = (i / 40) * 2 * Math.PI;
      const x = 480 + Math.cos(turn) * 216;
      const y = 540 + Math.sin(turn) * 111;
      return `<path d="M${x.toFixed(1)} ${y.toFixed(1)}L${(480 + Math.cos(turn) * 196).toFixed(1)} ${(540 + Math.sin(turn) * 100).toFixed(1)}" stroke="#121315" stroke-width="4"/>`;
    }),
    `<ellipse cx="480" cy="540" rx="142" ry="72" fill="none" stroke="#d9d4c6" stroke-width="5"/>`,
    `<ellipse cx="480" cy="540" rx="126" ry="63" fill="#6f767c"/><ellipse cx="480" cy="546" rx="104" ry="50" fill="#565c62"/><ellipse cx="480" cy="548" rx="40" ry="20" fill="#2a2d30"/>`,
    repeat(
      5,
      (i) =>
        `<circle cx="${(480 + Math.cos(i * 1.257) * 66).toFixed(0)}" cy="${(546 + Math.sin(i * 1.257) * 32).toFixed(0)}" r="7" fill="#26282b"/>`,
    ),
    // Jack, wrench and the card.
    `<path d="M800 600L850 560L905 600L850 640Z" fill="none" stroke="#20252a" stroke-width="14" stroke-linejoin="round"/><path d="M780 600L930 600" stroke="#c9b26a" stroke-width="9"/><rect x="828" y="545" width="46" height="14" fill="#20252a"/>`,
    `<path d="M760 668L960 650" stroke="#3b4046" stroke-width="13" stroke-linecap="round"/><path d="M960 650L980 612" stroke="#3b4046" stroke-width="13" stroke-linecap="round"/>`,
    `<rect x="742" y="448" width="118" height="78" fill="#efe8d2" transform="rotate(-6 800 487)"/>`,
    `<g transform="rotate(-6 800 487)">${words("JACK", 760, 460, 14, "#6b2a2a", 2)}<path d="M760 488h84M760 500h70M760 512h80" stroke="#a39c86" stroke-width="3"/></g>`,
    // Tail panel and bumper in front of all of it.
    `<path d="M100 706L1500 706L1540 800L60 800Z" fill="#8a2532"/><path d="M150 728L1450 728L1470 790L130 790Z" fill="#2b2d31"/>`,
    repeat(
      3,
      (i) =>
        `<rect x="${170 + i * 124}" y="736" width="112" height="46" fill="#b3202a" stroke="#e0b0b0" stroke-width="2"/><rect x="${1070 + i * 124}" y="736" width="112" height="46" fill="#b3202a" stroke="#e0b0b0" stroke-width="2"/>`,
    ),
    `<rect x="690" y="734" width="220" height="52" fill="#f2efe4"/>${words("CK 2107", 716, 748, 24, "#2b3a55", 4)}`,
    `<rect x="30" y="812" width="1540" height="62" rx="26" fill="url(#metal)"/>`,
    `<rect width="1600" height="900" fill="url(#lamp)"/>`,
  ].join(""),
  parts: {
    mat: {
      name: "TRUNK MAT",
      outlines: [
        [
          [270, 420],
          [930, 420],
          [880, 690],
          [164, 690],
        ],
      ],
      focus: [720, 470],
    },
    "trunk-floor": {
      name: "TRUNK FLOOR",
      outlines: [
        [
          [1046, 424],
          [1330, 424],
          [1436, 690],
          [970, 690],
        ],
      ],
      focus: [1210, 560],
    },
    spare: { name: "SPARE", outlines: [ring(480, 546, 230, 122)], focus: [480, 520] },
    jack: { name: "JACK", outlines: [box(742, 540, 250, 146)], focus: [850, 600] },
  },
};
