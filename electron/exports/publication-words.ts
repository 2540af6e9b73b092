import { type ConditionIndex, openAtPublication, type RecordingDetail } from "../../shared-types/index.ts";

/** Of a recording that was never analyzed nobody can say that nothing is open in it. */
export const notAnalyzed = "This recording was not analyzed when this was written: what contradicts itself in it is not known.";

/** "Two conflicts are open." in figures. */
export function openWords(count: number): string {
  return count === 1 ? "One conflict is open." : `${count} conflicts are open.`;
}

/** That it was published with conflicts or other matters open, or with none; nothing where it was not published. */
export function publicationWords(published: ConditionIndex["published"]): string {
  if (published === null) return "";
  const { at, initials, openConflicts, openMatters } = published;
  return `Published on ${at.slice(0, 10)} by ${initials} with ${openAtPublication(openConflicts, openMatters)}.`;
}

/** The last publication as it leaves the house: of the other matters only how many. */
export function lastPublication({ publications }: Pick<RecordingDetail, "publications">): ConditionIndex["published"] {
  const last = publications.at(-1);
  return last ? { ...last, openMatters: last.openMatters?.length ?? null } : null;
}

/** The claims that the dealer's own record denies, each in a line; nothing where it denies none. */
export function denialWords(denials: readonly Pick<ConditionIndex["denials"][number], "why">[]): string {
  if (denials.length === 0) return "";
  return `The stock sheet says otherwise: ${denials.map(({ why }) => why.replaceAll(/\s+/g, " ").trim()).join(" ")}`;
}
