import { useMemo } from "react";
import { type Finding, type FindingProposal, gradeShapes } from "../../../shared-types/index.ts";
import { clustersInView, placedFindings, placedProposals } from "./finding-clusters.ts";
import { type StripView, xOf } from "./geometry.ts";
import { lanes } from "./lanes.ts";

export interface FindingMarksProps {
  readonly findings: readonly Finding[];
  readonly proposals: readonly FindingProposal[];
  readonly view: StripView;
  readonly onPick: (findingId: string) => void;
}

/** Findings below the band, shaped by grade; proposals hollow and dashed. Those too close to tell apart are one mark, shaped by the gravest. */
export function FindingMarks({ findings, proposals, view, onPick }: FindingMarksProps) {
  const y = lanes.findings.top + 7;
  const made = useMemo(() => placedFindings(findings), [findings]);
  const proposed = useMemo(() => placedProposals(proposals), [proposals]);
  return (
    <g className="lap-findings">
      {clustersInView(proposed, view).map(({ key, start, grade, words }) => (
        <path key={key} className="lap-finding" data-proposed d={gradeShapes[grade]} transform={`translate(${xOf(view, start)} ${y})`}>
          <title>{words}</title>
        </path>
      ))}
      {clustersInView(made, view).map(({ id, key, start, grade, words }) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the findings list is the keyboard's way
        <path
          key={key}
          className="lap-finding"
          d={gradeShapes[grade]}
          transform={`translate(${xOf(view, start)} ${y})`}
          onPointerDown={(event) => event.stopPropagation()}
          onClick={() => (id === null ? undefined : onPick(id))}
        >
          <title>{words}</title>
        </path>
      ))}
    </g>
  );
}
