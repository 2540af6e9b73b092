import type { AttributeName, Claim, ComponentName } from "../../../../shared-types/index.ts";

/** Words for a part, one spelling each. Left: as a claim may name it, singular; right: the name slots use. */
const partSpellings: Readonly<Record<string, string>> = {
  bonnet: "hood",
  "boot lid": "trunk lid",
  windscreen: "windshield",
  wing: "fender",
  carb: "carburetor",
  carburettor: "carburetor",
  keeper: "owner",
  fob: "key",
  "key fob": "key",
  "smart key": "key",
  "forward gear": "gear",
  speed: "gear",
  "main bearing": "main bearing",
  main: "main bearing",
  crank: "main bearing",
  crankshaft: "main bearing",
  bearing: "main bearing",
  loudspeaker: "speaker",
  "spring leaf": "leaf",
  leaves: "leaf",
  "forward ratio": "gear",
  seater: "seat",
  "wheel nut": "lug",
  "wheel stud": "lug",
  "wheel bolt": "lug",
  "drive battery": "traction battery",
  "high voltage battery": "traction battery",
  "hybrid battery": "traction battery",
  "battery pack": "traction battery",
  pack: "traction battery",
  cambelt: "timing belt",
  "cam belt": "timing belt",
  silencer: "muffler",
  damper: "shock",
  "shock absorber": "shock",
  "anti roll bar": "sway bar",
  "brake disc": "rotor",
  "brake rotor": "rotor",
  "rotor thickness": "rotor",
  "pad thickness": "pad",
  "brake pad": "pad",
  disc: "rotor",
  pad: "pad",
  moonroof: "sunroof",
  "anti lock": "abs",
  satnav: "navigation",
  "sat nav": "navigation",
  "lug nut": "lug",
  stud: "lug",
  seatbelt: "belt",
  "seat belt": "belt",
  "head restraint": "head rest",
  headrest: "head rest",
  "odometer reading": "reading",
};

/** Parts that are the component itself as far as an attribute goes: a claim about them and one about the component share a slot. */
const sameAsWhole = {
  engine: { parts: ["engine", "motor", "block", "engine block"], attributes: "every" },
  transmission: { parts: ["transmission", "gearbox", "box"], attributes: "every" },
  "final-drive": {
    parts: ["gear", "axle", "rear axle", "rear end", "differential", "diff", "axle gear", "ring gear", "axle ratio", "final drive"],
    attributes: ["ratio", "diameter", "type"],
  },
  "fuel-system": { parts: ["carburetor"], attributes: ["flow"] },
  body: { parts: ["side", "panel", "bodywork", "sheet metal", "body"], attributes: "every" },
  glass: { parts: ["glass"], attributes: "every" },
  odometer: { parts: ["odometer", "clock", "reading", "mileage"], attributes: "every" },
  price: { parts: ["asking", "asking price", "price"], attributes: "every" },
  tire: { parts: ["tire", "tyre", "road tire", "date code", "tread"], attributes: "every" },
  wheel: { parts: ["wheel", "rim"], attributes: ["diameter", "width", "size", "material", "color"] },
  "air-conditioning": { parts: ["air conditioning", "air", "compressor", "a/c", "ac"], attributes: ["presence"] },
  "fuel-tank": { parts: ["tank", "fuel tank"], attributes: "every" },
  "cargo-floor": { parts: ["floor", "bed floor", "load floor", "trunk floor", "boot floor", "trunk pan", "pan"], attributes: "every" },
  floors: { parts: ["floor", "floor pan", "pan", "cab floor"], attributes: "every" },
  exhaust: { parts: ["pipe", "exhaust", "exhaust pipe"], attributes: ["diameter", "material"] },
  seats: { parts: ["seat", "leather", "hide", "upholstery", "cover", "bench", "bucket"], attributes: ["color", "material", "originality"] },
  brakes: { parts: ["brake"], attributes: "every" },
  vehicle: { parts: ["car", "truck", "vehicle"], attributes: "every" },
  suspension: { parts: ["ride height", "lift", "lift kit", "kit"], attributes: ["size"] },
  steering: { parts: ["steering gear", "steering box", "rack"], attributes: ["type"] },
} as const satisfies Partial<
  Record<ComponentName, { readonly parts: readonly string[]; readonly attributes: "every" | readonly AttributeName[] }>
