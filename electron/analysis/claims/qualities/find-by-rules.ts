import type { ComponentName, ZoneName } from "../../../../shared-types/index.ts";
import type { PhraseHit } from "../framing/phrases.ts";
import { conditionRules } from "./condition-rules.ts";
import { denialBefore, deniedAfter, deniesInPart } from "./denial.ts";
import { findPart, hasPartAsSubject } from "./find-part.ts";
import { findPlace } from "./find-place.ts";
import { matchRules, type RulePhrase } from "./match-rules.ts";
import { hasOwnNoun } from "./own-noun.ts";
import { type Quality, speaksOfThisVehicle } from "./quality.ts";
import { type FixedPart, isNamedPart, type QualityAttribute, type QualityRule } from "./quality-rule.ts";
import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

/** Words of damage: a denial passes through a list of them ("no dings, no chips or scratches"). */
const damageWords: ReadonlySet<string> = new Set([
  ...conditionRules.filter((rule) => rule.value === "flawed").flatMap((rule) => rule.phrases.filter((phrase) => /^[a-z]+$/.test(phrase))),
  "or",
]);

const opposite: Readonly<Record<string, string>> = { present: "absent", original: "replaced", replaced: "original", flawed: "good" };

/** Zones in which damage without a named part belongs to the shell that is being looked at. */
const shellOfZone = {
  underside: "frame",
  "driver-side": "body",
  "passenger-side": "body",
  front: "body",
  rear: "body",
  cargo: "cargo-floor",
  cabin: "floors",
} as const satisfies Record<string, ComponentName>;

/** What cracks where no part is named and one looks through it. */
const windshield: FixedPart = { component: "glass", part: "windshield", position: "front" };
/** Where no exhaust is in view: what is stainless there is something else. */
const zonesWithoutExhaust: ReadonlySet<ZoneName> = new Set([
  "driver-side",
  "passenger-side",
  "front",
  "roof",
  "cabin",
  "cargo",
  "documents",
]);
const zonesOfTheWindshield: ReadonlySet<ZoneName> = new Set(["front", "cabin", "drive"]);

/** Every quality that the rule tables find, in order of place. */
export function findByRules(scene: SpokenScene): Quality[] {
  const found: Quality[] = [];
  const coveredTo = new Map<QualityRule, number>();
  const memory: Memory = { last: null, flaw: null };
  for (const hit of matchRules(scene.units)) {
    const { rule } = hit.phrase.meaning;
    if ((coveredTo.get(rule) ?? -1) > hit.firstUnit) continue;
    const made = qualitiesOf(scene, rule, hit, memory);
    if (made.length > 0) coveredTo.set(rule, hit.endUnit);
    found.push(...made);
  }
  return found.filter((quality) => !saysWhatIsSaidOfAPart(quality, found));
}

/** "Headliner's tight, there's one pin hole": the hole is the headliner's, and not one in what else is in view. */
function saysWhatIsSaidOfAPart(quality: Quality, found: readonly Quality[]): boolean {
  return (
    quality.attribute === "condition" &&
    quality.inView === true &&
    found.some(
      ({ named, attribute, first, end, rule }) =>
        attribute === "condition" && named !== null && rule !== quality.rule && first <= quality.first && end >= quality.end,
    )
  );
}

/** The part last spoken of with a quality: "and the back one is clean" goes on about it. */
interface Memory {
  last: ScenePart | null;
  /** The flaw last found: "a weep, not a leak" makes it milder and does not deny it. */
  flaw: { readonly rule: QualityRule; readonly sentence: number } | null;
}

function contradictsItself(memory: Memory, rule: QualityRule, scene: SpokenScene, hit: PhraseHit<RulePhrase>): boolean {
  return memory.flaw !== null && memory.flaw.rule === rule && memory.flaw.sentence === scene.frames.at(hit.first).sentence;
}

