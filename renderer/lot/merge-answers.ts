import type { BundleLook, MergeChoice, MergeChoices, MergeGroup } from "../../shared-types/index.ts";

/** A person's answer for a group; `open` until one is given. */
export type MergeAnswer = MergeChoice | "open";
export type MergeAnswers = Partial<Record<MergeGroup, MergeAnswer>>;

export const mergeAnswerWords = {
  mine: "Keep what is here",
  theirs: "Take the bundle's",
  both: "Keep both",
} as const satisfies Record<MergeChoice, string>;

/** The same answer for every group; where both cannot stand, it stays to be asked. */
export function answerAll({ groups }: Pick<BundleLook, "groups">, choice: MergeChoice): MergeAnswers {
  return Object.fromEntries(groups.map(({ group, takesBoth }) => [group, choice === "both" && !takesBoth ? "open" : choice]));
}

/** Groups that still wait for an answer. */
export function unanswered({ groups }: Pick<BundleLook, "groups">, answers: MergeAnswers): MergeGroup[] {
  return groups.map(({ group }) => group).filter((group) => (answers[group] ?? "open") === "open");
}

/** The answers as the host takes them. */
export function settledChoices({ groups }: Pick<BundleLook, "groups">, answers: MergeAnswers): MergeChoices {
  return Object.fromEntries(
    groups.flatMap(({ group }) => {
      const answer = answers[group];
      return answer === undefined || answer === "open" ? [] : [[group, answer]];
    }),
  );
}

/** What "keep both" leaves as it is here; null where both can stand. `both`: whether that is chosen. */
export function clashWords({ takesBoth, clashes }: BundleLook["groups"][number], both: boolean): string | null {
  if (clashes.length === 0) return null;
  if (!takesBoth) return "Both cannot stand here: choose one side.";
  const things = clashes.join(", ");
  return both ? `Both cannot stand for ${things}: what is here stays. All else is kept from both.` : `Both cannot stand for ${things}.`;
}
