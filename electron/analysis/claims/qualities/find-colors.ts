import type { ComponentName } from "../../../../shared-types/index.ts";
import { isNumberWord } from "../framing/phrase-elements.ts";
import { type ColorRun, colorRuns, writtenInPapers } from "./color-runs.ts";
import { comparing, copulas, fillers, leatherWords, notAColorBefore, stuff } from "./color-words.ts";
import { hasPartAsSubject } from "./find-part.ts";
import { findPlace } from "./find-place.ts";
import { type Quality, speaksOfThisVehicle } from "./quality.ts";
import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

const paintable: readonly ComponentName[] = ["paint", "vehicle", "body"];
const colorable: readonly ComponentName[] = [
  ...paintable,
  "seats",
  "carpet",
  "headliner",
  "top",
  "wheel",
  "dash",
  "bumper",
  "cargo-floor",
  "transmission",
  "steering",
  "trim",
  "engine",
];

/** A color told from the vehicle's papers is its paint's, though the words name the paper. */
const colorInPapers = "color in the papers";

/** Words back to the part that a color is said of; "painted" goes further, as it needs one. */
const subjectReach = 14;
const paintedReach = 55;

/** Colors that nobody paints a vehicle's lower half in. */
const hideColors = new Set("tan saddle biscuit cognac camel caramel parchment oxblood beige palomino sandstone butterscotch".split(" "));

/** "Black on black", "white over tan": outside, and inside. */
function insideColor(scene: SpokenScene, run: ColorRun, component: ComponentName): string | null {
  if (component === "paint" && namesInside(scene, run)) return run.value;
  const [, inner] = run.value.split(" and ");
  if (
    component !== "paint" ||
    inner === undefined ||
    !/^(?:opening|closing|documents)$/.test(scene.zoneAt(scene.units[run.firstUnit]!.token))
  )
    return null;
  const joint = scene.units.slice(run.firstUnit, run.endUnit).find(({ word }) => /^(?:on|over)$/.test(word))?.word;
  return joint === "on" || (joint === "over" && hideColors.has(inner)) ? inner : null;
}

/** "White on the outside, blue on the inside", "tan inside.": the color is the interior's. */
function namesInside({ units }: SpokenScene, { endUnit }: ColorRun): boolean {
  const after = units
    .slice(endUnit, endUnit + 3)
    .map(({ word }) => word)
    .join(" ");
  const spoken = /^(?:(?:on|in) the (?:inside|cabin)|inside|within)\b/.exec(after)?.[0];
  if (spoken === undefined || units[endUnit - 1]!.endsSentence) return false;
  const last = units[endUnit + spoken.split(" ").length - 1]!;
  // "Blue inside the arches" is another place.
  return last.endsPhrase || last.endsSentence || spoken.startsWith("on") || spoken.startsWith("in the");
}

/** Every color said of this vehicle's parts. `materials` are what the rules found, in order: a color goes on about what was just said to be made of something. */
export function findColors(scene: SpokenScene, materials: readonly Quality[]): Quality[] {
  const found: Quality[] = [];
  for (const run of colorRuns(scene)) {
    const first = scene.units[run.firstUnit]!.token;
    const end = scene.units[run.endUnit - 1]!.token + 1;
    if (!speaksOfThisVehicle(scene, first, end)) continue;
    const written = writtenInPapers(scene, run);
    if (!written && onlyCompares(scene, run)) continue;
    const part = written ? "paint" : (coloredPart(scene, run, first, end) ?? madeOf(scene, run, first, materials));
    if (part === null) continue;
    const zone = scene.zoneAt(first);
    const component = componentOf(part);
    const inside = insideColor(scene, run, component);
    if (inside !== null)
      found.push({
        first,
        end,
        component: "seats",
        part: null,
        position: null,
        attribute: "color",
        value: inside,
        circumstance: null,
        rule: "color",
        named: null,
      });
    if (inside === run.value) continue;
    found.push({
      first,
      end,
      component,
      part: partName(scene, part, component, first),
      position:
        component === "paint"
          ? null
          : findPlace(scene, { first, end, part: part === "paint" || part === "seats" ? null : part, component, attribute: "color", zone }),
      attribute: "color",
      value: inside === null ? run.value : run.value.split(" and ")[0]!,
      circumstance: null,
      rule: written ? colorInPapers : "color",
      named: typeof part === "string" ? null : part,
    });
  }
  return found;
}

