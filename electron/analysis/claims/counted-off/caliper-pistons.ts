import type { CountedSpeech, CountFound, CountingRule } from "./count-found.ts";
import { wordsOf } from "./count-found.ts";

const howMany: Readonly<Record<string, number>> = { single: 1, twin: 2, dual: 2, double: 2 };

/** Words within which the caliper or the brake must be named. */
const namedWithin = 6;

const ofBrakes = /\b(?:caliper|calipers|calliper|callipers|brake|brakes|disc|discs|rotors?)\b/;

/** "The calipers are the twin piston": a count that is a word of its own. Engines have pistons too, so a brake must be named beside it. */
export const caliperPistons: CountingRule = {
  name: "caliper pistons told by a word",
  find: ({ speech }: CountedSpeech): CountFound[] =>
    speech.tokens.flatMap(({ word }, at): CountFound[] => {
      const [head = "", tail = ""] = word.split("-");
      const value = Object.hasOwn(howMany, head) ? howMany[head]! : undefined;
      const noun = tail || (speech.tokens[at + 1]?.word ?? "");
      if (value === undefined || !/^(?:pistons?|pots?)$/.test(noun)) return [];
      const end = tail ? at + 1 : at + 2;
      if (!ofBrakes.test(wordsOf(speech, at - namedWithin, end + namedWithin))) return [];
      return [{ component: "brakes", part: "caliper pistons", value, circumstance: null, first: at, end, at }];
    }),
  examples: [
    {
      says: "New hoses, and the calipers are the twin piston kind.",
      zone: "underside",
      gives: { component: "brakes", part: "caliper pistons", value: 2, circumstance: null },
    },
  ],
  quiet: [
    { says: "It's a little twin piston compressor for the horns.", zone: "engine-bay" },
    { says: "It has a single pot of paint in the trunk for touching up.", zone: "cargo" },
  ],
};
