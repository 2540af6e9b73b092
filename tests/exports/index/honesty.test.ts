import { describe, expect, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import {
  ConditionIndex,
  proposalKey,
  type RecordingDetail,
  ReviewRecord,
  type TextFormat,
  textFormats,
} from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

const written = {
  writtenAt: "2026-01-07T12:00:00.000Z",
  hashes: { video: null, transcript: "0".repeat(64) },
  granularity: "everything",
} as const;
const build = (format: TextFormat, detail: RecordingDetail) => buildExport(format, { detail, ...written });

/** A finding that was accepted from the first claim, which is in the open conflict about the rear tires. */
function disputedFinding(): RecordingDetail {
  const detail = sampleDetail();
  const [claim] = detail.analysis.claims;
  const doubted = { ...claim!, stance: "hedged" as const };
  return {
    ...detail,
    findings: [{ ...detail.findings[0]!, start: 42, seen: "square shoulders", note: "", proposalKey: proposalKey(doubted) }],
    analysis: { ...detail.analysis, claims: [doubted, ...detail.analysis.claims.slice(1)] },
  };
}

test("two claims of the same words at one moment are told once on a side, the longer words for both, and two stances never as one", () => {
  const detail = sampleDetail();
  const [claim] = detail.analysis.claims;
  const words = (id: string, quote: string, change = {}) => ({ ...claim!, id, quote, ...change });
  const more = [words("m1", "the rears are to 35"), words("m2", claim!.quote), words("m3", claim!.quote, { stance: "hedged" as const })];
  const told = {
    ...detail,
    analysis: {
      ...detail.analysis,
      claims: [...detail.analysis.claims, ...more],
      conflicts: detail.analysis.conflicts.map((conflict) => ({
        ...conflict,
        sides: conflict.sides.map((side) =>
          side.claims.includes(claim!.id) ? { ...side, claims: ["m1", ...side.claims, "m2", "m3"] } : side,
        ),
      })),
    },
  };
  const index = ConditionIndex.parse(JSON.parse(build("index-json", told).text));
  const side = index.conflicts.find(({ topic }) => topic === "rear tire size")?.sides[0];
  expect(side?.moments.map(({ quote, stance }) => [quote, stance])).toEqual([
    [claim!.quote, "stated"],
    [claim!.quote, "hedged"],
  ]);
});

test("of one figure said flatly and with a doubt a ruling settles the doubt, and the figure is not called untrue", () => {
  const detail = sampleDetail();
  const ratio = detail.analysis.conflicts.find(({ topic }) => topic === "axle ratio")!;
  const [first, second] = ratio.sides;
  const alike = { ...ratio, sides: [first!, { ...second!, value: first!.value, unit: first!.unit }] };
  const told = {
    ...detail,
    analysis: { ...detail.analysis, conflicts: detail.analysis.conflicts.map((conflict) => (conflict === ratio ? alike : conflict)) },
  };
  const statusOf = (of: RecordingDetail) =>
    ConditionIndex.parse(JSON.parse(build("index-json", of).text))
      .claims.filter(({ conflictTopics }) => conflictTopics.includes("axle ratio"))
      .map(({ quote, status, ruledOut }) => [quote, status, ruledOut]);
  expect(statusOf(detail)).toEqual([
    ["four eleven", "upheld", null],
    ["three seventy three", "overruled", "overruled"],
  ]);
  expect(statusOf(told)).toEqual([
    ["four eleven", "upheld", null],
    ["three seventy three", "upheld", null],
  ]);
});

test("of a recording that was never analyzed nothing says that no conflict is open", () => {
  const detail = sampleDetail();
  const never = {
    ...detail,
    rulings: [],
    openConflictKeys: [],
    analysis: { ...detail.analysis, analysisVersion: 0, claims: [], conflicts: [], denials: [], remarks: [], promises: [] },
  };
  for (const format of ["index-html", "index-csv", "index-text", "correction-text", "record-html"] as const) {
    expect(build(format, never).text, format).toContain("was not analyzed when this was written");
    expect(build(format, never).text, format).not.toMatch(/no conflict is open|none open|contradict each other/i);
  }
});

describe("a finding accepted from a claim in dispute", () => {
  const detail = disputedFinding();
  test.for([
    { format: "index-json", line: /"seen": "square shoulders"[^}]*"openConflicts": \[\s*"rear tire size"\s*\],\s*"stance": "hedged"/ },
    { format: "index-csv", line: /square shoulders,\[open conflict: rear tire size\]/ },
    { format: "index-html", line: /square shoulders.*?said with doubt.*?in dispute: rear tire size/s },
    { format: "record-json", line: /"seen": "square shoulders"[^}]*"openConflicts": \[\s*"rear tire size"/ },
    { format: "record-html", line: /square shoulders.*?said with doubt.*?\[open conflict: rear tire size\]/ },
    { format: "chapters-list", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
    { format: "chapters-matroska", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
    { format: "chapters-webvtt", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
    { format: "chapters-ffmpeg", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
    { format: "chapters-podcast", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
    { format: "chapters-jsonld", line: /square shoulders \(worn\) \(said with doubt\) \[open conflict: rear tire size\]/ },
  ] as const)("is marked in $format", ({ format, line }) => expect(build(format, detail).text).toMatch(line));

  test("and is marked no more once the conflict is settled", () => {
    for (const format of ["index-json", "index-csv", "chapters-list"] as const)
      expect(build(format, { ...detail, openConflictKeys: [] }).text, format).not.toMatch(/square shoulders[^\n]*open conflict/);
  });
});

describe("what a ruling lets stand while another conflict about it is open", () => {
  const detail = sampleDetail();
  const other = { ...detail.analysis.conflicts[1]!, id: "k3", key: "measure:gears", topic: "gear teeth" };
  const both = {
    ...detail,
    analysis: { ...detail.analysis, conflicts: [...detail.analysis.conflicts, other] },
    openConflictKeys: [...detail.openConflictKeys, other.key],
  };
  test.for(["correction-overlay", "correction-text"] as const)("is no plain fact in %s", (format) => {
    expect(build(format, both).text).toMatch(/4\.11:1.*\[open conflict: gear teeth\]/);
    expect(build(format, detail).text).not.toMatch(/4\.11:1.*\[open conflict/);
  });
});

test("a claim that was said with doubt says so beside its dispute, never the one without the other", () => {
  const { text } = build("chapters-list", disputedFinding());
  expect(text).toContain("Rear tire size: 235/60R15 (said with doubt) [open conflict: rear tire size]");
});

test("a claim that the stock sheet bears out keeps its dispute", () => {
  const detail = sampleDetail();
  const support = {
    id: "s1",
    key: "s",
    field: "rears",
    topic: "rear tire size",
    sheetValue: "235/60R15",
    claims: ["c1"],
    why: "As on the sheet.",
  };
  const told = { ...detail, analysis: { ...detail.analysis, supports: [support] } };
  expect(build("index-html", told).text).toMatch(/As on the sheet\..*?in dispute: rear tire size/s);
  expect(build("index-csv", told).text).toContain("As on the sheet. [open conflict: rear tire size]");
  expect(JSON.parse(build("index-json", told).text).supports[0].moments[0].openConflicts).toEqual(["rear tire size"]);
});

test("claims of an earlier state are not listed, and it is said how many they are", () => {
  const detail = sampleDetail();
  const [first, ...rest] = detail.analysis.claims;
  const told = { ...detail, analysis: { ...detail.analysis, claims: [{ ...first!, time: "former" as const }, ...rest] } };
  const plain = (text: string) => text.replaceAll(/<[^>]+>/g, "");
  const index = ConditionIndex.parse(JSON.parse(build("index-json", told).text));
  // One of the sample's own is of an earlier state too.
  const today = rest.filter(({ time }) => time === "today").length;
  expect(today).toBe(rest.length - 1);
  expect([index.formerClaims, index.claims.length]).toEqual([2, today]);
  expect(plain(build("index-html", told).text)).toContain(
    `Of ${rest.length + 1} claims, ${today} are of the vehicle as it stands. 2 more are of an earlier state of it and not listed.`,
  );
  const none = { ...detail, analysis: { ...detail.analysis, claims: detail.analysis.claims.filter(({ time }) => time === "today") } };
  expect(build("index-html", none).text).not.toContain("earlier state");
});

describe("that it was published with conflicts open", () => {
  const publications = [
    { at: "2026-01-05T12:00:00.000Z", initials: "AB", openConflicts: 2, openMatters: null },
    { at: "2026-01-06T12:00:00.000Z", initials: "RT", openConflicts: 1, openMatters: ["“never”", "Is there a spare wheel?"] },
  ];
  const detail = { ...sampleDetail(), publications };
  test.for(["index-html", "index-csv", "record-html", "correction-text"] as const)("is said in %s", (format) => {
    expect(build(format, detail).text).toContain("Published on 2026-01-06 by RT with 1 conflict open and 2 other matters not dealt with.");
    expect(build(format, sampleDetail()).text).not.toContain("Published on");
  });
  test("is in the JSON, the last in the index and all in the record", () => {
    expect(JSON.parse(build("index-json", detail).text).published).toEqual({ ...publications[1], openMatters: 2 });
    // What a buyer may hold the dealer to is named in the record alone.
    expect(build("index-json", detail).text).not.toContain("spare wheel");
    expect(build("record-html", detail).text).toContain("Not dealt with then: “never”; Is there a spare wheel?.");
    expect(JSON.parse(build("record-json", detail).text).publications).toEqual(publications);
  });
});

test("proposals that nobody accepted are in no file", () => {
  for (const format of textFormats) expect(build(format, sampleDetail()).text, format).not.toContain("UNACCEPTED PROPOSAL");
});

describe("the JSON", () => {
  test.for([
    { format: "index-json", schema: ConditionIndex },
    { format: "record-json", schema: ReviewRecord },
  ] as const)("of $format read and written again gives the same bytes", ({ format, schema }) => {
    const { text } = build(format, disputedFinding());
    expect(`${JSON.stringify(schema.parse(JSON.parse(text)), null, 2)}\n`).toBe(text);
  });
});

describe("a claim that one ruling takes out while another conflict about it is open", () => {
  const detail = sampleDetail();
  const other = { ...detail.analysis.conflicts[1]!, id: "k3", key: "measure:gears", topic: "gear teeth" };
  const ruledWith = (change: Partial<RecordingDetail["rulings"][number]>): RecordingDetail => ({
    ...detail,
    analysis: { ...detail.analysis, conflicts: [...detail.analysis.conflicts, other] },
    rulings: detail.rulings.map((ruling) => ({ ...ruling, ...change })),
    openConflictKeys: [...detail.openConflictKeys, other.key],
  });
  const claimsOf = (of: RecordingDetail) => ConditionIndex.parse(JSON.parse(build("index-json", of).text)).claims;

  test.for([
    { decision: "side-stands", side: 1, ruledOut: "overruled", words: "not so: overruled in review" },
    { decision: "recogniser-error", side: 0, ruledOut: "misheard", words: "misheard: ruled the recognizer&#39;s error" },
  ] as const)("tells both: $ruledOut and in dispute", ({ decision, side, ruledOut, words }) => {
    const both = ruledWith({ decision, side, rightWords: decision === "recogniser-error" ? "three seventy three" : null });
    const out = claimsOf(both).find(({ value }) => value === 4.11);
    expect(out).toMatchObject({ status: "disputed", ruledOut, openConflicts: ["gear teeth"] });
    expect(build("index-html", both).text).toMatch(
      new RegExp(`4\\.11:1</b> <span class="overruled-mark">${words}</span> <span class="open-mark">▼ in dispute: gear teeth`),
    );
    expect(build("index-csv", both).text).toContain(`[${ruledOut} in review] [open conflict: gear teeth]`);
  });

  test("and what nobody ruled on is not ruled out", () => {
    expect(
      claimsOf(ruledWith({}))
        .filter(({ ruledOut }) => ruledOut !== null)
        .map(({ value }) => value),
    ).toEqual([3.73]);
  });
});

describe("a figure for the very thing that another figure is in dispute about", () => {
  const detail = sampleDetail();
  const [, , ratio] = detail.analysis.claims;
  const withClaim = (change: Partial<RecordingDetail["analysis"]["claims"][number]>, open: readonly string[]): RecordingDetail => ({
    ...detail,
    analysis: { ...detail.analysis, claims: [...detail.analysis.claims, { ...ratio!, id: "c9", start: 110, value: 3.23, ...change }] },
    rulings: [],
    openConflictKeys: [...open],
  });
  const added = (of: RecordingDetail) =>
    ConditionIndex.parse(JSON.parse(build("index-json", of).text)).claims.find(({ start }) => start === 110);

  test("is marked with that dispute, though it is on no side of it", () => {
    expect(added(withClaim({}, ["measure:axle ratio"]))).toMatchObject({ status: "disputed", openConflicts: ["axle ratio"] });
  });

  test.for([
    ["once it is settled", {}, []],
    ["of another position", { position: "front" }, ["measure:axle ratio"]],
    ["of another part", { part: "pinion" }, ["measure:axle ratio"]],
    ["of another circumstance", { circumstance: "new" }, ["measure:axle ratio"]],
    ["told in words", { value: "tall" }, ["measure:axle ratio"]],
  ] as const)("is not marked %s", ([, change, open]) => {
    expect(added(withClaim(change, open))).toMatchObject({ status: "undisputed", openConflicts: [] });
  });
});
