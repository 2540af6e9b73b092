import { describe, expect, test } from "vitest";
import { claimFact, valueWordings } from "../../electron/services/index-for-search.ts";
import { matchesFor, singulars } from "../../electron/services/search-query.ts";
import { sameThings } from "../../electron/services/search-words.ts";
import type { Analysis, Claim, SearchHit } from "../../shared-types/index.ts";
import { sampleAnalysis, sampleClaim, sampleTranscriptText } from "../support/builders/sample-analysis.ts";
import { importSample, sampleApplication } from "../support/builders/sample-application.ts";

async function ground(answer: () => Analysis = () => sampleAnalysis()) {
  const application = sampleApplication({ answer });
  const { id } = await importSample(application, application);
  const find = async (query: string, limit = 20): Promise<SearchHit[]> => application.handlers["search.find"]({ query, limit });
  return { ...application, recordingId: id, find };
}

const places = (hits: readonly SearchHit[]) => hits.map(({ kind, start }) => `${kind}@${start}`);

describe("what a caller asks, and the first place that is shown", () => {
  test.for([
    { query: "underside", first: "zone@90", why: "a zone by its name: its start" },
    { query: "under", first: "zone@90", why: "a zone while it is being typed" },
    { query: "chassis", first: "zone@90", why: "a zone by a British word" },
    { query: "what about the underneath?", first: "zone@90", why: "a question" },
    { query: "rear tires", first: "claim@52", why: "a part with its position: the shorter of two that say it" },
    { query: "rear tyres", first: "claim@52", why: "British spelling" },
    { query: "235/60R15", first: "claim@30", why: "a tire size that was broken in the transcript" },
    { query: "235/60-15", first: "claim@30", why: "a tire size with a hyphen" },
    { query: "235 60 15", first: "claim@30", why: "a tire size as spoken" },
    { query: "4.11", first: "claim@70", why: "a ratio that was spoken as four eleven" },
    { query: "four eleven", first: "claim@70", why: "the spoken words themselves" },
    { query: "diff", first: "claim@70", why: "a part by another word" },
    { query: "windscreen", first: "claim@12", why: "a British part" },
    { query: "FK-1971", first: "zone@0", why: "a stock number: the recording from its start" },
    { query: "fk1971", first: "zone@0", why: "a stock number without its hyphen" },
    { query: "fk 1971", first: "zone@0", why: "a stock number with a space" },
    { query: "fk-1971 underside", first: "zone@90", why: "a stock number and a zone" },
    { query: "kestrel chassis", first: "zone@90", why: "a vehicle and a zone" },
    { query: "1971 coupe underneath", first: "zone@90", why: "year, body style and zone" },
    { query: "rust hole", first: "claim@92", why: "words of a claim" },
    { query: "watching", first: "caption@110", why: "words of a caption that no claim uses" },
    { query: "Ünderside", first: "zone@90", why: "marks over letters do not matter" },
  ])("$query: $why", async ({ query, first }) => {
    const { find } = await ground();
    expect(places(await find(query))[0]).toBe(first);
  });

  test.for([
    { query: "gearbox", why: "a part that nobody spoke of" },
    { query: "4.10", why: "another ratio" },
    { query: "41", why: "a short number finds no longer one that begins with it" },
    { query: "4.1", why: "a ratio that was cut off is another ratio" },
    { query: "255/60R16", why: "another size" },
    { query: "", why: "nothing asked" },
    { query: "?!", why: "no word in it" },
    { query: '"', why: "a quote alone" },
  ])("$query finds nothing: $why", async ({ query }) => {
    const { find } = await ground();
    expect(places(await find(query))).toEqual([]);
  });

  test.for([
    'rear" OR "x',
    "NEAR(rear tires)",
    "rear AND NOT tires",
    "said: rear",
    "rear*",
    "^rear",
    "(rear",
    "rear)",
    "{said}: rear",
    "'; DROP TABLE claims; --",
  ])("%s is words, never a query of its own", async (query) => {
    const { find } = await ground();
    await expect(find(query)).resolves.toBeInstanceOf(Array);
  });

  test("what is asked for beyond what is known still finds the rest", async () => {
    const { find } = await ground();
    expect(places(await find("underside winch"))[0]).toBe("zone@90");
  });

  test("a caption that only repeats a claim is not shown twice", async () => {
    const { find } = await ground();
    expect(places(await find("four eleven"))).toEqual(["claim@70"]);
  });

  test("a stock number alone gives its recording in order of time", async () => {
    const { find } = await ground();
    expect(places((await find("fk-1971")).filter(({ kind }) => kind === "zone"))).toEqual(["zone@0", "zone@10", "zone@30", "zone@90"]);
  });

  test("what two rules read alike is shown once", async () => {
    const twice = [sampleClaim("c1", 2, 30, "the rears"), sampleClaim("c2", 2, 30, "the rears")];
    const { find } = await ground(() => sampleAnalysis({ claims: twice, conflicts: [], repairs: [] }));
    expect(places((await find("235/60R15")).filter(({ kind }) => kind === "claim"))).toEqual(["claim@30"]);
  });

  test("no more than asked for", async () => {
    const { find } = await ground();
    expect(await find("rear", 2)).toHaveLength(2);
  });
});

