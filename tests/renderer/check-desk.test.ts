import { describe, expect, test } from "vitest";
import { chapterMarks, shortestChapterSeconds as shortestWritten } from "../../electron/exports/chapters/chapter-marks.ts";
import { matterStates, mattersLeft } from "../../renderer/check/matters-at-hand.ts";
import {
  checkItems,
  conflictQueue,
  foreignStockNumber,
  itemOfPlace,
  nextOpen,
  placeOfItem,
  rulingsOn,
  rulingsWithoutConflict,
  sheetFieldsAbout,
  waitsForLook,
  weightWord,
} from "../../renderer/check/queue.ts";
import {
  digitOfMisheard,
  emptyRuling,
  faultOfRightWords,
  faultsOfRuling,
  rulingOfDigit,
  rulingOptions,
  saidOfRuling,
  sideOfRuling,
  wordsOfSide,
} from "../../renderer/check/ruling-draft.ts";
import { tireShape } from "../../renderer/check/tire-size.ts";
import { joinedChapters, shortestChapterSeconds } from "../../renderer/publish/joined-chapters.ts";
import { sideValues } from "../../renderer/shared/claim-words.ts";
import { type Conflict, questionMatter, type Ruling } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

const detail = sampleDetail();
const [tires, axle] = detail.analysis.conflicts as [Conflict, Conflict];

describe("the queue", () => {
  const light = { ...axle, key: "z", weight: 5 };
  const conflicts = [light, axle, tires];
  const promise = { kind: "promise" as const, key: "p1" };
  test("is ordered by weight, and filtered", () => {
    expect(conflictQueue(conflicts, [axle.key, "z"], "open").map(({ key }) => key)).toEqual([axle.key, "z"]);
    expect(conflictQueue(conflicts, [axle.key, "z"], "settled").map(({ key }) => key)).toEqual([tires.key]);
    expect(conflictQueue(conflicts, [], "all").map(({ weight }) => weight)).toEqual([70, 60, 5]);
  });
  test("the next open one comes after this one, and round", () => {
    const items = [...conflictQueue(conflicts, [], "all").map(({ key }) => ({ kind: "conflict" as const, key })), promise];
    const nextAfter = (key: string | null, open: readonly string[]) =>
      nextOpen(items, (item) => open.includes(item.key), key === null ? null : { kind: "conflict", key })?.key ?? null;
    const open = [tires.key, "z"];
    expect(nextAfter(tires.key, open)).toBe("z");
    expect(nextAfter(axle.key, open)).toBe("z");
    expect(nextAfter("z", open)).toBe(tires.key);
    expect(nextAfter("z", ["z"])).toBeNull();
    expect(nextAfter(null, open)).toBe(tires.key);
    // What is no conflict and waits comes after the last of them.
    expect(nextAfter("z", [tires.key, promise.key])).toBe(promise.key);
  });
  test("lists conflicts first, then what is milder", () => {
    const doubtful = [{ caption: 1, why: "noise" }];
    const remarks = [{ id: "m", key: "m", topic: "promise", why: "never", claims: [], rule: "sample" }];
    const supports = [{ id: "s1", key: "s", field: "keys", topic: "number of keys", sheetValue: "2", claims: ["c1"], why: "Two." }];
    const silences = [{ id: "u1", key: "u", field: "title", topic: "title", sheetValue: "clean", why: "Nobody said." }];
    const items = checkItems({ ...detail, analysis: { ...detail.analysis, doubtful, remarks, supports, silences } }, "all");
    expect(items.map(({ kind }) => kind)).toEqual(["conflict", "conflict", "denial", "support", "silence", "remark", "doubtful"]);
  });
  test("weights have three words over their whole range", () => {
    expect([1, 33, 34, 66, 67, 100].map(weightWord)).toEqual(["minor", "minor", "moderate", "moderate", "serious", "serious"]);
  });
  test("a question about a zone falls away once a person has marked that zone as shown", () => {
    const question = (about: "zone" | "item", key: string) => ({ id: key, key, about, topic: key, question: `${key}?` });
    const questions = [question("zone", "zone:front"), question("zone", "zone:underside"), question("item", "item:spare")];
    const asked = { ...detail, analysis: { ...detail.analysis, questions } };
    expect(mattersLeft(asked).flatMap(({ about, key }) => (about === "question" ? [key] : []))).toEqual(["zone:underside", "item:spare"]);
    expect(questions.map((one) => matterStates(asked)(questionMatter(one)).sign)).toEqual(["marked since", "open", "open"]);
  });
});