/** Words from what a part is made of to its color: "canvas, not vinyl, the mohair kind, black". */
const madeOfReach = 12;

/** "It's canvas, the good kind, black": a color set off by itself belongs to what the sentence just said to be made of something. */
function madeOf(scene: SpokenScene, run: ColorRun, first: number, materials: readonly Quality[]): ScenePart | null {
  const { units, frames } = scene;
  if (!units[run.firstUnit - 1]?.endsPhrase || !(units[run.endUnit - 1]!.endsPhrase || units[run.endUnit - 1]!.endsSentence)) return null;
  const last = materials.findLast((quality) => quality.attribute === "material" && quality.end <= first);
  if (!last || first - last.end > madeOfReach || frames.at(last.first).sentence !== frames.at(first).sentence) return null;
  if (!madeOfThem.has(last.component)) return null;
  const between = scene.parts[scene.partIndexFrom(first) - 1];
  if (between && between.first >= last.end) return null;
  return { first: last.first, end: last.end, component: last.component, part: last.part, position: null, plural: false };
}

const madeOfThem: ReadonlySet<ComponentName> = new Set(["top", "seats", "carpet", "headliner"]);

const likers: ReadonlySet<string> = new Set("i you we they folks people really do always".split(" "));

function onlyCompares(scene: SpokenScene, run: ColorRun): boolean {
  const { units } = scene;
  for (let at = run.firstUnit - 1; at >= Math.max(0, run.firstUnit - 4); at--) {
    const unit = units[at]!;
    if (unit.endsSentence) return false;
    if (unit.endsPhrase && at < run.firstUnit - 1) return false;
    // "it says colour blue": what the papers say is said.
    if (unit.word === "color") return false;
    // "I like them red wheels" likes them; "red like a fire truck" compares.
    if (unit.word === "like" && likers.has(units[at - 1]?.word ?? "")) return false;
    if (comparing.has(unit.word)) return true;
  }
  return false;
}

type Colored = ScenePart | "paint" | "seats";

function componentOf(part: Colored): ComponentName {
  if (typeof part === "string") return part;
  if (part.component === "body" && part.part === "roof skin") return "top";
  return paintable.includes(part.component) ? "paint" : part.component;
}

/** Paint out of sight is a part of its own: an engine bay may stay green on a red car. */
const hidden = { "engine-bay": "engine bay", underside: "underside", cargo: "trunk" } as const;

function partName(scene: SpokenScene, part: Colored, component: ComponentName, first: number): string | null {
  if (component === "top") return typeof part !== "string" && part.component === "top" ? part.part : "roof";
  if (component !== "paint") return typeof part === "string" ? null : part.part;
  const zone = scene.zoneAt(first);
  if (Object.hasOwn(hidden, zone)) return hidden[zone as keyof typeof hidden];
  return typeof part === "string" || part.component !== "body" || part.part === null ? null : part.part;
}

/** "That dark blue picks up the light": what the light does to a color, it does to the paint. */
const inTheLight =
  /^(?:really |just )?(?:picks up|catches|pops in|glows in|comes alive in|changes in|comes up in|looks \w+ in|shows up in) (?:the |this )?(?:light|sun|sunshine|sunlight|daylight)\b/;

/** "I like those red wheels against that maroon": what a part stands out against is the paint. */
function isBackdrop({ units }: SpokenScene, { firstUnit }: ColorRun): boolean {
  return (
    /^(?:the|that|this|all)$/.test(units[firstUnit - 1]?.word ?? "") &&
    units[firstUnit - 2]?.word === "against" &&
    !units[firstUnit - 2]!.endsPhrase
  );
}

