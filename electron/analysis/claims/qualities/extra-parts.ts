import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";

/**
 * Parts that the part lexicon does not tell apart and that a quality must not slip from or to: a crack in the lens is not one in the glass,
 * the bar behind a bumper is not its cover.
 */
export interface ExtraPart {
  readonly component: ComponentName;
  readonly part: string;
  readonly position?: PositionName;
  readonly phrases: readonly string[];
  readonly zones?: readonly ZoneName[];
}

export const extraParts = [
  { component: "glass", part: "windshield", position: "front", phrases: ["the screen", "a new screen", "front screen"], zones: ["front"] },
  { component: "body", part: "wheel arch", position: "rear", phrases: ["rear/back wheel arch/well/opening/lip/house", "rear/back arch"] },
  { component: "body", part: "wheel arch", position: "front", phrases: ["front wheel arch/well/opening/lip/house", "front arch"] },
  { component: "body", part: "quarter panel", position: "rear", phrases: ["rear/back quarter panel/skin"] },
  { component: "body", part: "cab corner", phrases: ["cab corner", "cab corners"] },
  { component: "steering", part: "rack boots", phrases: ["rack boot", "rack boots", "rack gaiter", "rack gaiters"] },
  { component: "suspension", part: "boots", phrases: ["boots", "dust boots", "gaiters"], zones: ["underside"] },
  { component: "trim", part: "mirror", phrases: ["mirror glass"] },
  {
    component: "bumper",
    part: "bumper bar",
    phrases: ["the bar behind", "bar behind it", "factory bar", "reinforcement bar", "bumper bar", "bumper beam", "crash bar"],
  },
  { component: "bumper", part: "bracket", phrases: ["bumper bracket", "bumper brackets", "bumper irons"] },
  { component: "body", part: "firewall", phrases: ["firewall", "bulkhead"] },
  { component: "body", part: "inner fender", phrases: ["inner fender", "inner fenders", "inner wing", "inner wings", "apron", "aprons"] },
  {
    component: "body",
    part: "nose panel",
    position: "front",
    phrases: ["nose panel", "front panel", "header panel", "valance", "valence"],
  },
  { component: "body", part: "cowl", phrases: ["cowl", "scuttle"] },
  { component: "trim", part: "inner door handle", phrases: ["door handle", "door handles", "handles"], zones: ["cabin", "drive"] },
  { component: "body", part: "door handle", phrases: ["door handle", "door handles", "handles"] },
  { component: "body", part: "hinge", phrases: ["hinge", "hinges"] },
  { component: "body", part: "pinch weld", phrases: ["pinch weld", "pinch welds"] },
  { component: "body", part: "drip rail", phrases: ["drip rail", "drip rails", "gutter", "gutters"] },
  { component: "body", part: "gap", phrases: ["gap", "gaps", "shut lines", "shut line"] },
  { component: "body", part: "body line", phrases: ["body line", "body lines"] },
  {
    component: "body",
    part: "fuel flap",
    phrases: ["gas door", "petrol flap", "fuel flap", "fuel door", "filler flap", "petrol cap", "gas cap"],
  },
  { component: "body", part: "side", phrases: ["this whole side", "whole side"] },
  {
    component: "trim",
    part: "seals",
    phrases: ["weatherstrip", "weatherstripping", "weather stripping", "seals", "door rubbers", "door seals", "rubbers"],
  },
  { component: "trim", part: "door panel", phrases: ["door panel", "door panels", "door card", "door cards", "door caps", "door trims"] },
  { component: "trim", part: "console", phrases: ["console", "armrest", "arm rest"] },
  { component: "trim", part: "plate bracket", phrases: ["plate bracket", "license plate", "number plate", "tag bracket"] },
  { component: "trim", part: "antenna", phrases: ["antenna", "aerial"] },
  {
    component: "trim",
    part: "latch",
    phrases: ["latch", "latches", "catch", "strut", "prop"],
    zones: ["passenger-side", "driver-side", "rear", "roof", "cargo"],
  },
  { component: "headliner", part: "sun visor", phrases: ["sun visor", "sun visors", "visor", "visors"] },
  { component: "dash", part: "clock", phrases: ["clock !off", "the clock"], zones: ["cabin", "drive"] },
  { component: "dash", part: "glove box", phrases: ["glove box", "glovebox", "glove compartment"] },
  { component: "dash", part: "gauge faces", phrases: ["faces redone", "gauge faces"] },
  { component: "electrical", part: "horn", phrases: ["horn works", "horn"] },
  { component: "electrical", part: "wipers", phrases: ["wiper", "wipers", "washers", "washer jug", "washer bottle"] },
  { component: "electrical", part: "fuel sender", phrases: ["sender", "sending unit"] },
  { component: "lights", part: "lens", phrases: ["lens", "lenses"] },
  { component: "air-conditioning", part: "heater", phrases: ["heater", "heater hoses", "blower motor", "heater box"] },
  { component: "cooling", part: "hoses", phrases: ["hoses", "radiator hose", "radiator hoses"] },
  { component: "fuel-system", part: "intake", phrases: ["dual plane", "single plane"] },
  { component: "engine", part: "engine cover", phrases: ["engine cover"] },
  { component: "engine", part: "oil pan", phrases: ["pan gasket", "oil pan", "sump"] },
  { component: "engine", part: "rear main seal", phrases: ["rear main", "rear main seal"] },
  { component: "exhaust", part: "flange", phrases: ["exhaust flange", "flange"] },
  { component: "exhaust", part: "hanger", phrases: ["hanger", "hangers", "exhaust hangers"] },
  { component: "fuel-tank", part: "straps", phrases: ["tank straps", "straps"], zones: ["underside"] },
  {
    component: "steering",
    part: "steering wheel",
    phrases: ["steering wheel", "the wheel !well/arch/opening/cylinder", "wheel rim"],
    zones: ["cabin", "drive"],
  },
  { component: "transmission", part: "shift knob", phrases: ["shift knob", "gear knob", "ball"], zones: ["cabin", "drive"] },
  { component: "transmission", part: "bell housing", phrases: ["bell housing", "bellhousing"] },
  { component: "transmission", part: "boot", phrases: ["shifter boot", "gear boot", "gaiter"], zones: ["cabin", "drive"] },
  { component: "carpet", part: "mats", phrases: ["floor mats", "mats", "the mats", "driver 's mat"] },
  {
    component: "seats",
    part: "seat back",
    phrases: [
      "seat backs",
      "seatbacks",
      "back of the front seats",
      "backs of the seats",
      "map pockets",
      "the backs are",
      "backs of them",
      "backs and sides",
      "sides and backs",
    ],
  },
  { component: "seats", part: "dog guard", phrases: ["dog guard"] },
  { component: "vehicle", part: "tools", phrases: ["tool kit", "tool roll", "tools", "wrench", "screwdriver", "jack handle"] },
  { component: "vehicle", part: "paperwork", phrases: ["folder", "receipt", "receipts", "paperwork", "papers", "envelope", "bills"] },
] as const satisfies readonly ExtraPart[];
