import type { Slot } from "../slot.ts";

/** What may follow "all four" where it names the whole set and no other noun. */
const wholeSet =
  /^(?:#|\.|$|(?:of (?:them|these|those|'em|em|it)(?:'s)?|corners|all|match|matching|the same|same|are|is|look|have|got|they|they're|and|with|on|in|at|to|new|good|nice|done|white ?walls?|straight|true|tread|date|dated|inside|outside|round|a?round|i|you|but|so|which|that|from|by|no|it's|hold)\b)/;

const setOf = (component: "tire" | "wheel" | "suspension", heard: string): Slot => ({
  name: `whole set of ${component}`,
  component,
  part: component === "suspension" ? "corner" : null,
  attribute: "count",
  unit: null,
  position: "all",
  need: { kinds: ["integer"], units: [null], min: 3, max: 8 },
  cues: [
    { before: /\b(?:all|every one of the|each of the)$/, after: wholeSet, about: [component], reach: "sentence", score: 1.0 },
    { before: /\ball of the$/, after: wholeSet, about: [component], reach: "sentence", score: 0.9 },
    {
      before: /\ball$/,
      after: /^of (?:them|these|those|'em|em)(?:'s| are| is|'re)? (?:straight|true|round|balanced|match|matching|the same|new|good)\b/,
      about: [component],
      score: 0.9,
    },
    // A sentence of its own: "Let me lean down. Yes. All four." Only a set on the ground is spoken of so.
    ...(component === "suspension"
      ? []
      : [
          {
            before: /(?:^|\. )(?:yes |yeah |yep |and )?all$/,
            after: /^(?:\.|of (?:them|those|these)\b)/,
            about: [component],
            score: 0.9,
          } as const,
        ]),
  ],
  example: { heard, value: 4, position: "all" },
});

/** "All four": said of the tires, wheels, brakes or springs the talk is about. */
export const allOfThemSlots: readonly Slot[] = [
  setOf("tire", "the tires are all terrains, all four"),
  setOf("wheel", "the wheels are straight all four and I spun them"),
  setOf("suspension", "gas shocks at all four corners"),
];
