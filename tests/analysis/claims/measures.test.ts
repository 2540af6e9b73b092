import { describe, expect, test } from "vitest";
import type { ZoneName } from "../../../shared-types/index.ts";
import { claimsIn, readingOf } from "./claims-in.ts";

/** A claim as "component position attribute value unit", with what else is worth saying. */
function told(words: string | readonly string[], zone?: ZoneName): string[] {
  return claimsIn(words, zone)
    .filter((claim) => typeof claim.value === "number" || claim.attribute === "size" || claim.attribute === "date")
    .map((claim) =>
      [claim.component, claim.position ?? "-", claim.attribute, claim.value, claim.unit ?? "-", claim.time === "former" ? "former" : ""]
        .join(" ")
        .trim(),
    );
}

interface Row {
  readonly why: string;
  readonly heard: string | readonly string[];
  readonly zone?: ZoneName;
  readonly told: readonly string[];
}

// Forms of speech and plausible values are common practice of the trade; sizes follow FACTS 1.1 (49 CFR 571.139, maker's tire-sizing pages).
const places: readonly Row[] = [
  {
    why: "ahead and behind",
    heard: "the tires are two thirty-fives ahead and two fifty-fives behind",
    told: ["tire front width 235 mm", "tire rear width 255 mm"],
  },
  { why: "front and back in one", heard: "wheels are fifteens front and back", told: ["wheel all diameter 15 in"] },
  { why: "all the way around", heard: "the rims are seventeens all the way around", told: ["wheel all diameter 17 in"] },
  {
    why: "place after, then named before",
    heard: "eight thirty seconds on the fronts and the rears are at six",
    told: ["tire front depth 8 32nds", "tire rear depth 6 32nds"],
  },
  {
    why: "fronts and rears as nouns",
    heard: "fronts are 225 60 15 and the rears are 255 60 15",
    told: ["tire front size 225/60R15 -", "tire rear size 255/60R15 -"],
  },
  {
    why: "pronoun over a sentence",
    heard: "Look at this front tire. It's nearly new. It's got nine thirty seconds on it.",
    told: ["tire front depth 9 32nds"],
  },
  {
    why: "that one after a move",
    heard: "This front one's nine thirty seconds. And scooch back, the rear one, that one's six.",
    zone: "driver-side",
    told: ["tire driver-front depth 9 32nds", "tire driver-rear depth 6 32nds"],
  },
  {
    why: "an axle's tread, said of both",
    heard: "The tires, nine thirty seconds on the fronts. And the rear one's six.",
    zone: "driver-side",
    told: ["tire front depth 9 32nds", "tire rear depth 6 32nds"],
  },
  {
    why: "a corner that is as the other side's",
    heard: "Front tire, same as the other side, eleven thirty seconds.",
    zone: "passenger-side",
    told: ["tire passenger-front depth 11 32nds"],
  },
  {
    why: "a leaf spring with no place named",
    heard: "Leaf springs, two leaf with a helper, struts at the front.",
    zone: "underside",
    told: ["suspension rear count 2 -"],
  },
  {
    why: "near and off side with the wheel on the right",
    heard: "the near side front tyre has four millimetres, the off side front is at five",
    zone: "passenger-side",
    told: ["tire passenger-front depth 4 mm", "tire driver-front depth 5 mm"],
  },
  {
    why: "left is the driver's with the wheel on the left",
    heard: "the left front tire has six thirty seconds",
    told: ["tire driver-front depth 6 32nds"],
  },
  {
    why: "right-hand drive said aloud",
    heard: "it's right hand drive and the left front tire has six thirty seconds",
    told: ["tire passenger-front depth 6 32nds"],
  },
  {
    why: "this side is the camera's",
    heard: "tires this side have seven thirty seconds",
    zone: "passenger-side",
    told: ["tire passenger depth 7 32nds"],
  },
  {
    why: "a place that hangs on the measure before",
    heard: "three inch drop up front and a five inch flip kit in the back",
    zone: "underside",
    told: ["suspension front size 3 in", "suspension rear size 5 in"],
  },
  {
    why: "the next thing's place is not this one's",
    heard: "tyres are 185 70 14s, the fronts are half worn",
    told: ["tire all size 185/70R14 -"],
  },
  {
    why: "pressures front and back",
    heard: "I run the tires at 28 pounds in the front and 26 in the back",
    told: ["tire front pressure 28 psi", "tire rear pressure 26 psi"],
  },
  {
    why: "the spare is not a road tire",
    heard: "the spare is a plain steel 14 with a 195 70 14 on it",
    zone: "cargo",
    told: ["spare - diameter 14 in", "spare - size 195/70R14 -"],
  },
  {
    why: "panels take the camera's side",
    heard: "put the paint meter on the quarter panel, that's 118 microns",
    zone: "driver-side",
    told: ["paint driver-rear thickness 118 µm"],
  },
];

