import type Database from "better-sqlite3";
import type { Analysis, Claim } from "../../shared-types/index.ts";
import { listTable, type RowMap } from "./list-table.ts";

type Lists = { [Name in keyof Analysis as Analysis[Name] extends readonly unknown[] ? Name : never]: Analysis[Name] };
type Item<Name extends keyof Lists> = Lists[Name][number];

/** Each list of an analysis: its table, and for each field the column and how it is kept. */
const lists = {
  zones: ["zone_proposals", { zone: "zone", start: "start", end: "end", confidence: "confidence", evidence: ["evidence", "json"] }],
  repairs: [
    "repairs",
    { id: "id", caption: "caption", spans: ["spans", "json"], heard: "heard", meant: "meant", rule: "rule", sure: ["sure", "boolean"] },
  ],
  claims: [
    "claims",
    {
      id: "id",
      captions: ["captions", "json"],
      start: "start",
      end: "end",
      quote: "quote",
      spans: ["spans", "json"],
      component: "component",
      part: "part",
      position: "vehicle_position",
      attribute: "attribute",
      value: ["value", "json"],
      unit: "unit",
      stance: "stance",
      time: "time",
      circumstance: "circumstance",
      zone: "zone",
      rule: "rule",
      repairs: ["repairs", "json"],
    },
  ],
  conflicts: [
    "conflicts",
    {
      id: "id",
      key: "key",
      kind: "kind",
      topic: "topic",
      why: "why",
      rule: "rule",
      standard: ["standard", "json"],
      weight: "weight",
      sides: ["sides", "json"],
    },
  ],
  remarks: ["remarks", { id: "id", key: "key", topic: "topic", why: "why", claims: ["claims", "json"], rule: "rule" }],
  denials: [
    "stock_sheet_denials",
    { id: "id", key: "key", field: "field", sheetValue: "sheet_value", claims: ["claims", "json"], why: "why" },
  ],
  supports: [
    "stock_sheet_supports",
    { id: "id", key: "key", field: "field", topic: "topic", sheetValue: "sheet_value", claims: ["claims", "json"], why: "why" },
  ],
  silences: ["stock_sheet_silences", { id: "id", key: "key", field: "field", topic: "topic", sheetValue: "sheet_value", why: "why" }],
  promises: [
    "spoken_promises",
    {
      id: "id",
      key: "key",
      kind: "kind",
      captions: ["captions", "json"],
      start: "start",
      end: "end",
      quote: "quote",
      spans: ["spans", "json"],
      why: "why",
      rule: ["rule", "json"],
    },
  ],
  questions: ["coverage_questions", { id: "id", key: "key", about: "about", topic: "topic", question: "question" }],
  doubtful: ["doubtful_captions", { caption: "caption", why: "why" }],
  chapters: ["chapter_proposals", { start: "start", end: "end", zone: "zone", title: "title" }],
} as const satisfies { [Name in keyof Lists]: readonly [string, RowMap<Item<Name>>] };

