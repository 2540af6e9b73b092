import { expect, test } from "vitest";
import { namedVehicles } from "../../renderer/call/vehicle-words.ts";

const vehicle = (id: string, stockNumber: string, name: string, bodyStyle: "van" | "pickup" | "sedan") => ({
  id,
  stockNumber,
  title: `${name} rear axle walk`,
  vehicle: { name, year: id === "a" ? 2009 : null, bodyStyle, drive: "left-hand" as const },
});
const library = [
  vehicle("a", "K4103", "Fallow Hauler", "pickup"),
  vehicle("b", "K-4104", "Fallow Courier", "van"),
  vehicle("c", "FK 1971", "Fallow Kestrel", "sedan"),
];

test.for([
  { asked: "K4103 axle ratio", question: "axle ratio", named: ["a"], why: "a stock number before the claim" },
  { asked: "axle ratio of k4104", question: "axle ratio", named: ["b"], why: "without its hyphen, after the claim" },
  { asked: "fk 1971 mileage", question: "mileage", named: ["c"], why: "typed in two" },
  { asked: "K4103 and K4104 rear tire size", question: "rear tire size", named: ["a", "b"], why: "two stock numbers" },
  { asked: "axle ratio on the pickup", question: "axle ratio", named: ["a"], why: "the vehicle's shape" },
  { asked: "kestrel mileage", question: "mileage", named: ["c"], why: "its name" },
  { asked: "Fallow Courier mileage", question: "mileage", named: ["b"], why: "the one that most words name" },
  { asked: "fallow mileage", question: "mileage", named: ["a", "b", "c"], why: "a name that several have" },
  { asked: "K4103", question: "", named: ["a"], why: "no claim yet" },
  { asked: "axle ratio", question: "axle ratio", named: [], why: "titles name no vehicle" },
  { asked: "rear tire size", question: "rear tire size", named: [], why: "a place names no vehicle" },
  { asked: "K9999 axle ratio", question: "K9999 axle ratio", named: [], why: "no such stock number" },
  { asked: "", question: "", named: [], why: "nothing asked" },
])("“$asked”: $why", ({ asked, question, named }) => {
  expect(namedVehicles(asked, library)).toEqual({ question, recordingIds: named });
});