>;

/** What a bare count of a component can only count ("that's all there is, three and done"). Others must name what they count. */
const countedByDefault: Partial<Record<ComponentName, string>> = {
  transmission: "gear",
  belts: "belt",
  audio: "speaker",
  "fuel-tank": "fuel tank",
};

/**
 * What a count counts, from its own words, where the claim names no part. The first row that fits decides, so a row with a narrower
 * word ("master key") stands before the wider one.
 */
const countedWords: readonly { readonly component: ComponentName; readonly noun: string; readonly words: RegExp }[] = [
  {
    component: "vehicle",
    noun: "owner",
    words: /\b(owners?|keepers?|bought it from|(had|owned) (it|her|him) (before|ahead of)|before me)\b/i,
  },
  { component: "vehicle", noun: "key", words: /\b(keys?|fobs?)\b/i },
  { component: "vehicle", noun: "airbag", words: /\bair ?bags?\b/i },
  { component: "vehicle", noun: "tool", words: /\btools?\b/i },
  { component: "engine", noun: "main bearing", words: /\b(bearing|mains)\b/i },
  { component: "engine", noun: "belt", words: /\bbelts?\b/i },
  { component: "engine", noun: "valve", words: /\bvalves?\b/i },
  { component: "engine", noun: "cylinder", words: /\b(cylinders?|straight|inline|v ?(6|8|10|12)|six|eight)\b/i },
  { component: "transmission", noun: "transfer case range", words: /\btransfer (case|box)\b/i },
  { component: "transmission", noun: "spline", words: /\bsplines?\b/i },
  { component: "transmission", noun: "gear", words: /\b(speeds?|gears?|on the floor|on the tree)\b/i },
  { component: "wheel", noun: "lug", words: /\b(lugs?|studs?|bolts?)\b/i },
  { component: "lights", noun: "headlight", words: /\bhead ?(lights?|lamps?)\b/i },
  { component: "body", noun: "door", words: /\bdoors?\b/i },
  { component: "body", noun: "hood pin", words: /\bhood pins?\b/i },
  { component: "seats", noun: "seat", words: /\bseats?\b/i },
  { component: "belts", noun: "belt", words: /\bbelts?\b/i },
  { component: "audio", noun: "speaker", words: /\b(loud)?speakers?\b/i },
  { component: "exhaust", noun: "tip", words: /\btips?\b/i },
  { component: "cooling", noun: "row", words: /\brows?\b/i },
  { component: "suspension", noun: "leaf", words: /\blea(f|ves|fs)\b/i },
];

/** What is or is not there, from the claim's own words, where it names no part. */
const presentWords: readonly { readonly component: ComponentName; readonly noun: string; readonly words: RegExp }[] = [
  { component: "top", noun: "vinyl top", words: /\bvinyl\b/i },
  { component: "top", noun: "sunroof", words: /\b(sun|moon) ?roof\b/i },
  { component: "transmission", noun: "overdrive", words: /\b(overdrive|straight on to the prop ?shaft)\b/i },
  { component: "audio", noun: "navigation", words: /\b(navigation|sat ?nav)\b/i },
  { component: "brakes", noun: "abs", words: /\b(abs|anti ?-?lock)\b/i },
];

