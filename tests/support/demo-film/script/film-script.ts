import { insideLines } from "./inside.ts";
import { outsideLines } from "./outside.ts";
import type { PlantedConflict, PlantedLookAlike, ScriptLine } from "./script-line.ts";
import { underneathLines } from "./underneath.ts";

/** The whole walk round, in spoken order. One line is one caption. */
export const filmScript: readonly ScriptLine[] = [...outsideLines, ...insideLines, ...underneathLines];

/** What the film is about; becomes demo.json. */
export const filmedVehicle = {
  title: "1971 Havelin Tarrow, walk round",
  stockNumber: "CK-2107",
  vehicle: { name: "Havelin Tarrow", year: 1971, bodyStyle: "coupe", drive: "left-hand" },
  /** For the annotations, in an annotator's words. */
  kind: "two-door hardtop",
} as const;

/** Claims that cannot all hold, by the lines that speak them. */
export const plantedConflicts: readonly PlantedConflict[] = [
  {
    id: "k1",
    kind: "measure",
    topic: "rear tire size",
    sides: [
      { value: "235/60R15", lines: ["rear-tires-235"] },
      { value: "255/60R15", lines: ["rear-tires-255"] },
    ],
  },
  {
    id: "k2",
    kind: "standard",
    topic: "wheel diameter against tire rim size",
    sides: [
      { value: 14, lines: ["wheels"] },
      { value: 15, lines: ["front-tires", "rear-tires-235", "rear-tires-255", "front-tires-again"] },
    ],
  },
  {
    id: "k3",
    kind: "measure",
    topic: "engine displacement",
    sides: [
      { value: 350, lines: ["drivetrain", "badge", "engine-litres"] },
      { value: 327, lines: ["displacement-327"] },
    ],
  },
  {
    id: "k4",
    kind: "measure",
    topic: "axle ratio",
    sides: [
      { value: 3.73, lines: ["drivetrain"] },
      { value: 4.11, lines: ["axle-411"] },
    ],
  },
  {
    id: "k5",
    kind: "originality",
    topic: "engine",
    sides: [
      { value: "original", lines: ["engine-original"] },
      { value: "replaced", lines: ["engine-replaced"] },
    ],
  },
  {
    id: "k6",
    kind: "measure",
    topic: "engine year",
    sides: [
      { value: 1971, lines: ["engine-original"] },
      { value: 1974, lines: ["engine-year-1974"] },
    ],
  },
  {
    id: "k7",
    kind: "type",
    topic: "front brakes",
    sides: [
      { value: "drum", lines: ["brakes-drum"] },
      { value: "disc", lines: ["brakes-disc"] },
    ],
  },
  {
    id: "k8",
    kind: "condition",
    topic: "windshield",
    sides: [
      { value: "good", lines: ["glass-clean"] },
      { value: "flawed", lines: ["glass-star"] },
    ],
  },
  {
    id: "k9",
    kind: "condition",
    topic: "trunk floor",
    sides: [
      { value: "good", lines: ["trunk-floor-clean"] },
      { value: "flawed", lines: ["trunk-floor-patch"] },
    ],
  },
  {
    id: "k10",
    kind: "count",
    topic: "owners",
    sides: [
      { value: 2, lines: ["owners-two"] },
      { value: 3, lines: ["owners-three"] },
    ],
  },
  {
    id: "k11",
    kind: "presence",
    topic: "air conditioning",
    sides: [
      { value: "absent", lines: ["air-absent"] },
      { value: "present", lines: ["air-present"] },
    ],
  },
  {
    id: "k12",
    kind: "hedge",
    topic: "mileage being actual",
    sides: [
      { value: 61240, lines: ["owners-two", "odometer"] },
      { value: 61240, lines: ["miles-doubt"] },
    ],
  },
];

/** What sounds like a contradiction and is none. */
export const plantedLookAlikes: readonly PlantedLookAlike[] = [
  {
    topic: "displacement in liters",
    lines: ["drivetrain", "badge", "engine-litres"],
    why: "350 cu in and 5.7 L are the same engine",
  },
  {
    topic: "tires front and rear",
    lines: ["front-tires", "rear-tires-235", "front-tires-again"],
    why: "the rears are meant to differ from the fronts; the front size is said twice and agrees",
  },
  { topic: "paint color", lines: ["color"], why: "gold is what it left the factory as; it is burgundy now" },
  { topic: "bumpers", lines: ["front-bumper", "rear-bumper"], why: "the front one was rechromed, the rear one is original" },
  { topic: "another car", lines: ["other-car"], why: "the green 400 automatic is the wagon behind, not this car" },
  { topic: "spare", lines: ["spare"], why: "the 14-inch bias ply is the spare, not a road tire" },
  { topic: "date code", lines: ["date-code"], why: "3122 and the 31st week of 2022 are the same date" },
  { topic: "seats", lines: ["seats"], why: "the fronts were redone, the rear is original" },
  { topic: "belts", lines: ["belts"], why: "two of the four are up front" },
  { topic: "factory air", lines: ["air-option"], why: "an option at $400 that nobody ordered" },
  { topic: "price", lines: ["window-sticker", "price"], why: "3812 was the price when new; 32,900 is today's" },
  { topic: "carburetor flow", lines: ["carburetor"], why: "600 is put right to 650 in the same breath" },
  { topic: "carburetor barrels", lines: ["barrels"], why: "a two barrel when new, a four barrel today" },
  { topic: "compression", lines: ["compression"], why: "150 and 158 are two different cylinders" },
  { topic: "axle gears", lines: ["axle-hypothetical"], why: "the 3.08 is hypothetical" },
  { topic: "brakes front and rear", lines: ["brakes-disc", "rear-drums"], why: "rear drums do not contradict front discs" },
  { topic: "exhaust", lines: ["tips", "exhaust"], why: "the same two and a half inches, said twice" },
  { topic: "model year", lines: ["car", "summary"], why: "the car is a 1971 both times; only the engine's year is in dispute" },
];
