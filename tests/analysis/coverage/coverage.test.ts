import { describe, expect, test } from "vitest";
import { askCoverage } from "../../../electron/analysis/coverage/ask-coverage.ts";
import type { ZoneName, ZoneProposal } from "../../../shared-types/index.ts";
import { sampleClaim } from "../../support/builders/sample-analysis.ts";

function walk(...spans: readonly (readonly [ZoneName, number])[]): ZoneProposal[] {
  let start = 0;
  return spans.map(([zone, seconds]) => {
    const span = { zone, start, end: start + seconds, confidence: 1, evidence: [] };
    start += seconds;
    return span;
  });
}

const wholeWalk = walk(
  ["front", 20],
  ["driver-side", 20],
  ["rear", 20],
  ["passenger-side", 20],
  ["cargo", 20],
  ["cabin", 20],
  ["engine-bay", 20],
  ["underside", 20],
);
const everythingSaid = [
  sampleClaim("c1", 0, 0, "the VIN", { component: "vin", attribute: "type" }),
  sampleClaim("c2", 0, 0, "61,240 on the clock", { component: "odometer", attribute: "mileage" }),
  sampleClaim("c3", 0, 0, "a spare", { component: "spare", attribute: "presence" }),
  sampleClaim("c4", 0, 0, "week 22 of 2019", { component: "tire", attribute: "date" }),
  sampleClaim("c5", 0, 0, "clean title", { component: "title", attribute: "type" }),
];
const topics = (zones: ZoneProposal[], claims = everythingSaid) => askCoverage(zones, claims).map(({ topic }) => topic);

describe("coverage", () => {
  test("asks nothing after a whole walk in which everything usual was said", () => expect(topics(wholeWalk)).toEqual([]));

  test.for([
    { why: "a zone that is missing", zones: wholeWalk.filter(({ zone }) => zone !== "underside"), asked: ["underside"] },
    {
      why: "a zone passed in three seconds",
      zones: walk(...wholeWalk.map(({ zone }) => [zone, zone === "cargo" ? 3 : 20] as const)),
      asked: ["load space"],
    },
    {
      why: "a side never seen, and its wheels",
      zones: wholeWalk.filter(({ zone }) => zone !== "passenger-side"),
      asked: ["passenger's side", "passenger's front wheel", "passenger's rear wheel"],
    },
  ])("asks about $why", ({ zones, asked }) => expect(topics(zones)).toEqual(asked));

  test.for([
    { left: "c1", asked: "VIN" },
    { left: "c2", asked: "odometer" },
    { left: "c3", asked: "spare" },
    { left: "c4", asked: "tire age" },
    { left: "c5", asked: "title" },
  ])("asks about the $asked that nobody spoke of", ({ left, asked }) => {
    expect(
      topics(
        wholeWalk,
        everythingSaid.filter(({ id }) => id !== left),
      ),
    ).toEqual([asked]);
  });

  test("a wheel that was spoken of counts as seen", () => {
    const zones = wholeWalk.filter(({ zone }) => zone !== "passenger-side");
    const spoken = [...everythingSaid, sampleClaim("c9", 0, 0, "all four", { component: "wheel", attribute: "diameter", position: "all" })];
    expect(topics(zones, spoken)).toEqual(["passenger's side"]);
  });
});
