import type { Publication } from "./recording.ts";

/** A moment as people read it: "2026-11-26 02:31 UTC". */
export function momentLabel(at: string): string {
  return `${at.slice(0, 16).replace("T", " ")} UTC`;
}

/**
 * What was open at a publication: "2 conflicts open and 3 other matters not dealt with". Nothing is said of other matters where they were not
 * counted (null).
 */
export function openAtPublication(openConflicts: number, openMatters: number | null): string {
  const conflicts = openConflicts === 0 ? "no conflict open" : `${openConflicts} ${openConflicts === 1 ? "conflict" : "conflicts"} open`;
  return openMatters === null || openMatters === 0
    ? conflicts
    : `${conflicts} and ${openMatters} other ${openMatters === 1 ? "matter" : "matters"} not dealt with`;
}

/** A publication in one line, the same on every screen and in every output: "Published 2026-11-26 02:31 UTC by RT, with 2 conflicts open". */
export function publicationLine({ at, initials, openConflicts, openMatters }: Publication): string {
  return `Published ${momentLabel(at)} by ${initials}, with ${openAtPublication(openConflicts, openMatters?.length ?? null)}`;
}