function qualitiesOf(scene: SpokenScene, rule: QualityRule, hit: PhraseHit<RulePhrase>, memory: Memory): Quality[] {
  const zone = scene.zoneAt(hit.first);
  if (rule.zones && !rule.zones.includes(zone)) return [];
  if (!speaksOfThisVehicle(scene, hit.first, hit.end)) return [];
  if (isVerb(scene, hit.firstUnit) && isNamedPart(rule.about) && !hasPartAsSubject(scene, hit.firstUnit)) return [];
  if (rule.attribute === "condition" && saidOfItsKind(scene, hit.firstUnit)) return [];
  const denial =
    hit.phrase.meaning.denied ??
    denialBefore(scene.units, hit.firstUnit, {
      listed: rule.attribute === "condition" ? damageWords : noWords,
      punctuated: scene.speech.punctuated,
      presence: rule.attribute === "presence",
    });
  // "power windows, no, crank windows, sorry": the "no" takes back what came before it.
  const denied =
    denial >= 0 && (scene.frames.at(scene.units[denial]!.token).corrected || beginsAnew(scene, denial, hit.firstUnit, hit.endUnit))
      ? -1
      : denial;
  const answered = answeredNo(scene, hit.end);
  if (answered && rule.denial === "drops") return [];
  const deniedTo = rule.attribute === "presence" && rule.denial === "turns" ? deniedAfter(scene.units, hit.endUnit) : -1;
  const deniedLater =
    rule.attribute === "presence" && rule.denial === "turns" && (answered || deniedTo >= 0 || everythingBut(scene, hit.first));
  const turned = denied >= 0 || deniedLater;
  if (turned && rule.denial === "drops") return [];
  if (denied >= 0 && rule.attribute === "condition" && deniesInPart(scene.units, denied, hit.firstUnit)) return [];
  const first = denied >= 0 ? Math.min(scene.units[denied]!.token, hit.first) : hit.first;
  const value = turned ? (opposite[rule.value] ?? rule.value) : rule.value;
  const end = deniedTo >= 0 ? scene.units[deniedTo - 1]!.token + 1 : hit.end;
  const shared = {
    first,
    end,
    attribute: rule.attribute,
    circumstance: rule.circumstance ?? null,
    rule: rule.name,
    inferred: rule.signs !== undefined,
    ofToday: rule.tellsOfToday === true || neverHadIt(scene, denied >= 0 ? denied : hit.firstUnit, end),
  };
  if (!isNamedPart(rule.about)) {
    const [only] = rule.about;
    // "six speed, manual, never been out of the truck": what the kind was said of.
    if (rule.attribute === "type" && rule.about.length === 1 && only)
      memory.last = { first: hit.first, end: hit.end, component: only.component, part: null, position: null, plural: false };
    return rule.about.map((fixed) => {
      const part = mentionAt(scene, hit.first, hit.end, fixed.component);
      const spare =
        rule.name.startsWith("tire type") ||
        rule.name.startsWith("wheel type") ||
        rule.name === "wheels of steel" ||
        (rule.signs && /^(?:tire|wheel)$/.test(fixed.component))
          ? spareNear(scene, hit.first)
          : null;
      const component = spare ? "spare" : fixed.component;
      return {
        ...shared,
        component,
        part: fixed.part,
        // Equipment is there or not, wherever it was spoken of.
        position:
          spare || rule.attribute === "presence"
            ? null
            : (fixed.position ??
              findPlace(scene, { first: hit.first, end: hit.end, part, component, partName: fixed.part, attribute: rule.attribute, zone })),
        value: turned ? value : (fixed.value ?? value),
        named: null,
      };
    });
  }
  const nearest = findPart(scene, hit.first, hit.end, rule.about, {
    attribute: rule.attribute,
    circumstance: rule.circumstance ?? null,
    value: rule.value,
    last: memory.last,
  });
  if (nearest && hasOtherSubject(scene, hit.firstUnit, nearest)) return [];
  const named = nearest && isOfAllInView(scene, rule, hit, nearest, turned) ? null : nearest;
  const part = named && narrowed(scene, named, rule);
  if (part) {
    if (rule.attribute === "condition" && turned && contradictsItself(memory, rule, scene, hit)) return [];
    if (rule.attribute === "condition" && !turned && rule.value === "flawed")
      memory.flaw = { rule, sentence: scene.frames.at(hit.first).sentence };
    if (part.first >= (memory.last?.first ?? 0)) memory.last = part;
    // "the factory stereo's gone"
    if (rule.name === "the maker's own, named after" && deniedAfter(scene.units, scene.unitOf(part.end - 1) + 1) >= 0) return [];
    const spare = part.component === "wheel" || part.component === "tire" ? spareNear(scene, hit.first) : null;
    const target = onPaint(rule, spare ? { ...part, component: "spare", part: null } : asWhole(part, rule.attribute));
    return [
      {
        ...shared,
        component: target.component,
        part: target.part,
        position: spare
          ? null
          : findPlace(scene, { first, end: hit.end, part, component: part.component, attribute: rule.attribute, zone }),
        value: rule.valueOn?.[part.component] ?? value,
        named: part,
      },
    ];
  }
  const shell = looksOnlyHere(scene, hit.end) ? undefined : shellSeen(rule, saysUnderneath(scene, hit.end) ? "underside" : zone);
  const pane = rule.circumstance === "cracks" && !rule.about.otherwise && zonesOfTheWindshield.has(zone) ? windshield : null;
  const otherwise: FixedPart | null = rule.about.otherwise ?? pane ?? (shell ? { component: shell, part: null } : null);
  if (otherwise?.component === "wheel" && spareNear(scene, hit.first))
    return [{ ...shared, component: "spare", part: null, position: null, value, named: null }];
  if (!otherwise || (rule.attribute === "condition" && !rule.about.among.includes(otherwise.component))) return [];
  if (otherwise.component === "exhaust" && zonesWithoutExhaust.has(zone)) return [];
  const { among, otherwise: told } = rule.about;
  if (hasOwnNoun(scene, hit.firstUnit, hit.endUnit, ({ component }) => told !== undefined || among.includes(component))) return [];
  memory.last = { first: hit.first, end: hit.end, component: otherwise.component, part: otherwise.part, position: null, plural: false };
  return [
    {
      ...shared,
      component: otherwise.component,
      part: otherwise.part,
      position:
        otherwise.position ??
        findPlace(scene, { first, end: hit.end, part: null, component: otherwise.component, attribute: rule.attribute, zone }),
      value: turned ? value : (otherwise.value ?? value),
      inView: true,
      named: null,
    },
  ];
}

