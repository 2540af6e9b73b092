import type { ScenePart, SpokenScene } from "./spoken-scene.ts";

/** Words that lead from a state to what has it: "a hole in the bumper", "rust on the hanger". */
const leading: ReadonlySet<string> = new Set(
  "in on of across through along inside over at round around into onto from off above below".split(" "),
);
const determining: ReadonlySet<string> = new Set("the this that these those a an my your our his her its their".split(" "));
/** Words that tell which of several, and name nothing yet: "the front left …". */
const placing: ReadonlySet<string> = new Set(
  (
    "front back rear left right driver driver's drivers passenger passenger's passengers nearside offside near far off same other lower upper " +
    "inner outer first second third last usual little old big whole"
  ).split(" "),
);
/** Nouns for a place on whatever is in view, or for the vehicle itself: they name no thing of their own. */
const vague: ReadonlySet<string> = new Set(
  (
    "side sides place places spot spots bottom middle center centre top edge edges corner corners end ends way outside inside thing car truck " +
    "van vehicle one ones it here there this that it them these those picture camera video light sun area length face surface base world lot day " +
    "year years time moment motor wagon pickup coupe sedan saloon estate hatch hatchback roadster convertible ragtop underneath underside " +
    "bottoms skin metal steel seam seams couple bit lip lips seven eight"
  ).split(" "),
);
const having: ReadonlySet<string> = new Set(["has", "had", "have", "'ve", "'s", "is", "are", "'re", "was", "were"]);
/** Words that may stand between a verb and the state: "has got a bit of rust". */
const measuring: ReadonlySet<string> = new Set(
  "got a an some no little bit of slight small few the couple one two tiny only just all also still now never not n't any wee touch spot big".split(
    " ",
  ),
);

const afterReach = 4;
const backReach = 5;

/** Whether what stands at this word is a thing that is not meant by what is in view: an unknown noun, or a part that the rule does not ask for. */
function isOwnNoun(scene: SpokenScene, unit: number, isMeant: (part: ScenePart) => boolean): boolean {
  const { word, token } = scene.units[unit]!;
  if (!/^[a-z][a-z'-]{2,}$/.test(word) || [vague, placing, determining, leading, having].some((words) => words.has(word))) return false;
  const known = scene.parts.slice(Math.max(0, scene.partIndexFrom(token) - 1)).find(({ end }) => end > token);
  return !known || known.first > token || !isMeant(known);
}

/**
 * Whether the words say what has the state, though no part is known by it: "a hole in the bumper stop", "the hanger's rusted".
 * What is in view is then not meant. Unit range of the state, end exclusive; `isMeant` tells the parts that the state may be told of.
 */
export function hasOwnNoun(scene: SpokenScene, firstUnit: number, endUnit: number, isMeant: (part: ScenePart) => boolean): boolean {
  return namedAfter(scene, endUnit, isMeant) || namedBefore(scene, firstUnit, isMeant);
}

function namedAfter(scene: SpokenScene, endUnit: number, isMeant: (part: ScenePart) => boolean): boolean {
  const { units } = scene;
  if (units[endUnit - 1]?.endsPhrase) return false;
  let at = endUnit;
  while (/^(?:right|just|all|down|up|out|only)$/.test(units[at]?.word ?? "")) at++;
  if (!leading.has(units[at]?.word ?? "") || units[at]!.endsPhrase) return false;
  at++;
  if (!determining.has(units[at]?.word ?? "") || units[at]!.endsPhrase) return false;
  for (const last = at + afterReach; ++at <= last && units[at]; ) {
    if (placing.has(units[at]!.word) && !units[at]!.endsPhrase) continue;
    return isOwnNoun(scene, at, isMeant);
  }
  return false;
}

function namedBefore(scene: SpokenScene, firstUnit: number, isMeant: (part: ScenePart) => boolean): boolean {
  const { units } = scene;
  let at = firstUnit - 1;
  const least = Math.max(1, firstUnit - backReach);
  while (at >= least && measuring.has(units[at]!.word) && !units[at]!.endsPhrase) at--;
  if (at < least || !having.has(units[at]!.word) || units[at]!.endsPhrase) return false;
  const noun = at - 1;
  const determiner = [units[noun - 1], units[noun - 2]].find((unit) => unit && determining.has(unit.word) && !unit.endsPhrase);
  return determiner !== undefined && isOwnNoun(scene, noun, isMeant) && !/^(?:what|that|which|who|there|here)$/.test(units[noun]!.word);
}
