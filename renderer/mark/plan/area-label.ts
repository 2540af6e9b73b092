import { timeLabel, type ZoneTally } from "../../../shared-types/index.ts";

/** A line of an area's label. */
export interface LabelLine {
  readonly words: string;
  /** Open conflicts, told apart by their ink and by their sign. */
  readonly disputes: string;
}

export interface AreaLabel {
  readonly lines: readonly LabelLine[];
  /** Of the ground that keeps the drawing from running through the words, in the drawing's units. */
  readonly width: number;
  readonly height: number;
}

/** Width of a character of the labels at their size, in the drawing's units: measured on the widest line, "0:32 ◆3 ▼1". */
const characterWidth = 6.2;
const margin = 3;
/** From line to line, in the drawing's units. */
export const labelLeading = 14;

/** How long the stretches of a zone are. Without one the zone may still be spoken of, or be in the film: nobody knows from here. */
export function shownTime(tally: ZoneTally): string {
  return tally.seconds > 0 ? timeLabel(tally.seconds) : "unmarked";
}
export function findingSign(tally: ZoneTally): string {
  return tally.findings > 0 ? `◆${tally.findings}` : "";
}
/** Open conflicts, with the foot of the strip's arcs as their sign. */
export function disputeSign(tally: ZoneTally): string {
  return tally.openConflicts > 0 ? `▼${tally.openConflicts}` : "";
}

const joined = (...words: readonly string[]): string => words.filter(Boolean).join(" ");
const lengthOf = ({ words, disputes }: LabelLine): number => joined(words, disputes).length;
const widthOf = (lines: readonly LabelLine[]): number => Math.max(...lines.map(lengthOf)) * characterWidth + margin;

/**
 * The label of an area in as few lines as its room takes: a label that is too wide is cut off at the drawing's edge.
 * @param room width between the area's edges, in the drawing's units.
 */
export function areaLabel(name: string, tally: ZoneTally, room: number): AreaLabel {
  const time = shownTime(tally);
  const found = findingSign(tally);
  const disputes = disputeSign(tally);
  const layouts: LabelLine[][] = [
    [{ words: joined(name, time, found), disputes }],
    [
      { words: name, disputes: "" },
      { words: joined(time, found), disputes },
    ],
    [
      { words: name, disputes: "" },
      { words: time, disputes: "" },
      { words: found, disputes },
    ],
  ];
  const fitting = layouts.find((lines) => widthOf(lines) <= room) ?? layouts.at(-1) ?? [];
  const lines = fitting.filter((line) => lengthOf(line) > 0);
  return { lines, width: widthOf(lines), height: lines.length * labelLeading + margin };
}