/** "The other four ain't, jack's in there": without punctuation, what is and where it is begins a clause of its own. */
function beginsAnew({ units, speech }: SpokenScene, denial: number, firstUnit: number, endUnit: number): boolean {
  return (
    !speech.punctuated &&
    denial === firstUnit - 1 &&
    units[denial]!.word === "n't" &&
    /^(?:'s|is|'re|are)$/.test(units[endUnit]?.word ?? "") &&
    /^(?:in|there|here|right|back|under|up|all|still|on)$/.test(units[endUnit + 1]?.word ?? "")
  );
}

/** Words from what was never there to "from new". */
const neverReach = 4;

/** "It never had air con from new": what was never there is not there today. */
function neverHadIt(scene: SpokenScene, denial: number, end: number): boolean {
  const { tokens } = scene.speech;
  return (
    scene.units[denial]?.word === "never" &&
    /\bfrom new\b/.test(
      tokens
        .slice(end, end + neverReach)
        .map(({ word }) => word)
        .join(" "),
    )
  );
}

/** "Backup camera? No, not on this one." */
function answeredNo(scene: SpokenScene, end: number): boolean {
  const { tokens } = scene.speech;
  return tokens[end - 1]!.after.includes("?") && /^(?:no|nope|nah|none|not|sadly|afraid|didn't|doesn't)$/.test(tokens[end]?.word ?? "");
}

