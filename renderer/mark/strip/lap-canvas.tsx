import { memo, type RefObject, useEffectEvent, useLayoutEffect, useMemo, useRef } from "react";
import type { RecordingDetail } from "../../../shared-types/index.ts";
import { doubtfulStretches } from "../doubtful-stretches.ts";
import type { Marks } from "../use-marks.ts";
import type { StripConflict } from "./conflict-arcs.ts";
import { clustersInView, placedFindings, placedProposals } from "./finding-clusters.ts";
import type { StripView } from "./geometry.ts";
import type { LapHit } from "./lap-hits.ts";
import { paintLap } from "./paint-lap.ts";
import { usePalette } from "./palette.ts";
import type { Track, TrackPiece } from "./track.ts";

export interface LapCanvasProps {
  readonly detail: RecordingDetail;
  readonly track: Track;
  readonly pieces: readonly TrackPiece[];
  readonly view: StripView;
  readonly marks: Marks;
  readonly conflicts: readonly StripConflict[];
  readonly pointed: string | null;
  /** Gets what can be picked, after each drawing. */
  readonly hits: RefObject<readonly LapHit[]>;
}

/**
 * Everything of the lap strip that stands still while the recording plays, on one canvas: a turn of the wheel is one drawing, and no element of
 * the page has to be laid out for it. What can be had by the keyboard lies over it as elements, and the lists say the same in words.
 */
export const LapCanvas = memo(function LapCanvas({ detail, track, pieces, view, marks, conflicts, pointed, hits }: LapCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const palette = usePalette();
  const { width, height, radius } = track;
  const doubtful = useMemo(() => doubtfulStretches(detail.analysis.doubtful, detail.captions), [detail.analysis.doubtful, detail.captions]);
  const made = useMemo(() => placedFindings(detail.findings), [detail.findings]);
  const proposed = useMemo(() => placedProposals(detail.findingProposals), [detail.findingProposals]);
  const { lap } = detail;
  const paint = useEffectEvent(() => {
    const element = canvas.current;
    const pen = element?.getContext("2d");
    if (!element || !pen || width < 1 || height < 1) return;
    const density = devicePixelRatio || 1;
    const [across, down] = [Math.round(width * density), Math.round(height * density)];
    // Giving a canvas its size anew also throws its memory away.
    if (element.width !== across || element.height !== down) {
      element.width = across;
      element.height = down;
    }
    pen.setTransform(density, 0, 0, density, 0, 0);
    pen.clearRect(0, 0, width, height);
    const scene = {
      ...{ pieces, radius, view, lap, doubtful, conflicts, marks, pointed },
      proposed: clustersInView(proposed, view),
      made: clustersInView(made, view),
    };
    hits.current = paintLap(pen, scene, palette);
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the drawing is made of
  useLayoutEffect(() => paint(), [pieces, width, height, radius, view, lap, doubtful, conflicts, marks, pointed, proposed, made, palette]);
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a drawing takes no focus
  return <canvas ref={canvas} className="lap-canvas" style={{ width, height }} aria-hidden="true" />;
});