describe("a sheet of another vehicle", () => {
  const withSheet = (number: string, meaning: "stock-number" | null, own = "FK-1971") => ({
    ...detail,
    summary: { ...detail.summary, stockNumber: own },
    stockSheet: { ref: number },
    sheetMeanings: { ref: meaning },
  });
  test("is told by its stock number", () => {
    expect(foreignStockNumber(withSheet("FK-2000", "stock-number"))).toBe("FK-2000");
    const older = { ...withSheet("", null), stockSheet: { "stock no": "FK-2000" }, sheetMeanings: null };
    expect(foreignStockNumber(older)).toBe("FK-2000");
  });
  test("is not told where the number is only written otherwise, is no stock number, or is not known of one of them", () => {
    const quiet = [withSheet("fk 1971", "stock-number"), withSheet("FK-2000", null), withSheet("FK-2000", "stock-number", "")];
    for (const one of [...quiet, { ...detail, stockSheet: null }]) expect(foreignStockNumber(one)).toBeNull();
  });
});

describe("rulings", () => {
  const ruling = (id: string, at: string, supersededBy: string | null, conflictKey = tires.key): Ruling => ({
    id,
    conflictKey,
    decision: "look-at-vehicle",
    side: null,
    reason: "measure it",
    rightWords: null,
    initials: "MB",
    at,
    supersededBy,
    topic: "rear tire size",
    sideValues: [],
  });
  test("the current one stands first, then the superseded from the latest back", () => {
    const all = [
      ruling("1", "2026-01-01T00:00:00Z", "2"),
      ruling("2", "2026-01-02T00:00:00Z", "3"),
      ruling("3", "2026-01-03T00:00:00Z", null),
      ruling("4", "2026-01-04T00:00:00Z", null, "other"),
    ];
    expect(rulingsOn(all, tires.key).map(({ id }) => id)).toEqual(["3", "2", "1"]);
    expect(rulingsWithoutConflict(all, detail.analysis.conflicts).map(({ id }) => id)).toEqual(["4"]);
  });
  test("a conflict that waits for a look at the vehicle says so, until another ruling takes that one's place", () => {
    const look = ruling("1", "2026-01-01T00:00:00Z", null);
    expect(waitsForLook([look], tires.key)).toMatchObject({ initials: "MB" });
    expect(waitsForLook([look], axle.key)).toBeNull();
    expect(
      waitsForLook(
        [
          { ...look, supersededBy: "2" },
          { ...look, id: "2", decision: "both-hold" },
        ],
        tires.key,
      ),
    ).toBeNull();
    const said = rulingOptions(tires).map((option) => saidOfRuling(option, tires.topic));
    expect(said.map((line) => line.startsWith("Decided on rear tire size: "))).toEqual([true, true, true, true, false]);
    expect(said.at(-1)).toBe("Still open until someone has looked at the vehicle: rear tire size");
  });
  test("every side may stand, and its number is the contract's", () => {
    const three = { sides: [...tires.sides, { value: "245/60R15", unit: null, claims: ["c1"] }] };
    expect(rulingOptions(three).map(({ label, side }) => [label, side])).toEqual([
      ["A stands", 0],
      ["B stands", 1],
      ["C stands", 2],
      ["All hold, because…", null],
      ["Recognizer's error", null],
      ["Look at the vehicle", null],
    ]);
  });
  test("a ruling needs its reason, and a recognizer's error its right words", () => {
    const error = rulingOptions(tires).find(({ decision }) => decision === "recogniser-error") ?? null;
    expect(Object.keys(faultsOfRuling(emptyRuling))).toEqual(["option", "reason"]);
    const draft = { option: error, misheard: 1, reason: "heard it", rightWords: "235" };
    expect(Object.keys(faultsOfRuling({ ...draft, rightWords: " " }))).toEqual(["rightWords"]);
    expect(Object.keys(faultsOfRuling({ ...draft, misheard: null }))).toEqual(["misheard"]);
    expect(faultsOfRuling(draft)).toEqual({});
    expect(sideOfRuling(draft)).toBe(1);
    expect(faultsOfRuling(draft, "no place for it")).toEqual({ rightWords: "no place for it" });
    // A side that was named as misheard does not linger when another decision is taken after all.
    expect(sideOfRuling({ ...draft, option: rulingOptions(tires)[0] ?? null })).toBe(0);
  });
});

