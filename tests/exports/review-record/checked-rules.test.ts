import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { standardRules } from "../../../electron/analysis/comparison/standards/index.ts";
import { publishedRules } from "../../../electron/analysis/promises/promise-rules.ts";
import { buildExport } from "../../../electron/exports/build-export.ts";
import { checkedRules, type RecordingDetail, ReviewRecord } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

const sources = new Map(checkedRules.map(({ name, source }) => [name, source]));

test("the record's list of rules is the analysis' own, name for name and source for source", () => {
  for (const { name, source } of [...standardRules, ...Object.values(publishedRules)]) expect(sources.get(name), name).toBe(source);
  expect(sources.size).toBe(checkedRules.length);
});

test("every rule that the comparison can object by is in it, and none that it cannot", () => {
  const folder = fileURLToPath(new URL("../../../electron/analysis/comparison", import.meta.url));
  const texts = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.includes("stock-sheet"))
    .map((name) => readFileSync(join(folder, name), "utf8"));
  const objecting = texts.flatMap((text) => [...text.matchAll(/\brule: "([a-z-]+)"/g)].map(([, name]) => name ?? ""));
  expect(objecting.length).toBeGreaterThan(20);
  for (const name of objecting) expect([...sources.keys()], name).toContain(name);
  const compared = checkedRules.filter(({ name }) => !name.includes(" ") && !standardRules.some((rule) => rule.name === name));
  const all = texts.join("\n");
  for (const { name } of compared) expect(all.includes(`"${name}"`), name).toBe(true);
});

describe("the record says what was checked, and by which rules", () => {
  const build = (format: "record-json" | "record-html", detail: RecordingDetail = sampleDetail()) =>
    buildExport(format, { detail, writtenAt: "2026-01-07T12:00:00.000Z", hashes: { video: null, transcript: "0".repeat(64) } }).text;

  test("those that found nothing too, with how often each objected", () => {
    const sample = sampleDetail();
    const detail = {
      ...sample,
      stockSheet: { stock: "FK-1971", miles: "68000", color: " " },
      analysis: { ...sample.analysis, doubtful: [0, 1].map((caption) => ({ caption, why: "music" })) },
      trustedCaptions: [{ caption: 1, initials: "AB" }],
    };
    const record = ReviewRecord.parse(JSON.parse(build("record-json", detail)));
    expect(record.checked).toEqual({
      captions: detail.captions.length,
      captionsLeftOut: 1,
      repairs: detail.analysis.repairs.length,
      claims: detail.analysis.claims.length,
      sheetFields: 2,
    });
    const objections = record.rules.reduce((sum, rule) => sum + rule.objections, 0);
    expect(objections).toBe(detail.analysis.conflicts.length + detail.analysis.remarks.length + detail.analysis.promises.length);
    expect(record.rules.find(({ name }) => name === "vin-check-digit")).toMatchObject({
      objections: 0,
      source: expect.stringMatching(/^49 CFR 565/),
    });
    const page = build("record-html").replaceAll(/<[^>]+>/g, " ");
    expect(page).toContain("Rules that found nothing");
    expect(page).toContain("vin check digit");
    expect(page).toContain(`${detail.analysis.claims.length} claims`);
  });

  test("one that was never analyzed was held against none", () => {
    const detail = sampleDetail();
    const never = { ...detail, analysis: { ...detail.analysis, analysisVersion: 0, conflicts: [], remarks: [], promises: [] } };
    expect(ReviewRecord.parse(JSON.parse(build("record-json", never))).rules).toEqual([]);
    expect(build("record-html", never)).toContain("was not analyzed when this was written");
  });
});