const morePlaces: readonly Row[] = [
  {
    why: "the one behind",
    heard: "this front one's a 225 60 15 and the one behind it's a 245 60 15",
    zone: "driver-side",
    told: ["tire front size 225/60R15 -", "tire rear size 245/60R15 -"],
  },
  {
    why: "up here and back there",
    heard: "so up here you got nine thirty seconds on the tires and back there it's about five",
    told: ["tire front depth 9 32nds", "tire rear depth 5 32nds"],
  },
  {
    why: "three of them, and the one that differs",
    heard: "three of the tires are at seven thirty seconds and the left rear's at four",
    told: ["tire - depth 7 32nds", "tire driver-rear depth 4 32nds"],
  },
  {
    why: "the place follows the part",
    heard: "twelve inch rotors up front eleven inch drums in the back",
    zone: "underside",
    told: ["brakes front diameter 12 in", "brakes rear diameter 11 in"],
  },
  {
    why: "one corner named for itself keeps its side",
    heard: "the offside rear tyre is a 195 65 15",
    zone: "rear",
    told: ["tire driver-rear size 195/65R15 -"],
  },
  {
    why: "corners by side, no tire named",
    heard: "nearside front's at 30 psi and nearside rear's 32",
    zone: "passenger-side",
    told: ["tire passenger-front pressure 30 psi", "tire passenger-rear pressure 32 psi"],
  },
  {
    why: "fronts and rears by both measures",
    heard: "the fronts are 17 by 8 and the rears are 17 by 9",
    zone: "driver-side",
    told: ["wheel front diameter 17 in", "wheel front width 8 in", "wheel rear diameter 17 in", "wheel rear width 9 in"],
  },
  {
    why: "seats by side are the front ones",
    heard: "the driver's seat is a ten way power seat",
    zone: "cabin",
    told: ["seats driver-front count 10 -"],
  },
  {
    why: "two panels, one breath",
    heard: "the rear quarter on this side reads fourteen mils and the door's at five",
    zone: "passenger-side",
    told: ["paint passenger-rear thickness 14 mil", "paint passenger thickness 5 mil"],
  },
  {
    why: "a rim said before completes the size",
    heard: "she's on eighteens with 275 35s all the way round",
    zone: "driver-side",
    told: ["wheel - diameter 18 in", "tire all size 275/35R18 -"],
  },
];

