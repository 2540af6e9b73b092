import type { ComponentName } from "../../../../../shared-types/index.ts";
import type { Speech } from "../../../model.ts";
import type { PartMention } from "../../lexicon/find-mentions.ts";
import { type NumberSurroundings, phraseOf } from "../surroundings.ts";
import type { CountedThing } from "./counted-thing.ts";

/** Marks, holes and mends that are counted wherever they are; the part they are in is named beside them. */
export const marks = [
  {
    say: ["patch", "plate", "weld", "weld repair", "repair patch"],
    component: "body",
    part: "patch",
    most: 30,
    one: true,
    zones: ["underside", "engine-bay", "cargo", "driver-side", "passenger-side", "cabin"],
    unless: /\bnumber plates?\b|\blicen[sc]e plates?\b|\bpatch up\b|\bskid plates?\b|\bkick plates?\b|\bspring plates?\b|\bplate reg/,
    example: { heard: "there's two patches in the floor", value: 2, zone: "underside" },
  },
  {
    say: [
      "burn",
      "burn hole",
      "cigarette burn",
      "burn mark",
      "tear",
      "rip",
      "split",
      "stain",
      "pin hole",
      "pinhole",
      "water mark",
      "worn patch",
      "bald patch",
      "hole",
    ],
    component: "seats",
    part: "mark",
    most: 20,
    one: true,
    zones: ["cabin", "roof", "cargo", "underside"],
    example: { heard: "there's two cigarette burns in the carpet", value: 2, zone: "cabin" },
  },
  {
    say: [
      "chip",
      "crack",
      "scuff",
      "scratch",
      "mark",
      "blister",
      "bubble",
      "run",
      "gouge",
      "nick",
      "dent",
      "ding",
      "hole",
      "rust spot",
      "stone chip",
      "spot of rust",
      "tear",
    ],
    component: "body",
    part: "mark",
    most: 40,
    one: true,
    zones: ["front", "driver-side", "passenger-side", "rear", "roof", "cabin", "cargo", "underside"],
    example: { heard: "two chips in the windshield", value: 2, zone: "front" },
  },
] as const satisfies readonly CountedThing[];

/** Parts a mark may be in that are no panel of the body. */
const marked: ReadonlySet<ComponentName> = new Set([
  "glass",
  "bumper",
  "paint",
  "seats",
  "carpet",
  "dash",
  "headliner",
  "top",
  "frame",
  "floors",
  "trim",
  "wheel",
  "lights",
  "cargo-floor",
  "tire",
  "steering",
  "body",
]);

const leadsToPlace =
  /^(?:(?!and\b|but\b|the\b|touched\b|filled\b)\w+ ){0,3}(?:in|on|through|along|across|down|to|under|inside|of) (?:the |this |that |each |your |his |its |it's )?(?:\w+ ){0,2}$/;
const has = /^(?:'s|has|have|had|got|has got|have got|'s got|with)$|'s$/;
const hasMarks = /^(?:'s|has|have|had|got|with|there's|is|is quite|are)?(?: (?!and\b|but\b|no\b|not\b)[a-z']+){0,4}$/;

/** The part a mark is in: named right after it ("two chips in the windshield"), or just before ("the boot floor is clean, one scratch"). */
export function homeOfMark(
  speech: Speech,
  around: NumberSurroundings,
  range: { readonly first: number; readonly end: number },
): PartMention | null {
  const named = around.topics.filter(
    ({ mention }) => marked.has(mention.component) && (mention.first < range.first || mention.first >= range.end),
  );
  const before = named
    .filter(({ mention, reach }) => mention.end <= around.number.first && reach !== "recent")
    .map(({ mention }) => mention)
    .toSorted((a, b) => b.end - a.end)[0];
  const link = before && before.end <= around.number.first ? phraseOf(speech.tokens, before.end, around.number.first) : "";
  // "The bonnet's got three chips touched in": whose they are was said before.
  if (before && has.test(link || (speech.tokens[before.end - 1]?.word ?? ""))) return before;
  const after = named
    .map(({ mention }) => mention)
    .filter(
      ({ first }) => first >= range.end && first - range.end <= 7 && leadsToPlace.test(`${phraseOf(speech.tokens, range.end, first)} `),
    )
    .toSorted((a, b) => a.first - b.first)[0];
  if (after) return after;
  // "… the left hand rail … there's a couple of holes in it": what was named last.
  if (
    before &&
    around.number.first - before.end <= 22 &&
    /^(?:in|on|through) (?:it|them)\b/.test(phraseOf(speech.tokens, range.end, range.end + 2))
  )
    return before;
  return before && around.number.first - before.end <= 6 && hasMarks.test(phraseOf(speech.tokens, before.end, around.number.first))
    ? before
    : null;
}
