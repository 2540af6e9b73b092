import { buyerCares } from "../../../../electron/analysis/comparison/hedges.ts";
import type { ClaimSketch } from "../../../../electron/analysis/comparison/standards/rule.ts";
import type { quantityRules } from "../../../../electron/analysis/comparison/values/quantities.ts";
import { typeFamilies } from "../../../../electron/analysis/comparison/values/type-families/index.ts";
import type { AttributeName, ClaimValue, ComponentName, ConflictKind, PositionName, UnitName } from "../../../../shared-types/index.ts";

/** One claim of a quiet list, what contradicts it, and what says the same in other words. */
export interface Mutation {
  readonly kind: ConflictKind;
  readonly slot: string;
  readonly original: ClaimSketch;
  readonly contradiction: ClaimSketch;
  /** Other units, rounding, spelling: must raise nothing beside the original. */
  readonly equals: readonly ClaimSketch[];
}

type Figure = readonly [number, UnitName | null];

/** For every slot of figures: one, another that contradicts it, and others that equal the first. */
const figures = {
  "engine.displacement": {
    one: [350, "cu in"],
    other: [396, "cu in"],
    equal: [
      [5.7, "L"],
      [5735, "cc"],
    ],
  },
  "engine.power": {
    one: [300, "hp"],
    other: [240, "hp"],
    equal: [
      [224, "kW"],
      [304, "PS"],
    ],
  },
  "engine.torque": { one: [400, "lb-ft"], other: [350, "lb-ft"], equal: [[542, "N·m"]] },
  "engine.year": { one: [1968, null], other: [1972, null], equal: [] },
  "engine.pressure": { one: [55, "psi"], other: [35, "psi"], equal: [[3.8, "bar"]], part: "oil pressure", circumstance: "cold" },
  "engine.date": { one: [1991, null], other: [1997, null], equal: [], circumstance: "rebuild" },
  "engine.mileage": { one: [71000, "mi"], other: [17000, "mi"], equal: [[71020, "mi"]], circumstance: "rebuild" },
  "electrical.power": { one: [50, "kW"], other: [100, "kW"], equal: [], part: "charger" },
  "electrical.size": { one: [77, "kWh"], other: [58, "kWh"], equal: [] },
  "electrical.voltage": { one: [12.6, "V"], other: [11.1, "V"], equal: [], circumstance: "at rest" },
  "vehicle.year": { one: [1971, null], other: [1973, null], equal: [] },
  "vehicle.date": { one: ["1971-03", null], other: ["1972-08", null], equal: [], circumstance: "built" },
  "vehicle.mileage": { one: [4000, "mi"], other: [9000, "mi"], equal: [], circumstance: "on this set of plugs" },
  "title.year": { one: [1971, null], other: [1974, null], equal: [] },
  "title.date": { one: [1977, null], other: [1987, null], equal: [], part: "sale", circumstance: "second owner" },
  "title.mileage": { one: [31000, "mi"], other: [81000, "mi"], equal: [], circumstance: "where the stamps stop" },
  "odometer.mileage": {
    one: [61250, "mi"],
    other: [71250, "mi"],
    equal: [
      [61000, "mi"],
      [61300, "mi"],
      [98572, "km"],
    ],
  },
  "price.price": { one: [18950, "USD"], other: [21950, "USD"], equal: [[19000, "USD"]] },
  "final-drive.ratio": { one: [3.55, null], other: [4.11, null], equal: [] },
  "final-drive.diameter": { one: [8.5, "in"], other: [9, "in"], equal: [[215.9, "mm"]] },
  "transmission.ratio": { one: [2.66, null], other: [3.01, null], equal: [], part: "first gear" },
  "fuel-system.flow": { one: [650, "cfm"], other: [750, "cfm"], equal: [] },
  "fuel-tank.size": { one: [18, "gal"], other: [26, "gal"], equal: [[68, "L"]] },
  "wheel.diameter": { one: [15, "in"], other: [17, "in"], equal: [[381, "mm"]], position: "all" },
  "wheel.size": { one: [15, "in"], other: [17, "in"], equal: [[381, "mm"]], position: "all" },
  "wheel.width": { one: [7, "in"], other: [8.5, "in"], equal: [[178, "mm"]], position: "rear" },
  "tire.depth": { one: [8, "32nds"], other: [4, "32nds"], equal: [[6.4, "mm"]], position: "front" },
  "tire.pressure": { one: [32, "psi"], other: [44, "psi"], equal: [[2.2, "bar"]], position: "front", circumstance: "cold" },
  "spare.pressure": { one: [60, "psi"], other: [30, "psi"], equal: [[4.14, "bar"]], circumstance: "cold" },
  "spare.depth": { one: [10, "32nds"], other: [5, "32nds"], equal: [] },
  "paint.thickness": { one: [4.6, "mil"], other: [8.2, "mil"], equal: [[117, "µm"]], part: "door", position: "driver-front" },
  "paint.date": { one: [1994, null], other: [2004, null], equal: [] },
  "paint.year": { one: [1994, null], other: [2004, null], equal: [] },
  "seats.date": { one: [2012, null], other: [2002, null], equal: [] },
  "brakes.diameter": { one: [282, "mm"], other: [256, "mm"], equal: [[11.1, "in"]], part: "rotor", position: "front" },
  "brakes.thickness": { one: [11, "mm"], other: [5, "mm"], equal: [], part: "pads", position: "front" },
  "suspension.diameter": { one: [1, "in"], other: [1.25, "in"], equal: [[25.4, "mm"]], part: "sway bar", position: "front" },
  "suspension.size": { one: [6, "in"], other: [4, "in"], equal: [] },
  "cargo-floor.size": { one: [385, "L"], other: [310, "L"], equal: [[13.6, "cu ft"]] },
  "exhaust.diameter": { one: [2.5, "in"], other: [3, "in"], equal: [[63.5, "mm"]] },
} as const satisfies Record<
  keyof typeof quantityRules,
  {
    readonly one: readonly [ClaimValue, UnitName | null];
    readonly other: readonly [ClaimValue, UnitName | null];
    readonly equal: readonly Figure[];
    readonly part?: string;
    readonly position?: PositionName;
    readonly circumstance?: string;
  }
