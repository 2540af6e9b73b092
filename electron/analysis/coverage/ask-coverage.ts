import type { Claim, CoverageQuestion, ZoneName, ZoneProposal } from "../../../shared-types/index.ts";
import { shortestViewSeconds, spokenItems, viewsToShow, wheelCorners } from "./coverage-tables.ts";

/**
 * What a viewer will ask because no words came to it: zones missing or passed in a moment, wheels never named, usual items never
 * spoken. Questions, not faults.
 */
export function askCoverage(zones: readonly ZoneProposal[], claims: readonly Claim[]): CoverageQuestion[] {
  const seconds = new Map<ZoneName, number>();
  for (const { zone, start, end } of zones) seconds.set(zone, (seconds.get(zone) ?? 0) + (end - start));
  const questions: Omit<CoverageQuestion, "id">[] = [];
  for (const { zone, words } of viewsToShow) {
    const shown = seconds.get(zone) ?? 0;
    if (shown === 0)
      questions.push({
        key: `zone:${zone}`,
        about: "zone",
        topic: words,
        question: `The words never come to the ${words}. Does the film show it?`,
      });
    else if (shown < shortestViewSeconds)
      questions.push({
        key: `zone:${zone}`,
        about: "zone",
        topic: words,
        question: `The words stay with the ${words} for ${Math.round(shown)} s. Does the film show enough of it?`,
      });
  }
  for (const { corner, words, seenFrom } of wheelCorners) {
    const seen =
      seenFrom.some((zone) => (seconds.get(zone) ?? 0) >= shortestViewSeconds) || claims.some((claim) => isAtCorner(claim, corner));
    if (!seen)
      questions.push({
        key: `corner:${corner}`,
        about: "corner",
        topic: words,
        question: `The words name neither the ${words} nor the side it is on. Does the film show it?`,
      });
  }
  for (const { item, question, spoken } of spokenItems)
    if (!claims.some((claim) => spoken(claim))) questions.push({ key: `item:${item}`, about: "item", topic: item, question });
  return questions.map((question, position) => ({ id: `q${position + 1}`, ...question }));
}

function isAtCorner({ component, position }: Claim, corner: string): boolean {
  if (component !== "tire" && component !== "wheel" && component !== "brakes") return false;
  return position === "all" || position === corner;
}
