import { colorNames, shades, stuff } from "./color-words.ts";
import type { SpokenScene } from "./spoken-scene.ts";

/** A color as it was said: unit range, end exclusive, and its own word, two joined by "and" for two tones. */
export interface ColorRun {
  readonly firstUnit: number;
  readonly endUnit: number;
  readonly value: string;
}

/** Every color in the speech, in order of place. */
export function colorRuns(scene: SpokenScene): ColorRun[] {
  const { units } = scene;
  const found: ColorRun[] = [];
  for (let at = 0; at < units.length; at++) {
    const word = units[at]!.word;
    if (word === "body" && /^color(?:ed)?$/.test(units[at + 1]?.word ?? "")) {
      found.push({ firstUnit: at, endUnit: at + 2, value: "body color" });
      continue;
    }
    if (!colorNames.has(word)) continue;
    let first = at;
    while (first > 0 && shades.has(units[first - 1]!.word) && !units[first - 1]!.endsPhrase) first--;
    let end = at + 1;
    let value = word;
    while (end < units.length && !units[end - 1]!.endsPhrase && (shades.has(units[end]!.word) || colorNames.has(units[end]!.word))) {
      if (colorNames.has(units[end]!.word)) value = units[end]!.word;
      end++;
    }
    const second = secondTone(scene, end);
    if (second) {
      found.push({ firstUnit: first, endUnit: second.endUnit, value: `${value} and ${second.value}` });
      at = second.endUnit - 1;
      continue;
    }
    found.push({ firstUnit: first, endUnit: end, value });
    at = end - 1;
  }
  return found;
}

/** "red and cream", "blue over white": two tones of one paint, unless the second belongs to a part of its own ("over tan leather"). */
function secondTone(scene: SpokenScene, end: number): { readonly endUnit: number; readonly value: string } | null {
  const { units } = scene;
  if (!/^(?:and|over|on)$/.test(units[end]?.word ?? "") || units[end - 1]!.endsPhrase) return null;
  let at = end + 1;
  while (at < units.length && shades.has(units[at]!.word) && !colorNames.has(units[at]!.word)) at++;
  const color = units[at];
  if (!color || !colorNames.has(color.word)) return null;
  const next = units[at + 1];
  if (next && !color.endsPhrase && !color.endsSentence) {
    const part = scene.parts[scene.partIndexFrom(next.token)];
    if (stuff.has(next.word) || part?.first === next.token || /^(?:interior|inside|trim|seats)$/.test(next.word)) return null;
  }
  return { endUnit: at + 1, value: color.word };
}

const paperWords = /^(?:title|logbook|v5|v5c|registration|papers|paperwork|insurance|certificate|slip)$/;

/** "Where it says color, it says silver", "the logbook says blue", "registered as green": the color in the vehicle's papers is its paint's. */
export function writtenInPapers(scene: SpokenScene, run: ColorRun): boolean {
  const { units } = scene;
  // "Color on the V5, silver": the field and its entry.
  const field = units
    .slice(Math.max(0, run.firstUnit - 5), run.firstUnit)
    .map((unit) => unit.word)
    .join(" ");
  if (
    /\bcolor (?:on|in|as per) (?:the |its |his |her )?(?:title|logbook|v5c?|registration|papers|paperwork|certificate|log book)$/.test(
      field,
    )
  )
    return true;
  let says = false;
  for (let at = run.firstUnit - 1; at >= Math.max(0, run.firstUnit - 8); at--) {
    const { word } = units[at]!;
    if (at < run.firstUnit - 1 && units[at]!.endsSentence && !says) return false;
    if (at >= run.firstUnit - 2 && /^(?:says|say|said|reads|as|has|'s|is)$/.test(word)) says = true;
    if (!says) continue;
    if (word === "code" || word === "interior" || word === "trim") return false;
    if (word === "color" && units.slice(at + 1, run.firstUnit).some((unit) => /^(?:says|say|reads|as|down)$/.test(unit.word))) return true;
    if (
      run.firstUnit - at <= 4 &&
      (paperWords.test(word) || (word === "book" && units[at - 1]?.word === "log")) &&
      /^(?:says|reads|has)$/.test(units[at + 1]?.word ?? "")
    )
      return true;
    if (run.firstUnit - at <= 3 && /^(?:registered|listed|down)$/.test(word) && units[at + 1]?.word === "as") return true;
  }
  return false;
}
