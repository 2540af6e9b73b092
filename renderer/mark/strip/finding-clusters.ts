import { type Finding, type FindingProposal, type Grade, gradeLabels, grades } from "../../../shared-types/index.ts";
import { type StripView, xOf } from "./geometry.ts";

/** Findings that stand so close on the strip that they are drawn as one mark. */
export interface FindingCluster {
  /** Of the first of them; what a click on the mark picks. Null where none of them can be picked yet. */
  readonly id: string | null;
  readonly key: string;
  /** Seconds: where the mark stands. */
  readonly start: number;
  /** The gravest of them, by which the mark is shaped. */
  readonly grade: Grade;
  readonly words: string;
}

/** Marks nearer than this would hide one another: a little more than half of a mark's own width, in pixels. */
const nearPx = 6;
/** A mark just outside still reaches into the view, in pixels. */
const reachPx = 12;
/** As many as a pointer's note can hold. */
const mostNamed = 5;

/** From the gravest down; "not shown" is no finding of damage. */
const byGravity: readonly Grade[] = ["damaged", "worn", "not-shown", ...grades];

interface Placed {
  readonly id: string | null;
  readonly key: string;
  readonly start: number;
  readonly grade: Grade;
  readonly words: string;
}

/** Findings and proposals as `clustersInView` takes them, in order of time; made once for a recording, not for each view of it. */
export function placedFindings(findings: readonly Finding[]): Placed[] {
  return findings
    .map(({ id, start, grade, seen }) => ({ id, key: id, start, grade, words: `${seen}, ${gradeLabels[grade]}` }))
    .sort((a, b) => a.start - b.start);
}
export function placedProposals(proposals: readonly FindingProposal[]): Placed[] {
  return proposals
    .map(({ claim, start, grade, seen }) => ({ id: null, key: claim, start, grade, words: `Proposed: ${seen}` }))
    .sort((a, b) => a.start - b.start);
}

/** The marks that a view shows, in order of time: however many findings there are, no more than its width has room for. */
export function clustersInView(placed: readonly Placed[], view: StripView): FindingCluster[] {
  const clusters: { members: Placed[]; x: number }[] = [];
  for (const one of placed) {
    const x = xOf(view, one.start);
    if (x < -reachPx) continue;
    if (x > view.width + reachPx) break;
    const last = clusters.at(-1);
    if (last && x - last.x < nearPx) last.members.push(one);
    else clusters.push({ members: [one], x });
  }
  return clusters.map(({ members }) => {
    const [first] = members as [Placed];
    const named = members.slice(0, mostNamed).map(({ words }) => words);
    if (members.length > mostNamed) named.push(`and ${members.length - mostNamed} more; zoom closer to tell them apart`);
    const grade = byGravity.find((candidate) => members.some((member) => member.grade === candidate)) ?? first.grade;
    return { id: first.id, key: first.key, start: first.start, grade, words: named.join("\n") };
  });
}
