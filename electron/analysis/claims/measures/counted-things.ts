import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { listedForm } from "../lexicon/find-mentions.ts";
import { type Candidate, fits } from "./candidate.ts";
import type { Slot } from "./slot.ts";
import { notBetween } from "./slots/count-slots.ts";
import type { NumberSurroundings } from "./surroundings.ts";

/** A noun that is counted on a vehicle though the lexicon has no part of that name, and the component it belongs to. */
interface CountedThing {
  /** Singular, lower case; plurals are found from it. */
  readonly say: readonly string[];
  readonly component: ComponentName;
  readonly part: string;
  readonly most: number;
  readonly position?: PositionName;
  /** Where the camera must be, for words that mean other things elsewhere. */
  readonly zones?: readonly ZoneName[];
  /** True where a single one is worth a claim: damage, and what usually comes in twos. */
  readonly one?: boolean;
  /** True where the lexicon or another slot knows the word as something else, which it is not where this row's zones say. */
  readonly overLexicon?: boolean;
  readonly example: { readonly heard: string; readonly value: number; readonly zone?: ZoneName };
}

const outside: readonly ZoneName[] = ["front", "driver-side", "passenger-side", "rear", "cargo", "roof", "closing", "opening", "documents"];
const inside: readonly ZoneName[] = ["cabin"];