/** "Steel wheels, all the same. And that cream color is on all four": a color pointed back to is of the part that the sentence before told of. */
function pointedBackTo(scene: SpokenScene, run: ColorRun, first: number): ScenePart | null {
  const { units, frames } = scene;
  const sentence = frames.at(first).sentence;
  if (
    !/^(?:that|this|same)$/.test(units[run.firstUnit - 1]?.word ?? "") ||
    !/^(?:color|shade|finish)$/.test(units[run.endUnit]?.word ?? "")
  )
    return null;
  const next = scene.partIndexFrom(first);
  if (scene.parts[next - 1] && frames.at(scene.parts[next - 1]!.first).sentence === sentence) return null;
  const before = scene.parts
    .slice(0, next)
    .filter((part) => frames.at(part.first).sentence >= sentence - 2 && frames.at(part.first).sentence < sentence);
  return before.findLast((part) => hasColor(part)) ?? null;
}

function coloredPart(scene: SpokenScene, run: ColorRun, first: number, end: number): Colored | null {
  if (isBackdrop(scene, run)) return "paint";
  const pointed = pointedBackTo(scene, run, first);
  if (pointed) return pointed;
  const then = scene.units.slice(run.endUnit, run.endUnit + 7).map(({ word }) => word);
  if (inTheLight.test(then.join(" ")) && /^(?:that|this|the)$/.test(scene.units[run.firstUnit - 1]?.word ?? "")) return "paint";
  const next = attributive(scene, run, end);
  // "the hood is black vinyl": the part that was named, before the seats that leather alone would mean.
  if (next !== "seats") return next ?? predicative(scene, run, first);
  return partBeforeVerb(scene, run) ?? next;
}

function partBeforeVerb(scene: SpokenScene, run: ColorRun): ScenePart | null {
  const joint = scene.units[run.firstUnit - 1];
  if (!joint || !isVerb(joint.word)) return null;
  const part = scene.parts[scene.partIndexFrom(joint.token + 1) - 1];
  return part && part.end >= joint.token && hasColor(part) ? part : null;
}

function attributive(scene: SpokenScene, run: ColorRun, end: number): Colored | null {
  const { units } = scene;
  if (units[run.endUnit - 1]!.endsPhrase) return null;
  // "carpets in black, dash is walnut", without the comma.
  const next = scene.parts[scene.partIndexFrom(end)];
  if (units[run.firstUnit - 1]?.word === "in" && next?.first === end && beginsStatement(scene, next)) return null;
  let at = run.endUnit;
  let material = false;
  while (at < units.length && at < run.endUnit + 4 && stuff.has(units[at]!.word)) {
    if (leatherWords.has(units[at]!.word)) material = true;
    const part = scene.parts[scene.partIndexFrom(units[at]!.token)];
    if (part?.first === units[at]!.token && hasColor(part)) return part;
    if (units[at]!.endsPhrase) return material ? "seats" : null;
    at++;
  }
  const token = units[at]?.token ?? end;
  const part = scene.parts[scene.partIndexFrom(token)];
  if (part && part.first === token && hasColor(part) && !units[at - 1]!.endsPhrase) return !dropsAfter(scene, run, at) ? part : null;
  if (material) return "seats";
  // "white with red trim": said of the whole, the trim is the inside.
  if (units[at]?.word === "trim" && at === run.endUnit && /^(?:opening|closing|cabin|documents)$/.test(scene.zoneAt(end - 1)))
    return "seats";
  return null;
}

function hasColor(part: ScenePart): boolean {
  // "this blue panel" may be any panel, or one of a screen.
  // Papers, keys and tools come with the vehicle and are not painted with it.
  if (part.component === "vehicle" && part.part !== null) return false;
  if (part.part === "plate bracket" || (part.component === "body" && part.part === null)) return false;
  if (part.component === "transmission") return part.part === "shift knob" || part.part === "shifter";
  return colorable.includes(part.component);
}

function beginsStatement(scene: SpokenScene, part: ScenePart): boolean {
  const { tokens } = scene.speech;
  return /'s$/.test(tokens[part.end - 1]!.word) || /^(?:is|are|was|were)$/.test(tokens[part.end]?.word ?? "");
}

