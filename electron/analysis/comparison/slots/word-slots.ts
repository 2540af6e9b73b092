import type { Claim, ComponentName } from "../../../../shared-types/index.ts";
import type { UnplacedMeaning } from "./positions.ts";

interface WordRow {
  readonly topic?: string;
  readonly weight?: number;
  readonly unplaced?: UnplacedMeaning;
  /** The weight is for the component itself, not for any one part of it. */
  readonly ofWholeOnly?: boolean;
}

interface WordSlot {
  /** For a reviewer; "%thing" is the part, or the component where none is named. */
  readonly topic: string;
  readonly weight: number;
  readonly components: Partial<Record<ComponentName, WordRow>>;
}

/** Slots whose values are words or counts, with what a buyer loses where one side is wrong. */
export const wordSlots = {
  count: { topic: "number of %things", weight: 35, components: {} },
  material: {
    topic: "%thing material",
    weight: 50,
    components: {
      body: { topic: "body panels", weight: 70 },
      seats: { topic: "seat material", weight: 55, unplaced: "whole", ofWholeOnly: true },
      wheel: { topic: "wheel material", weight: 50, unplaced: "whole" },
      frame: { weight: 60 },
      // "It's stainless from here back" is about the system.
      exhaust: { unplaced: "whole" },
    },
  },
  color: {
    topic: "%thing color",
    weight: 45,
    components: {
      paint: { topic: "paint color", weight: 65, ofWholeOnly: true },
      seats: { topic: "seat color", weight: 50, unplaced: "whole", ofWholeOnly: true },
      top: { topic: "top color", weight: 40 },
    },
  },
  presence: {
    topic: "%thing",
    weight: 60,
    components: {
      "air-conditioning": { topic: "air conditioning", weight: 70 },
      spare: { topic: "spare", weight: 40 },
      audio: { topic: "radio", weight: 35 },
      headliner: { topic: "headliner", weight: 30 },
      carpet: { topic: "carpet", weight: 30 },
    },
  },
  originality: {
    topic: "%thing originality",
    weight: 55,
    components: {
      engine: { topic: "engine originality", weight: 95, ofWholeOnly: true },
      transmission: { topic: "transmission originality", weight: 80, ofWholeOnly: true },
      vin: { topic: "matching numbers", weight: 92 },
      odometer: { topic: "mileage being actual", weight: 92 },
      frame: { weight: 75, ofWholeOnly: true },
      paint: { topic: "paint originality", weight: 70, ofWholeOnly: true },
      seats: { topic: "seat originality", weight: 55, ofWholeOnly: true },
      body: { weight: 60 },
      // "The floors are the ones it was born with" is about every one of them.
      floors: { weight: 70, unplaced: "whole" },
      wheel: { weight: 45, unplaced: "whole" },
    },
  },
} as const satisfies Record<string, WordSlot> as Record<"count" | "material" | "color" | "presence" | "originality", WordSlot>;

const componentWords: Partial<Record<ComponentName, string>> = {
  seats: "seat",
  brakes: "brake",
  lights: "light",
  belts: "seat belt",
  vin: "VIN",
};

/** The topic with the part's or component's name filled in. */
export function topicOf(pattern: string, claim: Claim, part: string | null): string {
  const component = componentWords[claim.component] ?? claim.component.replaceAll("-", " ");
  const thing = part ?? component;
  return pattern
    .replace("%things", plural(thing))
    .replace("%thing", thing)
    .replace("%part", part ?? component)
    .replace("%attribute", claim.attribute);
}

function plural(noun: string): string {
  if (noun === "leaf") return "leaves";
  if (/[^aeiou]y$/.test(noun)) return `${noun.slice(0, -1)}ies`;
  return /(s|x|ch|sh)$/.test(noun) ? `${noun}es` : `${noun}s`;
}
