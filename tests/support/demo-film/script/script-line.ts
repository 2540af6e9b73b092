import type {
  AttributeName,
  ComponentName,
  ConflictKind,
  PositionName,
  Stance,
  UnitName,
  ZoneName,
} from "../../../../shared-types/index.ts";

/** Something checkable in a line, as a careful annotator writes it down. `quote` stands in the line's written words. */
export interface LineClaim {
  readonly quote: string;
  readonly component: ComponentName;
  readonly position?: PositionName;
  readonly attribute: AttributeName;
  readonly value: string | number;
  readonly unit?: UnitName;
  /** Stated unless said otherwise. */
  readonly stance?: Stance;
}

/** One breath of the walk round: a caption of the transcript, a stretch of speech, and what the picture shows meanwhile. */
export interface ScriptLine {
  /** Names the line for conflicts and look-alikes, so that lines can be added without renumbering. */
  readonly key: string;
  readonly zone: ZoneName;
  /** What the voice says; empty where only the radio plays. */
  readonly spoken: string;
  /** What the recogniser wrote, where that is not what was said. */
  readonly written?: string;
  /** The part of the zone's drawing that is lit while the line runs; "" lights nothing. */
  readonly part: string;
  /** Silence after the line; half a second unless said otherwise. */
  readonly pauseSeconds?: number;
  readonly claims?: readonly LineClaim[];
  readonly repairs?: readonly { readonly heard: string; readonly meant: string }[];
  /** Why the caption is no speech about this vehicle. A line with it sounds as music of this many seconds. */
  readonly noise?: { readonly why: string; readonly musicSeconds: number };
}

export interface PlantedConflict {
  readonly id: string;
  readonly kind: ConflictKind;
  readonly topic: string;
  readonly sides: readonly { readonly value: string | number; readonly lines: readonly string[] }[];
}

export interface PlantedLookAlike {
  readonly topic: string;
  readonly lines: readonly string[];
  readonly why: string;
}

/** The words that the recogniser wrote for a line. */
export function writtenWords(line: ScriptLine): string {
  return line.written ?? line.spoken;
}