const readings: readonly Row[] = [
  { why: "a size split over captions", heard: ["this tire is a two oh five", "fifty five sixteen"], told: ["tire - size 205/55R16 -"] },
  {
    why: "fourteen by six is two claims",
    heard: "the wheels are fourteen by six",
    told: ["wheel all diameter 14 in", "wheel all width 6 in"],
  },
  { why: "a carburetor corrected", heard: "it's a 600, no I'm sorry it's a 650 carb", told: ["fuel-system - flow 650 cfm"] },
  { why: "a year corrected", heard: "it's a 2013, no I'm lying, 2015", told: ["vehicle - year 2015 -"] },
  { why: "a size corrected", heard: "the tires are 215, sorry, 225 60 16s", told: ["tire all size 225/60R16 -"] },
  {
    why: "axle size and ratio in one breath",
    heard: "rear end's a nine inch with four elevens in it",
    zone: "underside",
    told: ["final-drive - diameter 9 in", "final-drive - ratio 4.11 -"],
  },
  { why: "tooth counts", heard: "the axle tag says 37 over 10", told: ["final-drive - ratio 3.7 -"] },
  { why: "axle bolts are a count", heard: "it's got the twelve bolt rear end", told: ["final-drive - count 12 -"] },
  {
    why: "hot and cold oil",
    heard: "oil pressure is sixty cold and it drops to twenty five hot",
    zone: "drive",
    told: ["engine - pressure 60 psi", "engine - pressure 25 psi"],
  },
  {
    why: "former and present engine",
    heard: "it used to have a 350 in it, now it's a 383",
    zone: "engine-bay",
    told: ["engine - displacement 350 cu in former", "engine - displacement 383 cu in"],
  },
  {
    why: "pipe and tip",
    heard: "two inch pipes and a four inch tip on each",
    zone: "rear",
    told: ["exhaust - diameter 2 in", "exhaust rear diameter 4 in"],
  },
  {
    why: "miles since work are not the odometer",
    heard: "it's got four hundred and ten miles on it since the rebuild",
    told: ["vehicle - mileage 410 mi"],
  },
  { why: "work done at a mileage", heard: "struts were done at seventy one thousand", told: ["suspension - mileage 71000 mi"] },
  {
    why: "belts in all and by row",
    heard: "five belts, three in the back and two up front",
    zone: "cabin",
    told: ["belts - count 5 -", "belts rear count 3 -", "belts front count 2 -"],
  },
  {
    why: "electric car",
    heard: "it's the sixty four kilowatt hour battery with a hundred and fifty kilowatt motor",
    told: ["electrical - size 64 kWh", "engine - power 150 kW"],
  },
  { why: "range is not mileage", heard: "on a full charge it shows a range of 195", zone: "cabin", told: ["vehicle - mileage 195 mi"] },
  { why: "donor years", heard: "the steering column's out of a 79 van", told: ["steering - year 1979 -"] },
  {
    why: "month and year built",
    heard: "the plate says it was built in November of 84",
    zone: "documents",
    told: ["vehicle - date 1984-11 -"],
  },
  { why: "price without its unit", heard: "we're asking twenty two five for it", zone: "closing", told: ["price - price 22500 USD"] },
  {
    why: "miles on it, not dollars",
    heard: "it's a good truck with a hundred and ninety eight thousand on it",
    told: ["odometer - mileage 198000 mi"],
  },
];

