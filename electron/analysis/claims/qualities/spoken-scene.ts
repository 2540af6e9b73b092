import type { ComponentName, PositionName, ZoneName } from "../../../../shared-types/index.ts";
import type { Speech } from "../../model.ts";
import type { Frames } from "../framing/frame-speech.ts";
import { isNumberWord } from "../framing/phrase-elements.ts";
import { PhraseBook } from "../framing/phrases.ts";
import { type SpokenUnit, spokenUnits } from "../framing/spoken-units.ts";
import type { PartMention } from "../lexicon/find-mentions.ts";
import { soundsBritish, type WheelSide, wheelSideOf } from "../positions/wheel-side.ts";
import { type ExtraPart, extraParts } from "./extra-parts.ts";

/** A part as the quality rules see it: the lexicon's mention, or a finer one, settled by where the camera is. */
export interface ScenePart extends PartMention {
  /** "wheels", "tires": all of them unless a place is named. */
  readonly plural: boolean;
}

/** A stretch of time with the place the camera is at; seconds. */
export interface ZoneSpan {
  readonly zone: ZoneName;
  readonly start: number;
  readonly end: number;
}

/** Everything the quality rules look at, each prepared once. */
export interface SpokenScene {
  readonly speech: Speech;
  readonly frames: Frames;
  readonly units: readonly SpokenUnit[];
  readonly parts: readonly ScenePart[];
  /** The hand the driver sits on. */
  readonly wheelSide: WheelSide;
  /** The hand that is nearest the kerb: left where traffic keeps left. */
  readonly kerbSide: WheelSide;
  zoneAt(token: number): ZoneName;
  /** First unit of a token. */
  unitOf(token: number): number;
  /** Index of the first part that begins at or after a token. */
  partIndexFrom(token: number): number;
}

const extraBook = new PhraseBook<ExtraPart>(
  (extraParts as readonly ExtraPart[]).flatMap((row) => row.phrases.map((text) => ({ text, meaning: row }))),
);

const notAPlace = new Set(["ding"]);

