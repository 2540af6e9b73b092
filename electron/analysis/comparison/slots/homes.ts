import type { AttributeName, Claim, ComponentName } from "../../../../shared-types/index.ts";

interface Home {
  readonly component: ComponentName;
  readonly part: string;
  /** Names under which the part is told of, whatever component it was taken for. */
  readonly parts: readonly string[];
  /** Components it may have been taken for; others have parts of the same name. */
  readonly from: readonly ComponentName[];
  readonly attributes: "every" | readonly AttributeName[];
}

/** Parts that belong to one component or another by who speaks: they are compared as one. Common practice. */
export const homes = [
  {
    component: "body",
    part: "bed",
    parts: ["bed", "truck body", "service body", "flatbed", "flat bed", "deck", "box", "load bed", "pickup box", "utility body"],
    from: ["body", "cargo-floor"],
    attributes: ["size"],
  },
  {
    component: "engine",
    part: "intake",
    parts: ["intake", "intake manifold", "inlet manifold", "manifold"],
    from: ["engine", "fuel-system"],
    attributes: ["material", "originality", "condition", "type"],
  },
  {
    component: "exhaust",
    part: "exhaust manifold",
    parts: ["exhaust manifold", "header"],
    from: ["engine", "exhaust"],
    attributes: ["material", "originality", "condition"],
  },
  {
    component: "bumper",
    part: "hitch",
    parts: ["hitch", "tow bar", "towbar", "receiver", "receiver hitch", "tow hitch", "tow ball", "gooseneck"],
    from: ["bumper", "body", "frame", "vehicle", "trim"],
    attributes: ["presence"],
  },
  {
    component: "trim",
    part: "roof rack",
    parts: ["roof rack", "roof rail", "roof bar", "luggage rack", "rail"],
    from: ["trim", "body", "top", "vehicle"],
    attributes: ["presence", "material", "color", "originality"],
  },
  {
    component: "top",
    part: "sunroof",
    parts: ["sunroof", "moonroof", "sun roof", "panoramic roof"],
    from: ["top", "body", "glass", "vehicle"],
    attributes: ["presence", "condition", "material"],
  },
  {
    component: "transmission",
    part: "shift knob",
    parts: ["shift knob", "shifter", "gear knob", "gear lever", "gear stick"],
    from: ["transmission"],
    attributes: ["material", "color", "originality"],
  },
  {
    component: "top",
    part: "tonneau cover",
    parts: ["tonneau", "tonneau cover"],
    from: ["top", "body", "cargo-floor", "vehicle", "trim"],
    attributes: ["presence"],
  },
  {
    component: "air-conditioning",
    part: "heat pump",
    parts: ["heat pump"],
    from: ["air-conditioning", "electrical", "vehicle"],
    attributes: ["presence"],
  },
  {
    component: "air-conditioning",
    part: "heater",
    parts: ["heater", "cabin heater"],
    from: ["air-conditioning", "cooling", "vehicle", "dash"],
    attributes: ["presence", "condition"],
  },
  {
    component: "dash",
    part: "head-up display",
    parts: ["head-up display", "head up display", "hud"],
    from: ["dash", "glass", "vehicle", "electrical"],
    attributes: ["presence"],
  },
  {
    component: "transmission",
    part: "four-wheel drive",
    parts: ["four-wheel drive", "four wheel drive", "all-wheel drive"],
    from: ["transmission", "final-drive", "vehicle"],
    attributes: ["presence"],
  },
] as const satisfies readonly Home[];

const woods = /^(?:walnut|wood|wooden|mahogany|maple|birch|elm|teak|rosewood|beech|poplar|eucalyptus|bamboo|zebrano|ash|oak)$/;
const woodWords = /\b(?:wood|wooden|walnut|veneer|inlays?)\b/i;
const dashTrim = /\bdash(?:board)? trim\b|\btrim (?:on|in|across|along) (?:the|this|its) (?:dash|dashboard|fascia)\b/i;

/** The trim of a dash is the dash's or the trim's by who speaks; a dash "of walnut" is the dash itself. */
function isWoodTrim({ component, value, quote }: Claim): boolean {
  return component === "trim" ? woods.test(String(value)) || woodWords.test(quote) : component === "dash" && dashTrim.test(quote);
}

/** "The title says it's a 2017": the year that the papers give the vehicle is its model year; "titled in 2017" is when it was bought. */
const namesTheYear =
  /\btitles? (?:says?|reads?|shows?|lists?|calls?)(?: (?:it|her|him))?(?: (?:it|her|him|she|he|this|that)(?:'s| is)?| is)? an? (?:\w+ ?){1,4}$/i;

/** Where a part is compared: its own component and name, or another's where the trade puts it in more than one. */
export function homeOf(claim: Claim, part: string | null): { readonly component: ComponentName; readonly part: string | null } {
  const { component, attribute } = claim;
  if (part === null && attribute === "material" && isWoodTrim(claim)) return { component: "trim", part: "wood trim" };
  if (component === "title" && (part === null || part === "title") && attribute === "year" && namesTheYear.test(claim.quote))
    return { component: "vehicle", part: null };
  const home = (homes as readonly Home[]).find(
    (row) =>
      part !== null &&
      row.parts.includes(part) &&
      row.from.includes(component) &&
      (row.attributes === "every" || row.attributes.includes(attribute)),
  );
  return home ? { component: home.component, part: home.part } : { component, part };
}
