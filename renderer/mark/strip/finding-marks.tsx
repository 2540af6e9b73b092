import { type Finding, type FindingProposal, gradeLabels, gradeShapes } from "../../../shared-types/index.ts";
import { type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";

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
