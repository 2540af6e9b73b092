import type { Speech } from "../model.ts";
import type { ZoneWeights } from "./parts/part-row.ts";
import { type PhraseNode, partRows, partTree } from "./parts/part-tree.ts";
import { plainWord, spelledAlike } from "./spoken-line.ts";

/** A part that was named, and the zones it speaks for. */
export interface NamedPart {
  readonly first: number;
  readonly end: number;
  readonly zones: ZoneWeights;
  /** Why the words speak for these zones, where no part is named. */
  readonly reason?: string;
}

const tree: PhraseNode = partTree(partRows);

/** Parts in spoken order; inside a longer phrase no shorter one is found ("door mirror" is no door). Linear in the words. */
export function findParts(speech: Speech): NamedPart[] {
  const words = speech.tokens.map((token) => spelledAlike(plainWord(token.word)));
  const found: NamedPart[] = [];
  for (let first = 0; first < words.length; ) {
    let node: PhraseNode | undefined = tree;
    let best: NamedPart | null = null;
    for (let end = first; node && end < words.length; ) {
      // A phrase never runs over a sentence's end: "round to the back. Bumper …" names no back bumper.
      if (end > first && /[.?!]/.test(speech.tokens[end - 1]?.after ?? "")) break;
      node = node.next.get(words[end] ?? "");
      end += 1;
      if (node?.weights) best = { first, end, zones: node.weights };
    }
    if (best) found.push(best);
    first = best ? best.end : first + 1;
  }
  return found;
}
