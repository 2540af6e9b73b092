import { describe, expect, test } from "vitest";
import { readLabel, readSentences } from "./read-sentences.ts";
import { scoreSentences } from "./score-sentences.ts";

/** Every so many sentences of the bank: enough for a share, and soon done. `npm run score -- --sentences` reads them all. */
const every = 12;

/**
 * The bank says in other words, mostly by signs, what a walk claims; it was written before the rules and holds many sentences that only
 * a person who knows vehicles can read. Floors only rise, the ceiling only falls.
 */
const leastRead = 0.24;
const mostNotQuiet = 0.17;

describe("the bank of sentences", () => {
  const sentences = readSentences();

  test("holds no sentence twice", () => {
    const texts = sentences.map(({ text }) => text);
    expect(texts.filter((text, at) => texts.indexOf(text) !== at)).toEqual([]);
  });

  test("is read in no smaller a share than before, and what claims nothing stays as quiet", () => {
    const { labels, read, quiet, notQuiet } = scoreSentences(sentences.filter((_, position) => position % every === 0));
    expect(read / labels).toBeGreaterThanOrEqual(leastRead);
    expect(notQuiet / quiet).toBeLessThanOrEqual(mostNotQuiet);
  });
});

test.for([
  { text: "brakes/type=disc@front", label: { component: "brakes", attribute: "type", value: "disc", part: null, position: "front" } },
  {
    text: "body/condition=flawed (rear fender)@rear",
    label: { component: "body", attribute: "condition", value: "flawed", part: "rear fender", position: "rear" },
  },
])("the label $text is read", ({ text, label }) => expect(readLabel(text)).toEqual(label));

test.for([
  { text: "brakes", says: "is no label" },
  { text: "brake/type=disc", says: "is no component; use one of tire" },
  { text: "brakes/kind=disc", says: "is no attribute" },
  { text: "brakes/type=disc@left", says: "is no position" },
])("the label $text is refused", ({ text, says }) => expect(() => readLabel(text)).toThrow(says));
