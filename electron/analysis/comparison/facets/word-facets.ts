import type { Claim, ComponentName, ZoneName } from "../../../../shared-types/index.ts";
import type { Facet, Reading } from "../slots/facet.ts";
import { homeOf } from "../slots/homes.ts";
import { slotPart } from "../slots/parts.ts";
import { unplacedMeaning } from "../slots/positions.ts";
import { topicOf, wordSlots } from "../slots/word-slots.ts";
import { huesOf } from "../values/colors.ts";
import { materialOf } from "../values/materials.ts";
import { choicesOf, cylindersIn } from "../values/type-families/index.ts";
import { countFacet } from "./count-facets.ts";
import { facet } from "./make-facet.ts";

/** Components that are not in view from below or under the hood: there a loose "tempered" or "black" is about something else. */
const outOfView: Partial<Record<ZoneName, ReadonlySet<ComponentName>>> = {
  underside: new Set(["glass", "seats", "dash", "headliner", "carpet", "top", "audio", "belts", "lights", "paint", "bumper", "trim"]),
  front: new Set(["seats", "carpet", "headliner", "belts", "dash"]),
  rear: new Set(["carpet", "headliner", "belts", "dash"]),
  cabin: new Set(["wheel", "tire"]),
  cargo: new Set(["seats", "dash", "headliner", "top", "audio", "belts", "lights", "wheel"]),
  roof: new Set(["seats", "carpet", "belts", "dash"]),
  "engine-bay": new Set(["seats", "dash", "headliner", "carpet", "top", "audio", "belts", "glass"]),
};

/** Words that name such a component, so that a remark about it made from elsewhere still counts. */
const namingWords: Partial<Record<ComponentName, RegExp>> = {
  glass: /\b(glass|window|windshield|windscreen|screen)s?\b/i,
  seats: /\b((seat|interior|bench|bucket)s?|leather|upholstery|hides?)\b/i,
  // One wheel in the cabin is the steering wheel.
  wheel: /\b(wheels|rims|alloys)\b/i,
  tire: /\b(tires?|tyres?|rubber)\b/i,
  dash: /\b(dash|dashboard|fascia)\b/i,
  headliner: /\b(head ?lin(er|ing)|headcloth)\b/i,
  carpet: /\b(carpet|mat)s?\b/i,
  top: /\b(top|hood|roof|sunroof)\b/i,
  audio: /\b(radio|stereo|speaker|screen|head unit)s?\b/i,
  belts: /\bbelts?\b/i,
  lights: /\b(light|lamp|headlight|headlamp)s?\b/i,
  paint: /\b(paint|paintwork|color|colour|car|truck)\b/i,
  bumper: /\bbumpers?\b/i,
  trim: /\b(trim|grille|molding|moulding|badge|mirror)s?\b/i,
};

/** Whether a kind, material or color was said where its component cannot be seen, and without naming it. */
function saidOutOfView(claim: Claim): boolean {
  // A seat named by its row is in view where the rear flap is up.
  if (claim.component === "seats" && claim.zone === "cargo" && claim.part !== null) return false;
  return (outOfView[claim.zone]?.has(claim.component) ?? false) && !namingWords[claim.component]?.test(claim.quote);
}

