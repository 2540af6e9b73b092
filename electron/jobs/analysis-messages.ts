import type { Analysis, SheetMeanings, StockSheetFields, Transcript } from "../../shared-types/index.ts";

/** What the worker is asked. */
export interface AnalysisRequest {
  readonly job: number;
  readonly transcript: Transcript;
  readonly stockSheet: StockSheetFields | null;
  readonly sheetMeanings: SheetMeanings | null;
  readonly recordedOn: string | null;
  readonly trustedCaptions: readonly number[];
  /** One Int32 that becomes 1 when the job is cancelled; the worker looks at it between passes. */
  readonly cancelled: SharedArrayBuffer;
}

/** What the worker tells; `ready` once, when the analysis is loaded. */
export type AnalysisMessage =
  | { readonly kind: "ready"; readonly analysisVersion: number }
  | { readonly kind: "pass"; readonly job: number; readonly pass: string; readonly done: number; readonly of: number }
  | { readonly kind: "done"; readonly job: number; readonly analysis: Analysis }
  | { readonly kind: "cancelled"; readonly job: number }
  | { readonly kind: "failed"; readonly job: number; readonly message: string; readonly stack: string };
