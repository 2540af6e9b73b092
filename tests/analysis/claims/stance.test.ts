import { expect, test } from "vitest";
import { claimsIn } from "./claims-in.ts";

test.for([
  {
    why: "about, for the number beside it",
    heard: "it's got about 112,000 miles and four headlights",
    stances: { 112000: "hedged", 4: "stated" },
  },
  { why: "or so", heard: "oil pressure is 60 cold and it drops to 30 or so hot", stances: { 60: "stated", 30: "hedged" } },
  {
    why: "near enough, after the price",
    heard: "the asking price is £18,950, that's £19,000 near enough",
    stances: { 18950: "stated", 19000: "hedged" },
  },
  {
    why: "doubt handed back to the last number",
    heard: "31,600 miles on it two owners i believe",
    stances: { 31600: "stated", 2: "hedged" },
  },
  { why: "belief governs what follows", heard: "I believe the engine is a 350", stances: { 350: "hedged" } },
  { why: "reported stays reported", heard: "the owner told me the engine makes 300 horsepower", stances: { 300: "reported" } },
  { why: "flat", heard: "the odometer says 58,412", stances: { 58412: "stated" } },
])("$why", ({ heard, stances }) => {
  const read = Object.fromEntries(
    claimsIn(heard, "cabin").flatMap(({ value, stance }) => (typeof value === "number" ? [[value, stance]] : [])),
  );
  expect(read).toEqual(stances);
});