>;

function figureMutations(): Mutation[] {
  return Object.entries(figures).map(([slot, row]) => {
    const [component, attribute] = slot.split(".") as [ComponentName, AttributeName];
    const { part = null, position = null, circumstance = null } = row as { part?: string; position?: PositionName; circumstance?: string };
    const sketch = ([value, unit]: readonly [ClaimValue, UnitName | null]): ClaimSketch => ({
      component,
      attribute,
      value,
      unit,
      part,
      position,
      circumstance,
    });
    return {
      kind: "measure",
      slot,
      original: sketch(row.one),
      contradiction: sketch(row.other),
      equals: [sketch(row.one), ...row.equal.map(sketch)],
    };
  });
}

/** Every place that one tire claim may be answered from: the same, one it covers, and one that covers it. */
function tireSizeMutations(): Mutation[] {
  const size = (value: string, position: PositionName): ClaimSketch => ({ component: "tire", attribute: "size", value, position });
  const places = [
    ["front", "front"],
    ["rear", "rear"],
    ["all", "rear"],
    ["all", "driver-front"],
    ["driver-rear", "rear"],
    ["passenger", "passenger-front"],
    ["rear", "all"],
  ] as const;
  const sizes = [
    ["235/60R15", "255/60R15", ["P235/60R15", "235/60ZR15", "235/60-15"]],
    ["31x10.50R15", "33x12.50R15", ["31X10.5R15", "31x10.50R15LT"]],
    ["G70-14", "F60-14", ["GR70-14"]],
    ["6.70-15", "5.60-15", []],
    ["220/55R390", "240/55R415", ["220/55 R390"]],
    ["LT235/85R16", "LT215/85R16", ["235/85R16"]],
  ] as const;
  return places.flatMap(([first, second]) =>
    sizes.map(([one, other, same]) => ({
      kind: "measure" as const,
      slot: `tire.size ${first} ${second}`,
      original: size(one, first),
      contradiction: size(other, second),
      equals: [one, ...same].map((value) => size(value, second)),
    })),
  );
}

const counted = [
  ["vehicle", "owner", null],
  ["vehicle", "key", null],
  ["vehicle", "airbag", null],
  ["transmission", "gear", null],
  ["engine", "cylinder", null],
  ["engine", "main bearing", null],
  ["engine", "valve", null],
  ["body", "door", null],
  ["belts", "belt", "rear"],
  ["wheel", "lug", null],
  ["lights", "headlight", "front"],
  ["audio", "speaker", null],
  ["suspension", "leaf", "rear"],
  ["cooling", "row", null],
  ["seats", "seat", null],
  ["exhaust", "tailpipe tip", "rear"],
  ["bumper", "parking sensor", "rear"],
] as const satisfies readonly (readonly [ComponentName, string, PositionName | null])[];

