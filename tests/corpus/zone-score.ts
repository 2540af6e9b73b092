import type { Caption, ZoneName } from "../../shared-types/index.ts";
import type { GoldCase } from "./read-cases.ts";

/** When words of a caption are spoken, by their share of the caption's characters. */
function whenSpoken(captions: readonly Caption[], duration: number, i: number, quote: string): number {
  const caption = captions[i]!;
  const end = i + 1 < captions.length || caption.end < duration ? caption.end : duration;
  const offset = Math.max(0, caption.text.toLowerCase().indexOf(quote.toLowerCase()));
  return caption.start + (end - caption.start) * (offset / Math.max(1, caption.text.length));
}

/** The annotated zone in the middle of each whole second. */
export function zoneBySecond(gold: GoldCase, captions: readonly Caption[], seconds: number): ZoneName[] {
  const starts = gold.zones.map(({ zone, i, from }, position) => ({
    zone,
    at: position ? whenSpoken(captions, gold.duration, i, from) : 0,
  }));
  return Array.from({ length: seconds }, (_, second) => starts.filter(({ at }) => at <= second + 0.5).at(-1)!.zone);
}

/**
 * Share of whole seconds with the right zone, and WindowDiff (Pevzner and Hearst, Computational Linguistics 28(1), 19-36, 2002) over
 * windows of half the mean gold span.
 */
export function zoneScore(
  gold: GoldCase,
  captions: readonly Caption[],
  zones: readonly { zone: ZoneName; start: number; end: number }[],
): { seconds: number; zoneSecondsRight: number; windowDiff: number } {
  const seconds = Math.floor(gold.duration);
  const real = zoneBySecond(gold, captions, seconds);
  const found = real.map((_, second) => zones.find(({ start, end }) => start <= second + 0.5 && second + 0.5 < end)?.zone ?? null);
  const right = real.filter((zone, second) => zone === found[second]).length;
  const window = Math.max(2, Math.round(seconds / gold.zones.length / 2));
  return { seconds, zoneSecondsRight: seconds ? right / seconds : 1, windowDiff: windowDiff(real, found, window) };
}

/** Share of windows in which the number of borders differs. Windows are the pairs (i, i + k). */
export function windowDiff(real: readonly unknown[], found: readonly unknown[], k: number): number {
  const bordersIn = (labels: readonly unknown[], from: number) => {
    let borders = 0;
    for (let i = from; i < from + k; i++) if (labels[i] !== labels[i + 1]) borders += 1;
    return borders;
  };
  const windows = real.length - k;
  if (windows <= 0) return 0;
  let differing = 0;
  for (let i = 0; i < windows; i++) if (bordersIn(real, i) !== bordersIn(found, i)) differing += 1;
  return differing / windows;
}

/** Share of the same windows in which the two disagree about both ends lying in one segment (Beeferman, Berger, Lafferty, 1999; two-probe form). */
export function pk(real: readonly unknown[], found: readonly unknown[], k: number): number {
  const windows = real.length - k;
  if (windows <= 0) return 0;
  // Segments, not labels: a zone that comes back later is another segment.
  const [realSegments, foundSegments] = [segmentsOf(real), segmentsOf(found)];
  let differing = 0;
  for (let i = 0; i < windows; i++) {
    if ((realSegments[i] === realSegments[i + k]) !== (foundSegments[i] === foundSegments[i + k])) differing += 1;
  }
  return differing / windows;
}

function segmentsOf(labels: readonly unknown[]): number[] {
  let segment = 0;
  return labels.map((label, position) => {
    if (position > 0 && label !== labels[position - 1]) segment += 1;
    return segment;
  });
}
