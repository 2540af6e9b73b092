import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { markedWalk, recogniserStyles } from "../zones/marked-walks.ts";

/**
 * Whole walks in which nothing contradicts anything: two of one kind, part and whole, other people's vehicles, former states, ranges, bills.
 * A conflict shown on one of them would be a false one.
 */
const folder = new URL("../../../fixtures/walks/at-one/", import.meta.url);
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".txt"))
  .toSorted();
/** One word a caption is a form for zones; figures are read from whole captions. */
const styles = recogniserStyles.filter((style) => style !== "words");

test("there are walks to read", () => {
  expect(names.length).toBeGreaterThanOrEqual(8);
});

describe.each(names.map((name) => [name]))("%s", (name) => {
  const text = readFileSync(new URL(name, folder), "utf8");
  test.each(styles.map((style) => [style]))("shows no conflict, %s", (style) => {
    const { transcript } = markedWalk(text, style);
    const { claims, conflicts } = analyse(transcript, { stockSheet: null, recordedOn: null });
    const quotes = new Map(claims.map(({ id, quote }) => [id, quote]));
    expect(claims.length).toBeGreaterThan(20);
    expect(
      conflicts.map(({ kind, topic, sides }) => `${kind} ${topic}: ${sides.map((side) => quotes.get(side.claims[0]!)).join(" / ")}`),
    ).toEqual([]);
  });
});
