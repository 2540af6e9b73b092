import type { ChapterProposal, Claim, ZoneProposal } from "../../../shared-types/index.ts";
// From its own file, for the others of its folder bring a schema library with them.
import { zoneLabels } from "../../../shared-types/labels.ts";

/** Players refuse chapters shorter than this. */
export const shortestChapterSeconds = 10;
/** Fewer than this, and players show no chapters at all. */
export const fewestChapters = 3;
/** Word after a title that has stood before: a walk that goes back to a zone gets a chapter of its own. */
const againSuffix = "again";

interface Stretch {
  readonly zone: ZoneProposal["zone"];
  readonly start: number;
  readonly end: number;
}

/**
 * Titled starts for viewers, from zone spans: the first at 0, none shorter than ten seconds unless the recording is, in order and without
 * gap. A span too short for a chapter joins the neighbour it interrupts, else the one that says less (claims per second), for a chapter
 * full of claims is one people look for by its own name. Titles that come twice are told apart.
 * Where fewer than three zones were found, the longest chapter is divided at its longest pause between claims, if the recording is long
 * enough for three.
 */
export function proposeChapters(zones: readonly ZoneProposal[], claims: readonly Claim[], duration: number): ChapterProposal[] {
  if (duration <= 0) return [];
  const covered = covering(zones, duration);
  const merged = withoutShort(covered, claims);
  return titled(enough(merged, claims, duration));
}

/** The spans as they should be: from 0 to the end without gap, neighbours of one zone joined. */
function covering(zones: readonly ZoneProposal[], duration: number): Stretch[] {
  const stretches: Stretch[] = [];
  for (const span of zones.filter((zone) => zone.start < duration).toSorted((a, b) => a.start - b.start)) {
    const last = stretches.at(-1);
    if (last?.zone === span.zone) continue;
    if (last) stretches[stretches.length - 1] = { ...last, end: span.start };
    stretches.push({ zone: span.zone, start: last ? span.start : 0, end: duration });
  }
  return stretches.length > 0 ? stretches : [{ zone: "opening", start: 0, end: duration }];
}

function withoutShort(stretches: readonly Stretch[], claims: readonly Claim[]): Stretch[] {
  let kept = [...stretches];
  while (kept.length > 1) {
    const lengths = kept.map((stretch) => stretch.end - stretch.start);
    const shortest = lengths.indexOf(Math.min(...lengths));
    if ((lengths[shortest] ?? 0) >= shortestChapterSeconds) break;
    kept = joined(kept, shortest, claims);
  }
  return kept;
}

function joined(stretches: readonly Stretch[], at: number, claims: readonly Claim[]): Stretch[] {
  const [before, short, after] = [stretches[at - 1], stretches[at], stretches[at + 1]];
  if (!short) return [...stretches];
  // Between two stretches of one zone it is an interruption: all three become one.
  if (before && after && before.zone === after.zone) return stretches.toSpliced(at - 1, 3, { ...before, end: after.end });
  const toBefore = before && (!after || claimRate(before, claims) <= claimRate(after, claims));
  if (before && toBefore) return stretches.toSpliced(at - 1, 2, { ...before, end: short.end });
  return after ? stretches.toSpliced(at, 2, { ...after, start: short.start }) : [...stretches];
}

const claimRate = (stretch: Stretch, claims: readonly Claim[]) =>
  claims.filter((claim) => claim.start >= stretch.start && claim.start < stretch.end).length / Math.max(1, stretch.end - stretch.start);

function enough(stretches: readonly Stretch[], claims: readonly Claim[], duration: number): Stretch[] {
  let kept = [...stretches];
  while (kept.length < fewestChapters && duration >= fewestChapters * shortestChapterSeconds) {
    const lengths = kept.map((stretch) => stretch.end - stretch.start);
    const longest = lengths.indexOf(Math.max(...lengths));
    const whole = kept[longest];
    if (!whole || whole.end - whole.start < 2 * shortestChapterSeconds) break;
    const cut = cutOf(whole, claims);
    kept = kept.toSpliced(longest, 1, { ...whole, end: cut }, { ...whole, start: cut });
  }
  return kept;
}

/** The middle of the longest pause between claims; the middle of the stretch where claims give none. */
function cutOf(stretch: Stretch, claims: readonly Claim[]): number {
  const earliest = stretch.start + shortestChapterSeconds;
  const latest = stretch.end - shortestChapterSeconds;
  const moments = claims.map((claim) => claim.start).filter((moment) => moment >= earliest && moment <= latest);
  const marks = [earliest, ...moments.toSorted((a, b) => a - b), latest];
  let best = { length: -1, middle: (stretch.start + stretch.end) / 2 };
  if (moments.length > 0) {
    for (let position = 1; position < marks.length; position += 1) {
      const [from = 0, to = 0] = [marks[position - 1], marks[position]];
      if (to - from > best.length) best = { length: to - from, middle: (from + to) / 2 };
    }
  }
  return Math.round(best.middle * 1000) / 1000;
}

function titled(stretches: readonly Stretch[]): ChapterProposal[] {
  const used = new Map<string, number>();
  return stretches.map((stretch) => {
    const title = zoneLabels[stretch.zone];
    const times = (used.get(title) ?? 0) + 1;
    used.set(title, times);
    const told = times === 1 ? title : times === 2 ? `${title}, ${againSuffix}` : `${title}, ${againSuffix} (${times})`;
    return { start: stretch.start, end: stretch.end, zone: stretch.zone, title: told };
  });
}