/** Words back from a fault to what says that its make has it: "these are known for knocking in the front end". */
const kindReach = 5;

/** Whether a fault is what such vehicles are known for, and is not found on this one. */
function saidOfItsKind(scene: SpokenScene, firstUnit: number): boolean {
  for (let at = firstUnit - 1; at >= Math.max(1, firstUnit - kindReach) && !scene.units[at]!.endsSentence; at--)
    if (scene.units[at]!.word === "for" && /^(?:known|famous|notorious|infamous|renowned)$/.test(scene.units[at - 1]!.word)) return true;
  return false;
}

/** "everything but the sunroof" */
function everythingBut(scene: SpokenScene, first: number): boolean {
  const before = scene.speech.tokens.slice(Math.max(0, first - 5), first).map((token) => token.word);
  return /\b(?:everything|all|every option|loaded) (?:but|except|bar|minus|apart from|except for)(?: the| a| an)?$/.test(before.join(" "));
}

const verbs: ReadonlySet<string> = new Set(["is", "are", "was", "were", "'s", "'re"]);

function isVerb(scene: SpokenScene, unit: number): boolean {
  return verbs.has(scene.units[unit]!.word);
}

/** Verbs of doing well whose own noun right before them is what does it. */
const doesWell = /^(?:works?|shuts?|closes?|opens?|slides?|latches|latch)$/;
const determines = /^(?:the|my|your|our|his|her|its|this|that)$/;
/** Not nouns, or nouns for everything that was told. */
const noSubject = /^(?:one|ones|lot|whole|rest|thing|things|stuff|both|even|here|there|too)$/;
/** Between a noun and its verb. */
const stressing = /^(?:still|just|only|also|really|actually|always|all)$/;

/** "The odometer reads 312,000. The winch works": a noun of its own, though no part is known by it, keeps the words from the part before. */
function hasOtherSubject(scene: SpokenScene, firstUnit: number, { first, end }: ScenePart): boolean {
  let at = firstUnit - 1;
  while (stressing.test(scene.units[at]?.word ?? "")) at--;
  const noun = scene.units[at];
  const determiner = scene.units[at - 1];
  let verb = firstUnit;
  while (stressing.test(scene.units[verb]?.word ?? "")) verb++;
  if (!noun || !determiner || noun.endsPhrase || !doesWell.test(scene.units[verb]?.word ?? "")) return false;
  if (!determines.test(determiner.word) || noSubject.test(noun.word)) return false;
  return first < determiner.token && end <= determiner.token;
}

/** "No leaks up here": said of what is in view, not of the whole. */
function looksOnlyHere(scene: SpokenScene, end: number): boolean {
  const { tokens } = scene.speech;
  for (let token = end; token < Math.min(tokens.length - 1, end + 4); token++) {
    if (/^(?:up|on)$/.test(tokens[token]!.word) && /^(?:here|top)$/.test(tokens[token + 1]!.word)) return true;
  }
  return false;
}

/**
 * "Mirrors fold in. And there's no ding over this side", "coolant's full, no leaks that I can find": all that is in view is cleared, and not
 * the part that the sentence before spoke of.
 */
function isOfAllInView(scene: SpokenScene, rule: QualityRule, hit: PhraseHit<RulePhrase>, part: ScenePart, denied: boolean): boolean {
  if (!denied || rule.attribute !== "condition" || part.end > hit.first || part.first >= scene.frames.at(hit.first).first) return false;
  const after = scene.speech.tokens
    .slice(hit.end, hit.end + 4)
    .map(({ word }) => word)
    .join(" ");
  switch (rule.circumstance) {
    case "leaks":
      return scene.zoneAt(hit.first) === "engine-bay" && /^(?:that i can (?:find|see)|(?:that )?we can find|anywhere)\b/.test(after);
    case "dents":
    case "marks":
      return /^(?:over|down|along|up) (?:this|that) (?:whole |entire )?side\b(?! of)/.test(after);
    default:
      return false;
  }
}

