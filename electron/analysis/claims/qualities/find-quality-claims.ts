import type { Claim, ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/frame-speech.ts";
import { PhraseBook, type PhraseHit } from "../framing/phrases.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { conditionRules } from "./condition-rules.ts";
import { denialBefore, deniedAfter, deniesInPart } from "./denial.ts";
import { findColors } from "./find-colors.ts";
import { findPart, hasPartAsSubject } from "./find-part.ts";
import { findPlace } from "./find-place.ts";
import { materialRules } from "./material-rules.ts";
import { originalityRules } from "./originality-rules.ts";
import { presenceRules } from "./presence-rules.ts";
import { type FixedPart, isNamedPart, type QualityAttribute, type QualityRule } from "./quality-rule.ts";
import { lowerBound, type ScenePart, type SpokenScene, sceneOf, type ZoneSpan } from "./spoken-scene.ts";
import { bodyTypeRules } from "./type-rules-body.ts";
import { engineTypeRules } from "./type-rules-engine.ts";
import { runningGearTypeRules } from "./type-rules-running-gear.ts";
import { suspensionTypeRules } from "./type-rules-suspension.ts";

export interface QualityInput {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly mentions: readonly PartMention[];
  /** In order, without gap; seconds. */
  readonly zones: readonly ZoneSpan[];
}

/** A quality read from a stretch of words, before it is written as a claim. */
export interface Quality {
  readonly first: number;
  readonly end: number;
  readonly component: ComponentName;
  readonly part: string | null;
  readonly position: PositionName | null;
  readonly attribute: QualityAttribute;
  readonly value: string;
  readonly circumstance: string | null;
  readonly rule: string;
  /** The words that named the part, to be quoted with the quality; null where none did. */
  readonly named: { readonly first: number; readonly end: number } | null;
}

export const qualityRules: readonly QualityRule[] = [
  ...runningGearTypeRules,
  ...engineTypeRules,
  ...suspensionTypeRules,
  ...bodyTypeRules,
  ...materialRules,
  ...presenceRules,
  ...originalityRules,
  ...conditionRules,
];

interface RulePhrase {
  readonly rule: QualityRule;
  readonly cancels: boolean;
}

const book = new PhraseBook<RulePhrase>(
  qualityRules.flatMap((rule) => [
    ...rule.phrases.map((text) => ({ text, meaning: { rule, cancels: false } })),
    ...(rule.unless ?? []).map((text) => ({ text, meaning: { rule, cancels: true } })),
  ]),
  { commas: "part-names" },
);

/** Words of damage: a denial passes through a list of them ("no dings, no chips or scratches"). */
const damageWords: ReadonlySet<string> = new Set([
  ...conditionRules
    .filter((rule) => rule.value === "flawed")
    .flatMap((rule) => rule.phrases.flatMap((phrase) => phrase.split(" ").filter((word) => /^[a-z]+$/.test(word)))),
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
} as const satisfies Record<string, ComponentName>;

/** Every claim without a number that the speech makes: kinds, materials, colors, presence, originality, condition. Ids are "q1" and so on. */
export function findQualityClaims(input: QualityInput): Claim[] {
  const scene = sceneOf(input.speech, input.frames, input.mentions, input.zones);
  return [...withoutQualified(scene, findByRules(scene)), ...findColors(scene)]
    .toSorted((a, b) => a.first - b.first || a.end - b.end)
    .filter(unrepeated())
    .map((quality, index) => claimOf(scene, quality, `q${index + 1}`));
}

function findByRules(scene: SpokenScene): Quality[] {
  const hits = book.find(scene.units);
  const cancelled = cancelledUnits(hits);
  const found: Quality[] = [];
  const coveredTo = new Map<QualityRule, number>();
  const memory: Memory = { last: null, flaw: null };
  for (const hit of hits) {
    const { rule, cancels } = hit.phrase.meaning;
    if (cancels || isCancelled(cancelled.get(rule), hit)) continue;
    if ((coveredTo.get(rule) ?? -1) > hit.firstUnit) continue;
    const made = qualitiesOf(scene, rule, hit, memory);
    if (made.length > 0) coveredTo.set(rule, hit.endUnit);
    found.push(...made);
  }
  return found;
}

type Cancelled = ReadonlyMap<QualityRule, readonly (readonly [number, number])[]>;

function cancelledUnits(hits: readonly PhraseHit<RulePhrase>[]): Cancelled {
  const ranges = new Map<QualityRule, [number, number][]>();
  for (const { phrase, firstUnit, endUnit } of hits) {
    if (!phrase.meaning.cancels) continue;
    const list = ranges.get(phrase.meaning.rule) ?? [];
    list.push([firstUnit, endUnit]);
    ranges.set(phrase.meaning.rule, list);
  }
  return ranges;
}

/** Ranges are in order of their start and at most a phrase long: a binary search to the last one that may overlap. */
function isCancelled(ranges: readonly (readonly [number, number])[] | undefined, hit: PhraseHit<RulePhrase>): boolean {
  if (!ranges) return false;
  let low = 0;
  let high = ranges.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ranges[middle]![0] < hit.endUnit) low = middle + 1;
    else high = middle;
  }
  for (let at = low - 1; at >= Math.max(0, low - 6); at--) if (ranges[at]![1] > hit.firstUnit) return true;
  return false;
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
  const denied = denialBefore(scene.units, hit.firstUnit, {
    listed: rule.attribute === "condition" ? damageWords : noWords,
    punctuated: scene.speech.punctuated,
    presence: rule.attribute === "presence",
  });
  const answered = answeredNo(scene, hit.end);
  if (answered && rule.denial === "drops") return [];
  const deniedLater =
    rule.attribute === "presence" &&
    rule.denial === "turns" &&
    (answered || deniedAfter(scene.units, hit.endUnit) || everythingBut(scene, hit.first));
  const turned = denied >= 0 || deniedLater;
  if (turned && rule.denial === "drops") return [];
  if (denied >= 0 && rule.attribute === "condition" && deniesInPart(scene.units, denied, hit.firstUnit)) return [];
  const first = denied >= 0 ? scene.units[denied]!.token : hit.first;
  const value = turned ? (opposite[rule.value] ?? rule.value) : rule.value;
  const shared = { first, end: hit.end, attribute: rule.attribute, circumstance: rule.circumstance ?? null, rule: rule.name };
  if (!isNamedPart(rule.about)) {
    return rule.about.map((fixed) => {
      const part = mentionAt(scene, hit.first, hit.end, fixed.component);
      const spare =
        rule.name.startsWith("tire type") || rule.name.startsWith("wheel type") || rule.name === "wheels of steel"
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
  const part = findPart(scene, hit.first, hit.end, rule.about, {
    attribute: rule.attribute,
    circumstance: rule.circumstance ?? null,
    last: memory.last,
  });
  if (part) {
    if (rule.attribute === "condition" && turned && contradictsItself(memory, rule, scene, hit)) return [];
    if (rule.attribute === "condition" && !turned && rule.value === "flawed")
      memory.flaw = { rule, sentence: scene.frames.at(hit.first).sentence };
    if (part.first >= (memory.last?.first ?? 0)) memory.last = part;
    // "the factory stereo's gone"
    if (rule.name === "the maker's own, named after" && deniedAfter(scene.units, scene.unitOf(part.end - 1) + 1)) return [];
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
  const shell = looksOnlyHere(scene, hit.end) ? undefined : shellSeen(rule, zone);
  const otherwise: FixedPart | null = rule.about.otherwise ?? (shell ? { component: shell, part: null } : null);
  if (otherwise?.component === "wheel" && spareNear(scene, hit.first))
    return [{ ...shared, component: "spare", part: null, position: null, value, named: null }];
  if (!otherwise || (rule.attribute === "condition" && !rule.about.among.includes(otherwise.component))) return [];
  memory.last = { first: hit.first, end: hit.end, component: otherwise.component, part: otherwise.part, position: null, plural: false };
  return [
    {
      ...shared,
      component: otherwise.component,
      part: otherwise.part,
      position: findPlace(scene, { first, end: hit.end, part: null, component: otherwise.component, attribute: rule.attribute, zone }),
      value: turned ? value : (otherwise.value ?? value),
      named: null,
    },
  ];
}

/** "Backup camera? No, not on this one." */
function answeredNo(scene: SpokenScene, end: number): boolean {
  const { tokens } = scene.speech;
  return tokens[end - 1]!.after.includes("?") && /^(?:no|nope|nah|none|not|sadly|afraid|didn't|doesn't)$/.test(tokens[end]?.word ?? "");
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

/** "No leaks up here": said of what is in view, not of the whole. */
function looksOnlyHere(scene: SpokenScene, end: number): boolean {
  const { tokens } = scene.speech;
  for (let token = end; token < Math.min(tokens.length - 1, end + 4); token++) {
    if (/^(?:up|on)$/.test(tokens[token]!.word) && /^(?:here|top)$/.test(tokens[token + 1]!.word)) return true;
  }
  return false;
}

/** What damage is said of where no part is named: the shell in view, or for a leak the engine in its bay. */
function shellSeen(rule: QualityRule, zone: ZoneName): ComponentName | undefined {
  if (rule.attribute !== "condition" || rule.circumstance === undefined || rule.circumstance === "praise") return undefined;
  if (rule.circumstance === "leaks") return zone === "engine-bay" ? "engine" : undefined;
  return isNamedPart(rule.about) && rule.about.among.includes("body") ? shellOfZone[zone as keyof typeof shellOfZone] : undefined;
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

export function speaksOfThisVehicle(scene: SpokenScene, first: number, end: number): boolean {
  for (let token = first; token < end; token++) {
    const clause = scene.frames.at(token);
    if (clause.subject !== "this-vehicle" || clause.corrected) return false;
  }
  return true;
}

/** Words within which "no rips, well, one little burn" or "I tell a lie, there's a bit of rash" takes the praise back. */
const takenBackWithin = 45;

/** Leaves out praise that the same breath limits: the flaw is the claim. */
function withoutQualified(scene: SpokenScene, found: readonly Quality[]): Quality[] {
  const flaws = found.filter((quality) => quality.attribute === "condition" && quality.value === "flawed");
  const starts = flaws.map((flaw) => flaw.first);
  return found.filter((quality) => {
    if (quality.attribute !== "condition" || quality.value !== "good" || quality.circumstance === "praise") return true;
    for (let at = lowerBound(starts.length, quality.first, (index) => starts[index]!); at < flaws.length; at++) {
      const flaw = flaws[at]!;
      if (flaw.first - quality.first > takenBackWithin) return true;
      if (flaw.component === quality.component && limits(scene, quality, flaw)) return false;
    }
    return true;
  });
}

function limits(scene: SpokenScene, praise: Quality, flaw: Quality): boolean {
  const { tokens } = scene.speech;
  const sameSentence = scene.frames.at(praise.first).sentence === scene.frames.at(flaw.first).sentence;
  for (let token = praise.end; token < flaw.end; token++) {
    const { word } = tokens[token]!;
    if (sameSentence && /^(?:well|except|apart|but|bar|only|other|besides|just)$/.test(word)) return true;
    // "I tell a lie": the words of correction themselves are framed as taken back.
    if (token >= flaw.first - 8 && scene.frames.at(token).corrected) return true;
  }
  return false;
}

/** Keeps the first of several phrases that say one thing in one breath. */
function unrepeated(): (quality: Quality) => boolean {
  const last = new Map<string, number>();
  return (quality) => {
    const key = [quality.component, quality.part, quality.position, quality.attribute, quality.value, quality.circumstance].join("|");
    const before = last.get(key);
    if (before !== undefined && quality.first - before < 7) return false;
    last.set(key, quality.first);
    return true;
  };
}

/** Most words quoted with a quality. */
const longestQuote = 14;

function claimOf(scene: SpokenScene, quality: Quality, id: string): Claim {
  const { speech, frames } = scene;
  const clause = frames.at(quality.end - 1);
  let first = quality.first;
  let end = quality.end;
  const { named } = quality;
  if (named && Math.max(end, named.end) - Math.min(first, named.first) <= longestQuote) {
    first = Math.min(first, named.first);
    end = Math.max(end, named.end);
  }
  if (end - first < 4 && quality.attribute !== "condition") {
    // A bare word is quoted with what leads up to it.
    first = Math.max(clause.first, end - 6, 0);
    first = Math.min(first, quality.first);
  }
  const spans = spansOfTokens(speech.tokens, first, end);
  return {
    id,
    captions: spans.map((span) => span.caption),
    start: speech.tokens[first]!.at,
    end: speech.tokens[end]?.at ?? speech.duration,
    quote: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
    spans,
    component: quality.component,
    part: quality.part,
    position: quality.position,
    attribute: quality.attribute,
    value: quality.value,
    unit: null,
    stance: clause.stance,
    time: clause.time,
    circumstance: quality.circumstance,
    zone: scene.zoneAt(quality.first),
    rule: quality.rule,
    repairs: [],
  };
}
