import type { ComponentName, PositionName } from "../../../../shared-types/index.ts";

/** Components of which a vehicle has several, by place. Any other component's claims carry no position unless its words name one. */
export const placedComponents: ReadonlySet<ComponentName> = new Set([
  "tire",
  "wheel",
  "brakes",
  "suspension",
  "body",
  "paint",
  "glass",
  "lights",
  "bumper",
  "trim",
  "seats",
  "belts",
  "floors",
  "carpet",
  "exhaust",
  "audio",
]);

/** Components of which there is one on each wheel or side, so that a plural with no place named means all of them. */
export const everyCorner: ReadonlySet<ComponentName> = new Set(["tire", "wheel"]);

/** Components whose side is where the camera stands, when only a panel is named. */
export const panelsBySide: ReadonlySet<ComponentName> = new Set(["body", "paint"]);

/** Parts on the middle line: the camera's side says nothing of them. */
export const middleParts: ReadonlySet<string> = new Set(["hood", "louver", "trunk lid", "tailgate", "roof skin", "chop", "bed", "top"]);

export type EndOfVehicle = "front" | "rear" | "both";
export type SideOfVehicle = "driver" | "passenger";

export interface PlacePhrase<Meaning> {
  /** Tested within the words of one clause. */
  readonly words: RegExp;
  readonly meaning: Meaning;
  readonly example: string;
}

/** Front and rear, as said. In order: the first that matches at the nearest place wins. */
export const endPhrases = [
  {
    words:
      /\b(?:front and (?:the )?(?:back|rear)|fronts and (?:the )?(?:backs|rears)|front to back|(?:back|rear) and front|both ends|fore and aft)\b/,
    meaning: "both",
    example: "fifteens front and back",
  },
  {
    words:
      /\b(?:all (?:the way )?(?:a?round)|all four(?: corners)?|all the way (?:a?round)|every corner|each corner|on every corner|(?:all|the four|all four|none) of (?:them|'em|em)|all corners|all six|four wheel (?=disc|drum))\b/,
    meaning: "both",
    example: "fifteens all the way around",
  },
  {
    words:
      /\b(?:up front|out front|in front|at the front|(?:on|for) the fronts?|in the fronts?|ahead(?! of)|front (?:one|pair|set|ones|end|axle|tires?|wheels?|pads?|rotors?|discs?|drums?|brakes?|seats?|belts?|door|side|left|right)|(?:the|your|my|his) fronts?|fronts?|steers?|steer axle|fore)\b/,
    meaning: "front",
    example: "two thirty-fives ahead",
  },
  {
    words:
      /\b(?:out back|out the back|in (?:the )?(?:back|rear)|at the (?:back|rear)|(?:on|for) the (?:back|rear|rears|backs)|(?:on|in) (?:the )?drives|behind(?! (?:the|it(?!'s)|that(?!'s)|this|me|him|her|here|us|them|those|you|a)\b)|(?:rear|back) (?:one|pair|set|ones|end|axle|tires?|wheels?|pads?|rotors?|discs?|drums?|brakes?|seats?|belts?|door|side|left|right|there)|(?:the|your|my|his) (?:rears?|backs)|rears?|backs|aft|(?:the|your|my|these|those|back|rear) duals|(?:inner|outer|inside|outside) duals?)\b/,
    meaning: "rear",
    example: "two fifty-fives behind",
  },
] as const satisfies readonly PlacePhrase<EndOfVehicle>[];

/** "Up here", "back there": front or rear by the way people point, weaker than a named end. */
export const pointingPhrases = [
  { words: /\bup (?:here|there)\b/, meaning: "front", example: "two lap and shoulder up here" },
  { words: /\b(?:back (?:here|there)|around back|round the back)\b/, meaning: "rear", example: "it's a drum back there" },
] as const satisfies readonly PlacePhrase<EndOfVehicle>[];

/** Sides named for the vehicle itself, the same wherever the wheel is. */
export const sidePhrases = [
  {
    words:
      /\bdriver'?s?'? ?(?:'s )?(?:side|door|quarter|fender|wing|rear|front|seat|bolster|mirror)\b|\bdriver's\b|\bdriver (?:quarter|door|fender)\b/,
    meaning: "driver",
    example: "the driver's side front",
  },
  {
    words:
      /\bpassenger'?s?'? ?(?:'s )?(?:side|door|quarter|fender|wing|rear|front|seat|bolster|mirror)\b|\bpassenger's\b|\bpassenger (?:one|is)\b/,
    meaning: "passenger",
    example: "passenger side tires",
  },
] as const satisfies readonly PlacePhrase<SideOfVehicle>[];

/** Sides named by hand or by kerb: which is the driver's depends on where the wheel is. */
export const handPhrases = [
  { words: /\b(?:near ?side|kerb ?side|curb ?side)\b/, meaning: "near", example: "the near side front wing" },
  { words: /\boff ?side\b/, meaning: "off", example: "off side rear" },
  {
    words: /\bleft (?:hand )?(?:side|front|rear|quarter|door|fender|wing)\b|\b(?:front|rear|back) left\b/,
    meaning: "left",
    example: "left rear",
  },
  {
    words: /\bright (?:hand )?(?:side|front|rear|quarter|door|fender|wing)\b|\b(?:front|rear|back) right\b/,
    meaning: "right",
    example: "right front",
  },
] as const satisfies readonly PlacePhrase<"near" | "off" | "left" | "right">[];

/** "This side", "over here": the side the camera is on. */
export const hereSide =
  /\b(?:this side|on this side|this (?:\w+ )?(?:quarter|door|fender|wing|rocker|sill)|this (?:front|rear|back) (?:tire|wheel))\b/;
export const otherSide =
  /(?<!\b(?:same as|same as on|like|as on|just like|as) (?:the |that |on the )?)\b(?:other side|the far side|opposite side)\b/;

/** Ends at which a part sits on nearly every vehicle that has it: taken where nothing in its own clause says otherwise (common practice). */
export const usualEnds: ReadonlyMap<string, EndOfVehicle> = new Map([["leaf spring", "rear"]]);

export function joinPlace(end: EndOfVehicle | null, side: SideOfVehicle | null): PositionName | null {
  if (end === "both") return side ?? "all";
  if (end && side) return `${side}-${end}`;
  return end ?? side;
}
