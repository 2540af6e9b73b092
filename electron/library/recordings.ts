import type Database from "better-sqlite3";
import type { SheetField, SheetMeanings, StockSheetFields, TranscriptFormat, Vehicle } from "../../shared-types/index.ts";

export interface RecordingVideo {
  /** Absolute, or relative to the library's folder where the library keeps the video itself. */
  readonly path: string;
  /** As the person knows it. */
  readonly name: string;
  readonly mediaType: string;
}

/** A dealer's record as it is kept. */
export interface KeptSheet {
  readonly fields: StockSheetFields;
  readonly form: string | null;
  readonly meanings: SheetMeanings | null;
}

export interface RecordingRow {
  readonly id: string;
  readonly title: string;
  readonly stockNumber: string;
  readonly vehicle: Vehicle;
  /** Seconds. */
  readonly duration: number;
  /** ISO 8601 date, where the dealer's record gives it. */
  readonly recordedOn: string | null;
  /** ISO 8601, UTC. */
  readonly importedAt: string;
  readonly transcriptFile: string;
  readonly transcriptFormat: TranscriptFormat;
  /** Seconds: the end the transcript itself gives or lets one guess. */
  readonly transcriptEnd: number;
  readonly video: RecordingVideo | null;
  readonly stockSheet: StockSheetFields | null;
  /** The header's form that the sheet came in; null without a sheet, and for one that came in before forms were kept. */
  readonly sheetForm: string | null;
  /** What each of the sheet's columns means; null where `sheetForm` is. */
  readonly sheetMeanings: SheetMeanings | null;
}

interface Columns {
  id: string;
  title: string;
  stock_number: string;
  vehicle_name: string;
  vehicle_year: number | null;
  body_style: string;
  drive: string;
  duration: number;
  recorded_on: string | null;
  imported_at: string;
  transcript_file: string;
  transcript_format: string;
  transcript_end: number;
  video_path: string | null;
  video_name: string | null;
  video_media_type: string | null;
  stock_sheet_form: string | null;
}

