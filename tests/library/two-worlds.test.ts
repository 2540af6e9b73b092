import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { openLibrary } from "../../electron/library/open-library.ts";
import { Analysis, type Ruling } from "../../shared-types/index.ts";
import { sampleAnalysis, sampleClaim } from "../support/builders/sample-analysis.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const id = "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e01";
const peoplesTables = ["zone_spans", "findings", "rulings", "edits"];
const proposalTables = [
  "analyses",
  "zone_proposals",
  "repairs",
  "claims",
  "conflicts",
  "conflict_claims",
  "remarks",
  "stock_sheet_denials",
  "stock_sheet_supports",
  "stock_sheet_silences",
  "doubtful_captions",
  "chapter_proposals",
];

const ruling: Ruling = {
  id: "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e02",
  conflictKey: "measure/rear tire size",
  decision: "side-stands",
  side: 0,
  reason: "Read on the tire.",
  rightWords: null,
  initials: "AB",
  at: "2026-01-05T10:00:00.000Z",
  supersededBy: null,
  topic: "rear tire size",
  sideValues: ["235/60R15", "255/60R15"],
};

function libraryWithRecording() {
  const file = join(temporaryFolder(), "library.sqlite");
  const library = openLibrary(file);
  library.transaction(() => {
    library.recordings.add(
      {
        id,
        title: "Kestrel",
        stockNumber: "FK-1971",
        vehicle: { name: "Fallow Kestrel", year: null, bodyStyle: "coupe", drive: "right-hand" },
        duration: 120,
        recordedOn: null,
        importedAt: "2026-01-05T10:00:00.000Z",
        transcriptFile: "kestrel.vtt",
        transcriptFormat: "webvtt",
        transcriptEnd: 120,
        video: null,
        stockSheet: { "stock number": "FK-1971", mileage: "68,000" },
        sheetForm: "mileage|stock number",
        sheetMeanings: { "stock number": "stock-number", mileage: "mileage" },
      },
      Buffer.from("WEBVTT"),
    );
    library.captions.addAll(id, [{ index: 0, start: 0, end: 5, text: "Morning — ‘boot’ & 235/60R15" }]);
    library.proposals.replace(id, sampleAnalysis(), "2026-01-05T10:00:01.000Z");
    library.zoneSpans.put(id, { id: "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e03", zone: "roof", start: 1, end: 2, title: null, initials: "AB" });
    library.rulings.put(id, ruling);
    library.edits.add(id, { label: "x", initials: "AB", at: "2026-01-05T10:00:02.000Z", changes: [] });
  });
  return { file, library };
}

function rowsOf(file: string, tables: readonly string[]): unknown {
  const database = new Database(file, { readonly: true });
  const rows = Object.fromEntries(tables.map((table) => [table, database.prepare(`SELECT * FROM ${table}`).all()]));
  database.close();
  return rows;
}