/** What is asked, what the papers say, and whose year a paper gives: forms of speech are common practice. */
const sumsAndPapers: readonly Row[] = [
  {
    why: "the number",
    heard: "Two owners and the number is 22,900.",
    zone: "opening",
    told: ["vehicle - count 2 -", "price - price 22900 USD"],
  },
  { why: "is the number", heard: "38,500 is the number.", zone: "opening", told: ["price - price 38500 USD"] },
  {
    why: "plus the VAT",
    heard: "white, boot's clean, bonnet's good, 7,995 plus the vat",
    zone: "opening",
    told: ["price - price 7995 GBP"],
  },
  {
    why: "a price last spring",
    heard: "it's at $13,750, it was 14,500 last spring",
    zone: "opening",
    told: ["price - price 13750 USD", "price - price 14500 USD"],
  },
  { why: "a speed, not a price", heard: "I've had her at seventy on the bypass", zone: "closing", told: [] },
  { why: "a bill and its part", heard: "Bill for the brakes, one eighty.", zone: "documents", told: ["brakes - price 180 USD"] },
  { why: "money, then what for", heard: "A folder here. $310 for calipers.", zone: "documents", told: ["brakes - price 310 USD"] },
  { why: "a receipt's year", heard: "Receipt for the clutch 2016.", zone: "documents", told: ["transmission - date 2016 -"] },
  {
    why: "a sale is no repair",
    heard: "The bill of sale is from 1977, trunk full of papers.",
    zone: "documents",
    told: ["title - date 1977 -"],
  },
  { why: "a title's year", heard: "Title's clean, 2019.", zone: "documents", told: ["title - year 2019 -"] },
  { why: "an early one of its year", heard: "So it's an early 1969.", zone: "documents", told: ["vehicle - year 1969 -"] },
  { why: "money offered", heard: "I had a fella offer me 31,000 at a fairground.", zone: "opening", told: [] },
  { why: "a year put right", heard: "What we got today is a 95 no sorry 96 pickup.", zone: "opening", told: ["vehicle - year 1996 -"] },
  {
    why: "a month of building, its year told before",
    heard: "First registered the third of January 1974, built the previous October.",
    zone: "documents",
    told: ["title - date 1974-01-03 -", "vehicle - date 1973-10 -"],
  },
  {
    why: "miles, and then the price",
    heard: "Ninety one thousand miles, and it's sixteen thousand nine hundred.",
    zone: "closing",
    told: ["odometer - mileage 91000 mi", "price - price 16900 USD"],
  },
  { why: "two figures are no date", heard: "Temperature's sat on eighty-five.", zone: "closing", told: [] },
  { why: "a title that says a year", heard: "Title's clean, it says seventy nine.", zone: "documents", told: ["title - year 1979 -"] },
  { why: "another one by the gate", heard: "There's a thing by the gate at four thousand.", zone: "closing", told: [] },
  { why: "a stock number", heard: "Stock number is 4,417.", zone: "closing", told: [] },
  {
    why: "mileage on an MOT",
    heard: "MOT here, sixty two thousand on that one.",
    zone: "documents",
    told: ["odometer - mileage 62000 mi"],
  },
  {
    why: "the spare's own tire",
    heard: "Spare's here, the skinny one, 155 80 13 on a steel wheel.",
    zone: "cargo",
    told: ["spare - size 155/80R13 -"],
  },
  {
    why: "the road tires beside the spare",
    heard: "Spare's in here. The road tires are 215 60 15 all round.",
    zone: "cargo",
    told: ["tire all size 215/60R15 -"],
  },
  {
    why: "pounds in the back",
    heard: "Tires are radials. Thirty two pounds in the back.",
    zone: "passenger-side",
    told: ["tire rear pressure 32 psi"],
  },
  {
    why: "where the oil pressure settles",
    heard: "Oil pressure sixty, it'll settle about forty.",
    zone: "drive",
    told: ["engine - pressure 60 psi", "engine - pressure 40 psi"],
  },
  { why: "an eighth of a gap", heard: "The gap's an eighth all the way up.", zone: "driver-side", told: ["body driver size 0.125 in"] },
  {
    why: "bolts are no microns",
    heard: "Paint on the door is 120 microns. The tray has thirty four bolts.",
    zone: "underside",
    told: ["paint - thickness 120 µm"],
  },
  {
    why: "load space seats up and down",
    heard: "Load area is 22.5 cubic feet with the seats up, 50.2 with them down.",
    zone: "cargo",
    told: ["cargo-floor - size 22.5 cu ft", "cargo-floor - size 50.2 cu ft"],
  },
  {
    why: "both of a pair of duals",
    heard: "Rear tires, outside dual twelve thirty seconds, inside twelve.",
    zone: "driver-side",
    told: ["tire rear depth 12 32nds", "tire rear depth 12 32nds"],
  },
  { why: "a body shop is no body", heard: "Body works bill, refinish, $640.", zone: "documents", told: ["paint - price 640 USD"] },
  {
    why: "a meter on the battery",
    heard: "Battery's new, I'll put the meter across it, the meter says 12.8.",
    zone: "engine-bay",
    told: ["electrical - voltage 12.8 V"],
  },
  {
    why: "an article before a size is no money",
    heard: "Carburetor invoice here, it's a six hundred with electric choke.",
    zone: "documents",
    told: ["fuel-system - flow 600 cfm"],
  },
  { why: "a range by season", heard: "260 miles in the summer.", zone: "drive", told: ["vehicle - mileage 260 mi"] },
  {
    why: "a code on the date",
    heard: "The fronts are twelve twenty two on the date.",
    zone: "passenger-side",
    told: ["tire front date 1222 -"],
  },
  {
    why: "where it started",
    heard: "It's at $14,995. I started it at 15,500.",
    zone: "opening",
    told: ["price - price 14995 USD", "price - price 15500 USD"],
  },
  {
    why: "a sentence before has no say",
    heard: "It rubs every Sunday. 58,912 miles.",
    zone: "opening",
    told: ["odometer - mileage 58912 mi"],
  },
  {
    why: "legal named after, for itself",
    heard: "Tread on this tire is 6.4 millimeters and the law asks less.",
    told: ["tire - depth 6.4 mm"],
  },
  {
    why: "a big figure in the cabin",
    heard: "Let's see, it's 121,400 and every light goes off.",
    zone: "cabin",
    told: ["odometer - mileage 121400 mi"],
  },
  { why: "a speed in the cabin", heard: "You're doing sixty two there.", zone: "cabin", told: [] },
  {
    why: "the inside dual",
    heard: "Inside dual, six thirty seconds.",
    zone: "passenger-side",
    told: ["tire passenger-rear depth 6 32nds"],
  },
  {
    why: "inches of a lamp are no count of lamps",
    heard: "Two headlights, seven inch halogen.",
    zone: "front",
    told: ["lights front count 2 -", "lights front diameter 7 in"],
  },
  {
    why: "the wheel in the cabin",
    heard: "Leather seats, and the wheel's fourteen inches.",
    zone: "cabin",
    told: ["steering - diameter 14 in"],
  },
  {
    why: "a figure that a second count follows",
    heard: "Steel wheels sixteen five stud.",
    zone: "driver-side",
    told: ["wheel all diameter 16 in", "wheel - count 5 -"],
  },
  {
    why: "front's and back's of a disc",
    heard: "Discs all round, the front's 280.",
    zone: "underside",
    told: ["brakes front diameter 280 mm"],
  },
  { why: "a badge that tells the power", heard: "The badge says 130, that's the horses.", zone: "front", told: ["engine - power 130 hp"] },
  {
    why: "an MOT's own mileage",
    heard: "An MOT from 1989 at thirty one thousand.",
    zone: "documents",
    told: ["title - date 1989 -", "odometer - mileage 31000 mi"],
  },
  { why: "a plural and its count", heard: "LED lamps, two, and the plate lights are LED.", zone: "rear", told: ["lights rear count 2 -"] },
  {
    why: "a plural and its measure",
    heard: "Doors 120 and the fenders are the same, in microns.",
    zone: "front",
    told: ["paint - thickness 120 µm"],
  },
  {
    why: "a small year after in",
    heard: "The old floors rusted, we cut the old ones out in fourteen.",
    zone: "underside",
    told: ["floors - date 2014 - former"],
  },
  { why: "torque on the sheet", heard: "two fifty one on the torque", zone: "drive", told: ["engine - torque 251 lb-ft"] },
];