/** In order: the first row whose word and zone fit counts. */
export const countedThings = [
  {
    say: ["lug nut", "lug bolt", "lug", "stud", "wheel nut", "wheel bolt", "locking nut", "locking bolt", "nut"],
    component: "wheel",
    part: "lug",
    most: 60,
    one: true,
    zones: [...outside, "underside"],
    example: { heard: "they are thirty two lugs total", value: 32, zone: "driver-side" },
  },
  {
    say: ["spoke"],
    component: "wheel",
    part: "spoke",
    most: 90,
    zones: [...outside],
    example: { heard: "seventy two spokes and I cleaned them all", value: 72, zone: "driver-side" },
  },
  {
    say: ["ear", "eared"],
    component: "wheel",
    part: "knock-off ear",
    most: 3,
    example: { heard: "they got the three ear knock offs", value: 3 },
  },
  {
    say: ["wheel weight", "balance weight"],
    component: "wheel",
    part: "balance weight",
    most: 20,
    example: { heard: "two wheel weights on the rim", value: 2 },
  },
  {
    say: ["snap", "popper", "press stud"],
    component: "top",
    part: "snap",
    most: 80,
    example: { heard: "there's eleven snaps, I counted", value: 11 },
  },
  { say: ["bow"], component: "top", part: "bow", most: 6, example: { heard: "three bows and it's canvas", value: 3 } },
  {
    say: ["latch"],
    component: "top",
    part: "latch",
    most: 4,
    zones: ["roof", "cabin"],
    example: { heard: "two latches and it drops", value: 2, zone: "roof" },
  },
  {
    say: ["panel", "section"],
    component: "top",
    part: "panel",
    most: 6,
    zones: ["roof"],
    overLexicon: true,
    example: { heard: "the roof is glass, two panels", value: 2, zone: "roof" },
  },
  {
    say: ["bar", "crossbar", "cross bar", "roof bar"],
    component: "top",
    part: "roof bar",
    most: 6,
    zones: ["roof"],
    example: { heard: "quick look up top, three bars", value: 3, zone: "roof" },
  },
  {
    say: ["bar", "slat", "vane", "fin", "tooth", "grille bar", "grille tooth"],
    component: "trim",
    part: "grille bar",
    most: 60,
    position: "front",
    zones: ["front", "opening"],
    one: true,
    example: { heard: "the grille's got fourteen vanes", value: 14, zone: "front" },
  },
  {
    say: ["wiper", "wiper arm", "wiper blade"],
    component: "glass",
    part: "wiper",
    most: 4,
    position: "front",
    example: { heard: "there's three wipers because somebody liked them", value: 3 },
  },
  {
    say: ["segment"],
    component: "lights",
    part: "segment",
    most: 200,
    zones: ["front", "rear"],
    example: { heard: "it has 84 segments in each side", value: 84, zone: "front" },
  },
  {
    say: ["led", "bulb", "work light", "flood", "strobe", "beacon"],
    component: "lights",
    part: "lamp",
    most: 40,
    example: { heard: "two leds in the roof", value: 2 },
  },
  {
    say: ["box", "compartment", "toolbox", "locker"],
    component: "body",
    part: "compartment",
    most: 20,
    zones: ["driver-side", "passenger-side", "rear", "cargo"],
    example: { heard: "this side of the body you've got six boxes", value: 6, zone: "driver-side" },
  },
  {
    say: ["drawer"],
    component: "cargo-floor",
    part: "drawer",
    most: 60,
    zones: ["cargo"],
    example: { heard: "twelve drawers and they all lock", value: 12, zone: "cargo" },
  },
  {
    say: ["drawer"],
    component: "body",
    part: "drawer",
    most: 60,
    zones: ["driver-side", "passenger-side", "rear"],
    example: { heard: "third one's got four drawers", value: 4, zone: "driver-side" },
  },
  {
    say: ["shelf", "shelve"],
    component: "cargo-floor",
    part: "shelf",
    most: 20,
    zones: ["cargo"],
    example: { heard: "two shelves on this side", value: 2, zone: "cargo" },
  },
  {
    say: ["board", "plank", "strip", "bed strip"],
    component: "cargo-floor",
    part: "board",
    most: 20,
    zones: ["cargo", "documents"],
    example: { heard: "white oak, nine boards", value: 9, zone: "cargo" },
  },
  {
    say: [
      "tie down",
      "d ring",
      "tie down ring",
      "lashing eye",
      "lashing point",
      "anchor point",
      "hook",
      "stake pocket",
      "load ring",
      "cleat",
    ],
    component: "cargo-floor",
    part: "tie-down",
    most: 30,
    zones: ["cargo"],
    example: { heard: "four tie downs in the floor", value: 4, zone: "cargo" },
  },
  {
    say: ["chain"],
    component: "body",
    part: "tailgate chain",
    most: 2,
    position: "rear",
    zones: ["rear", "cargo"],
    example: { heard: "tailgate, two chains", value: 2, zone: "rear" },
  },
  {
    say: ["crack"],
    component: "dash",
    part: "crack",
    most: 20,
    zones: inside,
    one: true,
    example: { heard: "the dash has got one crack by the vents", value: 1, zone: "cabin" },
  },
  {
    say: ["chip", "ding", "dent", "scratch", "stone chip", "hailstone mark", "antenna hole"],
    component: "body",
    part: "mark",
    most: 40,
    zones: ["front", "driver-side", "passenger-side", "rear", "roof"],
    one: true,
    example: { heard: "got a chip, one chip size of a dime", value: 1, zone: "driver-side" },
  },
  {
    say: ["antenna", "aerial"],
    component: "body",
    part: "aerial",
    most: 4,
    zones: [...outside],
    one: true,
    example: { heard: "one antenna and it goes up", value: 1, zone: "driver-side" },
  },
  {
    say: ["zone"],
    component: "air-conditioning",
    part: "zone",
    most: 6,
    example: { heard: "the air conditioning has four zones", value: 4 },
  },
  {
    say: ["vent", "air vent"],
    component: "air-conditioning",
    part: "vent",
    most: 12,
    zones: inside,
    example: { heard: "six vents all blowing", value: 6, zone: "cabin" },
  },
  {
    say: ["switch", "aux switch", "toggle", "toggle switch", "upfitter switch"],
    component: "dash",
    part: "switch",
    most: 16,
    zones: inside,
    example: { heard: "four switches up here for the lights", value: 4, zone: "cabin" },
  },
  {
    say: ["cup holder", "cupholder"],
    component: "dash",
    part: "cup holder",
    most: 20,
    example: { heard: "nine cup holders in it", value: 9 },
  },
  {
    say: ["pedal"],
    component: "transmission",
    part: "pedal",
    most: 4,
    zones: inside,
    example: { heard: "three pedals in this one", value: 3, zone: "cabin" },
  },
  {
    say: ["loudspeaker", "tweeter", "woofer", "sub", "subwoofer"],
    component: "audio",
    part: "speaker",
    most: 40,
    one: true,
    example: { heard: "23 loudspeakers in it", value: 23 },
  },
  { say: ["usb", "usb port", "usb socket"], component: "audio", part: "port", most: 12, example: { heard: "four usb ports", value: 4 } },
  {
    say: ["direction of adjustment", "direction", "adjustment"],
    component: "seats",
    part: "adjustment",
    most: 30,
    zones: inside,
    example: { heard: "18 directions of adjustment", value: 18, zone: "cabin" },
  },
  {
    say: ["massage program", "program", "programme"],
    component: "seats",
    part: "massage program",
    most: 12,
    zones: inside,
    example: { heard: "and a massage with six programs", value: 6, zone: "cabin" },
  },
  {
    say: ["lap", "lap belt", "shoulder belt", "inertia reel"],
    component: "belts",
    part: "belt",
    most: 12,
    example: { heard: "seat belts, there's four lap belts", value: 4 },
  },
  {
    say: ["plug", "spark plug"],
    component: "ignition",
    part: "spark plug",
    most: 16,
    zones: ["engine-bay"],
    example: { heard: "eight plugs and all of them new", value: 8, zone: "engine-bay" },
  },
  {
    say: ["coil", "coil pack"],
    component: "ignition",
    part: "coil",
    most: 12,
    zones: ["engine-bay"],
    overLexicon: true,
    example: { heard: "eight coils on top", value: 8, zone: "engine-bay" },
  },
  {
    say: ["belt"],
    component: "engine",
    part: "drive belt",
    most: 5,
    zones: ["engine-bay"],
    overLexicon: true,
    example: { heard: "you got your two belts", value: 2, zone: "engine-bay" },
  },
  {
    say: ["turbo", "turbocharger"],
    component: "engine",
    part: "turbo",
    most: 4,
    one: true,
    example: { heard: "one turbo and it's quiet", value: 1 },
  },
  { say: ["injector"], component: "fuel-system", part: "injector", most: 16, example: { heard: "all six injectors were done", value: 6 } },
  { say: ["barrel"], component: "fuel-system", part: "barrel", most: 8, example: { heard: "it's the four barrel", value: 4 } },
  { say: ["reservoir"], component: "cooling", part: "reservoir", most: 4, example: { heard: "coolant's in two reservoirs", value: 2 } },
  {
    say: ["tailpipe", "exhaust pipe", "tail pipe"],
    component: "exhaust",
    part: "tailpipe",
    most: 6,
    position: "rear",
    one: true,
    example: { heard: "one tailpipe and it's stainless", value: 1 },
  },
  {
    say: ["exhaust"],
    component: "exhaust",
    part: "exhaust",
    most: 4,
    one: true,
    example: { heard: "single exhaust out the side", value: 1 },
  },
  {
    say: ["piston", "pot"],
    component: "brakes",
    part: "caliper piston",
    most: 12,
    zones: [...outside, "underside"],
    example: { heard: "the blue six piston behind the spokes", value: 6, zone: "driver-side" },
  },
  {
    say: ["bellows", "bag", "air bag", "air spring"],
    component: "suspension",
    part: "air spring",
    most: 8,
    zones: ["underside", "driver-side", "passenger-side"],
    example: { heard: "the four bellows give up a little air", value: 4, zone: "driver-side" },
  },
  { say: ["pin"], component: "electrical", part: "trailer socket pin", most: 13, example: { heard: "with the seven pin plug", value: 7 } },
  {
    say: ["battery", "batteries"],
    component: "electrical",
    part: "battery",
    most: 6,
    one: true,
    example: { heard: "two batteries under the hood", value: 2 },
  },
  {
    say: ["invoice", "bill", "receipt", "mot", "mot certificate", "certificate", "title", "photo", "photograph"],
    component: "title",
    part: "paper",
    most: 400,
    zones: ["documents", "opening", "closing"],
    example: { heard: "eight stamps and two invoices", value: 2, zone: "documents" },
  },
  {
    say: ["visit", "dealer visit"],
    component: "title",
    part: "service stamp",
    most: 60,
    zones: ["documents"],
    example: { heard: "nine visits to the same shop", value: 9, zone: "documents" },
  },
  {
    say: ["fob", "card", "key card", "remote"],
    component: "vehicle",
    part: "fob",
    most: 6,
    one: true,
    zones: ["cabin", "documents", "closing", "opening"],
    example: { heard: "two cards in the drawer", value: 2, zone: "documents" },
  },
  { say: ["airbag"], component: "vehicle", part: "airbag", most: 14, example: { heard: "eight airbags in it", value: 8 } },
  { say: ["camera", "radar"], component: "electrical", part: "camera", most: 12, example: { heard: "four cameras round it", value: 4 } },
  {
    say: ["name"],
    component: "vehicle",
    part: "owner",
    most: 12,
    one: true,
    zones: ["documents"],
    example: { heard: "title's clear, three names on it", value: 3, zone: "documents" },
  },
  {
    say: ["cable", "lead", "charge cable", "charging cable", "charging lead", "cord"],
    component: "electrical",
    part: "charge cable",
    most: 4,
    one: true,
    zones: ["cargo", "front", "opening", "closing", "rear", "driver-side", "passenger-side"],
    example: { heard: "and it comes with two cables", value: 2, zone: "opening" },
  },
  {
    say: ["solar panel", "panel"],
    component: "electrical",
    part: "solar panel",
    most: 8,
    zones: ["roof"],
    example: { heard: "two solar panels up here", value: 2, zone: "roof" },
  },
  {
    say: ["driveshaft", "half shaft", "halfshaft", "cv boot"],
    component: "transmission",
    part: "driveshaft",
    most: 6,
    example: { heard: "you can see the two driveshafts", value: 2 },
  },
  {
    say: ["loop", "coolant loop", "circuit"],
    component: "cooling",
    part: "loop",
    most: 6,
    zones: ["engine-bay", "underside"],
    example: { heard: "the coolant's pink, three loops", value: 3, zone: "engine-bay" },
  },
  {
    say: ["louver", "louvre"],
    component: "body",
    part: "louver",
    most: 200,
    example: { heard: "these hood sides have got twenty five louvers", value: 25 },
  },
  {
    say: ["instrument", "gauge", "dial"],
    component: "dash",
    part: "gauge",
    most: 12,
    zones: inside,
    example: { heard: "five instruments and they all do something", value: 5, zone: "cabin" },
  },
  {
    say: ["spanner", "wrench", "screwdriver"],
    component: "vehicle",
    part: "tool",
    most: 30,
    example: { heard: "all in there, including the three spanners", value: 3 },
  },
  {
    say: ["berth"],
    component: "vehicle",
    part: "berth",
    most: 8,
    example: { heard: "it's a two berth", value: 2 },
  },
  {
    say: ["ring", "burner", "gas ring"],
    component: "vehicle",
    part: "cooker ring",
    most: 5,
    zones: ["cabin", "cargo", "passenger-side"],
    overLexicon: true,
    example: { heard: "a hob with two rings and a sink", value: 2, zone: "cabin" },
  },
  {
    say: ["headlight", "headlamp", "tail light", "tail lamp", "fog light", "fog lamp"],
    component: "lights",
    part: "lamp",
    most: 8,
    one: true,
    example: { heard: "one tail light in the middle", value: 1 },
  },
  {
    say: ["alternator"],
    component: "electrical",
    part: "alternator",
    most: 3,
    one: true,
    example: { heard: "one alternator and it's new", value: 1 },
  },
] as const satisfies readonly CountedThing[];