describe("what the analysis proposed and what people did", () => {
  test("come out as they went in", () => {
    const { library } = libraryWithRecording();
    const rich = sampleAnalysis({
      claims: [
        sampleClaim("c1", 0, 1.25, "“quoted” words\n", { value: 4.11, unit: "µm", part: "sway bar", circumstance: "cold", position: null }),
        sampleClaim("c2", 0, 2, "a word", { value: "4.11", time: "former" }),
      ],
      conflicts: [
        {
          id: "k1",
          key: "k",
          kind: "standard",
          topic: "t",
          why: "w",
          rule: "r",
          standard: { name: "n", source: "s", working: "1 + 1 = 2" },
          weight: 12.5,
          sides: [
            { value: 4.11, unit: "in", claims: ["c1"] },
            { value: "4.11", unit: null, claims: ["c2"] },
          ],
        },
      ],
      denials: [{ id: "d1", key: "k", field: "mileage", sheetValue: "68,000", claims: ["c1"], why: "w" }],
    });
    expect(Analysis.parse(rich)).toEqual(rich);
    library.transaction(() => library.proposals.replace(id, rich, "2026-01-05T11:00:00.000Z"));
    expect(library.proposals.of(id)).toEqual(rich);
    expect(library.recordings.get(id)).toMatchObject({ stockSheet: { "stock number": "FK-1971", mileage: "68,000" }, video: null });
    expect(Buffer.from(library.recordings.transcriptBytes(id) ?? []).toString()).toBe("WEBVTT");
    expect(library.captions.of(id)).toEqual([{ index: 0, start: 0, end: 5, text: "Morning — ‘boot’ & 235/60R15" }]);
    library.close();
  });

  test("analysing again replaces every proposal and touches nothing of people's", () => {
    const { file, library } = libraryWithRecording();
    const before = rowsOf(file, peoplesTables);
    library.transaction(() =>
      library.proposals.replace(
        id,
        sampleAnalysis({ analysisVersion: 8, claims: [], conflicts: [], repairs: [], zones: [] }),
        "2027-01-01T00:00:00.000Z",
      ),
    );
    expect(rowsOf(file, peoplesTables)).toEqual(before);
    expect(library.proposals.of(id)).toMatchObject({ analysisVersion: 8, claims: [], conflicts: [], repairs: [], zones: [] });
    expect(library.proposals.outdated(8)).toEqual([]);
    expect(library.proposals.outdated(9)).toEqual([id]);
    library.close();
  });

  test("no table of people's work refers to a proposal", () => {
    const { file, library } = libraryWithRecording();
    library.close();
    const database = new Database(file, { readonly: true });
    for (const table of peoplesTables) {
      const parents = (database.pragma(`foreign_key_list(${table})`) as { table: string }[]).map((key) => key.table);
      expect(parents.filter((parent) => proposalTables.includes(parent))).toEqual([]);
    }
    database.close();
  });

  test("two programs on one library both find what the other wrote", () => {
    const { file, library } = libraryWithRecording();
    const other = openLibrary(file);
    for (let round = 0; round < 20; round += 1) {
      const writer = round % 2 === 0 ? library : other;
      writer.transaction(() =>
        writer.edits.add(id, { label: `edit ${round}`, initials: "AB", at: "2026-01-05T10:00:02.000Z", changes: [] }),
      );
    }
    expect(library.edits.of(id)).toEqual(other.edits.of(id));
    expect(library.edits.of(id)).toHaveLength(21);
    other.close();
    library.close();
  });

  test("a transaction that fails leaves nothing", () => {
    const { file, library } = libraryWithRecording();
    const before = rowsOf(file, [...peoplesTables, ...proposalTables]);
    expect(() =>
      library.transaction(() => {
        library.proposals.replace(id, sampleAnalysis({ analysisVersion: 9 }), "2027-01-01T00:00:00.000Z");
        library.zoneSpans.put(id, { id, zone: "rear", start: 5, end: 4, title: null, initials: "AB" });
      }),
    ).toThrow(/CHECK/);
    expect(rowsOf(file, [...peoplesTables, ...proposalTables])).toEqual(before);
    library.close();
  });
});

describe("rulings", () => {
  test("are never deleted or reworded, only superseded, also not by another program", () => {
    const { file, library } = libraryWithRecording();
    library.close();
    const database = new Database(file);
    expect(() => database.exec("DELETE FROM rulings")).toThrow(/superseded, never deleted/);
    expect(() => database.exec("UPDATE rulings SET reason = 'other'")).toThrow(/never reworded/);
    expect(() => database.exec("UPDATE rulings SET superseded_by = id")).not.toThrow();
    database.close();
  });

  test("stand alone: a second standing ruling on a conflict is refused", () => {
    const { library } = libraryWithRecording();
    expect(() => library.rulings.put(id, { ...ruling, id: "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e09" })).toThrow(/UNIQUE/);
    library.close();
  });

  test.for([
    { decision: "side-stands", open: false },
    { decision: "both-hold", open: false },
    { decision: "recogniser-error", open: false },
    { decision: "look-at-vehicle", open: true },
  ] as const)("$decision leaves the conflict open: $open", ({ decision, open }) => {
    const { library } = libraryWithRecording();
    const second = "5d2f7c1e-8f57-4a55-9d2c-2f6f0f9c3e09";
    library.rulings.put(id, { ...ruling, supersededBy: second });
    library.rulings.put(id, { ...ruling, id: second, decision });
    expect(library.rulings.openConflictKeys(id)).toEqual(open ? [ruling.conflictKey] : []);
    library.close();
  });

  test("go with their recording when that is removed", () => {
    const { file, library } = libraryWithRecording();
    library.transaction(() => library.recordings.remove(id));
    const rows = rowsOf(file, [
      ...peoplesTables,
      ...proposalTables,
      "captions",
      "search_entries",
      "transcript_originals",
      "stock_sheet_fields",
    ]);
    expect(Object.values(rows as Record<string, unknown[]>).flat()).toEqual([]);
    library.close();
  });
});
