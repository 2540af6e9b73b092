import { type Finding, type FindingProposal, type Grade, gradeLabels } from "../../../shared-types/index.ts";
import { type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";

/** One outline for each grade, around 0,0, some ten pixels across. */
export const gradeShapes = {
  "as-new": "M0-5L5 0L0 5L-5 0Z",
  good: "M-4.5 0A4.5 4.5 0 1 0 4.5 0A4.5 4.5 0 1 0-4.5 0Z",
  worn: "M-4.5-4.5H4.5V4.5H-4.5Z",
  damaged: "M0-5L5.5 4.5H-5.5Z",
  "not-shown": "M-4.5-4.5L4.5 4.5M4.5-4.5L-4.5 4.5",
} as const satisfies Record<Grade, string>;

export interface FindingMarksProps {
  readonly findings: readonly Finding[];
  readonly proposals: readonly FindingProposal[];
  readonly view: StripView;
  readonly onPick: (findingId: string) => void;
}

/** Findings below the band, shaped by grade; proposals hollow and dashed. */
export function FindingMarks({ findings, proposals, view, onPick }: FindingMarksProps) {
  const y = lanes.findings.top + 7;
  return (
    <g className="lap-findings">
      {proposals.map((proposal) => (
        <path
          key={proposal.claim}
          className="lap-finding"
          data-proposed
          d={gradeShapes[proposal.grade]}
          transform={`translate(${xOf(view, proposal.start)} ${y})`}
        >
          <title>{`Proposed: ${proposal.seen}`}</title>
        </path>
      ))}
      {findings.map((finding) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the findings list is the keyboard's way
        <path
          key={finding.id}
          className="lap-finding"
          d={gradeShapes[finding.grade]}
          transform={`translate(${xOf(view, finding.start)} ${y})`}
          onPointerDown={(event) => event.stopPropagation()}
          onClick={() => onPick(finding.id)}
        >
          <title>{`${finding.seen}, ${gradeLabels[finding.grade]}`}</title>
        </path>
      ))}
    </g>
  );
}
