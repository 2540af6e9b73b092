import { describe, expect, test } from "vitest";
import { buildExport } from "../../electron/exports/build-export.ts";
import type { RecordingDetail, Ruling } from "../../shared-types/index.ts";
import { sampleDetail } from "./sample-detail.ts";

const writtenAt = "2026-01-10T10:00:00.000Z";
const textOf = (format: Parameters<typeof buildExport>[0], detail: RecordingDetail) => buildExport(format, { detail, writtenAt }).text;

function withRuling(detail: RecordingDetail, changes: Partial<Ruling>): RecordingDetail {
  return { ...detail, rulings: detail.rulings.map((ruling) => ({ ...ruling, ...changes })) };
}

/** Another claim of the same part, value and moment, in a longer quote, on the side of the claim that it repeats. */
function toldTwice(detail: RecordingDetail, id: string): RecordingDetail {
  const again = detail.analysis.claims
    .filter((claim) => claim.id === id)
    .map((claim) => ({ ...claim, id: `${id}b`, quote: `${claim.quote} in it`, circumstance: "praise" }));
  const conflicts = detail.analysis.conflicts.map((conflict) => ({
    ...conflict,
    sides: conflict.sides.map((side) => (side.claims.includes(id) ? { ...side, claims: [...side.claims, `${id}b`] } : side)),
  }));
  return { ...detail, analysis: { ...detail.analysis, claims: [...detail.analysis.claims, ...again], conflicts } };
}

describe("what the stock sheet denies stands beside “no conflict is open”", () => {
  const settled: RecordingDetail = { ...sampleDetail(), openConflictKeys: [] };
  const words = "The stock sheet says otherwise: The stock sheet says cracked; good was said.";

  test("in the listing text, right after what is open", () => {
    expect(textOf("index-text", settled)).toContain(`No conflict is open.\n${words}\n`);
  });

  test("in the first box of the page, which is then not the color of what is settled", () => {
    const box = /<div class="(standing[^"]*)">(.*?)<\/div>/s.exec(textOf("index-html", settled))!;
    expect(box[1]).toBe("standing standing-open");
    expect(box[2]).toContain("The stock sheet says cracked; good was said.");
  });

  test("and nothing of it where the sheet denies nothing", () => {
    const undenied = { ...settled, analysis: { ...settled.analysis, denials: [] } };
    expect(textOf("index-text", undenied)).not.toContain("says otherwise");
    expect(textOf("index-html", undenied)).toContain('<div class="standing">');
  });
});

describe("both hold", () => {
  const both = withRuling(sampleDetail(), { decision: "both-hold", side: null, reason: "The axle was changed half way." });
  const words = "both hold, 4.11:1 and 3.73:1: The axle was changed half way";

  test("either row of the index, either row of the table and either chapter carries both values and the reason", () => {
    const page = textOf("index-html", both);
    const rows = page.split('<li class="claim').filter((row) => row.includes("Final drive ratio") || row.includes("final drive ratio"));
    expect(rows.map((row) => row.includes(words))).toEqual([true, true]);
    expect(textOf("index-csv", both).split(`[${words}]`)).toHaveLength(3);
    const chapters = buildExport("chapters-webvtt", { detail: both, writtenAt, granularity: "everything" }).text;
    expect(chapters.split(words)).toHaveLength(3);
  });

  test("a ruling for one side says nothing of the kind", () => {
    expect(textOf("index-html", sampleDetail())).not.toContain("both hold");
  });
});

describe("said twice in one breath", () => {
  test("is one line of the listing text and one row of the index, and the count says why", () => {
    const twice = toldTwice(sampleDetail(), "c4");
    for (const format of ["index-text", "correction-text"] as const)
      expect(textOf(format, twice).match(/3\.73:1 was said/g), format).toHaveLength(1);
    const page = textOf("index-html", twice);
    const rows = page.split('<li class="claim').filter((row) => row.includes(">3.73:1</b>"));
    expect(rows).toHaveLength(1);
    expect(rows[0]).toContain("three seventy three in it");
    expect(rows[0]).toContain("not so: overruled in review");
    expect(page).toContain("1 of them says what another says in the same words and shares its row.");
  });

  test("later in the film it is a row of its own, and the same line of the ruling names both moments", () => {
    const detail = toldTwice(sampleDetail(), "c4");
    const claims = detail.analysis.claims.map((claim) => (claim.id === "c4b" ? { ...claim, start: 110 } : claim));
    const later = { ...detail, analysis: { ...detail.analysis, claims } };
    expect(textOf("index-text", later)).toContain("1:20, 1:50 Axle ratio: 3.73:1 was said; 4.11:1 is right");
    expect(textOf("index-html", later).split(">3.73:1</b>")).toHaveLength(3);
  });
});

describe("a chapter that nobody accepted", () => {
  const remark = "Proposed by the analysis, accepted by nobody yet: ";
  test.for(["chapters-webvtt", "chapters-matroska", "chapters-ffmpeg", "chapters-podcast", "chapters-jsonld"] as const)(
    "is said to be proposed in %s, once and outside the titles",
    (format) => {
      const text = textOf(format, sampleDetail());
      expect(text.split(remark)).toHaveLength(2);
      expect(text.slice(text.indexOf(remark))).toMatch(/^.*1:15 Underside\b/);
    },
  );

  test("has no place in a plain list, and whoever writes one is told", () => {
    const { text, warnings } = buildExport("chapters-list", { detail: sampleDetail(), writtenAt });
    expect(text).not.toContain("roposed");
    expect(warnings.join(" ")).toContain("only proposed; a list for a video's description has no place to say so.");
  });

  test("and nothing of it where people drew all", () => {
    const detail = sampleDetail();
    const drawn = { ...detail, lap: detail.lap.map((span) => ({ ...span, zoneSpanId: "6f0f9c3e-6f0a-4a0b-9a3a-0d7f6f1f2a09" })) };
    expect(textOf("chapters-webvtt", drawn)).not.toContain("roposed");
  });
});
