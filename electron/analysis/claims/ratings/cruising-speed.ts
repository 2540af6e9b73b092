import type { Reading, SpokenNumber } from "../../model.ts";
import { type RatingFound, type RatingRule, wordsBetween } from "./rating-found.ts";

/** Words between the road speed and the engine speed that belongs to it. */
const farthestApart = 14;
const kilometresPerMile = 1.609344;

/** Road speeds that people drive at, mph; a bare number out of this range is no speed. */
const slowestMph = 30;
const fastestMph = 100;

const turning =
  /\b(?:turning|turns|turnin|spinning|running at|sitting at|sits at|pulling|pulls|doing|showing|ticking over at|at|about|around|only)$/;

function firstOf(number: SpokenNumber, kind: Reading["kind"]): number | undefined {
  const [reading] = number.readings;
  return reading?.kind === kind && typeof reading.value === "number" ? reading.value : undefined;
}

/** "Seventy", said where a speed stands; plausible ones only. */
function bareMph(number: SpokenNumber | undefined, before: string, after: string): number | undefined {
  const reading = number?.readings.find(({ kind, unit }) => kind === "integer" && unit === null);
  if (!reading || typeof reading.value !== "number" || reading.value < slowestMph || reading.value > fastestMph) return undefined;
  return /\b(?:at|doing|do|to|hold|holds)$/.test(before) && !/^(?:dollars|bucks|percent|thousand|hundred|pounds)\b/.test(after)
    ? reading.value
    : undefined;
}

/** "Seventy miles an hour at twenty six hundred rpm": the engine's speed at a road speed, in either order. */
export const engineSpeedAtRoadSpeed: RatingRule = {
  name: "engine speed at road speed",
  find: ({ speech, numbers }) =>
    numbers.flatMap((number, order): RatingFound[] => {
      const rpm = firstOf(number, "engine-speed");
      if (rpm === undefined || rpm < 1000 || rpm > 6000) return [];
      if (
        /\b(?:red ?line|idle|idles|idling|limiter|peak|power|torque|horse)\b/.test(wordsBetween(speech, number.first - 8, number.end + 4))
      )
        return [];
      for (const other of [numbers[order - 1], numbers[order + 1]]) {
        if (!other) continue;
        const [first, end] = other.first < number.first ? [other.first, number.end] : [number.first, other.end];
        if (Math.max(other.first - number.end, number.first - other.end) > farthestApart) continue;
        const between = wordsBetween(speech, Math.min(other.end, number.end), Math.max(other.first, number.first));
        if (/\b(?:then|first|second|third|and in|but in|reverse|low)\b/.test(between)) continue;
        const before = wordsBetween(speech, other.first - 3, other.first);
        const after = wordsBetween(speech, other.end, other.end + 2);
        const spoken = firstOf(other, "road-speed");
        const metric = spoken !== undefined && /\bk(?:m|ph|ilo|p)/.test(wordsBetween(speech, other.first, other.end));
        const mph = spoken === undefined ? bareMph(other, before, after) : metric ? spoken / kilometresPerMile : spoken;
        if (mph === undefined || mph < slowestMph || mph > fastestMph) continue;
        if (spoken === undefined && !turning.test(wordsBetween(speech, number.first - 3, number.first))) continue;
        return [{ component: "engine", part: "engine speed", value: `${rpm} rpm at ${Math.round(mph)} mph`, first, end }];
      }
      return [];
    }),
  examples: [
    {
      says: "it'll run down the interstate at 70 miles an hour at about 2600 rpm",
      gives: { component: "engine", part: "engine speed", value: "2600 rpm at 70 mph" },
    },
    {
      says: "it's turning about 1900 rpm at 65 miles an hour",
      gives: { component: "engine", part: "engine speed", value: "1900 rpm at 65 mph" },
    },
  ],
  quiet: ["it idles at 1000 rpm and it'll do 70 miles an hour", "the red line is 5500 rpm", "it makes its power at 4000 rpm"],
};