function countMutations(): Mutation[] {
  return counted.map(([component, part, position]) => {
    const sketch = (value: number, name: string): ClaimSketch => ({ component, attribute: "count", part: name, position, value });
    return {
      kind: "count",
      slot: `${component} ${part}`,
      original: sketch(4, part),
      // Six: a fifth door may be a hatch.
      contradiction: sketch(6, part),
      equals: [sketch(4, part), sketch(4, `${part}s`)],
    };
  });
}

/** A spoken word for each choice of each family, found in the family's own expressions' first alternative. */
const spokenChoices: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  "brake-kind": [
    ["disc", "drum"],
    ["vented disc", "drum"],
  ],
  "brake-rotor-kind": [["vented disc", "solid disc"]],
  "brake-assistance": [["power", "manual"]],
  "gearbox-kind": [
    ["automatic", "manual"],
    ["cvt", "manual"],
  ],
  "steering-gear": [["box", "rack and pinion"]],
  "steering-assistance": [["power", "manual"]],
  "tire-construction": [
    ["radial", "bias-ply"],
    ["radial", "cross-ply"],
  ],
  "tire-season": [
    ["all-season", "winter"],
    ["summer", "all-season"],
  ],
  "tire-tread-pattern": [["all-terrain", "mud-terrain"]],
  "shift-lever": [["column shift", "floor shift"]],
  induction: [
    ["turbocharged", "naturally aspirated"],
    ["supercharged", "normally aspirated"],
  ],
  "turbo-count": [["twin turbo", "single turbo"]],
  "cooling-medium": [["air cooled", "water cooled"]],
  "clutch-actuation": [
    ["hydraulic clutch", "cable clutch"],
    ["hydraulic", "mechanical"],
  ],
  "brake-actuation": [["mechanical", "hydraulic"]],
  "shock-kind": [["lever arm", "telescopic"]],
  "frame-rails": [["boxed", "c-channel"]],
  "camshaft-count": [["single overhead cam", "twin cam"]],
  "oil-grade": [["5w-30", "10w-40"]],
  "fan-drive": [["electric", "mechanical"]],
  "paint-effect": [["metallic", "solid"]],
  "charging-connector": [["ccs", "chademo"]],
  "transfer-case-control": [["electric transfer case", "manual lever transfer case"]],
  "battery-ownership": [["leased", "owned"]],
  "battery-chemistry": [
    ["lfp", "nickel manganese cobalt"],
    ["lithium", "lead-acid"],
  ],
  "suspension-medium": [
    ["air suspension", "coil springs"],
    ["self-levelling", "coil"],
  ],
  "parking-brake": [["electric parking brake", "handbrake"]],
  "axle-kind": [["independent", "solid axle"]],
  "cabin-heater": [["heat pump", "resistance heater"]],
  "seat-facing": [["rear-facing", "side-facing"]],
  "drive-side": [["left hand drive", "right hand drive"]],
  "tailgate-drive": [["power tailgate", "manual tailgate"]],
  "rear-opening": [["barn doors", "tailgate"]],
  "bed-side": [["stepside", "fleetside"]],
  "paint-stage": [["single stage", "base coat clear coat"]],
  "fuel-delivery": [["four-barrel", "fuel injection"]],
  "carburetor-barrels": [["four-barrel", "two-barrel"]],
  fuel: [
    ["diesel", "gasoline"],
    ["petrol", "diesel"],
  ],
  "cylinder-layout": [
    ["v8", "straight six"],
    ["flat four", "v6"],
  ],
  "valve-gear": [["pushrod", "overhead cam"]],
  "camshaft-drive": [["chain", "belt"]],
  "ignition-kind": [["points", "electronic"]],
  charging: [
    ["alternator", "generator"],
    ["dynamo", "alternator"],
  ],
  earth: [["negative earth", "positive earth"]],
  "driven-wheels": [
    ["four wheel drive", "two wheel drive"],
    ["all wheel drive", "rear wheel drive"],
  ],
  differential: [["limited slip", "open"]],
  "spring-kind": [
    ["leaf", "coil"],
    ["coil-over", "leaf"],
  ],
  "seat-kind": [["bucket", "bench"]],
  "seat-adjustment": [["power", "manual"]],
  "rear-glass-opening": [["sliding", "fixed"]],
  "window-lift": [["power", "crank"]],
  "windshield-glass": [["laminated", "toughened"]],
  "light-source": [["led", "halogen"]],
  "belt-kind": [["lap", "three-point"]],
  "top-kind": [["power", "manual"]],
  "frame-kind": [["unibody", "body-on-frame"]],
  "title-brand": [
    ["clean", "salvage"],
    ["clean", "rebuilt"],
  ],
  "exhaust-layout": [["single", "dual"]],
  cab: [["regular cab", "crew cab"]],
  refrigerant: [["r-12", "r-134a"]],
};

