import { copyFileSync, globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readMigrations } from "../../electron/library/migrate.ts";
import { RecordingDetail } from "../../shared-types/index.ts";
import { sampleApplication } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const place = join(import.meta.dirname, "..", "..", "fixtures", "libraries");
const forms = globSync("form-*.sqlite", { cwd: place }).map((name) => Number(/\d+/.exec(name)?.[0]));

/** What the library keeps, without what is worked out from it anew: a claim's zone follows people's spans. */
function stored({ lap: _lap, findingProposals: _proposals, summary: { counts: _counts, ...summary }, analysis, ...rest }: RecordingDetail) {
  return { ...rest, analysis: { ...analysis, claims: analysis.claims.map(({ zone: _zone, ...claim }) => claim) }, summary };
}

describe("libraries of every form that was ever given out", () => {
  test("are kept, the present form too (tests/support/builders/keep-library.ts keeps it)", () => {
    expect(forms).toContain(readMigrations().length);
  });

  test.for(forms)("form %d opens, and everything in it is read as it was written", async (form) => {
    const folder = temporaryFolder();
    copyFileSync(join(place, `form-${form}.sqlite`), join(folder, "library.sqlite"));
    const written = JSON.parse(readFileSync(join(place, `form-${form}.json`), "utf8"));
    // What is counted or listed only since is empty in an older library, until its recordings are analysed again.
    written.summary.counts.proposedZones ??= 0;
    written.summary.counts.openDenials ??= 0;
    written.summary.counts.openPromises ??= 0;
    written.summary.counts.openQuestions ??= 0;
    written.summary.published ??= null;
    written.summary.videoKept ??= false;
    const kept = RecordingDetail.parse({
      trustedCaptions: [],
      captionCorrections: [],
      publications: [],
      seenNotes: [],
      sheetMeanings: null,
      ...written,
      findings: written.findings.map((finding: object) => ({ part: null, stillAt: null, ...finding })),
      analysis: { promises: [], questions: [], supports: [], silences: [], ...written.analysis },
    });
    const { handlers, parts } = sampleApplication({ folder });
    const recordingId = kept.summary.id;
    expect(stored(await handlers["recording.get"]({ id: recordingId }))).toEqual(stored(kept));
    expect(await handlers["settings.get"]({})).toEqual({ initials: "AB" });
    expect((await handlers["search.find"]({ query: "roof", limit: 1 }))[0]).toMatchObject({ recordingId, kind: "zone", start: 20 });
    // The history still works in both directions.
    await handlers["edit.redo"]({ recordingId, initials: "AB" });
    for (let edits = parts.library.edits.of(recordingId).length; edits > 0; edits -= 1)
      await handlers["edit.undo"]({ recordingId, initials: "AB" });
    const start = await handlers["recording.get"]({ id: recordingId });
    expect([start.undoLabel, start.findings, start.lap.some(({ zoneSpanId }) => zoneSpanId !== null)]).toEqual([null, [], false]);
    expect(start.rulings).toHaveLength(2);
    expect(parts.library.integrity()).toBe("ok");
  });
});