function dropsAfter(scene: SpokenScene, run: ColorRun, at: number): boolean {
  const word = scene.units[at]?.word ?? "";
  return at === run.endUnit && notAColorBefore.has(word) && !/^(?:car|truck|van|wagon|coupe|sedan|convertible)$/.test(word);
}

function predicative(scene: SpokenScene, run: ColorRun, first: number): Colored | null {
  const { units, frames, speech } = scene;
  const next = units[run.endUnit];
  if (next && !units[run.endUnit - 1]!.endsPhrase && notAColorBefore.has(next.word)) return null;
  let at = run.firstUnit - 1;
  if (units[at]?.word === "the" && units[at - 1]?.word === "in" && isOrderedIn(scene, run, at - 1)) at--;
  while (at >= 0 && fillers.has(units[at]!.word) && !units[at]!.endsSentence && run.firstUnit - at < 6) at--;
  const joint = units[at];
  const clause = frames.at(first);
  const alone = clause.first === first;
  const said = joint && !joint.endsSentence && (copulas.has(joint.word) || (joint.endsPhrase && alone));
  // "water's pink": the color of something that is no part.
  if (joint && isVerb(joint.word) && !hasPartAsSubject(scene, at)) return null;
  // "The folder, which is pink": the part named just before, whatever it is.
  if (joint && isVerb(joint.word) && units[at - 1]?.word === "which") {
    const noun = scene.parts.find((part) => part.end === (units[at - 2]?.token ?? -1) + 1);
    return noun && hasColor(noun) ? noun : null;
  }
  // "in copper" is a color only where something was done in it.
  if (
    joint?.word === "in" &&
    !isNumberWord(units[at - 1]?.word ?? "") &&
    !/^(?:painted|done|finished|sprayed|car|it|one|redone|trimmed|up|interior|seats|carpet|wilton)$/.test(units[at - 1]?.word ?? "") &&
    !isOrderedIn(scene, run, at)
  )
    return null;
  const subject = subjectOf(scene, first, joint?.word === "painted" ? paintedReach : subjectReach);
  if (!said && !alone && !(subject && subject.end >= first - 2)) return null;
  if (subject) return subject;
  // "White with a black top": the first words of a sentence name the paint.
  const opens =
    speech.sentences[clause.sentence]?.first === first &&
    (run.value.includes(" and ") || /^(?:with|over|on|inside|outside|in|and)$/.test(next?.word ?? ""));
  if (opens && !subject) return "paint";
  if (alone && !said) return null;
  // "the taillights are a blue dot": said of a part that has no color of its own.
  const near = scene.parts[scene.partIndexFrom(first) - 1];
  if (near && near.first >= clause.first && !hasColor(near)) return null;
  if (scene.zoneAt(first) === "cabin") return "seats";
  return joint && /^(?:under|over)$/.test(joint.word) && clause.time !== "former" ? null : "paint";
}

/** The colorable part that the color is said of: nearest before it in the sentence, else the paint. */
const verb = /^(?:is|are|was|were|'s|'re)$/;
function isVerb(word: string): boolean {
  return verb.test(word);
}

/** "It's in the pearl white": the color it was ordered in, where no noun follows ("it's in the white envelope"). */
function isOrderedIn(scene: SpokenScene, run: ColorRun, joint: number): boolean {
  const { units } = scene;
  if (!/^(?:is|'s|comes|came)$/.test(units[joint - 1]?.word ?? "")) return false;
  const last = units[run.endUnit - 1]!;
  return last.endsPhrase || last.endsSentence || /^(?:and|with|over|which|it|but|so|on|this)$/.test(units[run.endUnit]?.word ?? "");
}

function subjectOf(scene: SpokenScene, first: number, reach: number): ScenePart | null {
  const { frames, speech } = scene;
  const sentence = speech.sentences[frames.at(first).sentence];
  const from = reach === paintedReach ? first - reach : Math.max(sentence?.first ?? 0, first - reach);
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = scene.parts[at]!;
    if (part.first < from) return null;
    if (hasColor(part) && frames.at(part.first).subject === "this-vehicle") return part;
  }
  return null;
}
