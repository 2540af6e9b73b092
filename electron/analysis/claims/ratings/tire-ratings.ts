import { speedSymbols } from "../../vocabulary/tire-ratings.ts";
import { type RatedSpeech, type RatingFound, type RatingRule, talkIsOf, wordsBetween } from "./rating-found.ts";

/** Words back over which the talk stays with the tires. */
const tireReach = 25;

/** "205/55R16 91V": the load index and speed symbol after a size. */
export const serviceDescription: RatingRule = {
  name: "load index and speed symbol",
  find: ({ numbers }) =>
    numbers.flatMap((number): RatingFound[] => {
      const reading = number.readings.find(({ kind }) => kind === "service-description");
      if (!reading || reading !== number.readings[0]) return [];
      return [{ component: "tire", part: "service description", value: String(reading.value), first: number.first, end: number.end }];
    }),
  examples: [
    { says: "tires are 205/55R16 91V all round", gives: { component: "tire", part: "service description", value: "91V" } },
    { says: "it wears 195/65R15 91H tires", gives: { component: "tire", part: "service description", value: "91H" } },
  ],
  quiet: ["it's a 16 valve engine", "paid 91 for the tires"],
};

/** "H rated", "they're a V rating": the letter alone. */
export const speedLetter: RatingRule = {
  name: "speed symbol",
  find: (rated) => {
    const { tokens } = rated.speech;
    return tokens.flatMap((token, at): RatingFound[] => {
      const next = tokens[at + 1]?.word ?? "";
      const glued = /^([a-z])-(?:rated|rating)$/.exec(token.word)?.[1];
      const letter = glued ?? (token.word.length === 1 && /^(?:rated|rating|speed)$/.test(next) ? token.word : undefined);
      if (letter === undefined || !Object.hasOwn(speedSymbols, letter.toUpperCase())) return [];
      if (next === "speed" && !/^(?:rated|rating)/.test(tokens[at + 2]?.word ?? "")) return [];
      const symbol = letter.toUpperCase();
      if (!talkIsOf(rated, at, ["tire", "wheel"], tireReach)) return [];
      return [{ component: "tire", part: "speed symbol", value: symbol, first: at, end: at + (glued ? 1 : 2) }];
    });
  },
  examples: [{ says: "the tires are h rated", gives: { component: "tire", part: "speed symbol", value: "H" } }],
  quiet: ["the tires are e rated", "the radio is a rated one", "the tires are not speed rated"],
};

const goodFor = /\b(?:good|rated|okay|ok|safe|fine|approved|certified|stamped) (?:for|to|up to|at)(?: about| around| up to)?$/;

/** "They're good for a hundred and thirty miles an hour", said of tires. */
export const tireSpeed: RatingRule = {
  name: "speed a tire is good for",
  find: (rated) =>
    rated.numbers.flatMap((number): RatingFound[] => {
      const [reading] = number.readings;
      if (reading?.kind !== "road-speed" || typeof reading.value !== "number") return [];
      if (!goodFor.test(wordsBetween(rated.speech, number.first - 4, number.first))) return [];
      if (!talkIsOf(rated, number.first, ["tire"], tireReach)) return [];
      const metric = /\bk(?:m|ph|ilo|p)/.test(wordsBetween(rated.speech, number.first, number.end));
      return [
        {
          component: "tire",
          part: "speed rating",
          value: `${reading.value} ${metric ? "km/h" : "mph"}`,
          first: number.first,
          end: number.end,
        },
      ];
    }),
  examples: [
    {
      says: "these tires are good for 130 miles an hour",
      gives: { component: "tire", part: "speed rating", value: "130 mph" },
    },
  ],
  quiet: ["the tires are fine and it does 70 miles an hour all day", "the engine is good for 130 miles an hour"],
};

export type { RatedSpeech };
