import type { ZoneName } from "../../../shared-types/index.ts";
import type { Speech } from "../model.ts";
import { plainWord } from "./spoken-line.ts";

export interface DriveSide {
  readonly wheel: "left" | "right";
  /** British words: the hood is the folding top, and the near side is the left. */
  readonly british: boolean;
}

/**
 * Words no American narrator uses of a vehicle, with their plurals. "Gearbox", "sill" and "tailgate" are said on both sides of the ocean; a
 * boot is a rubber cover too.
 */
const britishWords: ReadonlySet<string> = new Set([
  ..."bonnet windscreen tyre saloon motorway mot petrol bodywork kerb kerbed kerbing colour silencer headlamp v5 v5c logbook quid spanner".split(
    " ",
  ),
  ..."aluminium metre litre carburettor dynamo bulkhead handbrake roundabout lorry indicator postcode".split(" "),
  ..."number plate|log book|near side|off side|boot lid|boot floor|road tax|cam belt|anti clockwise|part ex|part exchange".split("|"),
]);
/** Said of nothing but a vehicle's sides, and in Britain alone: enough by themselves. */
const surelyBritish: ReadonlySet<string> = new Set(["nearside", "offside"]);
const rubberBoots: ReadonlySet<string> = new Set(["shift", "shifter", "cv", "rack", "dust", "joint", "axle", "plug", "coil"]);
/** Words no British narrator uses of a vehicle or its price. */
const americanWords: ReadonlySet<string> = new Set([
  ..."trunk windshield fender dollar buck freeway interstate muffler".split(" "),
  ..."gas tank|license plate|parking lot|stick shift|county road|tail light".split("|"),
]);
/** Where these are said, English is a second language or a currency apart: the wheel is on the left though the words are British. */
const continentalWords: ReadonlySet<string> = new Set(["euro", "autobahn", "autoroute", "tüv"]);
/** Different British words that must be heard before the narrator is taken for one. One may be a borrowed word. */
const fewestBritishWords = 2;
/** After these "left-hand drive" is about other vehicles. */
const otherVehicles: ReadonlySet<string> = new Set(["ones", "cars", "versions", "models", "markets", "trucks", "countries", "only"]);

/**
 * On which side the driver sits: as the narrator says, else from his English, for cars sold where it is spoken with a bonnet have the wheel
 * on the right. The near side is the one by the kerb: the left in Britain, whatever the car.
 */
export function driveSide(speech: Speech): DriveSide {
  const words = speech.tokens.map((token) => plainWord(token.word));
  const heard = new Set<string>();
  const american = new Set<string>();
  let continental = false;
  let surely = false;
  let told: "left" | "right" | null = null;
  for (const [position, word] of words.entries()) {
    const next = words[position + 1] ?? "";
    const single = word.replace(/s$/, "");
    for (const phrase of [word, single, `${word} ${next}`]) {
      if (britishWords.has(phrase)) heard.add(phrase);
      if (americanWords.has(phrase)) american.add(phrase);
      if (continentalWords.has(phrase)) continental = true;
    }
    if (word === "boot" && !rubberBoots.has(words[position - 1] ?? "")) heard.add(word);
    if (surelyBritish.has(word)) surely = true;
    if (
      next === "hand" &&
      words[position + 2] === "drive" &&
      (word === "left" || word === "right") &&
      !otherVehicles.has(words[position + 3] ?? "")
    )
      told ??= word;
    if (word === "lhd") told ??= "left";
    if (word === "rhd") told ??= "right";
  }
  const british = surely || (heard.size >= fewestBritishWords && heard.size > american.size);
  const keepsLeft = british && (surely || !continental);
  return { wheel: told ?? (keepsLeft ? "right" : "left"), british };
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