export function proposalTables(database: Database.Database) {
  const table = <Name extends keyof Lists>(name: Name) =>
    listTable<Item<Name>>(database, lists[name][0], lists[name][1] as unknown as RowMap<Item<Name>>);
  const tables = {
    zones: table("zones"),
    repairs: table("repairs"),
    claims: table("claims"),
    conflicts: table("conflicts"),
    remarks: table("remarks"),
    denials: table("denials"),
    supports: table("supports"),
    silences: table("silences"),
    promises: table("promises"),
    questions: table("questions"),
    doubtful: table("doubtful"),
    chapters: table("chapters"),
  };
  const insertAnalysis = database.prepare("INSERT INTO analyses (recording_id, analysis_version, analysed_at) VALUES (?, ?, ?)");
  const selectVersion = database.prepare("SELECT analysis_version FROM analyses WHERE recording_id = ?").pluck();
  const selectTime = database.prepare("SELECT analysed_at FROM analyses WHERE recording_id = ?").pluck();
  const removeAnalysis = database.prepare("DELETE FROM analyses WHERE recording_id = ?");
  const insertSide = database.prepare(
    "INSERT OR IGNORE INTO conflict_claims (recording_id, claim_id, conflict_key, side) VALUES (?, ?, ?, ?)",
  );
  const markOutdated = database.prepare("UPDATE analyses SET analysis_version = 0 WHERE recording_id = ?");
  const countClaims = database.prepare("SELECT count(*) FROM claims WHERE recording_id = ?").pluck();
  const outdated = database
    .prepare<[number], string>(
      `SELECT id FROM recordings LEFT JOIN analyses ON recording_id = id
       WHERE analysis_version IS NULL OR analysis_version <> ? ORDER BY imported_at DESC`,
    )
    .pluck();

  return {
    /** Puts a new analysis in the place of the former one, as a whole. */
    replace(recordingId: string, analysis: Analysis, analysedAt: string): void {
      removeAnalysis.run(recordingId);
      insertAnalysis.run(recordingId, analysis.analysisVersion, analysedAt);
      tables.zones.addAll(recordingId, analysis.zones);
      tables.repairs.addAll(recordingId, analysis.repairs);
      tables.claims.addAll(recordingId, analysis.claims);
      tables.conflicts.addAll(recordingId, analysis.conflicts);
      tables.remarks.addAll(recordingId, analysis.remarks);
      tables.denials.addAll(recordingId, analysis.denials);
      tables.supports.addAll(recordingId, analysis.supports);
      tables.silences.addAll(recordingId, analysis.silences);
      tables.promises.addAll(recordingId, analysis.promises);
      tables.questions.addAll(recordingId, analysis.questions);
      tables.doubtful.addAll(recordingId, analysis.doubtful);
      tables.chapters.addAll(recordingId, analysis.chapters);
      for (const conflict of analysis.conflicts) {
        for (const [side, { claims }] of conflict.sides.entries()) {
          for (const claim of claims) insertSide.run(recordingId, claim, conflict.key, side);
        }
      }
    },
    /** Undefined until the recording was analysed once. */
    of(recordingId: string): Analysis | undefined {
      const analysisVersion = selectVersion.get(recordingId) as number | undefined;
      if (analysisVersion === undefined) return undefined;
      return {
        analysisVersion,
        zones: tables.zones.of(recordingId),
        repairs: tables.repairs.of(recordingId),
        claims: tables.claims.of(recordingId),
        conflicts: tables.conflicts.of(recordingId),
        remarks: tables.remarks.of(recordingId),
        denials: tables.denials.of(recordingId),
        supports: tables.supports.of(recordingId),
        silences: tables.silences.of(recordingId),
        promises: tables.promises.of(recordingId),
        questions: tables.questions.of(recordingId),
        doubtful: tables.doubtful.of(recordingId),
        chapters: tables.chapters.of(recordingId),
      };
    },
    /** What the stock sheet denies; read alone, for the library's list. */
    denials: (recordingId: string): Analysis["denials"] => tables.denials.of(recordingId),
    promises: (recordingId: string): Analysis["promises"] => tables.promises.of(recordingId),
    questions: (recordingId: string): Analysis["questions"] => tables.questions.of(recordingId),
    /** When it was analysed: ISO 8601, UTC. */
    analysedAt: (recordingId: string): string | undefined => selectTime.get(recordingId) as string | undefined,
    /** What a lap is made from; empty until the recording was analysed. Read alone, since every list and edit needs it. */
    lapParts: (recordingId: string): Pick<Analysis, "zones" | "chapters"> => ({
      zones: tables.zones.of(recordingId),
      chapters: tables.chapters.of(recordingId),
    }),
    claims: (recordingId: string): Claim[] => tables.claims.of(recordingId),
    conflicts: (recordingId: string) => tables.conflicts.of(recordingId),
    countClaims: (recordingId: string): number => countClaims.get(recordingId) as number,
    /** Keeps the analysis for reading and has it made anew by whoever catches up. */
    markOutdated: (recordingId: string): void => {
      markOutdated.run(recordingId);
    },
    /** Recordings that were never analysed or by another version of the analysis. */
    outdated: (analysisVersion: number): string[] => outdated.all(analysisVersion),
  };
}
