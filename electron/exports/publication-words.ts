import type { Publication } from "../../shared-types/index.ts";

/** "Two conflicts are open." in figures. */
export function openWords(count: number): string {
  return count === 1 ? "One conflict is open." : `${count} conflicts are open.`;
}

/** That it was published with conflicts open, or with none; nothing where it was not published. */
export function publicationWords(published: Publication | null): string {
  if (published === null) return "";
  const open = published.openConflicts;
  const how = open === 0 ? "with no conflict open" : `with ${open} ${open === 1 ? "conflict" : "conflicts"} open`;
  return `Published on ${published.at.slice(0, 10)} by ${published.initials} ${how}.`;
}
