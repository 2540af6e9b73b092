import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const cabin = ["cabin", "drive", "driver-side", "passenger-side", "opening", "closing", "documents"] as const;

/** How belts hold, told by where they run and what a hand does with them. Common practice of the trade. */
const rows: readonly WordedRow[] = [
  {
    attribute: "type",
    value: "lap",
    component: "belts",
    zones: cabin,
    never: "laptop/laps | lap and shoulder | track/race | no lap",
    signs: `
      lap/laps/waist/tummy/belly + belt/belts/only/strap/straps/buckle/kind/ones/just/across - shoulder and/diagonal and/sitting on/lap of luxury/your lap and over/hot
      no/never shoulder/diagonal ..1 strap/straps/belt/belts/harness/part/bit | nothing over/across ..2 shoulder/shoulders
      across ..2 lap/hips/waist and that 's it/all/your
      airplane/aeroplane/airliner/aircraft + belt/belts/buckle/buckles/strap
    `,
    says: "They go over your lap and that's it, just a waist belt.",
    zone: "cabin",
    quiet: ["I put the box on my lap."],
  },
  {
    attribute: "type",
    value: "three-point",
    component: "belts",
    zones: cabin,
    never: "no shoulder/diagonal | never did/put/had | point turn",
    signs: `
      shoulder/shoulders + across/lap/belt/belts/strap/straps + modern/pillar/over/three/both/proper/comes/put/front - no/only/harness/four/arm/hard/sub/straps over your
      diagonal/diagonals + belt/belts/ones/strap/front/lap - stripe/line/crack
      lap and shoulder/diagonal
      three/3 point/points/pointers + belt/belts/seat/every/all/front/rear/middle/back
    `,
    says: "The belt comes over your shoulder and across your lap.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "inertia reel",
    component: "belts",
    zones: cabin,
    never: "hose/cable/fishing/film | every seat",
    signs: `
      reel/reels/retract/retracts/retracting/retractor/retractors/inertia + belt/belts/strap/front/feed/lock/locks/snatch/snap/swapped/static - non/not/aerial/antenna/roof
      snatch/yank/tug/jerk/yanked/snatched + lock/locks/locked/grab/grabs/holds/caught/got you + belt/belts/strap/it/they/lean - mirror/handle
      lean forward + lets/locks/lock/gives
      goes/go/runs back ..3 by itself/themselves + belt/strap/snatch/pillar
    `,
    says: "Lean forward with the belt, it lets you, then snatch it and it locks.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "static",
    component: "belts",
    zones: cabin,
    never: "swapped/changed the static | radio/noise/electricity/cling",
    signs: `
      static/fixed + belt/belts/ones/strap/straps/reel/adjust/slider/length
      non retracting/retractable/inertia | do/does n't retract + lie/floor/adjust/slider/belts/belt
      belt/belts/strap/straps + adjust/slide/pull + yourself/tail/slider/length/by hand/floor - reel/height/wheel
    `,
    says: "The belts are non retracting, so they lie about on the floor.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "harness",
    component: "belts",
    zones: cabin,
    never: "wiring/engine/loom/horse/dog/main",
    signs: `
      four/five/six/4/5/6 point + harness/harnesses/belt/belts/strap/straps
      sub/crotch strap/straps/belt | both shoulders + strap/straps/belt/belts/inch
      cam lock + belt/belts/harness/buckle
      harness/harnesses + shoulders/shoulder/straps/dated/bar/race/racing/clip/eyebolts
    `,
    says: "Four inch straps over both shoulders and a sub strap.",
    zone: "cabin",
    quiet: ["The wiring harness is new."],
  },
  {
    attribute: "type",
    value: "automatic",
    component: "belts",
    zones: cabin,
    signs: "mouse/track/motorized/motorised/motor/automatic + belt/belts/shoulder/strap - race/clutch/fan/timing/tracks/gearbox",
    says: "When you shut the door the belt runs along the track.",
    zone: "cabin",
    quiet: [],
  },
];

export const beltKindSigns = wordedSigns(rows);
