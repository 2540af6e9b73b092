import type { ComponentName } from "../../../../../shared-types/index.ts";
import { bodyAndPaperFamilies } from "./body-and-papers.ts";
import { drivetrainFamilies } from "./drivetrain.ts";
import type { TypeFamily } from "./family.ts";
import { runningGearFamilies } from "./running-gear.ts";

export const typeFamilies = [...drivetrainFamilies, ...runningGearFamilies, ...bodyAndPaperFamilies];

/** Every choice that a spoken type makes: at most one in each family; a word that makes two in one family makes none ("disc/drum"). */
export function choicesOf(component: ComponentName, spoken: string): { readonly family: TypeFamily; readonly choice: string }[] {
  const text = spoken.toLowerCase();
  const made: { family: TypeFamily; choice: string }[] = [];
  for (const family of typeFamilies as readonly TypeFamily[]) {
    if (!family.components.includes(component)) continue;
    const choices = Object.entries(family.choices).filter(([, words]) => words.test(text));
    if (choices.length === 1) made.push({ family, choice: choices[0]![0] });
  }
  return made;
}

/** Choices that name the same thing more loosely: two-wheel drive leaves open which axle. */
const looser: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  "driven-wheels": { two: ["rear", "front"] },
  "battery-chemistry": { lithium: ["lfp", "nmc"] },
};

export function choicesAgree(family: string, first: string, second: string): boolean {
  return first === second || (looser[family]?.[first]?.includes(second) ?? false) || (looser[family]?.[second]?.includes(first) ?? false);
}

/** Cylinders that an engine's layout names ("straight six": 6), so that it can be held against a count. */
export function cylindersIn(spoken: string): number | undefined {
  const match = /\b(?:in ?-?line|straight|flat|flathead|slant|v)[ -]?(three|four|five|six|eight|ten|twelve|3|4|5|6|8|10|12)\b/.exec(
    spoken.toLowerCase(),
  );
  const words: Readonly<Record<string, number>> = { three: 3, four: 4, five: 5, six: 6, eight: 8, ten: 10, twelve: 12 };
  return match ? (words[match[1]!] ?? Number(match[1])) : undefined;
}