describe("a claim as a person reads it", () => {
  test.for([
    [{}, "Rear tire size 235/60R15"],
    [{ component: "brakes", attribute: "type", value: "drum" }, "Rear brakes: drum"],
    [{ component: "paint", position: null, attribute: "color", value: "gold", time: "former" }, "Formerly paint: gold"],
    [{ component: "spare", position: null, attribute: "presence", value: "present" }, "Spare present"],
    [{ component: "engine", position: null, attribute: "originality", value: "original" }, "Engine original"],
    [
      { component: "glass", part: "windshield", position: "front", attribute: "condition", value: "good", circumstance: "praise" },
      "Front windshield condition good",
    ],
    [
      { component: "engine", position: null, attribute: "pressure", value: 40, unit: "psi", circumstance: "cold" },
      "Engine pressure 40 psi (cold)",
    ],
    [{ component: "price", position: null, attribute: "price", value: 38900, unit: "USD" }, "Price $38,900"],
    [{ component: "vin", position: null, attribute: "type", value: "x" }, "VIN: x"],
  ] as const)("%j: %s", ([rest, fact]) => {
    expect(claimFact(sampleClaim("c1", 0, 0, "quote", rest as Partial<Claim>))).toBe(fact);
  });
});

describe("what a caller may be told", () => {
  test("a plain claim: a sentence with its stock number and time", async () => {
    const { find } = await ground();
    expect((await find("windscreen"))[0]).toMatchObject({
      disputed: false,
      hedged: false,
      answer: "Stock FK-1971: front glass condition good: “the windshield is perfect”, said at 0:12.",
    });
  });

  test("a disputed claim is not given as fact while its conflict is open, nor the losing side after", async () => {
    const { find, handlers, recordingId } = await ground();
    const answers = async () =>
      (await find("rear tire size"))
        .filter(({ kind }) => kind === "claim")
        .sort((a, b) => a.start - b.start)
        .map(({ start, disputed, answer }) => [start, disputed, answer]);
    expect(await answers()).toEqual([
      [30, true, null],
      [52, true, null],
    ]);
    const ruling = { recordingId, conflictKey: "measure/rear tire size", reason: "Read on the tire.", rightWords: null, initials: "AB" };
    await handlers["conflict.rule"]({ ...ruling, decision: "side-stands", side: 1 });
    expect(await answers()).toEqual([
      [30, false, null],
      [52, false, "Stock FK-1971: rear tire size 255/60R15, said at 0:52."],
    ]);
    await handlers["conflict.rule"]({ ...ruling, decision: "both-hold", side: null });
    expect((await answers()).every(([, , answer]) => answer !== null)).toBe(true);
    expect(() => handlers["conflict.rule"]({ ...ruling, decision: "recogniser-error", side: null })).toThrow(/which side was misheard/);
    await handlers["conflict.rule"]({ ...ruling, decision: "recogniser-error", side: 0, rightWords: "two fifty-five sixty fifteens" });
    expect(await answers()).toEqual([
      [30, false, null],
      [52, false, "Stock FK-1971: rear tire size 255/60R15, said at 0:52."],
    ]);
    expect((await find("rear tire size")).find(({ start }) => start === 30)).toMatchObject({
      overruled: true,
      withheld: { reason: "overruled", detail: null },
      rightWords: "two fifty-five sixty fifteens",
    });
    await handlers["conflict.rule"]({ ...ruling, decision: "look-at-vehicle", side: null });
    expect((await answers()).every(([, disputed, answer]) => disputed && answer === null)).toBe(true);
  });

  test.for([
    { why: "a hedged claim", rest: { stance: "hedged" } as const, hedged: true, reason: "hedged" },
    { why: "what somebody else said", rest: { stance: "reported" } as const, hedged: false, reason: "reported" },
    { why: "how it was formerly", rest: { time: "former" } as const, hedged: false, reason: "former" },
    { why: "a value that rests on an unsure repair", rest: { repairs: ["r1"] }, hedged: false, reason: "unsure-repair" },
  ])("$why is never given as fact, and it is said why", async ({ rest, hedged, reason }) => {
    const claim = sampleClaim("c1", 2, 30, "the rears are to 35 60 15s", rest);
    const [repair] = sampleAnalysis().repairs;
    const { find } = await ground(() =>
      sampleAnalysis({ claims: [claim], conflicts: [], repairs: [{ ...(repair as NonNullable<typeof repair>), sure: false }] }),
    );
    expect((await find("rear tire"))[0]).toMatchObject({ kind: "claim", hedged, answer: null, withheld: { reason } });
  });

  test("what the stock sheet denies is never given as fact", async () => {
    const { find } = await ground(() =>
      sampleAnalysis({
        denials: [{ id: "d1", key: "d", field: "glass", sheetValue: "chipped", claims: ["c4"], why: "The sheet says chipped." }],
      }),
    );
    expect((await find("windscreen"))[0]).toMatchObject({
      kind: "claim",
      answer: null,
      withheld: { reason: "sheet-denies", detail: "chipped" },
    });
  });

  test("a finding that was accepted from a claim goes with that claim; a person's own stays", async () => {
    const denial = { id: "d1", key: "d", field: "glass", sheetValue: "chipped", claims: ["c4"], why: "The sheet says chipped." };
    const { find, handlers, recordingId } = await ground(() => sampleAnalysis({ denials: [denial] }));
    const { findingProposals } = await handlers["recording.get"]({ id: recordingId });
    const proposal = findingProposals.find(({ claim }) => claim === "c4");
    await handlers["finding.accept"]({ recordingId, proposalKeys: [proposal?.key as string], initials: "AB" });
    const finding = async (query: string) => (await find(query)).find(({ kind }) => kind === "finding");
    expect(await finding("windscreen")).toMatchObject({ answer: null, withheld: { reason: "sheet-denies", detail: "chipped" } });
    const { start, end, zone } = { start: 33, end: 34, zone: "rear" } as const;
    await handlers["finding.add"]({
      ...{ recordingId, start, end, zone, component: "bumper", position: "rear", seen: "scraped", grade: "worn", note: "" },
      ...{ part: null, stillAt: null, initials: "AB" },
    });
    expect(await finding("scraped")).toMatchObject({ withheld: null, answer: expect.stringContaining("scraped") });
  });

  test("a disputed claim names its conflict", async () => {
    const { find } = await ground();
    const claims = (await find("rear tire size")).filter(({ kind }) => kind === "claim");
    expect(claims.map(({ conflictKey }) => conflictKey)).toEqual(["measure/rear tire size", "measure/rear tire size"]);
    expect(claims.map(({ subject }) => subject)).toEqual(["rear tire size", "rear tire size"]);
    expect((await find("windscreen"))[0]).toMatchObject({ kind: "claim", conflictKey: null });
    expect((await find("underside"))[0]).toMatchObject({ kind: "zone", conflictKey: null, subject: null });
  });

  test("people's zones and findings are found at once, and no longer once undone", async () => {
    const { find, handlers, recordingId } = await ground();
    expect(await find("roof")).toEqual([]);
    await handlers["zone.paint"]({ recordingId, start: 20, end: 25, zone: "roof", title: null, initials: "AB" });
    expect((await find("roof"))[0]).toMatchObject({ kind: "zone", start: 20, answer: "Stock FK-1971: roof from 0:20 to 0:25." });
    await handlers["finding.add"]({
      recordingId,
      start: 33,
      end: 34,
      zone: "rear",
      component: "bumper",
      position: "rear",
      seen: "scraped",
      grade: "worn",
      note: "",
      initials: "AB",
    });
    expect((await find("scraped"))[0]).toMatchObject({
      kind: "finding",
      start: 33,
      answer: "Stock FK-1971: rear bumper: scraped (worn), seen at 0:33.",
    });
    await handlers["edit.undo"]({ recordingId, initials: "AB" });
    await handlers["edit.undo"]({ recordingId, initials: "AB" });
    expect([await find("roof"), await find("scraped")]).toEqual([[], []]);
  });

  test("a recording is found by its new name, and one that was removed by none", async () => {
    const { find, handlers, recordingId, parts } = await ground();
    const { vehicle } = (await handlers["recording.get"]({ id: recordingId })).summary;
    await handlers["recording.describe"]({ id: recordingId, title: "Kestrel", stockNumber: "ZZ-9", vehicle });
    expect((await find("zz-9 chassis"))[0]).toMatchObject({ stockNumber: "ZZ-9", kind: "zone", start: 90 });
    await handlers["recording.remove"]({ id: recordingId });
    expect(await find("chassis")).toEqual([]);
    expect(parts.library.integrity()).toBe("ok");
  });

  test("a library that another program indexed is indexed anew when it is opened", async () => {
    const first = sampleApplication();
    const { id } = await importSample(first, first);
    const { library } = first.parts;
    library.transaction(() => {
      library.search.replace(id, "", ["zone", "claim", "finding", "caption"], []);
      library.settings.put("searchIndex", "0");
    });
    expect(await first.handlers["search.find"]({ query: "chassis", limit: 5 })).toEqual([]);
    await first.close();
    const second = sampleApplication({ folder: first.folder });
    expect(places(await second.handlers["search.find"]({ query: "fk-1971 chassis", limit: 5 }))[0]).toBe("zone@90");
  });

  test("over several recordings each hit names its own", async () => {
    const application = sampleApplication();
    for (const stockNumber of ["A-100", "B-200"])
      await importSample(application, { folder: application.folder, text: sampleTranscriptText, stockNumber, again: true });
    const hits = await application.handlers["search.find"]({ query: "which ones have a rust hole", limit: 10 });
    expect(hits.map(({ stockNumber, kind }) => `${stockNumber} ${kind}`)).toEqual(["B-200 claim", "A-100 claim"]);
    expect(
      (await application.handlers["search.find"]({ query: "a-100 rust hole", limit: 10 })).map(({ stockNumber }) => stockNumber),
    ).toEqual(["A-100"]);
  });

  test("one vehicle that is asked of answers alone, its spelling forgiven, and is not answered for by another", async () => {
    const application = sampleApplication();
    const ids: string[] = [];
    for (const stockNumber of ["A-100", "B-200"])
      ids.push((await importSample(application, { folder: application.folder, text: sampleTranscriptText, stockNumber, again: true })).id);
    const of = async (query: string, recordingId: string | undefined) =>
      (await application.handlers["search.find"]({ query, limit: 10, recordingId })).map(
        ({ stockNumber, kind }) => `${stockNumber} ${kind}`,
      );
    expect(await of("rust hole", ids[0])).toEqual(["A-100 claim"]);
    expect(await of("rust hole", ids[1])).toEqual(["B-200 claim"]);
    expect((await of("undersde", ids[0]))[0]).toBe("A-100 zone");
    expect(await of("B-200 rust hole", ids[0])).toEqual([]);
    expect(await of("rust hole", undefined)).toEqual(["B-200 claim", "A-100 claim"]);
  });
});

