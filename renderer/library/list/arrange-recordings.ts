import type { RecordingSummary } from "../../../shared-types/index.ts";
import { bodyStyleLabels } from "../body-styles.ts";

export const recordingOrders = ["newest", "waiting", "stock-number", "title"] as const;
export type RecordingOrder = (typeof recordingOrders)[number];

export const orderLabels = {
  newest: "newest first",
  waiting: "most waiting first",
  "stock-number": "by stock number",
  title: "by title",
} as const satisfies Record<RecordingOrder, string>;

const byNumbersToo = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** The recordings that have every word asked for, in the order asked for. Equal ones keep the library's order: newest first. */
export function arrangeRecordings(recordings: readonly RecordingSummary[], words: string, order: RecordingOrder): RecordingSummary[] {
  const wanted = plain(words).split(" ").filter(Boolean);
  const found = recordings.filter((recording) => {
    const text = plain(textOf(recording));
    return wanted.every((word) => text.includes(word));
  });
  if (order === "newest") return found;
  if (order === "waiting") return found.sort((a, b) => waiting(b) - waiting(a));
  const of = order === "title" ? ({ title }: RecordingSummary) => title : ({ stockNumber }: RecordingSummary) => stockNumber;
  // Those without a stock number come last, not first.
  return found.sort((a, b) => Number(of(a) === "") - Number(of(b) === "") || byNumbersToo.compare(of(a), of(b)));
}

function textOf({ title, stockNumber, vehicle, hasVideo, videoFound }: RecordingSummary): string {
  const film = hasVideo ? (videoFound ? "with video" : "video missing") : "transcript only";
  return [title, stockNumber, vehicle.name, vehicle.year ?? "", bodyStyleLabels[vehicle.bodyStyle], film].join(" ");
}

/** In small letters, without accents and dashes: "FK-1971" is found as "fk1971" and "Fk 19". */
function plain(text: string): string {
  return text
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/(?<=[\p{L}\p{N}])[-_./](?=[\p{L}\p{N}])/gu, "");
}

/** What a recording's desks have left to do; conflicts and denials need the vehicle, so they count most. */
function waiting({ counts }: RecordingSummary): number {
  const { openConflicts, openDenials, openPromises, openQuestions, proposals, proposedZones } = counts;
  return (openConflicts + openDenials) * 1000 + openPromises + openQuestions + proposals + proposedZones;
}
