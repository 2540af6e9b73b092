import type { ComponentName } from "../../../../shared-types/index.ts";
import type { UnplacedMeaning } from "../slots/positions.ts";

/**
 * Kinds of one part that exclude each other. A word outside every family is a name, not a choice, and is never held against another
 * ("power brakes" says nothing about disc or drum). Common practice of the trade.
 */
export interface TypeFamily {
  readonly name: string;
  /** Words for a reviewer: "front brakes" is made from the position and this. */
  readonly topic: string;
  readonly components: readonly ComponentName[];
  /** `any`: the claim's part is not looked at ("calipers" and "brakes" both say disc); `named`: parts must agree. */
  readonly parts: "any" | "named";
  /** Overrides the component's own reading of a claim without a position. */
  readonly unplaced?: UnplacedMeaning;
  /** What a buyer loses, 1 to 100. */
  readonly weight: number;
  /** Each choice with the spoken words that name it. */
  readonly choices: Readonly<Record<string, RegExp>>;
}

export const typeFamilies = [
  {
    name: "brake-kind",
    topic: "brakes",
    components: ["brakes"],
    parts: "any",
    weight: 75,
    choices: { disc: /\b(dis[ck]s?|calipers?|callipers?|rotors?)\b/, drum: /\b(drums?|shoes)\b/ },
  },
  {
    name: "brake-rotor-kind",
    topic: "brake rotors",
    components: ["brakes"],
    parts: "any",
    weight: 40,
    choices: { vented: /\b(vented|ventilated)\b/, solid: /\bsolid\b/ },
  },
  {
    name: "brake-assistance",
    topic: "brake assistance",
    components: ["brakes"],
    parts: "any",
    unplaced: "single",
    weight: 45,
    choices: { power: /\b(power|servo|boosted|assisted)\b/, unassisted: /\b(manual|unassisted|non ?-?power)\b/ },
  },
  {
    name: "gearbox-kind",
    topic: "transmission type",
    components: ["transmission"],
    parts: "any",
    weight: 85,
    choices: {
      automatic: /\b(automatic|auto|cvt|dual clutch|torque converter)\b/,
      manual: /\b(manual|stick( shift)?|standard shift|clutch pedal|top ?loader)\b/,
    },
  },
  {
    name: "steering-gear",
    topic: "steering gear",
    components: ["steering"],
    parts: "any",
    weight: 55,
    choices: { box: /\b(box|recirculating ball|worm|cam and peg)\b/, rack: /\b(rack( and pinion)?)\b/ },
  },
  {
    name: "steering-assistance",
    topic: "steering assistance",
    components: ["steering"],
    parts: "any",
    weight: 50,
    choices: { power: /\b(power|assisted)\b/, unassisted: /\b(manual|unassisted|armstrong)\b/ },
  },
  {
    name: "tire-construction",
    topic: "tire construction",
    components: ["tire"],
    parts: "any",
    weight: 55,
    choices: { radial: /\bradials?\b/, "bias-ply": /\b(bias( ?-?ply)?|cross ?-?pl(y|ies))\b/ },
  },
  {
    name: "tire-season",
    topic: "tire season",
    components: ["tire"],
    parts: "any",
    weight: 40,
    choices: { "all-season": /\ball ?-?season\b/, summer: /\bsummer\b/, winter: /\b(winter|snow)\b/ },
  },
  {
    name: "tire-tread-pattern",
    topic: "tire tread",
    components: ["tire"],
    parts: "any",
    weight: 35,
    choices: { "mud-terrain": /\bmud( ?-?terrain)?s?\b/, "all-terrain": /\ball ?-?terrains?\b/, highway: /\bhighway\b/ },
  },
  {
    name: "fuel-delivery",
    topic: "fuel delivery",
    components: ["fuel-system", "engine"],
    parts: "any",
    weight: 60,
    choices: {
      carburetor: /\b(carb(uret+or)?s?|carburet+ed|(one|two|four|2|4) ?-?barrel|double pumper)\b/,
      injection: /\b((fuel )?inject(ion|ed)|efi|throttle body)\b/,
    },
  },
  {
    name: "carburetor-barrels",
    topic: "carburetor barrels",
    components: ["fuel-system"],
    parts: "any",
    weight: 45,
    choices: { two: /\b(two|2) ?-?barrel\b/, four: /\b(four|4) ?-?barrel\b/, one: /\b(one|single|1) ?-?barrel\b/ },
  },
  {
    name: "fuel",
    topic: "fuel",
    components: ["engine", "vehicle", "fuel-system"],
    parts: "any",
    weight: 90,
    choices: {
      diesel: /\b(turbo ?)?diesel\b/,
      gasoline: /\b(gas|gasoline|petrol)\b/,
      electric: /\b(all|fully|pure|battery) ?-?electric\b|^electric$/,
    },
  },
  {
    name: "cylinder-layout",
    topic: "engine layout",
    components: ["engine"],
    parts: "any",
    weight: 88,
    choices: {
      inline: /\b(in ?-?line|straight)[ -]?(three|four|five|six|eight|3|4|5|6|8)\b|\b(flathead|slant) (four|six)\b|^(inline|straight)$/,
      vee: /\bv ?-?(6|8|10|12|six|eight|ten|twelve)\b/,
      flat: /\bflat (four|six|4|6)\b|\bboxer\b/,
    },
  },
  {
    name: "valve-gear",
    topic: "engine valve gear",
    components: ["engine"],
    parts: "any",
    weight: 50,
    choices: {
      pushrod: /\bpush ?-?rods?\b/,
      "overhead-cam": /\b((single |twin |double )?overhead cams?|(twin|single) cam|[sd]?ohc)\b/,
      flathead: /\b(flat ?head|side ?-?valve)\b/,
    },
  },
  {
    name: "camshaft-drive",
    topic: "camshaft drive",
    components: ["engine"],
    parts: "named",
    weight: 60,
    choices: { chain: /\b(timing )?chain\b/, belt: /\b((timing|cam) ?)?belt\b/, gear: /\btiming gears?\b/ },
  },
  {
    name: "ignition-kind",
    topic: "ignition",
    components: ["ignition"],
    parts: "any",
    weight: 35,
    choices: { points: /\b(contact )?(points|breaker)\b/, electronic: /\belectronic\b/, magneto: /\bmagneto\b/ },
  },
  {
    name: "charging",
    topic: "charging system",
    components: ["electrical"],
    parts: "any",
    weight: 35,
    choices: { alternator: /\balternator\b/, generator: /\b(generator|dynamo)\b/ },
  },
  {
    name: "earth",
    topic: "battery earth",
    components: ["electrical"],
    parts: "any",
    weight: 35,
    choices: { negative: /\bnegative\b/, positive: /\bpositive\b/ },
  },
  {
    name: "driven-wheels",
    topic: "driven wheels",
    components: ["vehicle", "transmission", "final-drive"],
    parts: "any",
    unplaced: "single",
    weight: 85,
    choices: {
      all: /\b(all ?-?wheel ?-?drive|four ?-?wheel ?-?drive|awd|4wd|4x4|four by four)\b/,
      rear: /\b(rear ?-?wheel ?-?drive|rwd)\b/,
      front: /\b(front ?-?wheel ?-?drive|fwd)\b/,
      two: /\b(two ?-?wheel ?-?drive|2wd|4x2)\b/,
    },
  },
  {
    name: "differential",
    topic: "differential",
    components: ["final-drive"],
    parts: "any",
    weight: 55,
    choices: {
      "limited-slip": /\b(limited ?-?slip|posi(traction)?|lsd|locker|locking)\b/,
      open: /\b(open( diff(erential)?)?|one ?-?legger|peg ?-?leg)\b/,
    },
  },
  {
    name: "spring-kind",
    topic: "suspension springs",
    components: ["suspension"],
    parts: "any",
    weight: 45,
    choices: { leaf: /\b(leaf|leaves|leafs|buggy spring)\b/, coil: /\bcoils?( ?-?overs?)?\b/, torsion: /\btorsion\b/ },
  },
  {
    name: "seat-kind",
    topic: "seat kind",
    components: ["seats"],
    parts: "any",
    weight: 40,
    choices: { bucket: /\bbuckets?\b/, bench: /\bbench\b/ },
  },
  {
    name: "seat-adjustment",
    topic: "seat adjustment",
    components: ["seats"],
    parts: "any",
    weight: 35,
    choices: { power: /\bpower\b/, manual: /\bmanual\b/ },
  },
  {
    name: "window-lift",
    topic: "windows",
    components: ["glass"],
    parts: "any",
    weight: 35,
    choices: { power: /\b(power|electric)\b/, manual: /\b(manual|crank|wind ?-?up|roll ?-?up)\b/ },
  },
  {
    name: "windshield-glass",
    topic: "windshield glass",
    components: ["glass"],
    parts: "any",
    weight: 30,
    choices: { laminated: /\blaminated\b/, toughened: /\b(toughened|tempered)\b/ },
  },
  {
    name: "light-source",
    topic: "lights",
    components: ["lights"],
    parts: "named",
    weight: 35,
    choices: { led: /\bled\b/, halogen: /\bhalogen\b/, xenon: /\b(xenon|hid)\b/, "sealed-beam": /\bsealed ?-?beams?\b/ },
  },
  {
    name: "belt-kind",
    topic: "seat belts",
    components: ["belts"],
    parts: "any",
    weight: 50,
    choices: { lap: /\blap$|\blap (only|belts?|kind)\b/, "three-point": /\b(three|3) ?-?point\b|\blap and shoulder\b/ },
  },
  {
    name: "top-kind",
    topic: "top",
    components: ["top"],
    parts: "any",
    weight: 45,
    choices: { power: /\b(power|electric)\b/, manual: /\bmanual\b/ },
  },
  {
    name: "frame-kind",
    topic: "frame",
    components: ["frame"],
    parts: "any",
    weight: 60,
    choices: {
      unibody: /\b(unibody|unitary|monocoque)\b/,
      separate: /\b(full frame|body ?-?on ?-?frame|ladder( frame)?|separate chassis)\b/,
    },
  },
  {
    name: "title-brand",
    topic: "title",
    components: ["title"],
    parts: "any",
    weight: 98,
    choices: { clean: /\b(clean|clear)\b/, branded: /\b(salvage|rebuilt|branded|flood|lemon|write ?-?off|category [scnd]|cat [scnd])\b/ },
  },
  {
    name: "exhaust-layout",
    topic: "exhaust layout",
    components: ["exhaust"],
    parts: "any",
    weight: 35,
    choices: { single: /\bsingle( exhaust)?\b/, dual: /\b(dual|duals|twin pipes?|true dual)\b/ },
  },
  {
    name: "cab",
    topic: "cab",
    components: ["body", "vehicle"],
    parts: "any",
    weight: 70,
    choices: {
      regular: /\b(regular|standard|single) cab\b/,
      extended: /\b(extended|super|king|club) cab\b/,
      crew: /\b(crew|double|quad) cab\b/,
    },
  },
  {
    name: "refrigerant",
    topic: "air conditioning refrigerant",
    components: ["air-conditioning"],
    parts: "any",
    weight: 30,
    choices: { "r-12": /\br ?-?12\b/, "r-134a": /\b(r ?-?)?134 ?-?a?\b/, "r-1234yf": /\b1234 ?yf\b/ },
  },
] as const satisfies readonly TypeFamily[];