describe("the words that a recognizer's error replaces", () => {
  const repair = { id: "r1", caption: 0, heard: "to 35 60 15s", meant: "235/60R15", rule: "r", sure: true };
  const spoken = {
    captions: detail.captions,
    analysis: {
      repairs: [{ ...repair, spans: [{ caption: 0, start: 14, end: 26 }] }],
      claims: detail.analysis.claims.map((claim) =>
        claim.id === "c1" ? { ...claim, spans: [{ caption: 0, start: 0, end: 26 }], repairs: ["r1"] } : claim,
      ),
    },
  };
  test("are the number's own, and nothing before a side is chosen", () => {
    expect(wordsOfSide(tires, 0, spoken)).toEqual([expect.objectContaining({ words: "to 35 60 15s", start: 12 })]);
    expect(wordsOfSide(tires, null, spoken)).toEqual([]);
  });
  test.for<[string, string | undefined]>([
    ["255/60R15", undefined],
    ["two fifty five sixty fifteens", undefined],
    ["to 35 60 15s", "These are the words as they were recognized. Write what was really said."],
    ["", undefined],
  ])("“%s” in their place: %s", ([words, fault]) => expect(faultOfRightWords(tires, 0, words, spoken)).toBe(fault));
  test("a single word does not take the place of a phrase that has no words for the value", () => {
    const bare = { ...spoken.analysis.claims[0]!, repairs: [], value: "absent" };
    const without = { ...spoken, analysis: { ...spoken.analysis, claims: [bare] } };
    expect(faultOfRightWords(tires, 0, "present", without)).toMatch(/^Write the whole phrase/);
    expect(faultOfRightWords(tires, 0, "the rears are gone", without)).toBeUndefined();
  });
});

test.for<{ topic: string; fields: Record<string, string>; about: string[] }>([
  { topic: "rear tire size", fields: { "rear tires": "235/60R15", "front tires": "215/70R15", mileage: "58412" }, about: ["rear tires"] },
  { topic: "axle ratio", fields: { "axle ratio": "3.55", "stock number": "H-1" }, about: ["axle ratio"] },
  { topic: "number of owners", fields: { "stock number": "CK-2107", owners: "3" }, about: ["owners"] },
  { topic: "number of owners", fields: { "stock number": "CK-2107" }, about: [] },
  { topic: "engine", fields: { "final drive": "3.55" }, about: [] },
])("the stock sheet on $topic", ({ topic, fields, about }) => {
  expect(sheetFieldsAbout(topic, fields).map(([field]) => field)).toEqual(about);
});

describe("tire sizes as shapes", () => {
  // Published overall diameters in inches: https://garagecalc.co/tires/tire-size-comparison-chart (one decimal, so within 0.06 in).
  test.for([
    { size: "185/65R15", publishedIn: 24.5 },
    { size: "205/60R16", publishedIn: 25.7 },
    { size: "225/55R17", publishedIn: 26.7 },
    { size: "245/40R19", publishedIn: 26.7 },
    { size: "265/70R17", publishedIn: 31.6 },
    { size: "285/70R17", publishedIn: 32.7 },
  ])("$size is $publishedIn in across", ({ size, publishedIn }) => {
    expect(Math.abs((tireShape(size)?.overallMm ?? 0) / 25.4 - publishedIn)).toBeLessThan(0.06);
  });
  // https://passionplans.com/b/how-to-read-tire-size/ (one decimal; the page rounds either way, so within 0.1 in).
  test.for([
    { size: "175/70R13", publishedIn: 22.6 },
    { size: "185/60R13", publishedIn: 21.7 },
    { size: "185/80R13", publishedIn: 24.7 },
  ])("$size is $publishedIn in across (second source)", ({ size, publishedIn }) => {
    expect(Math.abs((tireShape(size)?.overallMm ?? 0) / 25.4 - publishedIn)).toBeLessThan(0.1);
  });
  test("a flotation size names its diameter and width", () => {
    expect(tireShape("31x10.50R15")).toEqual({ overallMm: 31 * 25.4, rimMm: 381, widthMm: 10.5 * 25.4 });
  });
  test.for(["G70-14", "6.70-15", "235", 15, "disc"])("%s gives no shape", (value) => {
    expect(tireShape(value)).toBeNull();
  });
});