const zonesInside: ReadonlySet<string> = new Set(["cabin", "cargo", "engine-bay", "underside", "roof"]);
const paintNames =
  /\b(paint(ed|work)?|colou?rs?|car|truck|van|metallic|pearl|code|respray\w*|repaint\w*|finish(ed)?|factory|she'?s|body)\b/i;
const notTheBody =
  /\b(letter\w*|stripes?|pin ?strip\w*|roof|top|grilles?|bumpers?|wheels?|calipers?|trim|mirrors?|decals?|logo|sign\w*|primer|folder|papers?|slip|envelope|book(let)?|sticker|title|card|tag)\b/i;

/** Whether a color of "it" is the vehicle's: inside, under the hood or on the roof it is that of what is in hand, and outside it must name the paint. */
function isOfWholeVehicle({ zone, quote, rule }: Claim): boolean {
  // What the papers call its color is meant of the whole, wherever they are read out.
  if (rule === "color in the papers") return true;
  if (zonesInside.has(zone) || notTheBody.test(quote)) return false;
  return zonesOfSummary.has(zone) || paintNames.test(quote) || namedColor.test(quote);
}

/** A color with a name of its own ("racing green", "burnt orange") is a paint's; a bare "black" is that of anything. */
const namedColor =
  /\b(?!(?:the|a|an|is|it|its|it's|that's|they're|and|or|in|of|all|just|so|kind|sort|real|really|very|pretty|painted|plain|flat|satin|gloss|still|be|was|were|are|with|over|this|these|those|that|on|up|got|has|have|to|for|as|like)\b)[a-z]+ (red|blue|green|white|gr[ae]y|silver|gold|yellow|orange|brown|maroon|beige|tan|bronze)\b/i;

/** A spoken kind may choose in several families; an engine's layout also counts its cylinders. */
export function typeFacets(claim: Claim): Facet[] {
  if (saidOutOfView(claim)) return [];
  const spoken = String(claim.value);
  const ofTransferCase = /\btransfer (case|box)\b/i.test(`${claim.part ?? ""} ${spoken} ${claim.quote}`);
  const facets = choicesOf(claim.component, spoken).flatMap(({ family, choice }) => {
    const part = slotPart(claim);
    // A transfer case shifted by hand says nothing of the gearbox before it.
    if (ofTransferCase && family.name === "gearbox-kind") return [];
    return facet({
      claim,
      kind: "type",
      part: family.parts === "any" ? null : part,
      component: family.components[0]!,
      property: family.name,
      topic: family.topic,
      weight: family.weight,
      meaning: family.unplaced ?? unplacedMeaning[claim.component],
      reading: { by: "choice", family: family.name, choice },
    });
  });
  const cylinders = claim.component === "engine" ? cylindersIn(spoken) : undefined;
  if (cylinders !== undefined) facets.push(...countFacet(claim, "cylinder", cylinders));
  return facets;
}

/** "A liner hides rust", taken for leather. */
const hidesSomething =
  /\b(you|to|they|that|it|can|could|would|will|liner|paint|help|i|we|which|mats?|covers?) hides?\b|\bhides? (rust|it|that|the|a|dirt|anything|everything|stuff|things)\b/i;

/** Equipment that is a choice of a kind: who has it has made the choice, and who has not, the other. Common practice. */
export const chosenByPresence = [
  { part: "four-wheel drive", component: "transmission", present: "four-wheel drive", absent: "two-wheel drive" },
  { part: "heat pump", component: "air-conditioning", present: "heat pump", absent: "resistance heater" },
  { part: "turbo", component: "engine", present: "turbocharged", absent: "naturally aspirated" },
  { part: "clutch pedal", component: "transmission", present: "manual", absent: "automatic" },
] as const satisfies readonly { part: string; component: ComponentName; present: string; absent: string }[];

/** The kind that is chosen by having the part or not. */
function chosenFacets(claim: Claim, part: string | null): Facet[] {
  const home = homeOf(claim, part);
  const row = chosenByPresence.find((candidate) => candidate.part === home.part && candidate.component === home.component);
  const value = claim.value === "present" ? row?.present : claim.value === "absent" ? row?.absent : undefined;
  if (!row || value === undefined) return [];
  return typeFacets({ ...claim, component: row.component, attribute: "type", part: null, value }).map((made) => ({ ...made, claim }));
}

/** What lies in the trunk of these is a loose one: the old radio in its box. */
const keptElsewhere: ReadonlySet<ComponentName> = new Set([
  "audio",
  "engine",
  "fuel-system",
  "ignition",
  "transmission",
  "dash",
  "steering",
]);

/** "No liner", taken for a liner: such words show nothing to be there. */
const deniedAtTheEnd = /\b(no|without( a| an| any)?|never had( a| an| any)?|(has|does|is|do)(n't| not)( have)?( a| an| any)?)( \S+){1,2}$/i;

export function wordFacets(claim: Claim): Facet[] {
  const attribute = claim.attribute as "material" | "color" | "presence" | "originality";
  if ((attribute === "material" || attribute === "color") && saidOutOfView(claim)) return [];
  if (attribute === "presence" && claim.value === "present" && claim.zone === "cargo" && keptElsewhere.has(claim.component)) return [];
  if (attribute === "presence" && claim.value === "present" && deniedAtTheEnd.test(claim.quote)) return [];
  if (attribute === "material" && hidesSomething.test(claim.quote)) return [];
  const reading = wordReading(claim);
  if (!reading) return [];
  const part = slotPart(claim);
  if (claim.component === "paint" && attribute === "color" && part === null && !isOfWholeVehicle(claim)) return [];
  const slot = wordSlots[attribute];
  const row = slot.components[claim.component];
  if (attribute === "presence" && part === null && !row) return [];
  const total = (attribute === "originality" || attribute === "material") && (isTotal(claim) || isAdvertised(claim, part));
  if (
    part === null &&
    claim.position === null &&
    !total &&
    attribute !== "presence" &&
    ofManyParts.has(claim.component) &&
    // The wood of a dash is one thing, whoever calls it trim.
    homeOf(claim, part).part === null &&
    !namesTheWhole(claim)
  ) {
    // "That's gel coat", said of a panel in view, is enough against "it's all steel", and against nothing less.
    if (claim.component !== "body" || attribute !== "material") return [];
    const topic = topicOf(topicPattern(claim, part), claim, part);
    return facet({
      claim,
      kind: attribute,
      part,
      property: attribute,
      topic,
      weight: row?.weight ?? slot.weight,
      meaning: "seen",
      reading,
    });
  }
  const chosen = attribute === "presence" ? chosenFacets(claim, part) : [];
  const made = facet({
    claim: total && zonesOfSummary.has(claim.zone) ? { ...claim, position: null } : claim,
    kind: attribute,
    part,
    property: attribute,
    topic: topicOf(topicPattern(claim, part), claim, part),
    weight: part !== null && row?.ofWholeOnly ? slot.weight : (row?.weight ?? slot.weight),
    meaning: total ? "whole" : (row?.unplaced ?? unplacedMeaning[claim.component]),
    reading,
  });
  return [...made, ...chosen];
}

/** A row that is for the component alone lends its topic to a part only where the part would not say what it is about ("hood paint color"). */
function topicPattern(claim: Claim, part: string | null): string {
  const slot = wordSlots[claim.attribute as "material" | "color" | "presence" | "originality"];
  const row = slot.components[claim.component];
  if (row?.topic === undefined) return slot.topic;
  if (part === null || !row.ofWholeOnly) return row.topic;
  return claim.component === "paint" ? `%part ${row.topic}` : slot.topic;
}

/** Components that are many small parts: a word about one of them without its part or place may be about any. */
const ofManyParts: ReadonlySet<ComponentName> = new Set([
  "body",
  "glass",
  "trim",
  "lights",
  "electrical",
  "suspension",
  "brakes",
  "cooling",
  "fuel-system",
]);

/** "It's the paint they put on it in the plant": all of it, where a bare "original paint" may leave a panel out. */
function isAdvertised({ component, attribute, value, position, quote }: Claim, part: string | null): boolean {
  if (component !== "paint" || attribute !== "originality" || value !== "original" || part !== null || position !== null) return false;
  return fromThePlant.test(quote);
}

const fromThePlant =
  /\b(paint|finish) (that )?(they|it|she|he) (put on|was (born|built|sprayed|finished|painted)|left|came (down|out|off)|rolled)\b/i;

/** "The body is fiberglass" is about all of it, though it says neither part nor place. */
function namesTheWhole({ component, attribute, quote }: Claim): boolean {
  return component === "body" && attribute === "material" && /\b(body|bodies|shell|tub|body ?work)\b/i.test(quote);
}

/** Nothing is in view here: a place found in such a claim's neighbourhood is not its own. */
const zonesOfSummary: ReadonlySet<string> = new Set(["opening", "closing", "documents", "drive"]);

/** "All original", "never been painted": such a claim is about every part, where a bare "the paint it came with" may leave some out. */
function isTotal(claim: Claim): boolean {
  return (
    /\b(all|every|everything|completely|entirely|totally|a hundred percent|never been (painted|repainted|resprayed|apart|touched|recovered|redone|shot)|(nobody|no one|no-one)(('s| has| have)? ever| ever) (shot|painted|sprayed|touched|had a gun to)|never (seen|had) (a |any )?(gun|paint|spray|respray|repaint))\b/i.test(
      claim.quote,
    ) && !/\b(but|except|other than|besides|apart from|the rest|all the (other|rest))\b/i.test(claim.quote)
  );
}

function wordReading(claim: Claim): Reading | undefined {
  const spoken = String(claim.value);
  switch (claim.attribute) {
    case "color": {
      const options = huesOf(spoken);
      return options && { by: "options", options };
    }
    case "material": {
      const material = materialOf(spoken);
      return material === undefined ? undefined : { by: "material", material };
    }
    default:
      return { by: "word", word: spoken.toLowerCase() };
  }
}