/** Every choice that a spoken type makes: at most one in each family; a word that makes two in one family makes none ("disc/drum"). */
export function choicesOf(component: ComponentName, spoken: string): { readonly family: TypeFamily; readonly choice: string }[] {
  const text = spoken.toLowerCase();
  const made: { family: TypeFamily; choice: string }[] = [];
  for (const family of typeFamilies as readonly TypeFamily[]) {
    if (!family.components.includes(component)) continue;
    const choices = Object.entries(family.choices).filter(([, words]) => words.test(text));
    if (choices.length === 1) made.push({ family, choice: choices[0]![0] });
  }
  return made;
}

/** Choices that name the same thing more loosely: two-wheel drive leaves open which axle. */
const looser: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  "driven-wheels": { two: ["rear", "front"] },
};

export function choicesAgree(family: string, first: string, second: string): boolean {
  return first === second || (looser[family]?.[first]?.includes(second) ?? false) || (looser[family]?.[second]?.includes(first) ?? false);
}

/** Cylinders that an engine's layout names ("straight six": 6), so that it can be held against a count. */
export function cylindersIn(spoken: string): number | undefined {
  const match = /\b(?:in ?-?line|straight|flat|flathead|slant|v)[ -]?(three|four|five|six|eight|ten|twelve|3|4|5|6|8|10|12)\b/.exec(
    spoken.toLowerCase(),
  );
  const words: Readonly<Record<string, number>> = { three: 3, four: 4, five: 5, six: 6, eight: 8, ten: 10, twelve: 12 };
  return match ? (words[match[1]!] ?? Number(match[1])) : undefined;
}
