import type { Publication } from "./recording.ts";

/** A moment as people read it: "2026-11-26 02:31 UTC". */
export function momentLabel(at: string): string {
  return `${at.slice(0, 16).replace("T", " ")} UTC`;
}

/** A publication in one line, the same on every screen and in every output: "Published 2026-11-26 02:31 UTC by RT, with 2 conflicts open". */
export function publicationLine({ at, initials, openConflicts }: Publication): string {
  const open = openConflicts === 0 ? "no conflict" : openConflicts === 1 ? "1 conflict" : `${openConflicts} conflicts`;
  return `Published ${momentLabel(at)} by ${initials}, with ${open} open`;
}
