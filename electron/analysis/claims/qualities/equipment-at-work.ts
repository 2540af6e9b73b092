import type { ComponentName, ZoneName } from "../../../../shared-types/index.ts";
import type { QualityRule } from "./quality-rule.ts";

/**
 * Equipment that is shown at work and not named: what it does, where it is reached for, what one sees, hears or feels of it.
 * Common practice of the trade, American and British.
 */
interface AtWork {
  readonly component: ComponentName;
  readonly part: string | null;
  /** Where the words show that it is not there. */
  readonly value?: "absent";
  readonly shown: readonly string[];
  /** What must be told beside it, where the words alone could be of something else. */
  readonly beside?: readonly string[];
  readonly unless?: readonly string[];
  readonly zones?: readonly ZoneName[];
  readonly says: string;
  readonly quiet: readonly string[];
}

const atWork: readonly AtWork[] = [
  {
    component: "top",
    part: "sunroof",
    shown: [
      "over/above my/your/the/our head/heads ..10 slides/slide/opens/tilts/winds/cranks/pops back/open/up/out",
      "overhead ..10 slides/slide/opens/tilts/winds/cranks/pops back/open/up/out",
      "up here/there/top ..6 glass/panel slides/tilts/winds/opens/pops",
      "wind/wound/winds/winding/crank/cranked/slide/slid/slides/roll/rolled/tilt/tilted/open/opened ..1 the ..2 panel ..2 overhead/above/up/roof/back",
      "panel overhead/above",
      "glass panel in the roof/ceiling",
      "panel in the roof/ceiling ..3 slides/tilts/opens/winds/pops",
      "hole in the roof ..3 factory/works/crank/handle/winds",
      "so we have the sky",
      "lets/let/letting ..1 the sky/sunshine/stars/sun/daylight in up/overhead/above/through the roof",
      "roof slides/tilts/winds/opens !right/rails",
      "crank/knob/handle ..6 roof/ceiling/overhead ..5 slides/tilts/opens/winds",
    ],
    unless: ["see the sky through", "top/hood/roof folds", "if it had", "visor ..3 slides"],
    says: "Up above my head this knob twists and it slides back.",
    quiet: ["I can see the sky through the rust.", "The seat slides back.", "The visor overhead is clean."],
  },
  {
    component: "top",
    part: "sunroof",
    shown: [
      "knob/handle/crank/switch/button/catch/panel/shade ..8 twists/turns/winds/slides/tilts/pops !signal/signals/lamp",
      "up? above/over my/your head ..10 twists/turns/winds/slides/tilts/pops",
      "panel/glass/hatch over/above my/your/our head/heads",
    ],
    beside: [
      "slides/slide/winds/pops/tilts/goes back/open/up ..8 air/sky/sun/sunshine/breeze",
      "fresh air !vent/vents/intake",
      "see/got/get/have/there 's the? sky !through",
      "feel the breeze/sun",
      "shade goes with it",
    ],
    unless: ["seat ..3 slides", "window/windows ..4 slides/winds/down", "see the sky through"],
    zones: ["cabin", "roof", "drive"],
    says: "This knob twists and it slides back and you get a bit of fresh air.",
    quiet: ["This knob turns the heater up.", "This handle winds the window down and you get some air."],
  },
  {
    component: "top",
    part: "sunroof",
    value: "absent",
    shown: [
      "no hole ..2 cut in it/the/this/there",
      "no hole in the roof/top",
      "no glass up there/here/top",
      "no glass in the roof",
      "one piece/sheet of sheet? metal/steel up/over ..4 windshield/windscreen/screen/back",
      "one piece/sheet of sheet? metal/steel ..3 up/over/from/windshield/front/there",
      "roof/top 's/is all? one piece/panel/sheet",
      "roof ..2 in one piece",
      "nobody 's/has? ever? cut ..2 hole in the roof/it",
    ],
    beside: ["roof", "up there/top/here", "over the top", "windshield to"],
    unless: ["floor", "hood/bonnet ..3 one piece", "dash ..4 hole"],
    says: "Up there it's all one piece of sheet metal, windshield to the back glass, the roof.",
    quiet: ["The hood is one piece of steel.", "There's no hole cut in the floor."],
  },
  {
    component: "transmission",
    part: "overdrive",
    shown: [
      "stalk/switch/button/lever/toggle/knob/flick/flip/pull ..12 drops/drop/dropped/falls/fell/loses/sheds ..1 # hundred? # ..1 revs/rpm",
      "stalk/switch/button/lever/toggle/knob/flick/flip/pull ..12 revs drop/drops/dropped/fall/falls/come/comes ..1 !of/a/on",
      "extra top gear on the switch/stalk/button",
      "# hundred revs/rpm off at/with the flick/switch/stalk",
    ],
    unless: ["ignition switch", "idle drops", "idle stop"],
    says: "I touch this stalk and there she drops six hundred revs and it goes quiet.",
    quiet: ["It drops six hundred revs into fifth gear.", "The lever goes into third."],
  },
  {
    component: "exhaust",
    part: "exhaust brake",
    shown: [
      "toggle/switch/button/lever/stalk ..12 hear it/that/her bark/growl/hold/snort/grumble",
      "hear it/that/her bark foot 's off",
      "toggle/switch/button/lever/stalk ..14 foot/feet ..1 off ..6 hold/holds/holding/slows/slowing",
      "holds/hold/holding/slows/slowing ..3 back ..3 without/not touching ..2 brake/brakes/pedal",
      "n't touched the brake/pedal ..8 hold/holds/holding/slows",
      "butterfly in the exhaust/downpipe",
      "flap in the exhaust/downpipe",
    ],
    unless: ["cruise ..6 hold/holds", "cut-out/cutout in the exhaust"],
    says: "Hit this toggle, hear it bark, foot's off.",
    quiet: ["Hit the brake and hear it squeal.", "It holds fifty with my foot on the gas."],
  },
  {
    component: "exhaust",
    part: "exhaust brake",
    shown: [
      "toggle/switch/button/lever/stalk/paddle ..6 here/there/knee/dash/column/floor",
      "flip/hit/push/press/pull this/the/that toggle/switch/button/lever/stalk/paddle",
    ],
    beside: [
      "hear it/that/her bark/growl/snort/grumble",
      "foot 's off ..8 hold/holds/slow/slows",
      "n't touched the brake/brakes/pedal",
      "without/not touching the brake/brakes/pedal",
      "holds/hold it/her/you/the truck ..3 hill/grade/load",
      "hold/holds # all day",
    ],
    unless: ["cruise"],
    zones: ["drive", "cabin"],
    says: "Hit this toggle here by my knee. Hear it bark? Foot's off.",
    quiet: ["Hit this toggle here and the fog lights come on.", "Push this button on the dash and hear it start."],
  },
  {
    component: "engine",
    part: "turbo",
    shown: [
      "hear ..3 turbo !lag/not",
      "hear ..2 spool/spooling",
      "boost gauge ..3 # pounds/psi/bar",
      "makes/making/pulls/builds ..2 # pounds/psi/bar of? boost",
      "comes on boost",
      "wastegate chatter/chattering/hiss/opens",
    ],
    unless: ["no turbo"],
    says: "Boost gauge is up at ten pounds.",
    quiet: ["I boosted it with jump leads."],
  },
  {
    component: "vehicle",
    part: "cruise control",
    shown: [
      "set it at/to/on # ..8 foot/feet ..1 off",
      "set ..2 # ..4 take/took my foot/feet off ..8 stays/stay/holds/hold",
      "holding/holds # ..3 by itself ..4 foot/feet",
    ],
    says: "I set it at sixty and take my foot off and it stays there.",
    quiet: ["Set the timing at ten.", "It holds sixty on the hill."],
  },
  {
    component: "vehicle",
    part: "heated seats",
    shown: [
      "seat/seats ..3 getting/gets/get/got/going ..1 warm/hot/toasty ..3 behind/backside/bum/bottom/rear/buns/tail/seat",
      "warms/warming/warmed/toasting/toasts/heats/heating my/your/the/her/his backside/bum/bottom/behind/buns/tail/posterior",
      "button ..4 seat/seats ..3 warms/heats/warm",
    ],
    says: "Push this and it warms your backside.",
    quiet: ["The seat is warm from the sun.", "Warms your heart."],
  },
  {
    component: "vehicle",
    part: "camera",
    shown: [
      "put/pop/pops/drop/stick/in it? in/into reverse ..5 picture/screen/see ..4 behind/bumper/back",
      "reverse ..3 picture comes up",
      "picture of what 's behind",
      "see behind you/me/us on the screen",
      "screen shows ..3 behind you/me/us",
    ],
    says: "Put it in reverse and the picture comes up of what's behind.",
    quiet: ["Put it in reverse and look behind you.", "Take a picture of it."],
  },
  {
    component: "dash",
    part: "fuel gauge",
    shown: [
      "that 's fuel/gas/petrol ..1 empty to full",
      "fuel/gas/petrol gauge !is/'s not/n't/missing",
      "gauge/needle ..3 says/reads/shows/showing/on/at ..1 half/quarter/full/three/empty ..2 tank/full/empty",
    ],
    unless: ["no fuel/gas/petrol gauge", "n't ..3 fuel/gas/petrol gauge", "fuel/gas/petrol gauge ..3 never"],
    says: "I look over at the left gauge and that's fuel, empty to full.",
    quiet: ["There's no gauge for it, you dip it.", "The paint gauge reads four mils."],
  },
  {
    component: "dash",
    part: "fuel gauge",
    value: "absent",
    shown: [
      "no fuel/gas/petrol gauge",
      "dip it ..8 gauge/stick",
      "dip the tank",
      "no gauge for it/that/the fuel/gas/petrol/tank",
      "n't got/have a fuel/gas/petrol gauge",
    ],
    beside: ["tank/fuel/gas/petrol/gallon/gallons/stick/filler"],
    unless: ["dip the tank of", "dipstick"],
    says: "You have to dip it because there's no gauge for it, he just used a stick in the tank.",
    quiet: ["Dip it in the paint and let it dry.", "The fuel gauge works."],
  },
  {
    component: "audio",
    part: "navigation",
    shown: ["map ..2 on the screen", "moving map", "tells/telling you/me/us to? turn left/right", "map comes up"],
    unless: ["map on my phone", "road map", "map light/lights/pocket/pockets"],
    says: "There's the map up on the screen.",
    quiet: ["There's a road map in the door pocket.", "The map light works."],
  },
  {
    component: "brakes",
    part: "abs",
    shown: [
      "pedal pulses/chatters/kicks/buzzes/shudders/judders/pulsing/chattering/kicking ..4 not/n't lock/locked/locking/skid",
      "stamp/stamped/stood/stand/stomp/stomped on it ..6 n't/not/never lock/locked",
      "chatter/pulse/kick through the pedal",
    ],
    unless: ["warped"],
    says: "Stamp on it and it does not lock.",
    quiet: ["The pedal pulses because the rotors are warped.", "Stamp on it and they lock."],
  },
  {
    component: "air-conditioning",
    part: null,
    shown: [
      "vent/vents ..4 thermometer ..6 # degrees",
      "thermometer in the vent/vents",
      "chill/chills/freeze/freezes/froze my/your/the knuckles/fingers/knees/ankles/tonsils/socks",
      "blow/blows/blowing ..2 cold/icy/frigid/arctic !day/morning/start",
      "meat hanging in here",
      "hang meat in here",
      "frost on the vent/vents",
      "goose bumps/pimples ..6 vent/vents/dash/air",
      "knocks/knock/drops/drop/pulls/pull the idle down when it kicks/cuts in",
    ],
    unless: [
      "not blow/blowing cold",
      "n't blow/blowing ..2 cold",
      "never blow/blew/blows cold",
      "heater blow/blows/blowing ..1 cold",
      "only blow/blows cold",
      "head gasket",
      "blow hot and cold",
    ],
    zones: ["cabin", "drive", "opening", "closing", "driver-side", "passenger-side"],
    says: "Put your hand here, it blows ice cold.",
    quiet: ["The wind blows cold off the lake up on the hill.", "It does not blow cold."],
  },
  {
    component: "air-conditioning",
    part: "heater",
    shown: [
      "blow/blows/blowing ..3 warm/hot/toasty ..4 feet/boots/toes/ankles/legs/knees/shins/hands",
      "warm/hot/toasty ..2 on my/your/the feet/boots/toes/ankles/shins",
      "toasts/toast/warms/warm/cooks/cook/roast/roasts my/your ankles/toes/feet/shins",
    ],
    zones: ["cabin", "drive", "opening", "closing"],
    says: "It's blowing nice and warm on my boots.",
    quiet: ["The engine is warm.", "My boots are on the mat."],
  },
  {
    component: "electrical",
    part: "central locking",
    shown: [
      "all four/of locks/em/them pop/drop/go/click/clunk up/down/together/at",
      "press/push/hit/click ..3 all the doors lock/unlock/click",
      "blip/click the fob/key/remote ..6 lock/locks/unlock/unlocks/doors",
    ],
    says: "Blip the fob and the doors unlock.",
    quiet: ["The doors shut.", "All four doors open."],
  },
  {
    component: "audio",
    part: "bluetooth",
    shown: ["phone/music ..2 plays/comes through the speakers/car/stereo/radio", "phone pairs/paired/connects/connected"],
    says: "My phone pairs with it straight off.",
    quiet: ["The phone is ringing."],
  },
  {
    component: "bumper",
    part: "parking sensors",
    shown: ["beeps/beeping/beep ..6 reverse/back/behind/wall/bumper/bollard/kerb/curb", "reverse/back ..5 beeps/beeping/bleeps"],
    unless: ["seat belt", "back up alarm", "backup alarm", "beeping ..3 forklift", "forklift ..4 beeping", "truck ..4 beeping"],
    zones: ["cabin", "drive"],
    says: "Hear it beeping when I reverse at the wall.",
    quiet: ["That's the forklift beeping when it backs up."],
  },
];

export const equipmentAtWorkRules: readonly QualityRule[] = atWork.map((row) => ({
  name: `${row.part ?? row.component} ${row.value ? "shown not to be there" : "shown by what it does"}`,
  attribute: "presence",
  value: row.value ?? "present",
  phrases: row.shown,
  ...(row.unless ? { unless: row.unless } : {}),
  ...(row.beside ? { beside: row.beside } : {}),
  ...(row.zones ? { zones: row.zones } : {}),
  about: [{ component: row.component, part: row.part }],
  // What does not work is a fault of what is there, and no sign that it is missing.
  denial: "drops",
  example: {
    says: row.says,
    ...(row.zones ? { zone: row.zones[0]! } : {}),
    gives: { component: row.component, part: row.part, value: row.value ?? "present" },
  },
  quiet: row.quiet,
}));