/** Narrower parts that a claim's own words name, where it names the component or a wider part ("pipe" for a header's primaries). */
const narrowerWords: readonly {
  readonly component: ComponentName;
  readonly attribute: AttributeName;
  readonly part: string;
  readonly words: RegExp;
}[] = [
  { component: "exhaust", attribute: "diameter", part: "header", words: /\b(headers?|primar(y|ies)|manifolds?)\b/i },
  { component: "exhaust", attribute: "diameter", part: "tailpipe tip", words: /\b(tips?|outlets?|go out to)\b/i },
  { component: "top", attribute: "material", part: "side curtain", words: /\bside[- ]?(curtain|screen)s?\b/i },
  { component: "top", attribute: "material", part: "rear window", words: /\b(rear|back) (window|screen|light)\b/i },
  { component: "top", attribute: "material", part: "tonneau cover", words: /\b(tonneau|boot cover|hood bag|top boot)\b/i },
  { component: "vehicle", attribute: "size", part: "payload", words: /\bpay ?load\b/i },
  {
    component: "vehicle",
    attribute: "size",
    part: "towing weight",
    words: /\b(tow(s|ing|ed)?|braked|trailer|pull(s|ing)?|pin|tongue|nose weight)\b/i,
  },
  {
    component: "vehicle",
    attribute: "size",
    part: "gross weight",
    words: /\b(gross|gvwr?|gvm|max(imum)? (authori[sz]ed )?(mass|weight)|all ?-?up)\b/i,
  },
  { component: "vehicle", attribute: "size", part: "curb weight", words: /\b(curb|kerb|unladen|empty|dry|tare)\b/i },
  { component: "vehicle", attribute: "size", part: "axle weight", words: /\b(axles?|rears?|fronts?)\b/i },
  { component: "brakes", attribute: "thickness", part: "rotor", words: /\b(rotors?|dis[ck]s?)\b/i },
];

/** Singular, lower case, one spelling. */
function spelledPart(part: string): string {
  const plain = part.toLowerCase().replace(/[_-]+/g, " ").replace(/\s+/g, " ").trim();
  const singular = /(ss|us|is|abs|lens)$/.test(plain) ? plain : plain.replace(/(?<=[a-z]{2})s$/, "");
  return partSpellings[plain] ?? partSpellings[singular] ?? singular;
}

/** Slots that measure a mark, a crack or rot. */
const lengthOfDamage = /^length of a /;

/** The part a claim's slot is about, or null for the component as a whole. */
export function slotPart(claim: Claim): string | null {
  const { component, attribute } = claim;
  let part = claim.part === null ? null : spelledPart(claim.part);
  const whole = (
    sameAsWhole as Partial<Record<ComponentName, { parts: readonly string[]; attributes: "every" | readonly AttributeName[] }>>
  )[component];
  if (part !== null && whole?.parts.includes(part) && (whole.attributes === "every" || whole.attributes.includes(attribute))) part = null;
  const narrow = narrowerWords.find((row) => row.component === component && row.attribute === attribute && row.words.test(claim.quote));
  if (narrow) return narrow.part;
  // A tire that lies in the trunk is the spare.
  if (component === "tire" && part === null && claim.position === null && claim.zone === "cargo") return "spare";
  // Nothing else of a body is told in feet, damage apart.
  if (component === "body" && attribute === "size" && claim.unit === "ft" && !lengthOfDamage.test(claim.rule)) return "bed";
  if (part === "gear" && attribute === "count" && /\b(transfer (case|box)|t ?-?case|case,?) ?\w*/i.test(claim.quote))
    return "transfer case range";
  // Only the battery that drives it is worth calling the original one.
  if (component === "electrical" && attribute === "originality" && part === "battery") return "traction battery";
  if (component === "glass" && part === null && claim.position === "front") return "windshield";
  if (component === "glass" && part === null && claim.position === "rear") return "rear glass";
  if (part === "leaf spring" && attribute === "count") return "leaf";
  if (part !== null) return part;
  if (attribute === "count") {
    const row = countedWords.find((candidate) => candidate.component === component && candidate.words.test(claim.quote));
    return row?.noun ?? countedByDefault[component] ?? null;
  }
  if (attribute === "presence") {
    return presentWords.find((candidate) => candidate.component === component && candidate.words.test(claim.quote))?.noun ?? null;
  }
  return null;
}

/** Parts of which a vehicle has one: where they were named, the position adds nothing. */
const oneOfAKind: ReadonlySet<string> = new Set([
  "hood",
  "trunk lid",
  "tailgate",
  "windshield",
  "rear glass",
  "roof skin",
  "grille",
  "vinyl top",
  "sunroof",
  "steering wheel",
  "carburetor",
  "bed",
  "overdrive",
  "abs",
  "navigation",
  "owner",
  "key",
]);

export function isOneOfAKind(part: string | null): boolean {
  return part !== null && oneOfAKind.has(part);
}