const quiet: readonly Row[] = [
  { why: "telephone", heard: "call me at five five five one two one two", told: [] },
  { why: "opening hours", heard: "we're open till six and closed Sundays", told: [] },
  { why: "weather, speed and engine speed", heard: "it's ninety degrees out and we're doing sixty five at two thousand rpm", told: [] },
  { why: "a person's height", heard: "my wife is five foot two and she fits fine", told: [] },
  { why: "a legal limit", heard: "the law says you need two thirty seconds on a tire", told: [] },
  { why: "what a new tire has", heard: "new tires come with ten thirty seconds", told: [] },
  { why: "a hypothetical engine", heard: "if you wanted you could put a 427 motor in there", told: [] },
  { why: "an option not taken", heard: "you could get it with eight speakers but this one doesn't have them", told: [] },
  { why: "a promise of time", heard: "give me about ten minutes and I'll show you twenty things", told: [] },
  { why: "percent", heard: "the tint is thirty five percent and the battery's at ninety one percent", told: [] },
  { why: "the other three points", heard: "the tires are good and the other three match it", told: [] },
  { why: "coins and dogs", heard: "there's a mark the size of a fifty pence piece and two dogs in the yard", told: [] },
  { why: "a row of the seats is no radiator", heard: "the third row folds flat", told: [] },
  { why: "current, not displacement", heard: "we run a hundred and sixty amp fuse on the engine", told: [] },
  { why: "production figures", heard: "they made about twelve hundred of these in 1971", told: [] },
  { why: "a neighbor's car", heard: "my neighbor's got a 1968 with a 427 in it", told: [] },
  { why: "a guide price", heard: "book on it is thirty thousand", zone: "closing", told: [] },
  { why: "a pretended gearbox", heard: "it'll act like it's got seven gears", zone: "drive", told: [] },
  { why: "torque of a wrench", heard: "I torqued the lug nuts to a hundred foot pounds", told: [] },
  { why: "a trip", heard: "I drove it two hundred miles last weekend", told: [] },
  { why: "a drive of some hours", heard: "I drove it two hours and it never missed a beat", told: [] },
];