/** A plural that names one kind: "four barrel", "three ear", "seven pin" are said in the singular. */
const saidInSingular: ReadonlySet<string> = new Set([
  "barrel",
  "ear",
  "eared",
  "pin",
  "piston",
  "pot",
  "stud",
  "lug",
  "bow",
  "led",
  "inertia reel",
  "lap",
  "berth",
  "usb",
]);

const thingsByWord: ReadonlyMap<string, readonly (CountedThing & { readonly words: readonly string[] })[]> = (() => {
  const byWord = new Map<string, (CountedThing & { readonly words: readonly string[] })[]>();
  for (const thing of countedThings as readonly CountedThing[]) {
    for (const phrase of thing.say) {
      const words = phrase.split(" ");
      byWord.set(words[0]!, [...(byWord.get(words[0]!) ?? []), { ...thing, words }]);
    }
  }
  for (const things of byWord.values()) things.sort((a, b) => b.words.length - a.words.length);
  return byWord;
})();

/** Adjectives that may stand between a number and the thing counted. */
const mostAdjectives = 2;

/** A number right before the name of something that comes in numbers ("eleven snaps", "six lockable boxes"). */
export function countedThing(speech: Speech, around: NumberSurroundings): Candidate | null {
  const { number } = around;
  if (around.closed || number.readings[0]!.unit !== null || /^[a-z]\d/.test(around.said)) return null;
  if (/\b(?:number|group|one of|each|per|first|last|this)$/.test(around.before)) return null;
  const { tokens } = speech;
  for (let at = number.end; at <= number.end + mostAdjectives && at < tokens.length; at++) {
    if (at > number.end && (notBetween.test(tokens[at - 1]!.word) || tokens[at - 1]!.after !== "")) return null;
    const first = tokens[at]!.word;
    for (const thing of thingsByWord.get(listedForm(first)) ?? thingsByWord.get(first) ?? []) {
      const { words } = thing;
      if (thing.zones && !thing.zones.includes(around.zone)) continue;
      if (!words.every((word, offset) => listedForm(tokens[at + offset]?.word ?? "") === word || tokens[at + offset]?.word === word))
        continue;
      const candidate = candidateOf(thing, around, tokens[at + words.length - 1]!.word, { first: at, end: at + words.length });
      if (candidate) return candidate;
    }
  }
  return null;
}

function candidateOf(
  thing: CountedThing & { readonly words: readonly string[] },
  around: NumberSurroundings,
  lastWord: string,
  range: { readonly first: number; readonly end: number },
): Candidate | null {
  const slot: Slot = {
    name: "counted thing",
    component: thing.component,
    part: thing.part,
    attribute: "count",
    unit: null,
    need: { kinds: ["integer"], units: [null], min: 1, max: thing.most },
    cues: [],
    carries: true,
    example: thing.example,
    ...(thing.position ? { position: thing.position } : {}),
  };
  const reading = around.number.readings.find((each) => fits(each, slot.need));
  if (!reading) return null;
  const singular = saidInSingular.has(thing.words.join(" "));
  if (reading.value === 1 ? !thing.one || /s$/.test(lastWord) : !singular && !/s$/.test(lastWord)) return null;
  const mention = { ...range, component: thing.component, part: thing.part, position: thing.position ?? null };
  return {
    slot,
    reading,
    value: reading.value,
    topic: { mention, cost: 0, reach: "clause" },
    score: thing.overLexicon ? 1.25 : thing.words.length > 1 ? 0.97 : 0.9,
  };
}
