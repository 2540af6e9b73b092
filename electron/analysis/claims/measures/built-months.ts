import type { Claim } from "../../../../shared-types/index.ts";
import { spansOfTokens } from "../../model.ts";
import type { Frames } from "../framing/index.ts";
import { phraseOf, type SpeechMap, zoneAt } from "./surroundings.ts";

const months = "january|february|march|april|may|june|july|august|september|october|november|december".split("|");

/** "It was built in the June", "built the previous October", "built in March of that year": a month whose year was said before. */
const builtIn =
  /\b(?:built|made|manufactured|assembled|put together|finished|came off the line|rolled off the line|left the (?:factory|works|line))(?: it)?(?: in| back in| over in)?(?: the| that)?(?: (previous|following|same))?$/;
/** The year before is meant where the words say so. */
const yearBefore = /^(?:of the year before|the year before|before|previous|of the previous year)\b/;

/** Seconds back to the date that names the year. */
const reachesBackSeconds = 60;
const wordsBefore = 8;
const wordsAfter = 5;

const numberOf = (date: Claim["value"]): { year: number; month: number | null } | null => {
  const parts = /^(\d{4})(?:-(\d{2}))?/.exec(String(date));
  return parts ? { year: Number(parts[1]), month: parts[2] === undefined ? null : Number(parts[2]) } : null;
};

/** A date that a vehicle's building is told beside: its registration, its title, its model year. */
function namesYear({ component, attribute, part, rule }: Claim): boolean {
  if (component === "title") return attribute === "year" || part === "registered";
  return component === "vehicle" && (attribute === "year" || rule === "date the vehicle was built");
}

/**
 * Months in which the vehicle was built, their year taken from the registration or the title told before: a vehicle is built before it is
 * registered, so a later month is the year before's. Ids are "b1" and so on; grows with the speech.
 */
export function findBuiltMonths(map: SpeechMap, frames: Frames, measured: readonly Claim[]): Claim[] {
  const { tokens, captions } = map.speech;
  const found: Claim[] = [];
  tokens.forEach(({ word, at: seconds }, at) => {
    const month = months.indexOf(word) + 1;
    if (month === 0) return;
    const built = builtIn.exec(phraseOf(tokens, at - wordsBefore, at));
    const after = phraseOf(tokens, at + 1, at + 1 + wordsAfter);
    // A month with its own year is read as a date.
    if (!built || /^(?:of |in )?(?:'?\d|nineteen|twenty|two thousand|the year \d)/.test(after)) return;
    const frame = frames.at(at);
    if (frame.subject !== "this-vehicle" || frame.corrected) return;
    const told = measured
      .filter((claim) => namesYear(claim) && claim.start <= seconds && seconds - claim.start <= reachesBackSeconds)
      .findLast(({ value }) => numberOf(value) !== null);
    const date = told && numberOf(told.value);
    if (!date) return;
    const registered = told.part === "registered" && date.month !== null;
    const before =
      built[1] === "previous"
        ? date.month === null || month >= date.month || yearBefore.test(after)
        : yearBefore.test(after) || (registered && month > date.month!);
    const year = built[1] === "previous" && date.month !== null && month < date.month ? date.year : before ? date.year - 1 : date.year;
    const first = Math.max(0, at - 4);
    const spans = spansOfTokens(tokens, first, at + 1);
    found.push({
      id: `b${found.length + 1}`,
      captions: [...new Set(spans.map((span) => span.caption))],
      start: tokens[first]!.at,
      end: tokens[at + 1]?.at ?? map.speech.duration,
      quote: spans.map((span) => captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
      spans,
      component: "vehicle",
      part: "built",
      position: null,
      attribute: "date",
      value: `${year}-${String(month).padStart(2, "0")}`,
      unit: null,
      stance: frame.stance,
      time: frame.time,
      circumstance: "built",
      zone: zoneAt(map.zones, seconds),
      rule: "month the vehicle was built",
      repairs: [],
    });
  });
  return found;
}