/** "There's rust underneath", wherever it is said. */
function saysUnderneath(scene: SpokenScene, end: number): boolean {
  const { tokens } = scene.speech;
  for (let token = end; token < Math.min(tokens.length, end + 4); token++) {
    if (tokens[token - 1]!.after !== "") return false;
    if (/^(?:underneath|underside|undercarriage|underbody)$/.test(tokens[token]!.word)) return true;
    if (tokens[token]!.word === "bottom" && /^(?:of|side)$/.test(tokens[token + 1]?.word ?? "")) return true;
  }
  return false;
}

/** What damage is said of where no part is named: the shell in view, or for a leak the engine in its bay. */
function shellSeen(rule: QualityRule, zone: ZoneName): ComponentName | undefined {
  if (rule.attribute !== "condition" || rule.circumstance === undefined || rule.circumstance === "praise") return undefined;
  // Inside, only rust and holes are the floor's: a crease is a seat's.
  if (zone === "cabin" && rule.circumstance !== "rust" && rule.circumstance !== "hole") return undefined;
  if (rule.circumstance === "leaks" || rule.circumstance === "noise")
    return zone === "engine-bay" || (zone === "underside" && rule.circumstance === "leaks") ? "engine" : undefined;
  return isNamedPart(rule.about) && rule.about.among.includes("body") ? shellOfZone[zone as keyof typeof shellOfZone] : undefined;
}

/** Words back to the pane or panel that "the glass", "the paint" says again. */
const narrowerReach = 6;

/** "Windscreen, it's the original glass": the pane that was named just before. */
function narrowed(scene: SpokenScene, part: ScenePart, rule: QualityRule): ScenePart {
  const before = scene.parts[scene.partIndexFrom(part.first) - 1];
  // "One tail light has a crack across the lens": a lens is its lamp's.
  if (part.component === "lights" && part.part === "lens" && before?.component === "lights" && part.first - before.end <= narrowerReach * 2)
    return { ...part, part: before.part, position: before.position };
  if (part.component !== "glass" || part.part !== null) return part;
  // Inside and from the front, a crack "in the glass" is one in the glass that one looks through.
  if (rule.circumstance === "cracks" && zonesOfTheWindshield.has(scene.zoneAt(part.first)))
    return { ...part, part: "windshield", position: "front" };
  const near = before && before.component === "glass" && before.part !== null && part.first - before.end <= narrowerReach;
  return near && scene.frames.at(before.first).sentence === scene.frames.at(part.first).sentence ? before : part;
}

const noWords: ReadonlySet<string> = new Set(["or"]);

/** A bench is made of what the seats are made of. */
function asWhole(part: ScenePart, attribute: QualityAttribute): ScenePart {
  return part.component === "seats" && part.part === "bench" && attribute !== "condition" ? { ...part, part: null } : part;
}

/** Paint work on a panel is about that panel's paint, not about the panel. */
function onPaint(rule: QualityRule, part: ScenePart): { readonly component: ComponentName; readonly part: string | null } {
  if (!/paint/.test(rule.name) || rule.attribute !== "originality") return part;
  if (part.component === "vehicle") return { component: "paint", part: null };
  return part.component === "body" ? { component: "paint", part: part.part } : part;
}

function mentionAt(scene: SpokenScene, first: number, end: number, component: ComponentName): ScenePart | null {
  for (let at = scene.partIndexFrom(Math.max(0, first - 3)); at < scene.parts.length && scene.parts[at]!.first < end; at++) {
    const part = scene.parts[at]!;
    if (part.end > first && part.component === component) return part;
  }
  return null;
}

/** Words about a tire belong to the spare where the spare was named last, in the sentence or just before it. */
function spareNear(scene: SpokenScene, first: number): ScenePart | null {
  for (let at = scene.partIndexFrom(first) - 1; at >= 0; at--) {
    const part = scene.parts[at]!;
    if (first - part.first > 16) return null;
    if (part.component === "spare") return part;
    if (part.component === "tire" && part.first < first - 1) return null;
  }
  return null;
}
