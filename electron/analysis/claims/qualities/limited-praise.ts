import type { Quality } from "./quality.ts";
import { lowerBound, type SpokenScene } from "./spoken-scene.ts";

/** Words within which "no rips, well, one little burn" or "I tell a lie, there's a bit of rash" takes the praise back. */
const takenBackWithin = 45;

/** Leaves out praise that the same breath limits: the flaw is the claim. */
export function withoutLimitedPraise(scene: SpokenScene, found: readonly Quality[]): Quality[] {
  const flaws = found.filter((quality) => quality.attribute === "condition" && quality.value === "flawed");
  const starts = flaws.map((flaw) => flaw.first);
  return found.filter((quality) => {
    if (quality.attribute !== "condition" || quality.value !== "good" || quality.circumstance === "praise") return true;
    for (let at = lowerBound(starts.length, quality.first, (index) => starts[index]!); at < flaws.length; at++) {
      const flaw = flaws[at]!;
      if (flaw.first - quality.first > takenBackWithin) return true;
      if (flaw.component === quality.component && limits(scene, quality, flaw)) return false;
    }
    return true;
  });
}

function limits(scene: SpokenScene, praise: Quality, flaw: Quality): boolean {
  const { tokens } = scene.speech;
  const sameSentence = scene.frames.at(praise.first).sentence === scene.frames.at(flaw.first).sentence;
  for (let token = praise.end; token < flaw.end; token++) {
    const { word } = tokens[token]!;
    if (sameSentence && /^(?:well|except|apart|but|bar|only|other|besides|just)$/.test(word)) return true;
    // "I tell a lie": the words of correction themselves are framed as taken back.
    if (token >= flaw.first - 8 && scene.frames.at(token).corrected) return true;
  }
  return false;
}
