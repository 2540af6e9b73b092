import { counted } from "../../shared/count.ts";
import type { ImportPart } from "../sort-files.ts";
import { isSettled, type LineState, type RunLine } from "./import-run.ts";

const partWords = { transcript: "transcript", video: "video", stockSheet: "stock sheet" } as const satisfies Record<ImportPart, string>;

/** Bytes as people say them, to two figures. */
export function sizeLabel(bytes: number): string {
  const units = ["bytes", "kB", "MB", "GB", "TB"];
  let amount = bytes;
  let unit = 0;
  while (amount >= 999.5 && unit < units.length - 1) {
    amount /= 1000;
    unit++;
  }
  return `${unit === 0 || amount >= 9.95 ? Math.round(amount) : amount.toFixed(1)} ${units[unit]}`;
}

/** How a line stands, in words. */
export function lineWords(state: LineState): string {
  switch (state.kind) {
    case "waiting":
      return "waits for its turn";
    case "handing-over":
      return `handing over the ${partWords[state.part]}, ${sizeLabel(state.sentBytes)} of ${sizeLabel(state.ofBytes)}`;
    case "reading":
      return "reading";
    case "analysing":
      return `reading: ${state.pass}, ${state.done} of ${state.of}`;
    case "cancelling":
      return "being cancelled";
    case "cancelled":
      return "cancelled; nothing of it is in the library";
    case "failed":
      return "not imported";
    case "imported":
      return "in the library";
  }
}

/** 0 to 1; null where nothing can be said. */
export function lineShare(state: LineState): number | null {
  if (state.kind === "waiting") return 0;
  if (state.kind === "imported") return 1;
  // Handing over is the long part of a large video, the analysis that of a small one: half each.
  if (state.kind === "handing-over") return state.ofBytes === 0 ? 0 : (state.sentBytes / state.ofBytes) * 0.5;
  if (state.kind === "analysing") return state.of === 0 ? 0.5 : 0.5 + (state.done / state.of) * 0.5;
  return null;
}

/** The whole run in one sentence. */
export function runWords(lines: readonly RunLine[]): string {
  const count = (kind: LineState["kind"]) => lines.filter(({ state }) => state.kind === kind).length;
  const open = lines.filter((line) => !isSettled(line)).length;
  const imported = `${count("imported")} of ${counted(lines.length, "recording", "recordings")} imported`;
  return [
    imported,
    count("failed") > 0 ? `${count("failed")} failed` : "",
    count("cancelled") > 0 ? `${count("cancelled")} cancelled` : "",
    open > 0 ? `${open} to go` : "",
  ]
    .filter(Boolean)
    .join(", ");
}

/** What can be done about a line: the one that helps comes first. */
export type LineAct = "cancel" | "again" | "retry" | "other-files" | "off";

export function lineActs(line: RunLine): readonly LineAct[] {
  const { state, order } = line;
  if (!isSettled(line)) return ["cancel"];
  if (state.kind === "cancelled") return ["retry", "off"];
  if (state.kind !== "failed") return [];
  // Files that the host itself has offered are chosen at the host.
  const others: readonly LineAct[] = typeof order.transcript.source === "string" ? [] : ["other-files"];
  const { code } = state.problem;
  if (code === "transcript-known" || code === "stock-number-known") return ["again", ...others, "off"];
  return code === "file-unreadable" ? [...others, "retry", "off"] : ["retry", ...others, "off"];
}
