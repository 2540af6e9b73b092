import type { ComponentName, ZoneName } from "../../../../../shared-types/index.ts";
import { type WordedRow, wordedSigns } from "./worded-signs.ts";

/** Key of the saying of a part that is well. */
const praise = "well";

/** How a part is, by what is seen or felt of it: words of the part with words of what ails it, or of its being well. Common practice of the trade. */
interface State {
  readonly component: ComponentName;
  /** Words of the thing that no other thing has. */
  readonly topic: string;
  /** Signs of a fault by its kind (the circumstance of a claim of condition), each beside a word of the topic ("@topic" says where). */
  readonly ails: Readonly<Record<string, string>>;
  /** Signs of its being well, beside a word of the topic. */
  readonly well?: string;
  readonly never: string;
  readonly zones: readonly ZoneName[];
  readonly says: Readonly<Record<string, string>>;
}

const inside = ["cabin", "drive", "driver-side", "passenger-side", "opening", "closing"] as const;
const outside = ["front", "rear", "driver-side", "passenger-side", "roof", "cargo", "opening", "closing"] as const;
const supposed = "would/could/might/if/used to | other/another one/car/truck | known for | they all | on these | n't mind";
const denied = "no/not/n't/never/nothing/none/without/nor";

const states: readonly State[] = [
  {
    component: "seats",
    topic:
      "seat/seats/chair/chairs/cushion/cushions/squab/squabs/bolster/bolsters/backrest/upholstery/bench/hide/hides/piping/stitching/foam",
    ails: {
      tears:
        "seam/seams/stitch/stitches/stitching/piping + gone/go/split/splitting/let/opened/pulled/unpicked/open/frayed/coming/undone/burst | split/torn/ripped/rip/tear/slit/gash/holed/threadbare/frayed/chewed/clawed/claw/scuffed/hole/holes | foam + through/showing/see/yellow/poking/crumbs/out",
      wear: "sag/sags/sagging/sagged/collapsed/flat/flattened/sinks/sink/sunk/springs/given/crushed/lumpy/dished/lower + @topic | cracked/crackled/crazed/worn/bald/shiny/greasy",
      stains:
        "stain/stains/stained/ink/biro/burn/burns/cigarette/faded/bleached/sun/coffee/water/ring/spill/spilled/grubby/mildew/moldy/mould + mark/marks/on/in/across/through/stain/spot/hole/from/color",
      fault:
        "wo/does/do/ca n't slide/move/go/adjust/latch/lock/tip/fold/recline/stay/heat/work | jammed/stripped/seized/clicks/broken/rocks/wobbles/hisses | catch/handle/lever/runner/runners/track + broken/gone/stuck/bent/snapped/rusted/fell",
    },
    well: "no/not/n't/never/without/hardly ..4 rip/rips/tear/tears/stain/stains/mark/marks/crack/cracks/burn/burns/split/splits/sag/wear/worn/scuff/scuffs/sat/used/creased/fray/fade | firm/springy/plump/supple/unmarked/immaculate/perfect/mint/spotless",
    never: `${supposed} | cushion look | belt/belts/window/windows/dash/carpet/headliner/headlining/lining`,
    zones: inside,
    says: {
      tears: "The seam's let go on the driver's cushion.",
      wear: "The seat's cracked and gone shiny.",
      stains: "There's an ink mark on the passenger squab.",
      fault: "The passenger seat won't slide any more.",
      well: "The seats are firm and supple.",
    },
  },
  {
    component: "dash",
    topic:
      "needle/needles/dial/dials/speedo/speedometer/tach/gauge/gauges/cluster/clock/vent/vents/glovebox/cubby/veneer/segments/pixels/warning/ashtray/binnacle",
    ails: {
      cracks: "crack/cracks/cracked/split/splits/crazed/chip/chipped/lifting/peeling/warped/curled/delaminating | sliver + gone",
      fault:
        "dead/stuck/sticks/bounces/jumps/wanders/flickers/lazy/quit/stopped/broken/blank + @topic | wo/does/do/ca n't move/work/read/budge/shut/close/stay/go | wrong/fast/slow/empty + reads/says/shows/reading | warning light/lights/lamp + stays/stay/staying/flashes/tape",
      noise: "rattle/rattles/rattling/buzz/buzzes/squeak/squeaks/creak/creaks/creaky/ticks",
    },
    well: "all/every/each/both + work/works/lit/light/read/reads/move/moves/truth/told | no/not/n't/never/without ..4 crack/cracks/split/splits/chip/chips/light/lights/warning/dead/holes/fade | accurate/uncracked",
    never: `${supposed} | seat/seats/windshield/windscreen/screen/radio/paint`,
    zones: inside,
    says: {
      cracks: "The veneer's lifting and there's a chip out of it.",
      fault: "The speedo needle's stuck and the gauge doesn't move.",
      noise: "There's a rattle from the glovebox.",
      well: "Every needle tells the truth.",
    },
  },
  {
    component: "carpet",
    topic: "carpet/carpets/pile/footwell/footwells/mat/mats/rug/underlay",
    ails: {
      stains: "stain/stains/stained/bleach/bleached/faded/mud/oil/sticky/coffee/mold/mould/mildew/spots/paint",
      leaks: "wet/damp/soaked/sodden/soggy/puddle/squelch/squelches/pond/drip/swimming/moist",
    },
    never: `${supposed} | boots shoes | new carpet | underneath`,
    zones: [...inside, "cargo"],
    says: {
      stains: "The carpet's got bleach spots in it.",
      leaks: "The passenger footwell's soaked.",
    },
  },
  {
    component: "headliner",
    topic: "headliner/headlining/headcloth/ceiling/visor/visors",
    ails: {
      tears: "tear/torn/rip/ripped/split/hole/holes/seam",
      stains: "stain/stains/stained/ring/rings/smoke/smoked/nicotine/yellow/yellowed/brown/greasy/water/mildew/damp/wet/mold",
    },
    never: `${supposed} | new headliner/headlining | shop/workshop/garage/insulation`,
    zones: inside,
    says: {
      tears: "There's a tear in the headliner by the window.",
      stains: "There's a brown ring on the headlining from water.",
    },
  },
  {
    component: "belts",
    topic: "belt/belts/buckle/buckles/webbing/seatbelt/seatbelts/stalk",
    ails: {
      fault:
        "jammed/stuck/broken/slow/lazy/wo/dead/cracked/fell/loose/gone + @topic | n't retract/come/latch/click/lock/pull/go/let | feed + hand",
      wear: "frayed/fraying/chewed/cut/fuzzy/faded/fluffy/worn/twisted/mildew/moldy/knot",
    },
    well: "all/every/each/both/them + lock/locks/locked/retract/retracts/snatch/click/clicks/snap/yank | no/not/n't ..4 fray/frays/frayed/fraying/fade/twist/cut | like new",
    never: `${supposed} | fan/drive/timing/serpentine/alternator/squeal/squeals/pulley/engine/hood/transfer/seat heater`,
    zones: inside,
    says: {
      fault: "The passenger belt's jammed in the pillar.",
      wear: "The webbing's frayed on the driver's belt.",
      well: "Every belt locks when you snatch it.",
    },
  },
  {
    component: "audio",
    topic:
      "radio/stereo/speaker/speakers/tape/cassette/cd/tuner/antenna/aerial/mast/amp/subwoofer/bluetooth/touchscreen/infotainment/music",
    ails: {
      fault:
        "dead/crackle/crackles/hiss/hisses/blown/torn/eats/chews/skips/static/snapped/bent/broken/code/locked/flickers/spaghetti/protect/cuts/fuzzy | wo/does/do/ca n't work/play/come/go/find/pair/eject/light/hold/turn | nothing/no + out/sound/from/left/right/comes",
    },
    well: "plays/works/sounds/clear/loud/crisp/lovely/sweet/pairs/connects | all/both/every + corners/speakers/sides",
    never: `${supposed} | no radio/stereo/speakers/antenna/aerial | delete/phone number/police`,
    zones: [...inside, "front", "rear"],
    says: { fault: "The aerial's bent and the radio crackles.", well: "The tape plays and the radio sounds clear." },
  },
  {
    component: "air-conditioning",
    topic: "ac/aircon/compressor/condenser/refrigerant/freon",
    ails: {
      fault:
        "warm/lukewarm/leaked/leaking/leaks/leak/weak/dead/seized/screams/squeals/given/quit/recharge/regas/gas/gassing/dye/disconnected/tepid | wo n't/does n't/ca n't/not work/blow/cool/engage/kick/pull/cold/hold",
    },
    well: "freeze/freezing/snow/snowballs/ice/icy/frost/goosebumps/teeth/knuckles/penguin/penguins/jacket/jackets/cycles/forty/thirty/colder/works/strong/shiver - no/n't/not",
    never: `${supposed} | no ac/aircon/compressor/conditioning | heater/start/starts/morning/engine/cold start/cold when/air intake`,
    zones: [...inside, "engine-bay", "front"],
    says: { fault: "The compressor's seized and it blows warm.", well: "The ac's strong enough to freeze your knuckles." },
  },
  {
    component: "glass",
    topic: "windshield/windscreen/glass/window/windows/pane/tint/screen",
    ails: {
      fault:
        "slow/stuck/drops/dropped/jammed/wedged/crunch/clicks/regulator/fell/slips/grinds + down/up/motor/hand/help/track/door/wedge/wood/press/lift/push - crane | wo/does n't go/come/wind/close/shut/move/stay ..3 up/down/back?",
    },
    never: `${supposed} | headlight/headlights/lens/tail/touchscreen/radio/dash/speedo/sunroof/roof | no glass`,
    zones: [...outside, "cabin", "drive"],
    says: {
      fault: "The window's stuck, it dropped down in the door.",
    },
  },
  {
    component: "lights",
    topic:
      "headlight/headlights/headlamp/headlamps/lens/lenses/lamp/lamps/taillight/taillights/indicator/indicators/blinker/blinkers/fogs/reflector/reflectors/bulb/bulbs",
    ails: {
      cracks: "crack/cracked/chip/chipped/hole/broken/smashed/star/stone/split/tape",
      fault: "dead/dim/blown/flickers/intermittent/lazy + @topic | wo/does/do/ca n't light/work/come/flash/go/open",
    },
    never: `${supposed} | no fogs/lamps/headlights | warning/dash/engine/gauge`,
    zones: outside,
    says: {
      cracks: "The lens is cracked on the tail lamp.",
      fault: "One of the indicators is dead, that bulb's blown.",
    },
  },
];

const rows: readonly WordedRow[] = states.flatMap(({ component, topic, ails, well, never, zones, says }) => {
  const row = { attribute: "condition" as const, component, topic, zones, zone: zones[0]! };
  const beside = (signs: string): string =>
    signs
      .split(" | ")
      .map((sign) => {
        const whole = sign.trim().replaceAll("@topic", topic);
        return whole.includes(topic) ? whole : `& ${whole}`;
      })
      .join(" | ");
  return [
    ...Object.entries(ails).map(([kind, signs]) => ({
      ...row,
      value: "flawed",
      circumstance: kind,
      never: `${never} | ${denied} ..4 ${topic} | no/not/never/without/nor`,
      signs: beside(signs),
      says: says[kind]!,
    })),
    ...(well ? [{ ...row, value: "good", circumstance: "praise", never, signs: beside(well), says: says[praise]! }] : []),
  ];
});

export const stateSigns = wordedSigns(rows);
