import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fillTemplate } from "../../../electron/exports/templates/fill-template.ts";
import { readTemplate } from "../../../electron/exports/templates/read-template.ts";
import { cautions, firstTemplate, indexFieldRows, indexFields, proposalKey, type RecordingDetail } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

const writtenAt = "2026-01-05T10:00:00.000Z";
const fill = (text: string, detail: RecordingDetail = sampleDetail()) => fillTemplate(text, detail, writtenAt).text ?? "";
/** The text without what is added to every one. */
const body = (text: string, detail: RecordingDetail = sampleDetail()) =>
  fill(`${text}\u0000{open-conflicts}{cautions}`, detail).split("\u0000")[0];

describe("a template is read", () => {
  test.each([
    ["{title}", [{ field: "title" }]],
    ["Stock {stock-number}.", [{ text: "Stock " }, { field: "stock-number" }, { text: "." }]],
    ["{ Title }", [{ field: "title" }]],
    ["a {{brace}} b", [{ text: "a {brace} b" }]],
    ["{{{title}}}", [{ text: "{" }, { field: "title" }, { text: "}" }]],
    ["", []],
  ])("%j", (text, pieces) => {
    expect(readTemplate(text)).toEqual({ pieces, faults: [] });
  });

  test.each([
    ["{price}", 1, 1, "There is no field “price”. The fields are title, stock-number,"],
    ["Hello\n  {stock number}", 2, 3, "There is no field “stock number”. Did you mean “{stock-number}”?"],
    ["{title", 1, 1, "not closed on its line"],
    ["one\r\ntwo {title\r\n}", 2, 5, "not closed on its line"],
    ["a } b", 1, 3, "closes nothing"],
    ["🚙🚙 {x}", 1, 4, "no field “x”"],
    ["{}", 1, 1, "There is no field “”"],
    ["{constructor}", 1, 1, "There is no field “constructor”"],
    ["{__proto__}", 1, 1, "There is no field “__proto__”"],
    ["{title {vehicle}", 1, 1, "not closed"],
  ])("%j is refused at its place", (text, line, column, says) => {
    const [fault] = readTemplate(text).faults;
    expect(fault).toMatchObject({ line, column });
    expect(fault?.message).toContain(says);
    expect(fillTemplate(text, sampleDetail(), writtenAt).text).toBeNull();
  });

  test("every fault is told, and no text whatever breaks the reader", () => {
    expect(readTemplate("{a}\n{b}\n}").faults.map(({ line }) => line)).toEqual([1, 2, 3]);
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("{", "}", "a", "\n", "title", "🚙", " ") }), (text) => {
        const { pieces, faults } = readTemplate(text);
        if (!/[{}]/.test(text)) expect(pieces).toEqual(text === "" ? [] : [{ text }]);
        for (const { line, column } of faults) expect(text.split(/\r\n|\n|\r/)[line - 1]?.length ?? -1).toBeGreaterThanOrEqual(column - 1);
      }),
    );
  });

  test("braces written twice say any text at all", () => {
    fc.assert(
      fc.property(fc.string(), (words) => {
        const text = words.replaceAll("{", "{{").replaceAll("}", "}}");
        expect(readTemplate(text)).toEqual({ pieces: words === "" ? [] : [{ text: words }], faults: [] });
      }),
    );
  });
});

describe("a template is filled in", () => {
  test("every field of the list has a value, and no field writes another's braces", () => {
    for (const field of indexFields) expect(body(`{${field}}`), field).not.toBe("");
    expect(Object.keys(indexFieldRows)).toEqual(indexFields);
  });

  test("the template to begin with fills in whole", () => {
    expect(fillTemplate(firstTemplate.text, sampleDetail(), writtenAt).faults).toEqual([]);
    expect(fill(firstTemplate.text)).not.toMatch(/[{}]/);
  });

  test("open conflicts and cautions are in every text, also where the template does not place them", () => {
    const detail = sampleDetail();
    expect(detail.openConflictKeys.length).toBeGreaterThan(0);
    const text = fill("Buy it.", detail);
    for (const topic of detail.analysis.conflicts.filter(({ key }) => detail.openConflictKeys.includes(key)).map(({ topic }) => topic))
      expect(text.toLowerCase()).toContain(topic.toLowerCase());
    expect(text).toContain("Not yet checked; ask before you rely on it:");
    for (const caution of Object.values(cautions)) expect(text).toContain(caution);
    const placed = fill("{open-conflicts}\n{cautions}", detail);
    expect(placed.split(cautions.inspection)).toHaveLength(2);
    expect(placed).not.toContain("Not yet checked");
  });

  test("nothing open says so in words, and adds no list", () => {
    const detail = { ...sampleDetail(), openConflictKeys: [] };
    expect(body("{open-conflicts}", detail)).toBe("No conflict is open.");
    expect(fill("Buy it.", detail)).not.toContain("Not yet checked");
  });

  test("a proposal that nobody accepted is no finding", () => {
    const detail = { ...sampleDetail(), findings: [] };
    expect(body("{findings}", detail)).toBe("No findings were accepted.");
  });

  test("a chapter and a finding on something disputed carry the mark", () => {
    const sample = sampleDetail();
    const [conflict] = sample.analysis.conflicts.filter(({ key }) => sample.openConflictKeys.includes(key));
    const claim = sample.analysis.claims.find(({ id }) => id === conflict?.sides[0]?.claims[0]);
    const [finding] = sample.findings;
    const detail = { ...sample, findings: [{ ...finding!, component: claim!.component, position: claim!.position, part: null }] };
    expect(body("{findings}", detail)).toContain(`[open conflict: ${conflict?.topic}]`);
    expect(body("{chapters}", detail)).toContain("[open conflict");
  });

  test("a finding from a claim that was said with doubt says so, and a settled claim that something speaks against too", () => {
    const sample = sampleDetail();
    const [first, ...rest] = sample.analysis.claims;
    const doubted = { ...first!, stance: "hedged" as const };
    const [finding] = sample.findings;
    const detail = {
      ...sample,
      findings: [{ ...finding!, proposalKey: proposalKey(doubted) }],
      analysis: { ...sample.analysis, claims: [doubted, ...rest] },
    };
    expect(body("{findings}", detail)).toMatch(/\(said with doubt\) \[open conflict: rear tire size\]$/);
    const standing = sample.analysis.conflicts.find(({ topic }) => topic === "axle ratio")!.sides[0]!.claims;
    const denials = [{ ...sample.analysis.denials[0]!, claims: [...standing] }];
    const denied = { ...sample, analysis: { ...sample.analysis, denials } };
    expect(body("{settled}", denied)).toContain("). [the stock sheet says otherwise]");
  });

  test("published with conflicts open, every text says so", () => {
    const publications = [{ at: "2026-01-06T09:00:00.000Z", initials: "AB", openConflicts: 1, openMatters: null }];
    expect(fill("Buy it.", { ...sampleDetail(), publications })).toContain("Published on 2026-01-06 by AB with 1 conflict open");
    expect(fill("Buy it.", { ...sampleDetail(), publications, openConflictKeys: [] })).not.toContain("Published");
    expect(fill("Buy it.")).not.toContain("Published");
  });

  test("words with line breaks and braces in them stay on their line and are not read as fields", () => {
    const sample = sampleDetail();
    const detail = { ...sample, summary: { ...sample.summary, title: "One\n0:00 Fake {chapters}" } };
    expect(body("{title}", detail)).toBe("One 0:00 Fake {chapters}");
  });

  test("the same recording and time give the same text", () => {
    expect(fill(firstTemplate.text)).toBe(fill(firstTemplate.text));
  });
});
