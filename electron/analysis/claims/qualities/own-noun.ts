import type { SpokenScene } from "./spoken-scene.ts";

/** Words that lead from a state to what has it: "a hole in the bumper", "rust on the hanger". */
const leading: ReadonlySet<string> = new Set(
  "in on of across through along inside over at round around into onto from off above below".split(" "),
);
const determining: ReadonlySet<string> = new Set(
  "the this that these those a an my your our his her its their each both every either".split(" "),
);
/** Nouns for a place on whatever is in view, or for the vehicle itself: they name no thing of their own. */
const vague: ReadonlySet<string> = new Set(
  (
    "side sides place places spot spots bottom middle center centre top edge edges corner corners end ends way outside inside thing car truck " +
    "van vehicle one ones it here there this that them these those front back rear left right driver driver's drivers passenger passenger's " +
    "passengers nearside offside near far off picture camera video light sun area whole length face surface same other lower upper outer inner " +
    "first second third last base world lot day year years time moment motor wagon pickup coupe sedan saloon estate hatch hatchback roadster " +
    "convertible ragtop underneath underside bottoms skin metal steel seam seams usual couple bit little old outer lip lips seven eight"
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

/** Whether what stands at this word is a thing that no rule knows as a place: a noun of its own. */
function isOwnNoun(scene: SpokenScene, unit: number): boolean {
  const word = scene.units[unit]?.word ?? "";
  return /^[a-z][a-z'-]{2,}$/.test(word) && !vague.has(word) && !determining.has(word) && !leading.has(word) && !having.has(word);
}

/**
 * Whether the words say what has the state, though no part is known by it: "a hole in the bumper stop", "the hanger's rusted".
 * What is in view is then not meant. Unit range of the state, end exclusive.
 */
export function hasOwnNoun(scene: SpokenScene, firstUnit: number, endUnit: number): boolean {
  return namedAfter(scene, endUnit) || namedBefore(scene, firstUnit);
}

function namedAfter(scene: SpokenScene, endUnit: number): boolean {
  const { units } = scene;
  if (units[endUnit - 1]?.endsPhrase) return false;
  let at = endUnit;
  while (/^(?:right|just|all|down|up|out|only)$/.test(units[at]?.word ?? "")) at++;
  if (!leading.has(units[at]?.word ?? "") || units[at]!.endsPhrase) return false;
  at++;
  if (!determining.has(units[at]?.word ?? "") || units[at]!.endsPhrase) return false;
  for (const last = at + afterReach; ++at <= last && units[at]; ) {
    if (vague.has(units[at]!.word)) {
      if (units[at]!.endsPhrase) return false;
      continue;
    }
    return isOwnNoun(scene, at);
  }
  return false;
}

function namedBefore(scene: SpokenScene, firstUnit: number): boolean {
  const { units } = scene;
  let at = firstUnit - 1;
  const least = Math.max(1, firstUnit - backReach);
  while (at >= least && measuring.has(units[at]!.word) && !units[at]!.endsPhrase) at--;
  if (at < least || !having.has(units[at]!.word) || units[at]!.endsPhrase) return false;
  const noun = at - 1;
  const determiner = [units[noun - 1], units[noun - 2]].find((unit) => unit && determining.has(unit.word) && !unit.endsPhrase);
  return determiner !== undefined && isOwnNoun(scene, noun) && !/^(?:what|that|which|who|there|here)$/.test(units[noun]!.word);
}
