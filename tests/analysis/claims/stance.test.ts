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
  { why: "made it so much", heard: "I make that a 350 cubic inch engine", stances: { 350: "hedged" } },
  {
    why: "how it should be is no doubt",
    heard: "the engine starts like it should and it's a 350 cubic inch engine",
    stances: { 350: "stated" },
  },
  {
    why: "a belief about what follows leaves what stands before it",
    heard: "odometer says 58,412 miles i think it's a 350 cubic inch engine",
    stances: { 58412: "stated", 350: "hedged" },
  },
  { why: "all the way around is no rounding", heard: "It's drums all the way around, 10 inch drums.", stances: { 10: "stated" } },
  { why: "called so by others", heard: "Over here you'd call it 300 horsepower.", stances: { 300: "stated" } },
  {
    why: "a rounding leaves a report a report",
    heard: "According to the owner it has about 60,000 miles on it.",
    stances: { 60000: "reported" },
  },
  { why: "flat", heard: "the odometer says 58,412", stances: { 58412: "stated" } },
])("$why", ({ heard, stances }) => {
  const read = Object.fromEntries(
    claimsIn(heard, "cabin").flatMap(({ value, stance }) => (typeof value === "number" ? [[value, stance]] : [])),
  );
  expect(read).toEqual(stances);
});