describe("what the address and the lists say", () => {
  test.for([
    { kind: "conflict", key: "measure/rear tire size" },
    { kind: "denial", key: "sheet:axle ratio" },
    { kind: "support", key: "mileage:mileage:61-240:61000" },
    { kind: "silence", key: "keys:number-of-keys:2" },
    { kind: "doubtful", key: "12" },
  ] as const)("%j is found again by its address", (item) => {
    const { conflict = null, item: name = null } = placeOfItem(item) as { conflict?: string; item?: string };
    expect(itemOfPlace(conflict, name)).toEqual(item);
  });
  test("an address that names nothing known names no item", () => {
    expect([itemOfPlace(null, null), itemOfPlace(null, "elsewhere:1")]).toEqual([null, null]);
  });

  test("sides of one value tell how each was said", () => {
    const [first, second] = detail.analysis.claims.slice(0, 2).map((claim, index) => ({
      ...claim,
      value: "original",
      unit: null,
      stance: index === 0 ? ("stated" as const) : ("hedged" as const),
    }));
    const side = (claim: { id: string } | undefined) => ({ value: "original", unit: null, claims: [claim?.id ?? ""] });
    expect(sideValues({ sides: [side(first), side(second)] }, [first!, second!])).toEqual([
      "original, said flat out",
      "original, said with a doubt",
    ]);
    expect(sideValues(tires, detail.analysis.claims).join(" ")).not.toMatch(/said/);
  });
});

describe("chapters too short to stand alone", () => {
  const lapOf = (...lengths: number[]) => {
    let start = 0;
    return lengths.map((length, index) => {
      const span = {
        ...detail.lap[0]!,
        zone: index % 2 === 0 ? ("front" as const) : ("rear" as const),
        title: `Part ${index}`,
        start,
        end: start + length,
      };
      start = span.end;
      return span;
    });
  };
  test.for([[[20, 20]], [[4, 20, 9, 30]], [[4, 5, 20]], [[20, 3, 3]], [[3]], [[3, 3]], [[9.9, 10, 10.1, 2]]])(
    "%j: those that the exports leave out by name",
    ([lengths]) => {
      const lap = lapOf(...(lengths as number[]));
      const written = chapterMarks({ ...detail, lap }).map(({ title }) => title);
      const joined = joinedChapters(lap).map(({ title }) => title);
      expect([...written, ...joined].sort()).toEqual(lap.map(({ title }) => title));
    },
  );
  test("are measured as the exports measure them", () => {
    expect(shortestChapterSeconds).toBe(shortestWritten);
  });
});

describe("digits", () => {
  const options = rulingOptions(tires);
  const sides = tires.sides.length;
  test("every decision has its own, and the misheard sides go on after them", () => {
    for (const [choice, option] of options.entries()) expect(rulingOfDigit(options, sides, choice)).toEqual({ option, misheard: null });
    for (let side = 0; side < sides; side++) {
      const digit = digitOfMisheard(options, side) as number;
      expect(rulingOfDigit(options, sides, digit - 1)).toMatchObject({ option: { decision: "recogniser-error" }, misheard: side });
    }
    expect(rulingOfDigit(options, sides, options.length + sides)).toBeNull();
    expect(rulingOfDigit(options, sides, null)).toBeNull();
  });
  test("no cap is shown for a digit that no key has", () => {
    expect(digitOfMisheard(options, 9)).toBeNull();
  });
});
