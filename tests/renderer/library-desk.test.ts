import { describe, expect, test } from "vitest";
import { cautionOf, nothingToCopy } from "../../renderer/call/answer-words.ts";
import { checkLine, proposalsLine } from "../../renderer/library/recording-row.tsx";
import { removalWords } from "../../renderer/library/removal-words.ts";
import { partOfFileName, titleOfFileName } from "../../renderer/library/sort-files.ts";
import {
  descriptionOfDraft,
  draftOfRecording,
  emptyDescription,
  faultsOfDraft,
  proposedTitle,
} from "../../renderer/library/vehicle-form.ts";
import { hashOfPlace, placeOfHash, recordingPlace } from "../../renderer/shared/place.ts";
import { contract, withholdings } from "../../shared-types/index.ts";
import { sampleDetail } from "../exports/sample-detail.ts";

test.for([
  { name: "walk.MP4", part: "video" },
  { name: "walk round.mkv", part: "video" },
  { name: "stock.csv", part: "stockSheet" },
  { name: "talk.vtt", part: "transcript" },
  { name: "talk.json", part: "transcript" },
  { name: "no ending", part: "transcript" },
])("$name is taken for a $part", ({ name, part }) => {
  expect(partOfFileName(name)).toBe(part);
});

test("a title to start from", () => {
  expect(titleOfFileName("1969_tolland-halyard.final.srt")).toBe("1969 tolland halyard.final");
});

describe("the description", () => {
  test("what the form gives, the contract takes; what it gave, the form shows again", () => {
    const { summary } = sampleDetail();
    const described = { id: summary.id, ...descriptionOfDraft(draftOfRecording(summary)) };
    expect(contract["recording.describe"].input.parse(described)).toEqual({
      id: summary.id,
      title: summary.title,
      stockNumber: summary.stockNumber,
      vehicle: summary.vehicle,
    });
  });
  test.for(["19", "1879", "2101", "nineteen", "1969.5"])("%s is no model year", (year) => {
    expect(faultsOfDraft({ ...emptyDescription, title: "x", year }).year).toContain(year);
  });
  test("a year may be left out, a title may not", () => {
    expect(faultsOfDraft({ ...emptyDescription, title: "x" })).toEqual({});
    expect(Object.keys(faultsOfDraft(emptyDescription))).toEqual(["title"]);
  });
});

describe("places", () => {
  test.for([
    { screen: "library" } as const,
    { screen: "call", query: "", compared: null } as const,
    { screen: "call", query: "rear tires & 4.11", compared: null } as const,
    { screen: "call", query: "4.11", compared: null, only: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e01" } as const,
    { screen: "recording", desk: "check", id: "a b", at: null, conflict: "measure:rear tire size & more", item: null } as const,
    { screen: "recording", desk: "mark", id: "x", at: 12.5, conflict: null, item: null } as const,
    { screen: "recording", desk: "check", id: "x", at: null, conflict: null, item: "remark:a:b" } as const,
  ])("%j survives its address", (place) => {
    expect(placeOfHash(hashOfPlace(place))).toEqual(place);
  });
  test("an address that is none leads to the library; a time that is none is left out", () => {
    expect(placeOfHash("#/elsewhere/1")).toEqual({ screen: "library" });
    expect(placeOfHash("")).toEqual({ screen: "library" });
    expect(placeOfHash("#/call?of=everything")).toEqual({ screen: "call", query: "", compared: null });
    expect(placeOfHash(`${recordingPlace("x", "mark")}?at=soon`)).toMatchObject({ at: null });
    expect(placeOfHash(`${recordingPlace("x", "mark")}?at=-4`)).toMatchObject({ at: null });
  });
});

test("a moment whose words are withheld says why, each reason in its own words; a plain one gives no caution", () => {
  expect(cautionOf({ withheld: null, answer: "Rear tires are 235/60R15." })).toBeNull();
  expect(cautionOf({ withheld: null, answer: null })).toMatch(/play the moment/);
  const words = withholdings.map((reason) => cautionOf({ withheld: { reason, detail: "drum" }, answer: null }) ?? "");
  expect(new Set(words).size).toBe(withholdings.length);
  expect(words.every((line) => line.includes("Do not state it"))).toBe(true);
  expect(words.join(" ")).toContain("The stock sheet says drum.");
});

test.for([
  [0, 0, 0, 0, "nothing open"],
  [2, 0, 0, 0, "2 open conflicts"],
  [0, 1, 0, 0, "1 denial by the stock sheet"],
  [1, 3, 0, 0, "1 open conflict, 3 denials by the stock sheet"],
  [1, 0, 2, 1, "1 open conflict, 2 promises and 1 question"],
] as const)("%i conflicts, %i denials, %i promises and %i questions wait at Check: %s", (row) => {
  const [openConflicts, openDenials, openPromises, openQuestions, words] = row;
  expect(checkLine({ openConflicts, openDenials, openPromises, openQuestions })).toBe(words);
});

test("removing says truly which files go and which stay", () => {
  expect(removalWords({ hasVideo: true, videoKept: true })).toMatch(/own copies of the video and the transcript: they are deleted/);
  expect(removalWords({ hasVideo: true, videoKept: false })).toMatch(/The video file stays where it is/);
  expect(removalWords({ hasVideo: false, videoKept: false })).not.toMatch(/video/);
});

test("a copy of nothing says so, why, and of which thing and vehicle", () => {
  const told = { subject: "rear tire size", stockNumber: "FK-1971", recordingTitle: "Kestrel" };
  const lines = withholdings.map((reason) => nothingToCopy({ ...told, withheld: { reason, detail: null } }));
  expect(new Set(lines).size).toBe(withholdings.length);
  for (const line of lines) expect(line).toMatch(/^Nothing was copied: .*\(rear tire size, stock FK-1971\)\. The clipboard holds/);
  expect(nothingToCopy({ ...told, subject: null, stockNumber: "", withheld: null })).toBe(
    "Nothing was copied: there is no sentence to give (this moment, Kestrel). The clipboard holds what it held before.",
  );
});

test("an address with a broken escape names no recording and breaks nothing", () => {
  expect(placeOfHash("#/recording/%E0%A4%A/check")).toMatchObject({ screen: "recording", id: "%E0%A4%A" });
});

test.for([
  [{ proposals: 3, proposedZones: 1 }, "proposed: 3 findings, 1 zone"],
  [{ proposals: 0, proposedZones: 2 }, "proposed: 2 zones"],
  [{ proposals: 0, proposedZones: 0 }, "no proposals left"],
] as const)("%j waiting at the Mark desk: %s", ([counts, words]) => {
  expect(proposalsLine(counts)).toBe(words);
});

test("a title is proposed from the file's name, then from the vehicle, with a year only once it is whole", () => {
  const proposed = (year: string, vehicleName: string) => proposedTitle({ year, vehicleName }, "delmot walk");
  expect(proposed("", "")).toBe("delmot walk");
  expect(proposed("1978", " ")).toBe("delmot walk");
  expect(proposed("", "Orvane Delmot ")).toBe("Orvane Delmot");
  expect(proposed("197", "Orvane Delmot")).toBe("Orvane Delmot");
  expect(proposed(" 1978", "Orvane Delmot")).toBe("1978 Orvane Delmot");
});
