/** The stretch of the recording that the strip shows, and the length of the way it has for it. */
export interface StripView {
  /** Seconds. */
  readonly from: number;
  /** Seconds; later than `from`. */
  readonly to: number;
  /** CSS pixels along the strip. */
  readonly width: number;
}

/** How far along the strip a moment lies, in CSS pixels. */
export function xOf(view: StripView, seconds: number): number {
  return ((seconds - view.from) / (view.to - view.from)) * view.width;
}

/** The moment at a length of the strip, held within the view. */
export function secondsAt(view: StripView, x: number): number {
  const share = Math.min(1, Math.max(0, x / view.width));
  return view.from + share * (view.to - view.from);
}

const tickSteps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600] as const;

/** Moments that get a tick: round numbers, at least `apart` pixels from one another. */
export function tickMoments(view: StripView, apart = 74): number[] {
  const least = ((view.to - view.from) / view.width) * apart;
  const step = tickSteps.find((candidate) => candidate >= least) ?? Math.ceil(least / 3600) * 3600;
  const ticks: number[] = [];
  // Counted rather than summed, so that a long strip of tenths does not drift.
  for (let count = Math.ceil(view.from / step); count * step <= view.to; count++) ticks.push(count * step);
  return ticks;
}

/** An arc between two moments of a conflict. */
export interface ArcEnds {
  readonly from: number;
  readonly to: number;
}

/** The arcs of one conflict: its sides' first moments, in order of time, each joined to the next. */
export function arcsBetween(moments: readonly number[]): ArcEnds[] {
  const ordered = [...moments].sort((a, b) => a - b);
  return ordered.slice(1).map((to, index) => ({ from: ordered[index] ?? to, to }));
}

/** Average advance of a character of the strip's 12 px face, in pixels; wide enough that no name is cut through. */
const characterPx = 6.4;

/** Height of a line of the strip's names, in pixels: what a name needs that stands upright. */
const linePx = 10;

export interface FittedName {
  readonly text: string;
  /** Read from below upwards, where there is no room for two letters side by side. */
  readonly upright: boolean;
}

/**
 * The longest of the given names that fits; else the first one shortened, down to two letters and a stop; else the sign of two letters,
 * which stands upright where room is shortest. Null only where not even a line of text fits.
 */
export function nameThatFits(names: readonly string[], sign: string, widthPx: number): FittedName | null {
  const letters = Math.floor((widthPx - 6) / characterPx);
  const whole = names.find((name) => name.length <= letters);
  if (whole !== undefined) return { text: whole, upright: false };
  const shortest = names.at(-1) ?? sign;
  if (letters >= 4) return { text: `${shortest.slice(0, letters - 1).trimEnd()}…`, upright: false };
  if (letters >= sign.length) return { text: sign, upright: false };
  return widthPx >= linePx ? { text: sign, upright: true } : null;
}

/**
 * The view after zooming around a moment that stays where it is on the screen.
 * @param factor below 1 shows less and larger; the view never gets shorter than two seconds nor longer than the recording.
 */
export function zoomView(view: StripView, duration: number, around: number, factor: number): StripView {
  const span = Math.min(duration, Math.max(Math.min(2, duration), (view.to - view.from) * factor));
  const share = (around - view.from) / (view.to - view.from);
  const from = Math.min(duration - span, Math.max(0, around - share * span));
  return { ...view, from, to: from + span };
}

/** The view moved by some seconds, held within the recording. */
export function slideView(view: StripView, duration: number, bySeconds: number): StripView {
  const span = view.to - view.from;
  const from = Math.min(Math.max(0, duration - span), Math.max(0, view.from + bySeconds));
  return { ...view, from, to: from + span };
}

/** How near a border may come to its neighbours, in seconds; the host refuses empty spans. */
export const leastSpanSeconds = 0.1;

/** Where a dragged or nudged border may stand: between its neighbours. */
export function heldBorder(wanted: number, previous: number, next: number): number {
  return Math.min(next - leastSpanSeconds, Math.max(previous + leastSpanSeconds, wanted));
}

/** Borders nearer to one another than this cannot be taken hold of one by one, in CSS pixels; a closer view tells them apart. */
const graspPx = 12;

/**
 * The borders that a view shows to be moved, by index and in order of time.
 * @param stop one that is shown wherever it lies in the view: the keyboard is to come to every border.
 */
export function bordersToShow(borders: readonly { readonly start: number }[], view: StripView, stop: number): number[] {
  const shown: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const [index, { start }] of borders.entries()) {
    const x = xOf(view, start);
    if (x < 0 || x > view.width) continue;
    if (x - last < graspPx && index !== stop) continue;
    shown.push(index);
    last = x;
  }
  return shown;
}
