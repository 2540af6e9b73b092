import { positionNames, type RecordingSummary, zoneLabels } from "../../shared-types/index.ts";

/** A question without the words that name vehicles, and the vehicles that they name. */
export interface NamedVehicles {
  readonly question: string;
  /** Empty where no word names any. */
  readonly recordingIds: readonly string[];
}

type Named = Pick<RecordingSummary, "id" | "title" | "stockNumber" | "vehicle">;

/** Only joins what is asked to the vehicle it is asked of. */
const joining: ReadonlySet<string> = new Set(
  "a an the of on in at to for with and or is are does do has have versus vs between".split(" "),
);
const shortestName = 3;

/**
 * Takes stock numbers and vehicles' words out of a question: "K4103 axle ratio" asks for the axle ratio of K4103. Stock numbers choose
 * their own vehicles; without one, the vehicles that the most words name.
 */
export function namedVehicles(question: string, recordings: readonly Named[]): NamedVehicles {
  const chunks = question.split(/\s+/).filter(Boolean);
  const stocks = new Set<string>();
  const points = new Map<string, number>();
  const taken = new Set<number>();
  for (const [at, chunk] of chunks.entries()) {
    // A stock number may be typed in two: "fk 1971".
    for (const length of [2, 1]) {
      const typed = squeezed(chunks.slice(at, at + length).join(""));
      const meant = typed === "" ? [] : recordings.filter(({ stockNumber }) => squeezed(stockNumber) === typed);
      for (const { id } of meant) stocks.add(id);
      if (meant.length > 0) for (let taking = at; taking < Math.min(at + length, chunks.length); taking++) taken.add(taking);
    }
    const word = chunk.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
    if (word.length < shortestName || joining.has(word) || placeWords.has(word) || taken.has(at)) continue;
    const called = recordings.filter((recording) => wordsOf(recording).has(word));
    for (const { id } of called) points.set(id, (points.get(id) ?? 0) + 1);
    if (called.length > 0) taken.add(at);
  }
  if (taken.size === 0) return { question, recordingIds: [] };
  const most = Math.max(0, ...points.values());
  const recordingIds = recordings.map(({ id }) => id).filter((id) => (stocks.size > 0 ? stocks.has(id) : points.get(id) === most));
  const left = chunks.filter((_, at) => !taken.has(at));
  const asking = left.some((chunk) => !joining.has(chunk.toLowerCase()));
  while (left.length > 0 && joining.has((left.at(-1) as string).toLowerCase())) left.pop();
  while (left.length > 0 && joining.has((left[0] as string).toLowerCase())) left.shift();
  return { question: asking ? left.join(" ") : "", recordingIds };
}

const placeWords: ReadonlySet<string> = new Set(
  [...Object.values(zoneLabels), ...positionNames].flatMap((label) => label.toLowerCase().split(/[^\p{L}\p{N}]+/u)),
);

/** A vehicle is called by its name, year and shape; a title may say what was filmed and names no vehicle. */
function wordsOf({ vehicle: { name, year, bodyStyle } }: Named): ReadonlySet<string> {
  return new Set(
    `${name} ${year ?? ""} ${bodyStyle}`
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u)
      .filter(Boolean),
  );
}

function squeezed(stockNumber: string): string {
  return stockNumber.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
}
