// node tests/support/builders/keep-library.ts: keeps a library of the present form in fixtures/libraries, with what must be read from it.
// Run once before a migration is added; a kept library is never written again.
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { readMigrations } from "../../../electron/library/migrate.ts";
import { openApplication } from "../../../electron/services/open-application.ts";
import { sampleAnalysisRunner, sampleQuestion, sampleTranscriptText } from "./sample-analysis.ts";

const form = readMigrations().length;
const place = join(import.meta.dirname, "..", "..", "..", "fixtures", "libraries");
const kept = join(place, `form-${form}.sqlite`);
if (existsSync(kept)) throw new Error(`${kept} is there already; a kept library is never written again.`);

const folder = mkdtempSync(join(tmpdir(), "roundwalk-keep-"));
const libraryFile = join(folder, "library.sqlite");
let second = 0;
const application = openApplication({
  host: { name: "browser", version: "0.0.0", reveal: null },
  libraryFile,
  now: () => new Date(Date.UTC(2026, 0, 5, 10, 0, second++)).toISOString(),
  analysis: sampleAnalysisRunner(),
});
const { handlers, parts } = application;
const initials = "AB";
writeFileSync(join(folder, "kestrel.txt"), sampleTranscriptText);
writeFileSync(join(folder, "sheet.csv"), "Stock Number,Mileage,Recorded on\nFK-1971,68000,2026-01-05\n");
const { id: recordingId } = await handlers["recording.import"]({
  transcript: parts.files.offerPath(join(folder, "kestrel.txt")).id,
  video: null,
  stockSheet: parts.files.offerPath(join(folder, "sheet.csv")).id,
  title: "Kestrel walk round",
  stockNumber: "FK-1971",
  vehicle: { name: "Fallow Kestrel", year: 1971, bodyStyle: "coupe", drive: "left-hand" },
});
await handlers["settings.set"]({ initials });
const { findingProposals } = await handlers["zone.paint"]({
  recordingId,
  start: 20,
  end: 40,
  zone: "roof",
  title: "Roof, from above",
  initials,
});
await handlers["finding.accept"]({ recordingId, proposalKeys: findingProposals.map(({ key }) => key), initials });
const ruling = { recordingId, conflictKey: "measure/rear tire size", reason: "Read on the tire.", rightWords: null, initials };
await handlers["conflict.rule"]({ ...ruling, decision: "look-at-vehicle", side: null });
await handlers["conflict.rule"]({ ...ruling, decision: "side-stands", side: 1 });
await handlers["caption.correct"]({ recordingId, caption: 0, words: "Good morning from the forecourt.", initials });
await handlers["finding.add"]({
  recordingId,
  start: 33,
  end: 36,
  zone: "rear",
  component: "body",
  part: "trunk lid",
  position: "rear",
  seen: "a dent",
  grade: "damaged",
  note: "",
  stillAt: 33_000,
  initials,
});
const seen = { recordingId, matters: [{ about: "question" as const, key: sampleQuestion.key }], initials };
await handlers["matter.note"]({ ...seen, state: "waits", reason: "Nobody looked yet." });
await handlers["matter.note"]({ ...seen, state: "seen", reason: "It has none, and none is listed." });
await handlers["recording.publish"]({ recordingId, openConflictKeys: [], openMatters: [], initials });
await handlers["zone.split"]({ recordingId, at: 60, initials });
await handlers["edit.undo"]({ recordingId, initials });
const detail = await handlers["recording.get"]({ id: recordingId });
await application.close();

mkdirSync(place, { recursive: true });
const database = new Database(libraryFile);
// One file, without the log beside it.
database.pragma("journal_mode = DELETE");
database.prepare("VACUUM INTO ?").run(kept);
database.close();
writeFileSync(join(place, `form-${form}.json`), `${JSON.stringify(detail, null, 1)}\n`);
rmSync(folder, { recursive: true, force: true });
console.log(`Kept ${kept}.`);
