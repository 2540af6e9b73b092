import type { ComponentName, ZoneName } from "../../../../shared-types/index.ts";
import type { Equipment } from "./equipment.ts";

/**
 * Equipment that needs no more than its names: told in the same few ways ("it's got the …", "there's no …", "… delete"), American and British.
 * Common practice of the trade throughout.
 */
interface Accessory {
  readonly component: ComponentName;
  readonly part: string;
  /** The first is plain words: the test says it in a sentence. */
  readonly names: readonly [string, ...string[]];
  /** Words that show it is there without naming it. */
  readonly shown?: readonly string[];
  readonly missing?: readonly string[];
  readonly unless?: readonly string[];
  readonly zones?: readonly ZoneName[];
}

const accessories: readonly Accessory[] = [
  // what drives and slows it
  {
    component: "transmission",
    part: "four-wheel drive",
    names: ["four wheel drive", "4 wheel drive", "four by four", "4x4", "4wd", "all wheel drive", "awd"],
    shown: [
      "transfer case !shop",
      "transfer box",
      "locking hubs",
      "lockout hubs",
      "auto/automatic/manual hubs",
      "four/4 high/low",
      "low range !radio",
      "front diff/differential/driveshaft/propshaft",
      "pumpkin up front",
      "front pumpkin",
      "shaft 's/is going forward",
      "shaft ..2 going forward",
    ],
    missing: ["4x2", "4 by 2", "two wheel drive only", "just two wheel drive", "only two wheel drive"],
    unless: ["all wheel drive cars", "put manual hubs"],
  },
  {
    component: "exhaust",
    part: "exhaust brake",
    names: ["exhaust brake", "jake brake", "engine brake", "jake !here/is/'s", "compression brake"],
  },
  {
    component: "exhaust",
    part: "adblue",
    names: ["adblue", "ad blue", "add blue", "diesel exhaust fluid", "def tank/fluid/filler/cap", "urea tank", "scr system"],
    missing: ["def delete", "deleted def", "no def !$", "no def $"],
  },
  {
    // Its bottle rides in the trunk as often as anywhere.
    component: "vehicle",
    part: "nitrous",
    names: ["nitrous", "laughing gas", "n2o", "nitrous oxide"],
    shown: [
      "# pound bottle ..4 valve/tag/line",
      "bottle with a valve",
      "purge valve/button",
      "bottle ..3 braided line",
      "braided line ..5 bottle",
    ],
    missing: ["never was a bottle in", "never had a bottle in"],
    unless: ["fire bottle/extinguisher", "washer bottle", "propane", "water bottle"],
  },
  { component: "transmission", part: "launch control", names: ["launch control"] },
  { component: "transmission", part: "paddle shifters", names: ["paddle shifters", "paddle shift", "shift paddles", "flappy paddles"] },
  { component: "vehicle", part: "adaptive cruise", names: ["adaptive cruise", "radar cruise", "distance cruise"] },
  { component: "vehicle", part: "lane assist", names: ["lane assist", "lane keeping", "lane keep", "lane departure"] },
  { component: "vehicle", part: "start-stop", names: ["stop start", "start stop"] },
  { component: "suspension", part: "sway bar", names: ["sway bar", "sway bars", "anti roll bar", "anti roll bars", "antiroll bar"] },
  {
    component: "vehicle",
    part: "airbags",
    names: [
      "airbags !went/deployed/did/blew/blow/never/ever/fired/go/suspension/light/lamp/are/were",
      "air bags !went/deployed/did/blew/blow/never/ever/fired/inside/between/in/for/go/on/suspension/under/are/were",
      "an/driver/passenger/side/curtain/knee airbag !light/lamp",
      "srs",
    ],
    missing: ["before airbags", "airbag delete", "airbags are/were gone/missing/out"],
    unless: [
      "airbags have been/gone",
      "airbag/airbags ..2 warning",
      "helper air bags",
      "stuck/put/added/fitted ..2 air bags/airbags",
      "axle/springs/spring/tow/towing/camper/load ..8 air bags",
      "air bags ..4 axle/springs/spring/coils/leafs/camper/load",
      "never had the airbags",
    ],
  },
  // inside
  {
    component: "air-conditioning",
    part: "heater",
    names: [
      "a heater",
      "the heater",
      "heater works",
      "any heater",
      "heater !hoses/hose/box/car/only/core/valve/controls/blower/motor/delete",
    ],
    shown: ["heater ..3 blowing/warm/hot/toasty", "heat works", "heat is/'s on/hot/working", "hot air !balloon"],
    missing: ["no heat !shield/gun/damage/marks"],
    unless: [
      "heater car",
      "block heater",
      "heater only",
      "seat heater",
      "parking heater",
      "diesel heater",
      "night heater",
      "resistance heater",
      "engine heater",
    ],
  },
  { component: "air-conditioning", part: "rear air", names: ["rear air", "rear ac", "rear climate", "back air"] },
  {
    component: "dash",
    part: "head-up display",
    names: ["head up display", "heads up display", "hud", "projection onto/on/in the glass/windscreen/windshield/screen"],
    shown: [
      "projected/projects/shown/floating/floats/shows ..3 on/onto/in the glass/windscreen/windshield",
      "number/speed/figures/digits/arrow/arrows ..4 float/floats/floating/hover/hovers/hovering",
      "speed/number/figures/digits/arrow ..5 in/on the glass/windscreen/windshield",
      "above the bonnet in the glass",
    ],
    unless: ["speed ..5 on the glass shop"],
  },
  { component: "dash", part: "tachometer", names: ["tachometer", "tach", "rev counter"], unless: ["on the tach", "tach says"] },
  {
    component: "dash",
    part: "clock",
    names: ["dash clock", "analog clock", "analogue clock"],
    unless: ["round the clock", "on the clock"],
  },
  { component: "audio", part: "bluetooth", names: ["bluetooth", "blue tooth"] },
  { component: "audio", part: "cd player", names: ["cd player", "cd changer", "disc changer", "multichanger"] },
  { component: "audio", part: "phone mirroring", names: ["phone mirroring", "phone projection", "screen mirroring"] },
  { component: "seats", part: "cooled seats", names: ["cooled seats", "ventilated seats", "air conditioned seats"] },
  {
    component: "seats",
    part: "third row",
    names: [
      "third row",
      "third seat",
      "3rd row",
      "3rd seat",
      "way back seat",
      "occasional seats",
      "dickey seats",
      "seven seater",
      "two small ones in the boot",
    ],
  },
  { component: "seats", part: "armrest", names: ["armrest", "arm rest", "center armrest"] },
  { component: "seats", part: "head rests", names: ["head rests", "headrests", "head restraints"] },
  { component: "belts", part: "rear belts", names: ["rear belts", "rear seat belts", "belts in the back/rear"] },
  { component: "belts", part: "shoulder belts", names: ["shoulder belts", "shoulder belt", "shoulder harness"] },
  { component: "carpet", part: "floor mats", names: ["floor mats", "overmats", "over mats"] },
  {
    component: "glass",
    part: "power windows",
    names: ["power windows", "electric windows"],
    missing: ["crank windows", "wind up windows", "keep fit windows"],
  },
  { component: "glass", part: "tint", names: ["window tint", "tinted windows", "privacy glass"], missing: ["no tint"] },
  { component: "glass", part: "rear wiper", names: ["rear wiper", "back wiper"] },
  {
    component: "glass",
    part: "heated screen",
    names: ["heated windscreen", "heated windshield", "heated front screen", "quick clear screen"],
  },
  // outside
  { component: "top", part: "tonneau cover", names: ["tonneau cover", "tonneau", "bed cover", "toneau"] },
  {
    component: "top",
    part: "hard top",
    names: ["hard top !car/coupe", "removable hardtop", "factory hardtop", "removable hard top"],
    unless: ["door hard top", "door hardtop"],
  },
  { component: "top", part: "side screens", names: ["side curtains", "side screens", "sidescreens"] },
  {
    component: "top",
    part: "roof bars",
    names: ["ladder roller", "pipe tube", "ladder rack", "ladder racks", "headache rack", "lumber rack"],
  },
  { component: "body", part: "running boards", names: ["running boards", "side steps", "nerf bars", "step boards"] },
  { component: "body", part: "mud flaps", names: ["mud flaps", "mudflaps", "splash guards"] },
  {
    component: "body",
    part: "tool box",
    names: ["tool box", "toolbox", "cross box", "toolboxes", "tool boxes"],
    unless: ["my tool box", "my toolbox", "in the toolbox at"],
  },
  { component: "bumper", part: "tow hooks", names: ["tow hooks", "towing eyes", "recovery hooks"] },
  { component: "bumper", part: "winch", names: ["winch"] },
  {
    component: "bumper",
    part: "parking sensors",
    names: ["parking sensors", "park sensors", "reverse sensors", "reversing sensors", "park distance control"],
  },
  { component: "bumper", part: "push bar", names: ["push bar", "bull bar", "brush guard", "grille guard", "nudge bar"] },
  { component: "lights", part: "fog lights", names: ["fog lights", "fog lamps", "fogs", "driving lights", "driving lamps", "spot lamps"] },
  { component: "lights", part: "light bar", names: ["light bar", "lightbar"] },
  { component: "lights", part: "beacon", names: ["beacon", "strobes", "beacons"] },
  { component: "body", part: "spoiler", names: ["spoiler", "rear wing on"], unless: ["spoiler alert"] },
  { component: "body", part: "hood scoop", names: ["hood scoop", "bonnet scoop"] },
  { component: "body", part: "wind deflectors", names: ["wind deflectors", "rain guards", "vent visors"] },
  // working gear
  {
    component: "body",
    part: "power tailgate",
    names: ["power tailgate", "electric tailgate", "power liftgate", "powered tailgate", "electric boot lid"],
  },
  { component: "body", part: "tail lift", names: ["tail lift", "lift gate", "liftgate platform"], unless: ["power lift gate"] },
  { component: "electrical", part: "inverter", names: ["inverter"] },
  { component: "electrical", part: "second battery", names: ["second battery", "leisure battery", "auxiliary battery", "aux battery"] },
  { component: "electrical", part: "block heater", names: ["block heater", "engine heater", "engine block heater"] },
  { component: "electrical", part: "trailer brake controller", names: ["trailer brake controller", "brake controller", "brake box"] },
  { component: "electrical", part: "alarm", names: ["alarm system", "car alarm"], unless: ["alarm clock", "false alarm"] },
  { component: "electrical", part: "immobilizer", names: ["immobilizer", "immobiliser"] },
  { component: "electrical", part: "tracker", names: ["tracker", "tracking device"] },
  {
    component: "electrical",
    part: "central locking",
    names: ["central locking", "power locks", "remote locking", "remote central locking", "keyless entry"],
  },
  {
    component: "electrical",
    part: "fast charging inlet",
    names: [
      "fast charging",
      "rapid charging",
      "fast charge !me",
      "rapid charge",
      "dc charging",
      "quick charging",
      "rapid charger port/socket",
      "fast charger port/socket",
      "quick charge port/socket",
      "plug ..5 for the quick ones",
      "plug ..5 for the fast/rapid ones",
    ],
    shown: ["hundred kilowatt charging", "charges at fifty/50/# kilowatts dc"],
    missing: [
      "slow charge only",
      "slow charging only",
      "ac charging only",
      "only takes the slow",
      "ca n't fast charge",
      "wo n't fast charge",
      "does n't fast charge",
      "wo n't rapid charge",
      "does n't rapid charge",
    ],
  },
];

export const accessoryEquipment: readonly Equipment[] = accessories.map((row) => ({
  ...row,
  says: `It's got ${/^(?:a|an|the) /.test(row.names[0]) ? row.names[0] : `the ${row.names[0]}`}.`.replace(/ !.*?\.$/, "."),
  lacks: `There's no ${row.names[0].replace(/^(?:a|an|the) /, "").replace(/ !.*$/, "")} on it.`,
  quiet: [`You could order it with the ${row.names[0].replace(/^(?:a|an|the) /, "").replace(/ !.*$/, "")}.`],
}));
