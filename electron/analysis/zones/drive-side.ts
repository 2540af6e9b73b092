import type { ZoneName } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";
import { plainWord } from "./spoken-line.ts";

export interface DriveSide {
  readonly wheel: "left" | "right";
  /** British words: the hood is the folding top, and the near side is the left. */
  readonly british: boolean;
}

const britishWords: ReadonlySet<string> = new Set([
  "bonnet",
  "boot",
  "nearside",
  "offside",
  "windscreen",
  "tyre",
  "tyres",
  "saloon",
  "motorway",
  "mot",
  "petrol",
  "bodywork",
  "sill",
  "sills",
  "kerb",
  "kerbed",
  "kerbing",
  "colour",
  "silencer",
  "gearbox",
  "number plate",
  "tailgate",
  "headlamps",
  "v5",
  "v5c",
  "log book",
  "logbook",
  "quid",
  "spanner",
  "aluminium",
  "metre",
  "litres",
]);
/** Different British words that must be heard before the wheel is taken to be on the right. One may be a borrowed word. */
const fewestBritishWords = 2;

/**
 * On which side the driver sits: as the narrator says, else from his English, for cars sold where it is spoken with a bonnet have the wheel
 * on the right. The near side is the one by the kerb: the left in Britain, whatever the car.
 */
export function driveSide(speech: Speech): DriveSide {
  const words = speech.tokens.map((token) => plainWord(token.word));
  const heard = new Set<string>();
  let told: "left" | "right" | null = null;
  for (const [position, word] of words.entries()) {
    const next = words[position + 1] ?? "";
    if (britishWords.has(word)) heard.add(word.replace(/s$/, ""));
    if (britishWords.has(`${word} ${next}`)) heard.add(`${word} ${next}`);
    if ((word === "near" || word === "off") && next === "side") heard.add("near or off side");
    if (next === "hand" && words[position + 2] === "drive" && (word === "left" || word === "right")) told ??= word;
    if (word === "lhd") told ??= "left";
    if (word === "rhd") told ??= "right";
  }
  const british = heard.size >= fewestBritishWords;
  return { wheel: told ?? (british ? "right" : "left"), british };
}

/** The zone a spoken side names. */
export function zoneOfSide(side: string, drive: DriveSide): ZoneName | null {
  if (side.startsWith("driver")) return "driver-side";
  if (side.startsWith("passenger")) return "passenger-side";
  const hand = handOf(side, drive.british);
  if (hand === null) return null;
  return hand === drive.wheel ? "driver-side" : "passenger-side";
}

/** Left or right as one sits in the vehicle. The kerb is on the left where traffic keeps left. */
function handOf(side: string, keepsLeft: boolean): "left" | "right" | null {
  if (side.startsWith("left")) return "left";
  if (side.startsWith("right")) return "right";
  if (/^(?:near|curb|kerb)/.test(side)) return keepsLeft ? "left" : "right";
  if (/^(?:off|street)/.test(side)) return keepsLeft ? "right" : "left";
  return null;
}
