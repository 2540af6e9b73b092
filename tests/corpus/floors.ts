import type { TotalScore } from "./scorer.ts";

type Share = Exclude<
  {
    [Name in keyof TotalScore]: TotalScore[Name] extends number ? Name : never;
  }[keyof TotalScore],
  "cases" | "look_alikes"
>;

export interface CorpusFloors {
  /** Folder under fixtures/corpus. */
  readonly folder: string;
  readonly atLeast: Partial<Record<Share, number>>;
  readonly atMost: Partial<Record<Share, number>>;
  /** Share of the annotated conflicts of a kind that is found, 0 to 1. */
  readonly kinds: Readonly<Record<string, number>>;
}

/**
 * What the analysis reaches on each folder of annotated walkarounds, less a little for cases yet to come. Floors only rise: whoever betters
 * a figure raises it here, and nobody lowers one.
 */
export const corpusFloors = [
  {
    folder: "dev",
    atLeast: {
      conflict_precision: 1,
      conflict_recall: 1,
      measures_recall: 0.95,
      measures_in_full: 0.94,
      measures_precision: 0.98,
      zone_seconds_right: 0.98,
      repairs_recall: 0.97,
      unreliable_recall: 1,
      unreliable_precision: 1,
    },
    atMost: { false_conflicts_per_case: 0, look_alikes_flagged: 0 },
    kinds: { measure: 1, count: 1, type: 1, material: 1, color: 1, presence: 1, condition: 1, originality: 1, standard: 1, hedge: 1 },
  },
  {
    folder: "own",
    atLeast: {
      conflict_precision: 0.94,
      conflict_recall: 0.82,
      measures_recall: 0.86,
      measures_in_full: 0.76,
      measures_precision: 0.92,
      zone_seconds_right: 0.965,
      repairs_recall: 0.87,
      unreliable_recall: 0.95,
      unreliable_precision: 0.95,
    },
    atMost: { false_conflicts_per_case: 0.4, look_alikes_flagged: 6 },
    kinds: {
      measure: 0.7,
      count: 0.6,
      type: 0.84,
      material: 0.8,
      color: 0.9,
      presence: 0.95,
      condition: 0.84,
      originality: 0.9,
      standard: 0.9,
      hedge: 0.69,
    },
  },
  {
    // Cases that were held back until the rules of an earlier day were done, and are read since. Their first figures are in ORIGIN.md.
    folder: "later",
    atLeast: {
      conflict_precision: 0.44,
      conflict_recall: 0.22,
      measures_recall: 0.76,
      measures_in_full: 0.66,
      measures_precision: 0.91,
      zone_seconds_right: 0.915,
      repairs_recall: 0.77,
      unreliable_recall: 0.85,
      unreliable_precision: 0.95,
    },
    atMost: { false_conflicts_per_case: 2.3, look_alikes_flagged: 15 },
    kinds: {},
  },
  {
    // How the analysis does on a walk it has not met.
    folder: "held-back",
    atLeast: {
      conflict_precision: 0.44,
      conflict_recall: 0.24,
      measures_recall: 0.78,
      measures_in_full: 0.65,
      measures_precision: 0.94,
      zone_seconds_right: 0.92,
      repairs_recall: 0.91,
      unreliable_recall: 0.85,
      unreliable_precision: 0.95,
    },
    atMost: { false_conflicts_per_case: 2.9, look_alikes_flagged: 8 },
    kinds: {},
  },
] as const satisfies readonly CorpusFloors[] as readonly CorpusFloors[];
