import type { ZoneName } from "../../../../shared-types/index.ts";
import { batteryKinds } from "./battery-kinds.ts";
import { kindsByHandling } from "./kinds-by-handling.ts";
import type { FixedPart, QualityRule } from "./quality-rule.ts";

/** A kind told by how the part is used or what it does, its name unspoken. Common practice of the trade, American and British. */
export interface KindByUse {
  readonly about: FixedPart;
  readonly value: string;
  readonly phrases: readonly string[];
  readonly beside?: readonly string[];
  readonly unless?: readonly string[];
  readonly zones?: readonly ZoneName[];
  /** See `QualityRule.tellsOfToday`. */
  readonly tellsOfToday?: true;
  readonly says: string;
  readonly quiet: readonly string[];
}

const thirdRow: FixedPart = { component: "seats", part: "third row", position: "rear" };
const seatWords = ["seat/seats/bench/flap", "kids/children/young'uns/youngsters/passengers/grandkids/boys/girls/little"];
const rearDoors: FixedPart = { component: "body", part: "rear doors", position: "rear" };
const atTheBack = ["back/rear/boot/tailgate/hatch/load/cargo/trunk", "gas strut/struts"];
const drivenWheels: FixedPart = { component: "vehicle", part: "driven wheels" };

const kindsByUse: readonly KindByUse[] = [
  {
    about: thirdRow,
    value: "rear-facing",
    phrases: [
      "ride/rides/riding/sit/sits/sitting/look/looks/looking/face/faces/facing ..2 out of? the back/rear !of",
      "face/faces/facing backwards/backward/rearward/rearwards",
      "rear/rearward/back/backward facing seat/seats/bench/third/jump/one/ones",
      "backwards/backward seat/seats/bench",
      "ride/rides/riding/sit/sits backwards/backward",
      "waving/wave/wave at the truckers/trucks/cars/traffic/drivers/folks behind",
    ],
    beside: seatWords,
    unless: ["facing the back wall", "child seat", "car seat", "rear facing child", "looking out the back window at"],
    says: "There's your third seat, and the kids ride looking out the back glass.",
    quiet: ["I'm looking out the back window.", "He backed in facing the back of the shop.", "A rear facing child seat fits."],
  },
  {
    about: thirdRow,
    value: "sideways",
    phrases: [
      "sideways/side facing/sideways facing seat/seats/bench/benches/ones",
      "seats/seat/they/benches face/faces sideways/inward/inwards/in $",
      "sit/sat/ride/rode/sitting/riding sideways/knee",
      "face/faces/facing each other",
      "knee to knee",
    ],
    beside: seatWords,
    unless: ["looking at it sideways", "slid sideways", "went sideways", "front seats face"],
    says: "The children sat knee to knee on the sideways seats.",
    quiet: ["It slid sideways on the seat.", "The two cars are facing each other."],
  },
  {
    about: rearDoors,
    value: "barn doors",
    phrases: [
      "barn doors",
      "barn door",
      "twin/double/two doors ..2 back/rear",
      "back/rear doors ..4 swing/open/go/fold/fold ..3 side/sides/270/two",
      "back/rear doors ..3 side hinged/hung",
      "side hinged/hung rear/back doors/door",
    ],
    unless: [
      "old barn door",
      "like a barn door",
      "a barn door in",
      "two doors on/down the back of",
      "couldn't hit a barn",
      "two doors and a back",
    ],
    says: "Back of it, barn doors, they go right round flat to the sides.",
    quiet: ["It flies like a barn door.", "The back door is dented."],
  },
  {
    about: rearDoors,
    value: "tailgate",
    phrases: [
      "lifts/lift/swings/swing/goes/opens ..2 up over/above my/your/the head",
      "tailgate/hatch lifts/lift/swings/swing/goes ..2 up !and/to",
      "top hinged/hung tailgate/door/hatch",
      "lift up tailgate/hatch/gate",
      "up and over tailgate/door",
      "stand/standing/stood under the tailgate/hatch",
      "one piece tailgate",
      "tailgate on gas struts",
    ],
    beside: atTheBack,
    unless: ["bonnet/hood ..6 lifts", "tailgate ..2 drops", "sunroof", "lift over", "garage door"],
    zones: ["rear", "cargo", "drive", "driver-side", "passenger-side", "closing", "opening"],
    says: "Out the back, careful, this lifts right up over your head, mind the gas struts.",
    quiet: ["The back of the hood lifts up over your head.", "The tailgate drops down flat."],
  },
  {
    about: drivenWheels,
    value: "rear-wheel drive",
    phrases: [
      "motor/engine ..4 between the back/rear wheels",
      "motor/engine ..3 drives/driving/turns/turning/powers the back/rear wheels/axle/hubs !and",
      "drives/driving/turns/powers the back/rear wheels/axle !and",
      "back/rear wheels do/doing ..2 driving/pushing/work",
      "back/rear ones do/doing ..2 driving/pushing",
      "push/pushes/pushed you/it/along ..2 from the back/rear/behind",
      "nothing driving ..2 front/fronts",
      "no half/axle? shafts/driveshafts up? at/to? the? front",
    ],
    unless: ["front and back/rear wheels", "all four", "locks", "transfer case", "when the fronts slip"],
    says: "The motor is right here between the back wheels.",
    quiet: ["It drives the back wheels and the fronts.", "The battery is between the back wheels."],
  },
  {
    about: drivenWheels,
    value: "front-wheel drive",
    phrases: [
      "motor/engine ..3 drives/driving/turns/turning/powers the front wheels/axle/hubs !and",
      "drives/driving/turns/powers the front wheels/axle !and/when/if/too",
      "front wheels do/doing ..2 driving/pulling/work !on",
      "pull/pulls/pulled you/it/itself/along ..2 from/by the front",
      "nothing driving ..2 back/rear/rears",
      "no driveshaft/propshaft/prop/half ..1 to? the? back/rear",
    ],
    unless: ["all four", "transfer case", "when the backs slip", "front wheels do the work of steering", "front driveshaft"],
    says: "The motor drives the front wheels, nothing at the back.",
    quiet: ["The front wheels do the steering.", "It turns the front wheels and the backs."],
  },
  {
    about: { component: "suspension", part: "shock" },
    value: "telescopic",
    phrases: [
      "telescopics",
      "telescopic !steering/column/wheel/ladder/fork/forks/mirror/mirrors",
      "tube shocks",
      "tubular shocks/dampers",
      "gas shocks/dampers",
    ],
    unless: ["telescopic steering", "tilt and telescopic"],
    says: "At the back there you can see the telescopics, one a side.",
    quiet: ["It has the tilt and telescopic wheel.", "It's still on lever arms."],
  },
  {
    about: { component: "suspension", part: "spring" },
    value: "coil",
    phrases: ["spring/springs ..4 coil/coils !over/pack", "plain? steel coil/coils", "coil/coils ..1 plain/ordinary steel"],
    unless: ["leaf ..8 coil/coils", "coil box/pack/packs/wire", "spring/springs ..4 not coil/coils", "used to be coil/coils"],
    says: "At the back, the spring there is a coil, a plain steel one.",
    quiet: ["The leaf spring is under the coil box.", "The ignition coil is new this spring."],
  },
  {
    about: { component: "suspension", part: "spring" },
    value: "air",
    phrases: [
      "bellows",
      "air springs/spring",
      "rides/ride/riding/sits/sit on air",
      "pumps itself/itself's up/level",
      "pumps it up/level",
      "sinks/drops down overnight",
      "raise/lower/raises/lowers it on the button/switch",
    ],
    beside: ["suspension/ride/rides/springs/spring/bellows/level/levelling/corner/axle/strut/struts/height", "compressor"],
    unless: ["exhaust bellows", "flexi bellows", "helper bags", "helper ..2 bellows"],
    says: "The bellows are filled from the compressor, it rides level.",
    quiet: ["There's a flexi bellows in the exhaust.", "It sits on air in the trailer."],
  },
  {
    about: { component: "suspension", part: "axle" },
    value: "independent",
    phrases: [
      "a arms !rest",
      "a arm each/on/and",
      "wishbones",
      "double wishbone",
      "upper/top and lower/bottom arms/arm/control",
      "wishbone each/on/and",
      "half shaft/shafts to/going ..1 each",
    ],
    unless: ["traction arms", "# a arms length"],
    says: "That's a pair of A arms each side and a coil between.",
    quiet: ["It has a straight axle.", "Your arms get tired."],
  },
  {
    about: drivenWheels,
    value: "front-wheel drive",
    phrases: [
      "driveshaft/driveshafts/halfshaft/halfshafts/half ..4 going/running/goes/run ..2 to the front wheels/hubs",
      "shafts ..4 to the front wheels/hubs",
    ],
    unless: ["transfer", "four wheel", "and the back/rear"],
    zones: ["engine-bay", "underside", "front"],
    says: "You can see the two driveshafts going off to the front wheels.",
    quiet: ["The driveshafts go to the front wheels and the back ones."],
  },
  {
    about: { component: "transmission", part: "transfer case control" },
    value: "electric",
    phrases: [
      "knob/dial/button/switch/buttons ..6 two/2 high ..2 four/4 high",
      "knob/dial/button/switch ..6 four/4 wheel drive",
      "turn/twist the knob ..4 four/4 high/low",
    ],
    beside: ["four/4 high/low/wheel"],
    unless: ["lever", "hub/hubs"],
    says: "Four wheel drive, you've got this knob right here, two high, four high, four low.",
    quiet: ["This knob is the heater.", "The lever is for four high."],
  },
  {
    about: { component: "transmission", part: "transfer case control" },
    value: "lever",
    phrases: [
      "long/short/second/little/other/transfer lever",
      "lever by my/your knee",
      "lever ..6 two/2 high ..2 four/4 high",
      "yank/pull/push/shove/grab the ..1 lever",
    ],
    beside: ["four/4 high/low/wheel", "transfer case/box"],
    unless: ["hood lever", "seat lever", "tilt lever"],
    says: "To get the four wheel drive you grab the long lever by your knee and yank it back.",
    quiet: ["Pull the lever and the hood pops.", "Grab the lever to slide the seat."],
  },
];

export const typeRulesByUse: readonly QualityRule[] = [...kindsByUse, ...kindsByHandling, ...batteryKinds].map((row) => ({
  name: `${row.about.part ?? row.about.component} shown to be ${row.value}`,
  attribute: "type",
  value: row.value,
  phrases: row.phrases,
  ...(row.beside ? { beside: row.beside } : {}),
  ...(row.unless ? { unless: row.unless } : {}),
  ...(row.zones ? { zones: row.zones } : {}),
  ...(row.tellsOfToday ? { tellsOfToday: row.tellsOfToday } : {}),
  about: [row.about],
  denial: "drops",
  example: {
    says: row.says,
    ...(row.zones ? { zone: row.zones[0]! } : {}),
    gives: { component: row.about.component, part: row.about.part, value: row.value },
  },
  quiet: row.quiet,
}));