/** First index at which `of(index)` is at least `value`, over `count` ascending items. */
export function lowerBound(count: number, value: number, of: (index: number) => number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (of(middle) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

function settled(part: ScenePart, zone: ZoneName): ScenePart {
  // Outside, the screen is the windscreen.
  if (part.component === "audio" && part.part === "screen" && /^(?:front|driver-side|passenger-side|roof)$/.test(zone))
    return { ...part, component: "glass", part: "windshield", position: "front" };
  // Up on the roof, the rails carry luggage.
  if (part.component === "frame" && zone === "roof") return { ...part, component: "trim", part: "roof rack", position: null };
  // One wheel in the cabin is the steering wheel.
  if (part.component === "wheel" && part.part === null && zone === "cabin" && !part.plural)
    return { ...part, component: "steering", part: "steering wheel", position: null };
  if (part.component === "floors" && zone === "cargo") return { ...part, component: "cargo-floor", position: null };
  if (part.component === "carpet" && zone === "cargo") return { ...part, part: part.part === "mats" ? "trunk mat" : "trunk carpet" };
  if (part.component === "body" && part.part === "fender") return { ...part, part: "front fender", position: "front" };
  // Parts of a kind are the whole as far as anyone asks: a rail is the frame, the music is the radio, the lid is the top.
  if (
    (part.component === "frame" && part.part === "rail") ||
    (part.component === "audio" && part.part === "radio") ||
    (part.component === "top" && part.part === "lid") ||
    (part.component === "seats" && part.part === "cover") ||
    (part.component === "transmission" && part.part === "auto box") ||
    (part.component === "trim" && part.part === "trim")
  )
    return { ...part, part: null };
  // Under the hood it is the one that starts it; the one that drives it is out of reach.
  if (part.component === "electrical" && part.part === "battery" && zone === "engine-bay") return { ...part, part: "starter battery" };
  // A front door is a door that says where it is.
  if (part.component === "body" && (part.part === "front door" || part.part === "rear door")) return { ...part, part: "door" };
  // The window of a soft top is at its back.
  if (part.component === "glass" && part.part === "side window" && zone === "roof")
    return { ...part, part: "rear glass", position: "rear" };
  if (part.component === "body" && part.part === "rear fender") return { ...part, part: "quarter panel", position: "rear" };
  return part;
}

export function sceneOf(speech: Speech, frames: Frames, mentions: readonly PartMention[], zones: readonly ZoneSpan[]): SpokenScene {
  const units = spokenUnits(speech);
  const firstUnit = new Int32Array(speech.tokens.length + 1).fill(units.length);
  for (let at = units.length - 1; at >= 0; at--) firstUnit[units[at]!.token] = at;
  const zoneAt = (token: number): ZoneName => {
    const at = speech.tokens[token]?.at ?? 0;
    const index = lowerBound(zones.length, at + 1e-6, (place) => zones[place]!.start);
    return zones[Math.max(0, index - 1)]?.zone ?? "opening";
  };
  const parts = chosenParts(speech, units, mentions, zoneAt);
  const scene: SpokenScene = {
    speech,
    frames,
    units,
    parts: withPans(speech, parts, zoneAt),
    wheelSide: wheelSideOf(speech),
    kerbSide: soundsBritish(speech) ? "left" : "right",
    zoneAt,
    unitOf: (token) => firstUnit[token] ?? units.length,
    partIndexFrom: (token) => lowerBound(scene.parts.length, token, (place) => scene.parts[place]!.first),
  };
  return scene;
}

/** Of overlapping names the longest stands, and of two as long the finer one. */
function chosenParts(
  speech: Speech,
  units: readonly SpokenUnit[],
  mentions: readonly PartMention[],
  zoneAt: (token: number) => ZoneName,
): ScenePart[] {
  const extras = extraBook
    .find(units)
    .filter(({ phrase, first }) => !phrase.meaning.zones || phrase.meaning.zones.includes(zoneAt(first)))
    .map(({ first, end, phrase }) => ({
      first,
      end,
      component: phrase.meaning.component,
      part: phrase.meaning.part,
      position: phrase.meaning.position ?? null,
    }));
  // Where the lid over the engine is a bonnet, the hood is the soft top.
  const hoodIsTop = speech.tokens.some((token) => token.word === "bonnet");
  const lexical = mentions
    .filter((mention) => mention.part === null || !notAPlace.has(mention.part))
    // "made in alloy": a material, where "the alloys" are wheels.
    .filter(
      (mention) =>
        mention.end - mention.first > 1 ||
        speech.tokens[mention.first]!.word !== "alloy" ||
        /^(?:the|this|that|front|rear|back|each|other)$/.test(speech.tokens[mention.first - 1]?.word ?? ""),
    )
    // A crank in the cabin winds a window or a roof.
    .filter((mention) => !(mention.part === "crank" && /^(?:cabin|roof|drive)$/.test(zoneAt(mention.first))))
    .filter(
      (mention) =>
        !(
          mention.component === "vehicle" &&
          /^(?:sale|agent|auction|wash|show|park|port|keys?)$/.test(speech.tokens[mention.end]?.word ?? "")
        ),
    )
    // "shuts like a bank vault door", "solid as a truck": said for the likeness.
    .filter((mention) => !isLikeness(speech, mention.first))
    // No exhaust manifold is of aluminum or carries a carburetor: that manifold is the intake's.
    .map((mention) =>
      mention.part === "header" && /^manifold/.test(speech.tokens[mention.end - 1]!.word) && saysIntake(speech, mention)
        ? { ...mention, component: "engine" as const, part: "intake" }
        : mention,
    )
    // "nineteen gauge steel": a thickness of sheet.
    .filter(
      (mention) =>
        !(
          mention.part === "gauge" &&
          isNumberWord(speech.tokens[mention.first - 1]?.word ?? "") &&
          /^(?:steel|american|sheet|metal|mild|tin|cold|wire|cable)$/.test(speech.tokens[mention.end]?.word ?? "")
        ),
    )
    // "a frame off car": a manner of restoring.
    .filter(
      (mention) =>
        !(
          mention.component === "frame" &&
          /^(?:off|on)$/.test(speech.tokens[mention.end]?.word ?? "") &&
          /^frame$/.test(speech.tokens[mention.end - 1]!.word)
        ),
    )
    .map((mention) =>
      (hoodIsTop || zoneAt(mention.first) === "roof") &&
      mention.part === "hood" &&
      /^hoods?(?:'s)?$/.test(speech.tokens[mention.first]!.word)
        ? { ...mention, component: "top" as const, part: null, position: null }
        : mention,
    );
  const drivesOnBattery = mentions.some(
    ({ component, part }) => component === "electrical" && /^(?:traction battery|charge port|charger)$/.test(part ?? ""),
  );
  // Where nothing drives on a battery, every battery is the one that starts it.
  const whichBattery = <Mention extends { first: number; end: number; component: ComponentName; part: string | null }>(
    mention: Mention,
  ): Mention => {
    if (mention.component !== "electrical" || mention.part !== "battery") return mention;
    const words = speech.tokens.slice(Math.max(0, mention.first - 2), mention.end + 5).map(({ word }) => word);
    const small = /\b(?:twelve volt|12 volt|12v|little battery|small battery|starter|ordinary)\b/.test(words.join(" "));
    return small || !(drivesOnBattery || saysElectric(speech)) ? { ...mention, part: "starter battery" } : mention;
  };
  const taken = new Uint8Array(speech.tokens.length);
  const parts: ScenePart[] = [];
  for (const mention of [...extras, ...lexical].toSorted((a, b) => b.end - b.first - (a.end - a.first))) {
    let free = true;
    for (let token = mention.first; token < mention.end; token++) if (taken[token]) free = false;
    if (!free) continue;
    const last = speech.tokens[mention.end - 1]!.word;
    parts.push(settled({ ...whichBattery(mention), plural: /[^s']s$/.test(last) && !/'s$/.test(last) }, zoneAt(mention.first)));
    taken.fill(1, mention.first, mention.end);
  }
  return parts.sort((a, b) => a.first - b.first);
}

/** Words that are said of a vehicle that drives on a battery, wholly or in part. */
function saysElectric(speech: Speech): boolean {
  return speech.tokens.some(
    ({ word }, index) =>
      /^(?:kwh|kilowatt|hybrid|ev|evs|phev|bev)$/.test(word) ||
      (word === "electric" && /^(?:car|van|truck|vehicle|motor|range|drive)$/.test(speech.tokens[index + 1]?.word ?? "")),
  );
}

/** Words about a manifold that only an intake takes. */
const intakeReach = 12;

function saysIntake(speech: Speech, { first, end }: PartMention): boolean {
  if (end - first > 1) return false;
  const near = speech.tokens.slice(Math.max(0, first - intakeReach), end + intakeReach).map((token) => token.word);
  return (
    near.some((word) => /^(?:aluminum|aluminium|carb|carbs|carburetor|carburettor|carburetors|plenum|barrel)$/.test(word)) &&
    !near.some((word) => /^(?:exhaust|exhausts|headers?|cast|iron|downpipe)$/.test(word))
  );
}

/** Words of likeness before a part's name: "like a", "as a", "like it's on". */
function isLikeness(speech: Speech, first: number): boolean {
  const words = speech.tokens.slice(Math.max(0, first - 4), first).map((token) => token.word);
  return (
    /(?:^|(?<!looks |look |seems |feels |something )\b)(?:like|as) (?:an?(?: \w+)?|it's on|its on|they're on)$/.test(words.join(" ")) &&
    !/\b(?:as|like) a (?:new|replacement)$/.test(words.join(" "))
  );
}

/** "The pan" is the trunk's, the transmission's or the engine's: whichever was spoken of. */
function withPans(speech: Speech, parts: readonly ScenePart[], zoneAt: (token: number) => ZoneName): ScenePart[] {
  const found: ScenePart[] = [];
  let next = 0;
  for (const token of speech.tokens) {
    while (next < parts.length && parts[next]!.first <= token.index) found.push(parts[next++]!);
    if (!/^pans?(?:'s)?$/.test(token.word)) continue;
    if ((found.at(-1)?.end ?? 0) > token.index) continue;
    const last = found.findLast((part) => part.component !== "vehicle");
    const zone = zoneAt(token.index);
    const near = last && token.index - last.first < 30 ? last.component : null;
    const [component, part]: [ComponentName, string | null] =
      zone === "cargo" || zone === "rear" || near === "cargo-floor"
        ? ["cargo-floor", null]
        : near === "transmission"
          ? ["transmission", "pan"]
          : // One pan below is the engine's; several are the floors'.
            near === "floors" || zone === "cabin" || /^pans/.test(token.word)
            ? ["floors", null]
            : ["engine", "oil pan"];
    const position: PositionName | null = null;
    found.push({ first: token.index, end: token.index + 1, component, part, position, plural: false });
  }
  while (next < parts.length) found.push(parts[next++]!);
  return found.sort((a, b) => a.first - b.first);
}