describe("words for the same thing", () => {
  test.for(sameThings.map(({ words, example }) => ({ ...example, words, why: `${example.query} finds “${example.text}”` })))(
    "$why",
    async ({ query, text }) => {
      const application = sampleApplication({
        answer: () => sampleAnalysis({ zones: [], claims: [], conflicts: [], repairs: [], chapters: [] }),
      });
      await importSample(application, { folder: application.folder, text: `[0:00] hello there\n[0:20] ${text}\n[0:40] bye now\n` });
      const hits = await application.handlers["search.find"]({ query, limit: 5 });
      expect(hits.map(({ start }) => start)).toContain(20);
    },
  );

  test("every word of a row finds every other", () => {
    for (const { words } of sameThings) {
      for (const word of words) {
        const [match = ""] = matchesFor(word);
        for (const other of words) expect(match, `${word} finds ${other}`).toContain(`"${other.replaceAll(/[-/]/g, " ")}"`);
      }
    }
  });

  test.for([
    ["tires", ["tire"]],
    ["bodies", ["bodie", "body"]],
    ["boxes", ["boxe", "box"]],
    ["glass", []],
    ["gas", []],
    ["15s", []],
  ] as const)("%s may be the plural of %j", ([word, expected]) => {
    expect(singulars(word)).toEqual(expected);
  });

  test("a number is found with and without its separators", () => {
    expect(valueWordings({ value: 38900 })).toContain("38,900");
    expect(valueWordings({ value: 4.1 })).toEqual(["4.1", "4.10"]);
    expect(valueWordings({ value: 4.11 })).toEqual(["4.11"]);
    expect(valueWordings({ value: "235/60R15" })).toEqual(["235/60R15", "235 60 15", "2356015"]);
  });
});