export function recordingsTable(database: Database.Database) {
  const insert = database.prepare(
    `INSERT INTO recordings (id, title, stock_number, vehicle_name, vehicle_year, body_style, drive, duration, recorded_on, imported_at,
      transcript_file, transcript_format, transcript_end, video_path, video_name, video_media_type, stock_sheet_form)
     VALUES (@id, @title, @stock_number, @vehicle_name, @vehicle_year, @body_style, @drive, @duration, @recorded_on, @imported_at,
      @transcript_file, @transcript_format, @transcript_end, @video_path, @video_name, @video_media_type, @stock_sheet_form)`,
  );
  const insertField = database.prepare(
    "INSERT INTO stock_sheet_fields (recording_id, position, field, value, meaning) VALUES (?, ?, ?, ?, ?)",
  );
  const insertOriginal = database.prepare("INSERT INTO transcript_originals (recording_id, bytes) VALUES (?, ?)");
  const selectOriginal = database.prepare<[string], Buffer>("SELECT bytes FROM transcript_originals WHERE recording_id = ?").pluck();
  const selectByOriginal = database
    .prepare<[Buffer], string>(
      `SELECT id FROM transcript_originals JOIN recordings ON id = recording_id WHERE bytes = ? ORDER BY imported_at DESC LIMIT 1`,
    )
    .pluck();
  const selectFields = database.prepare<[string], { field: string; value: string; meaning: SheetField | null }>(
    "SELECT field, value, meaning FROM stock_sheet_fields WHERE recording_id = ? ORDER BY position",
  );
  const setForm = database.prepare("UPDATE recordings SET stock_sheet_form = ? WHERE id = ?");
  const clearFields = database.prepare("DELETE FROM stock_sheet_fields WHERE recording_id = ?");
  const setMeaning = database.prepare("UPDATE stock_sheet_fields SET meaning = ? WHERE recording_id = ? AND field = ?");
  const selectOne = database.prepare<[string], Columns>("SELECT * FROM recordings WHERE id = ?");
  const selectAll = database.prepare<[], Columns>("SELECT * FROM recordings ORDER BY imported_at DESC, rowid DESC");
  const describe = database.prepare(
    `UPDATE recordings SET title = @title, stock_number = @stock_number, vehicle_name = @vehicle_name, vehicle_year = @vehicle_year,
      body_style = @body_style, drive = @drive WHERE id = @id`,
  );
  const setDuration = database.prepare("UPDATE recordings SET duration = ? WHERE id = ?");
  const setVideo = database.prepare("UPDATE recordings SET video_path = ?, video_name = ?, video_media_type = ? WHERE id = ?");
  const remove = database.prepare("DELETE FROM recordings WHERE id = ?");
  const count = database.prepare("SELECT count(*) FROM recordings").pluck();

  const read = (columns: Columns): RecordingRow => {
    const fields = selectFields.all(columns.id);
    return {
      id: columns.id,
      title: columns.title,
      stockNumber: columns.stock_number,
      vehicle: {
        name: columns.vehicle_name,
        year: columns.vehicle_year,
        bodyStyle: columns.body_style as Vehicle["bodyStyle"],
        drive: columns.drive as Vehicle["drive"],
      },
      duration: columns.duration,
      recordedOn: columns.recorded_on,
      importedAt: columns.imported_at,
      transcriptFile: columns.transcript_file,
      transcriptFormat: columns.transcript_format as TranscriptFormat,
      transcriptEnd: columns.transcript_end,
      video:
        columns.video_path === null
          ? null
          : { path: columns.video_path, name: columns.video_name ?? "", mediaType: columns.video_media_type ?? "" },
      stockSheet: fields.length === 0 ? null : Object.fromEntries(fields.map(({ field, value }) => [field, value])),
      sheetForm: columns.stock_sheet_form,
      sheetMeanings: columns.stock_sheet_form === null ? null : Object.fromEntries(fields.map(({ field, meaning }) => [field, meaning])),
    };
  };

  return {
    add(row: RecordingRow, transcriptBytes: Uint8Array): void {
      insert.run({
        id: row.id,
        ...described(row),
        duration: row.duration,
        recorded_on: row.recordedOn,
        imported_at: row.importedAt,
        transcript_file: row.transcriptFile,
        transcript_format: row.transcriptFormat,
        transcript_end: row.transcriptEnd,
        video_path: row.video?.path ?? null,
        video_name: row.video?.name ?? null,
        video_media_type: row.video?.mediaType ?? null,
        stock_sheet_form: row.sheetForm,
      });
      insertOriginal.run(row.id, Buffer.from(transcriptBytes));
      for (const [position, [field, value]] of Object.entries(row.stockSheet ?? {}).entries())
        insertField.run(row.id, position, field, value, row.sheetMeanings?.[field] ?? null);
    },
    get(id: string): RecordingRow | undefined {
      const columns = selectOne.get(id);
      return columns && read(columns);
    },
    /** Newest first. */
    all: (): RecordingRow[] => selectAll.all().map(read),
    /** The transcript's bytes as they were imported. */
    transcriptBytes: (id: string): Uint8Array | undefined => selectOriginal.get(id),
    /** The latest recording that came from these very bytes. */
    ofTranscript(bytes: Uint8Array): RecordingRow | undefined {
      const id = selectByOriginal.get(Buffer.from(bytes));
      const columns = id === undefined ? undefined : selectOne.get(id);
      return columns && read(columns);
    },
    describe: (row: Pick<RecordingRow, "id" | "title" | "stockNumber" | "vehicle">): void => {
      describe.run({ id: row.id, ...described(row) });
    },
    setDuration: (id: string, seconds: number): void => {
      setDuration.run(seconds, id);
    },
    setVideo: (id: string, { path, name, mediaType }: RecordingVideo): void => {
      setVideo.run(path, name, mediaType, id);
    },
    /** Settles what the columns of a kept sheet mean; the sheet itself stays as it came. */
    setSheetMeanings: (id: string, form: string, meanings: SheetMeanings): void => {
      setForm.run(form, id);
      for (const [field, meaning] of Object.entries(meanings)) setMeaning.run(meaning, id, field);
    },
    /** Puts a dealer's record in the place of the former one. `form` and `meanings` are null where they were never settled. */
    setStockSheet: (id: string, sheet: KeptSheet): void => {
      clearFields.run(id);
      for (const [position, [field, value]] of Object.entries(sheet.fields).entries())
        insertField.run(id, position, field, value, sheet.meanings?.[field] ?? null);
      setForm.run(sheet.form, id);
    },
    /** Takes everything of the recording with it, people's work included. */
    remove: (id: string): void => {
      remove.run(id);
    },
    count: (): number => count.get() as number,
  };
}

function described(row: Pick<RecordingRow, "title" | "stockNumber" | "vehicle">) {
  return {
    title: row.title,
    stock_number: row.stockNumber,
    vehicle_name: row.vehicle.name,
    vehicle_year: row.vehicle.year,
    body_style: row.vehicle.bodyStyle,
    drive: row.vehicle.drive,
  };
}