const placedFamilies: Readonly<Record<string, PositionName>> = {
  "brake-kind": "front",
  "brake-rotor-kind": "front",
  "spring-kind": "rear",
  "axle-kind": "front",
  "shock-kind": "rear",
  "seat-adjustment": "driver-front",
};

/** The part that claims of a family must name alike. */
const partOfFamily: Readonly<Record<string, string>> = {
  "camshaft-drive": "timing chain",
  "light-source": "headlight",
  "battery-chemistry": "traction battery",
};

function typeMutations(): Mutation[] {
  return typeFamilies.flatMap((family) =>
    (spokenChoices[family.name] ?? [["missing", "missing"]]).map(([one, other]) => {
      const part = partOfFamily[family.name] ?? null;
      const sketch = (value: string): ClaimSketch => ({
        component: family.components[0],
        attribute: "type",
        value,
        part,
        position: placedFamilies[family.name] ?? null,
      });
      return {
        kind: "type",
        slot: family.name,
        original: sketch(one!),
        contradiction: sketch(other!),
        equals: [sketch(one!), sketch(one!.toUpperCase())],
      };
    }),
  );
}

function materialMutations(): Mutation[] {
  const rows = [
    ["seats", null, null, "leather", "vinyl", ["hide"]],
    ["seats", null, "rear", "leather", "cloth", ["hide"]],
    ["wheel", null, "all", "aluminum", "steel", ["alloy"]],
    ["body", "hood", "front", "aluminum", "steel", ["aluminium", "alloy"]],
    ["body", null, "all", "steel", "fiberglass", ["metal"]],
    ["exhaust", null, null, "stainless", "aluminized", ["stainless steel"]],
    ["dash", null, null, "walnut", "plastic", ["wood"]],
    ["dash", null, null, "walnut", "ash", ["burr walnut"]],
    ["carpet", null, null, "wool", "rubber", ["wilton"]],
    ["headliner", null, null, "cloth", "vinyl", ["wool cloth"]],
    ["top", null, null, "canvas", "vinyl", ["cloth"]],
    ["fuel-tank", null, null, "aluminum", "steel", ["aluminium"]],
    ["engine", "intake", null, "aluminum", "iron", ["alloy"]],
    ["bumper", null, "front", "steel", "plastic", ["chrome"]],
    ["brakes", "lines", "front", "copper", "steel", ["copper nickel"]],
  ] as const satisfies readonly (readonly [ComponentName, string | null, PositionName | null, string, string, readonly string[]])[];
  return rows.map(([component, part, position, one, other, same]) => {
    const sketch = (value: string): ClaimSketch => ({ component, attribute: "material", part, position, value });
    return {
      kind: "material",
      slot: `${component} ${part ?? ""}`,
      original: sketch(one),
      contradiction: sketch(other),
      equals: [one, ...same].map(sketch),
    };
  });
}

function colorMutations(): Mutation[] {
  const rows = [
    ["paint", null, "dark red", "blue", ["red", "burgundy"]],
    ["paint", null, "silver", "green", ["gray"]],
    ["paint", null, "white", "black", ["cream", "ivory"]],
    ["seats", null, "oxblood", "tan", ["red", "maroon"]],
    ["seats", null, "black", "tan", ["charcoal"]],
    ["seats", null, "navy", "red", ["dark blue"]],
    ["carpet", null, "black", "red", ["charcoal"]],
    ["top", null, "tan", "black", ["beige"]],
    ["dash", null, "black", "blue", []],
    ["headliner", null, "white", "black", ["cream"]],
    ["engine", null, "orange", "blue", []],
    ["trim", "grille", "silver", "black", ["gray"]],
  ] as const satisfies readonly (readonly [ComponentName, string | null, string, string, readonly string[]])[];
  return rows.map(([component, part, one, other, same]) => {
    const sketch = (value: string): ClaimSketch => ({ component, attribute: "color", part, value });
    return {
      kind: "color",
      slot: `${component} ${one}`,
      original: sketch(one),
      contradiction: sketch(other),
      equals: [one, ...same].map(sketch),
    };
  });
}

function presenceMutations(): Mutation[] {
  const rows = [
    ["air-conditioning", null],
    ["spare", null],
    ["audio", null],
    ["headliner", null],
    ["transmission", "overdrive"],
    ["brakes", "abs"],
    ["audio", "navigation"],
    ["top", "sunroof"],
    ["trim", "roof rack"],
    ["engine", "power take-off"],
    ["bumper", "hitch"],
    ["suspension", "air bag"],
  ] as const satisfies readonly (readonly [ComponentName, string | null])[];
  return rows.map(([component, part]) => {
    const position: PositionName | null = component === "suspension" || component === "bumper" ? "rear" : null;
    const sketch = (value: string): ClaimSketch => ({ component, attribute: "presence", part, position, value });
    return {
      kind: "presence",
      slot: `${component} ${part ?? ""}`,
      original: sketch("present"),
      contradiction: sketch("absent"),
      equals: [sketch("present")],
    };
  });
}

