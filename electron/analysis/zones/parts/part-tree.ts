import { spelledAlike } from "../spoken-line.ts";
import { exteriorParts } from "./exterior-parts.ts";
import { insideParts } from "./inside-parts.ts";
import { mechanicalParts } from "./mechanical-parts.ts";
import type { PartRow, ZoneWeights } from "./part-row.ts";
import { noParts, talkParts } from "./talk-parts.ts";

/**
 * Where a part is looked at. Many are named from elsewhere too: the walk model weighs a lone mention against the walk. The first row that
 * claims a phrase keeps it.
 */
export const partRows: readonly PartRow[] = [...noParts, ...exteriorParts, ...insideParts, ...mechanicalParts, ...talkParts];

export interface PhraseNode {
  weights: ZoneWeights | null;
  readonly next: Map<string, PhraseNode>;
}

const newNode = (): PhraseNode => ({ weights: null, next: new Map() });

/** The table as a tree of words, so that finding parts costs no more for a longer table. The longest phrase wins. */
export function partTree(rows: readonly PartRow[]): PhraseNode {
  const root = newNode();
  for (const row of rows) {
    for (const written of row.phrases.split("|")) {
      const exact = written.endsWith("=");
      const phrase = exact ? written.slice(0, -1) : written;
      for (const form of exact ? [phrase] : [phrase, `${phrase}s`, `${phrase}es`]) {
        let node = root;
        for (const word of form.split(" ").map(spelledAlike)) {
          const next = node.next.get(word) ?? newNode();
          node.next.set(word, next);
          node = next;
        }
        node.weights ??= row.zones;
      }
    }
  }
  return root;
}
