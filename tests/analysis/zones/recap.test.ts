import { describe, expect, test } from "vitest";
import { findRecap } from "../../../electron/analysis/zones/find-recap.ts";
import { speechOf } from "../../support/speech-of.ts";

const middle = ["door", "seat", "glass", "wheel", "bumper", "dash", "mirror", "carpet", "roof", "sill", "lamp", "hood"].map(
  (part) => `the ${part} is straight and it is clean and good all the way down so nothing is wrong with it`,
);
/** A walk of much the same words again and again between a greeting and what follows. */
const walk = (greeting: string, end: string) => speechOf([greeting, ...middle, end]);
const recap = (greeting: string, end: string) => {
  const speech = walk(greeting, end);
  return findRecap(speech).map(({ first, end: last }) =>
    speech.tokens
      .slice(first, last)
      .map((token) => token.word)
      .join(" "),
  );
};

describe("a walk that ends as it began", () => {
  test("the vehicle's name and the price come back", () => {
    const again = recap("this is the Marlow Wanderer at sixteen nine nine five", "that's the Wanderer sixteen nine nine five");
    expect(again).toContain("wanderer");
    expect(again).toContain("sixteen nine");
  });
  test("words said all along say nothing", () => {
    expect(recap("the door of this Wanderer is straight", "the door is straight")).toEqual([]);
  });
  test("new words say nothing", () => {
    expect(recap("this is the Wanderer", "ring Hattie whenever it suits")).toEqual([]);
  });
  test("renaming the vehicle changes nothing", () => {
    const count = (name: string) =>
      recap(`this is the ${name} at sixteen nine nine five`, `that's the ${name} sixteen nine nine five`).length;
    expect(count("Wanderer")).toBe(count("Ondine"));
  });
});