function originalityMutations(): Mutation[] {
  const rows = [
    ["engine", null, null],
    ["transmission", null, null],
    ["dash", null, null],
    ["seats", null, "front"],
    ["seats", null, null],
    ["carpet", null, null],
    ["headliner", null, null],
    ["paint", null, null],
    ["glass", "windshield", "front"],
    ["bumper", null, "rear"],
    ["body", "quarter panel", "driver-rear"],
    ["body", "hood", "front"],
    ["floors", null, "front"],
    ["frame", null, null],
    ["fuel-tank", null, null],
    ["top", null, null],
    ["suspension", "shock", "rear"],
  ] as const satisfies readonly (readonly [ComponentName, string | null, PositionName | null])[];
  return rows.map(([component, part, position]) => {
    const sketch = (value: string): ClaimSketch => ({ component, attribute: "originality", part, position, value });
    return {
      kind: "originality",
      slot: `${component} ${part ?? ""}`,
      original: sketch("original"),
      contradiction: sketch("replaced"),
      equals: [sketch("original")],
    };
  });
}

function conditionMutations(): Mutation[] {
  const rows = [
    ["glass", null, null, "not a mark in the glass", "tiny star, you can barely see it", "clear all the way across"],
    ["cargo-floor", null, null, "never been cut, never been patched", "they had to let one in there", "clean pan"],
    ["dash", null, null, "no cracks in it", "there's a crack by the speaker", "nice dash"],
    ["headliner", null, null, "perfect headliner", "one little water stain", "it's tight"],
    ["floors", null, "front", "no rust on these floors", "a little rust through by the pedal", "solid floors"],
    ["frame", null, null, "not a spot of rust anywhere", "some rust scab on the rail", "nice frame"],
    ["body", "rocker", "driver", "never had rust", "bubbling at the bottom of the rocker", "good rocker"],
    ["body", "door", "driver-front", "not a ding on it", "a ding right on the crease", "straight door"],
    ["seats", null, "front", "no splits, no tears", "the driver's bolster is split", "lovely seats"],
    ["engine", "oil pan", null, "no leaks", "a seep at the front", "clean pan"],
    ["paint", "hood", "front", "flawless", "couple of stone chips", "shiny"],
    ["wheel", null, "driver-rear", "no rash on it", "curb rash on the lip", "nice wheel"],
  ] as const satisfies readonly (readonly [ComponentName, string | null, PositionName | null, string, string, string])[];
  return rows.map(([component, part, position, faultless, flaw, praise]) => {
    const sketch = (value: string, quote: string): ClaimSketch => ({ component, attribute: "condition", part, position, value, quote });
    return {
      kind: "condition",
      slot: `${component} ${part ?? ""}`,
      original: sketch("good", faultless),
      contradiction: sketch("flawed", flaw),
      equals: [sketch("good", praise), sketch("good", faultless)],
    };
  });
}

function hedgeMutations(): Mutation[] {
  return Object.entries(buyerCares).map(([slot, care]) => {
    const [component, property] = slot.split(".") as [ComponentName, string];
    const attribute = property === "title-brand" ? "type" : (property as AttributeName);
    const values: Partial<Record<string, ClaimSketch["value"]>> = {
      year: 1968,
      mileage: 58412,
      displacement: 390,
      count: 2,
      type: "clean",
      presence: "absent",
    };
    const original: ClaimSketch = {
      component,
      attribute,
      part: care.parts[0] ?? null,
      circumstance: null,
      value: values[attribute] ?? "original",
      unit: attribute === "mileage" ? "mi" : attribute === "displacement" ? "cu in" : null,
    };
    return {
      kind: "hedge",
      slot,
      original,
      contradiction: { ...original, stance: "hedged", quote: "I believe it is, I could not swear to it" },
      equals: [original],
    };
  });
}

export function everyMutation(): Mutation[] {
  return [
    ...figureMutations(),
    ...tireSizeMutations(),
    ...countMutations(),
    ...typeMutations(),
    ...materialMutations(),
    ...colorMutations(),
    ...presenceMutations(),
    ...originalityMutations(),
    ...conditionMutations(),
    ...hedgeMutations(),
  ];
}
