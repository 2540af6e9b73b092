import { bareStockNumber, type RecordingSummary } from "../../../shared-types/index.ts";
import type { ChosenStyle } from "../body-styles.ts";
import type { FoundFile } from "../files/found-file.ts";
import { type PairedBy, pairFiles } from "../files/pair-files.ts";
import { partOfKnownEnding, stockNumberOfFileName, titleOfFileName } from "../sort-files.ts";

/** What a person is shown before several recordings are imported, and may change. */
export interface ImportPlan {
  readonly files: readonly FoundFile[];
  readonly rows: readonly PlanRow[];
  /** Key of the sheet that serves every row without one of its own. */
  readonly lotSheet: string | null;
}

export interface PlanRow {
  /** Key of the transcript, which makes the recording. */
  readonly transcript: string;
  readonly taken: boolean;
  readonly title: string;
  readonly stockNumber: string;
  readonly video: string | null;
  readonly videoBy: PairedBy | "person" | null;
  /** A sheet of its own. */
  readonly stockSheet: string | null;
  readonly sheetBy: PairedBy | "person" | null;
  /** False leaves the lot's sheet out. */
  readonly fromLot: boolean;
  /** Null: as for all. */
  readonly bodyStyle: ChosenStyle | null;
}

export interface LeftOver {
  readonly file: FoundFile;
  readonly why: string;
  /** A transcript that can become a recording of its own. */
  readonly canBeRecording: boolean;
}

export function planOfFiles(files: readonly FoundFile[]): ImportPlan {
  const { recordings, lotSheet } = pairFiles(files);
  const names = new Map(files.map(({ key, name, folder }) => [key, { name, folder }]));
  const rows = recordings.map(
    (paired): PlanRow => ({ ...paired, ...described(names.get(paired.transcript)), taken: true, fromLot: true, bodyStyle: null }),
  );
  // As a list of files reads: "OS-9" before "OS-10".
  const place = ({ transcript }: PlanRow) => transcript;
  return { files, rows: rows.sort((a, b) => byNumbersToo.compare(place(a), place(b))), lotSheet };
}

const byNumbersToo = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

function described(file: { readonly name: string; readonly folder: string } | undefined): { title: string; stockNumber: string } {
  const name = file?.name ?? "";
  // "FK-1971/walk.vtt": the folder says more than the file.
  const folder = file?.folder.split("/").at(-1) ?? "";
  const stockNumber = stockNumberOfFileName(name) || stockNumberOfFileName(folder);
  // The stock number has a field of its own, and dashes in it are no spaces.
  const title = titleOfFileName(stockNumber === "" ? name : name.replace(stockNumber, "")) || stockNumber || titleOfFileName(name);
  const plainName = /^(?:walk|words|talk|transcript|captions|audio)$/i.test(title);
  return { title: folder !== "" && plainName ? `${folder} ${title}` : title, stockNumber };
}

/** Changes a row; a file that it takes is taken from whichever row had it. */
export function changeRow(plan: ImportPlan, transcript: string, change: Partial<PlanRow>): ImportPlan {
  return {
    ...plan,
    rows: plan.rows.map((row) => {
      if (row.transcript === transcript) return { ...row, ...change };
      const losesVideo = change.video != null && row.video === change.video;
      const losesSheet = change.stockSheet != null && row.stockSheet === change.stockSheet;
      return {
        ...row,
        ...(losesVideo ? { video: null, videoBy: null } : {}),
        ...(losesSheet ? { stockSheet: null, sheetBy: null } : {}),
      };
    }),
  };
}

/** Makes a left-over transcript a recording of its own. */
export function addRow(plan: ImportPlan, transcript: string): ImportPlan {
  const file = plan.files.find(({ key }) => key === transcript);
  const row: PlanRow = {
    transcript,
    ...described(file),
    taken: true,
    video: null,
    videoBy: null,
    stockSheet: null,
    sheetBy: null,
    fromLot: true,
    bodyStyle: null,
  };
  return { ...plan, rows: [...plan.rows, row] };
}

/** The sheet that a row is imported with. */
export function sheetOfRow(plan: ImportPlan, row: PlanRow): string | null {
  return row.stockSheet ?? (row.fromLot ? plan.lotSheet : null);
}

/** Every file that no row takes, with the reason. */
export function leftOver(plan: ImportPlan): LeftOver[] {
  const rows = plan.rows.filter(({ taken }) => taken);
  const used = new Set(rows.flatMap((row) => [row.transcript, row.video, sheetOfRow(plan, row)]));
  const ofRows = new Set(plan.rows.map(({ transcript }) => transcript));
  return plan.files
    .filter(({ key }) => !used.has(key))
    .map((file) => {
      const part = partOfKnownEnding(file.name);
      const rest = { file, canBeRecording: part === "transcript" && file.bytes > 0 && !ofRows.has(file.key) };
      if (file.bytes === 0) return { ...rest, why: "it is empty" };
      if (part === null) return { ...rest, why: "it is no video, transcript or stock sheet" };
      if (ofRows.has(file.key)) return { ...rest, why: "you left its recording out" };
      if (part === "transcript") return { ...rest, why: "another transcript of the same name was taken" };
      if (part === "video") return { ...rest, why: "no transcript goes with it; choose it beside a recording, if it belongs to one" };
      return { ...rest, why: "no transcript goes with it; choose it beside a recording, or for all" };
    });
}

/** A recording to come whose stock number another has, and which. */
export interface KnownRow {
  readonly row: PlanRow;
  readonly why: string;
}

type Known = Pick<RecordingSummary, "stockNumber" | "title" | "importedAt">;

/** Rows whose stock number the library has, or a row before them. What only a stock sheet tells is found when it is read. */
export function knownRows(plan: ImportPlan, recordings: readonly Known[]): KnownRow[] {
  const inLibrary = new Map(recordings.toReversed().map((recording) => [bareStockNumber(recording.stockNumber), recording]));
  const before = new Map<string, PlanRow>();
  return plan.rows
    .filter(({ taken }) => taken)
    .flatMap((row) => {
      const number = bareStockNumber(row.stockNumber);
      if (number === "") return [];
      const known = inLibrary.get(number);
      const first = before.get(number);
      before.set(number, first ?? row);
      if (known)
        return [{ row, why: `${known.stockNumber} is in the library as “${known.title}”, imported ${known.importedAt.slice(0, 10)}` }];
      return first ? [{ row, why: `${row.stockNumber} is also “${first.title}” among these` }] : [];
    });
}

/** What keeps the plan from being imported, in words; null when nothing does. */
export function faultOfPlan(plan: ImportPlan): string | null {
  const rows = plan.rows.filter(({ taken }) => taken);
  if (rows.length === 0) return "No recording is chosen.";
  const untitled = rows.filter(({ title }) => title.trim() === "").length;
  if (untitled > 0) return untitled === 1 ? "One recording has no title." : `${untitled} recordings have no title.`;
  return null;
}
