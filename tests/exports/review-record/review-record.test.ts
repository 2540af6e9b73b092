import Ajv from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { buildExport } from "../../../electron/exports/build-export.ts";
import { recordHtml } from "../../../electron/exports/review-record/record-html.ts";
import { recordFault, recordText, reviewRecord, sha256 } from "../../../electron/exports/review-record/review-record.ts";
import type { RecordingDetail, SeenNote } from "../../../shared-types/index.ts";
import { sampleDetail } from "../sample-detail.ts";

const writtenAt = "2026-01-07T12:00:00.000Z";
const laterId = "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e0a";
const firstId = "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e0c";
const hashes = { video: sha256("video"), transcript: sha256("transcript") };

/** The sample, its ruling superseded by a later one, and a ruling on a conflict that is found no more. */
function ruledTwice(): RecordingDetail {
  const detail = sampleDetail();
  const first = detail.rulings[0]!;
  return {
    ...detail,
    rulings: [
      { ...first, supersededBy: laterId },
      { ...first, id: laterId, side: 1, reason: "Counted the teeth.", initials: "MK", at: "2026-01-06T10:00:00.000Z" },
      { ...first, id: "0b6a5c1e-8f57-4a55-9d2c-2f6f0f9c3e0b", conflictKey: "gone", topic: "wheel width", sideValues: ["6", "7"] },
    ],
  };
}

describe("review record", () => {
  const record = reviewRecord(ruledTwice(), writtenAt, hashes);

  test("every ruling is in it in time's order, the superseded one marked, and one on what is no longer found as well", () => {
    const ratio = record.conflicts.find(({ topic }) => topic === "axle ratio");
    expect(ratio?.rulings.map(({ initials, sideValue, superseded }) => ({ initials, sideValue, superseded }))).toEqual([
      { initials: "RT", sideValue: "4.11:1", superseded: true },
      { initials: "MK", sideValue: "3.73:1", superseded: false },
    ]);
    expect(record.formerRulings.map(({ topic }) => topic)).toEqual(["wheel width"]);
    expect(record.leftOpen).toEqual({
      conflicts: ["rear tire size"],
      matters: ["windshield: the stock sheet says cracked"],
      proposedFindings: 1,
      proposedZones: 0,
    });
    expect(record.recording).toMatchObject({ videoSha256: hashes.video, transcriptSha256: hashes.transcript });
  });

  test("what was noted on a denial is in it, the superseded note marked, and what nobody dealt with is named", () => {
    const detail = ruledTwice();
    expect(record.denials).toMatchObject([{ field: "windshield", notes: [], open: true }]);
    const page = recordHtml(record).replaceAll(/<[^>]+>/g, "");
    expect(page).toContain("Nobody has dealt with one other matter: windshield: the stock sheet says cracked.");
    const note = { about: "denial" as const, key: "glass", topic: "windshield", told: "It says cracked.", initials: "RT" };
    const seenNotes: SeenNote[] = [
      { ...note, id: laterId, state: "seen", reason: "The glass is new.", at: "2026-01-06T11:00:00.000Z", supersededBy: null },
      { ...note, id: firstId, state: "waits", reason: "Nobody looked.", at: "2026-01-06T10:00:00.000Z", supersededBy: laterId },
    ];
    const noted = reviewRecord({ ...detail, seenNotes }, writtenAt, hashes);
    expect(noted.denials).toMatchObject([
      {
        notes: [
          { reason: "Nobody looked.", superseded: true },
          { state: "seen", superseded: false },
        ],
        open: false,
      },
    ]);
    expect(noted.leftOpen.matters).toEqual([]);
    const told = recordHtml(noted).replaceAll(/<[^>]+>/g, "");
    expect(told).toContain("Every denial of the stock sheet, promise and question was dealt with.");
    expect(told).toContain("Superseded: Open again: Nobody looked. (RT, 2026-01-06T10:00:00.000Z)");
    expect(told).toContain("Seen: The glass is new. (RT, 2026-01-06T11:00:00.000Z)");
    expect(recordFault(recordText(noted))).toBeNull();
  });

  test("SHA-256 is the published one", () => {
    // FIPS 180-4 example, NIST "SHA256.pdf": the hash of "abc".
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  test("the seal holds for the file as written, and breaks with any change", () => {
    const text = recordText(record);
    expect(recordFault(text)).toBeNull();
    expect(recordFault(text.replace("Counted the teeth", "Counted no teeth"))).toContain("changed after it was written");
    expect(recordFault(text.replace(hashes.transcript, sha256("another")))).toContain("changed after it was written");
    expect(recordFault("{")).toContain("not JSON");
    expect(recordFault("{}")).toContain("no review record");
  });

  test("the JSON validates against the schema that is exported beside it", () => {
    const build = (format: "record-json" | "record-schema") => buildExport(format, { detail: ruledTwice(), writtenAt, hashes }).text;
    const validate = new Ajv({ strict: false }).compile(JSON.parse(build("record-schema")));
    expect(validate(JSON.parse(build("record-json"))), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...JSON.parse(build("record-json")), recordSha256: "short" })).toBe(false);
  });

  test("the page escapes everything, runs no script, loads nothing, and names what is open", () => {
    const page = buildExport("record-html", { detail: ruledTwice(), writtenAt, hashes }).text;
    expect(page).not.toContain("<script");
    expect(page).not.toMatch(/(?:src|href)=/);
    expect(page).toContain("&lt;/td&gt;&lt;script&gt;");
    expect(page).toContain("One conflict is open:</b> rear tire size.");
    expect(page).toContain(record.recordSha256);
  });

  test("the same library and moment give the same bytes", () => {
    expect(reviewRecord(ruledTwice(), writtenAt, hashes)).toEqual(record);
  });
});