describe("where a measure belongs", () => {
  test.for([...places, ...morePlaces, ...sumsAndPapers])("$why", (row) => {
    expect(told(row.heard, row.zone)).toEqual(row.told);
  });
});

describe("what a number says", () => {
  test.for(readings)("$why", (row) => {
    expect(told(row.heard, row.zone)).toEqual(row.told);
  });
});

describe("numbers that claim nothing", () => {
  test.for(quiet)("$why", (row) => {
    expect(told(row.heard, row.zone)).toEqual(row.told);
  });
});

describe("what stands beside a claim", () => {
  test("a split size names both captions and quotes them as they came", () => {
    const [claim] = claimsIn(["this tire is a two oh five", "fifty five sixteen for you"]);
    expect(claim).toMatchObject({ captions: [0, 1], value: "205/55R16" });
    expect(claim?.quote).toContain("two oh five fifty five sixteen");
  });

  test("a broken number is repaired beside the words, and the claim rests on the repair", () => {
    const { claims, repairs } = readingOf("the rears are to 35 60 15s");
    expect(repairs).toMatchObject([{ caption: 0, heard: "to 35 60 15s", meant: "235/60R15" }]);
    expect(claims[0]?.repairs).toEqual([repairs[0]?.id]);
  });

  test("ratios, money and miles are written as people write them", () => {
    const meant = (words: string, zone?: ZoneName) => readingOf(words, zone).repairs.map((repair) => repair.meant);
    expect(meant("it's got three fifty gears")).toEqual(["3.50"]);
    expect(meant("we're asking thirty eight nine on it", "closing")).toEqual(["38,900"]);
    expect(meant("odometer says fifty eight four", "cabin")).toEqual(["58,400"]);
  });

  // Two cylinders, two temperatures, two places in the system: figures that rightly differ must not be compared.
  test.for([
    { why: "two cylinders", heard: "compression is 155 on the low one and 162 on the good one" },
    { why: "at rest and running", heard: "the battery was twelve point six just sitting and it's fourteen two volts running" },
    { why: "placard and advice", heard: "the sticker in the jamb says run the tires at 33 psi and the tire man told us go 35 psi" },
    { why: "an earlier reading", heard: "the odometer said 61,000 when he bought it and it's showing 64,200 now" },
    { why: "new price and asking price", heard: "the window sticker new was $3,681 and we're asking $38,900" },
  ])("$why differ in circumstance", ({ heard }) => {
    const measures = claimsIn(heard).filter((claim) => typeof claim.value === "number");
    expect(measures).toHaveLength(2);
    expect(measures[0]?.circumstance).not.toBe(measures[1]?.circumstance);
  });
});
