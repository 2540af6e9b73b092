import type { QualityRule } from "./quality-rule.ts";

const odometer = [{ component: "odometer", part: null }] as const;
const dial = "odometer/odo/mileage/miles/clock/mileometer/speedo/speedometer/digit/digits/figures";

/** Whether the mileage shown is the vehicle's own: vouched for, or left open. Common practice of the trade, American and British. */
export const mileageTrustRules: readonly QualityRule[] = [
  {
    name: "mileage vouched for",
    attribute: "originality",
    value: "original",
    phrases: [
      "real/actual/true/genuine/honest/correct/documented/verified/warranted/guaranteed miles/mileage/kilometers",
      "miles/mileage/kilometers is/are/'s/'re ..2 real/actual/genuine/warranted/guaranteed/correct/verified/documented",
      "miles/mileage/thousand ..1 which/that/and is/are/'s warranted/guaranteed/genuine/verified/correct/documented",
      "miles/mileage/# warranted/guaranteed !for/until/till",
      "warrant/guarantee/vouch the/that mileage/miles",
      "warrant/guarantee/vouch for? the/that mileage/miles",
      "never been round/around the clock",
      "never been clocked/rolled/turned back/over",
      "first/only time round/around !the/here/we/i/this",
      "mileage/miles ..2 backed up",
      "mileage/miles ..1 every one of them/em real",
    ],
    unless: [
      "not/n't ..2 real/actual/true/genuine/correct miles/mileage",
      "n't ..3 warrant/guarantee/vouch",
      "real/actual/true/genuine miles/mileage is/are unknown",
      "true mileage unknown",
      "no real/actual miles",
      "real/actual miles per",
    ],
    about: odometer,
    denial: "drops",
    example: {
      says: "Sixty one thousand on it and that's the real miles, period.",
      gives: { component: "odometer", value: "original" },
    },
    quiet: [
      "I can't vouch for the mileage, the true mileage is unknown.",
      "It's a few real miles per gallon better.",
      "You get fifty miles on a charge.",
    ],
  },
  {
    name: "mileage thought to be right",
    attribute: "originality",
    value: "original",
    phrases: [
      "i 'd/would like to think it/they/that 's/is/are/'re right/correct/real/actual/genuine/#",
      "i 'd/would like to believe it/they/that 's/is/are right/correct/real/actual/genuine",
      "i think/believe/reckon/guess/suppose it/they/that 's/is/are/'re right/correct/actual/genuine/the real/true",
      "i have no reason to doubt it/that/them",
      "put my hand up to it/that being/for/as",
      "it being the only/first time round/around",
      "whether it 's/is been round/around ..2 once/twice",
      "may/might/could have/'ve been round/around ..1 once/twice/clock/again",
      "n't swear to it/that/them ..2 first/only time/right/real/actual",
      "been round/around once/twice or not",
    ],
    beside: [dial],
    about: odometer,
    denial: "drops",
    example: {
      says: "The odometer's a five digit one. I mean I'd like to think it's right, the pedals aren't worn.",
      gives: { component: "odometer", value: "original" },
    },
    quiet: ["I think it's right, the door gap.", "I'd like to think it's a nice color.", "It might have been round here before."],
  },
];
