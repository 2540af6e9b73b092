import { type NumberRule, phraseRule, roundTo } from "../rule.ts";
import { threeDigitDrafts } from "./quantity-drafts.ts";

const carburetors = "(?:carbs?|carbies|carburet\\S+|side ?draughts?|side ?drafts?|deuces)";

/** Counts said by another word than their number, and numbers that stand beside one of a kind that is itself a number ("two 6 volt"). */
export const countedKindRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "dual",
      example: { heard: "it's got dual tanks", meant: 2 },
      pattern:
        "(?:dual|double)(?= (?:\\S+ )?(?:tanks|exhausts?|tailpipes|pipes|tips|carbs|carburet\\S+|quads|batteries|motors?|fans|turbos|mufflers|stacks|outlets|alternators|fuel tanks|gas tanks)(?: |$))(?! (?:clutch|mass|range|zone|fuel (?:gas|system))(?: |$))",
    },
    () => [{ kind: "integer", value: 2, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "exhaust-kind",
      example: { heard: "the exhaust is dual and it comes out behind", meant: 2 },
      pattern:
        "(?<=(?:^| )exhausts?(?: 's| is| are|'s)?(?: all)?(?: a)? )(?<kind>dual|twin|double|single)(?! (?:\\d|tip|pipe|outlet|muffler))",
    },
    ({ kind = "" }) => [{ kind: "integer", value: kind === "single" ? 1 : 2, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "twin-at-length",
      example: { heard: "twin inch and a half side draught carbs", meant: 2 },
      pattern: `(?:twin|dual)(?= (?!tip|pipe|tail|cam|turbo|plug|spark|disc|tank)(?:(?!and then|the )\\S+ ){0,7}${carburetors}(?: |$))`,
    },
    () => [{ kind: "integer", value: 2, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "single-of-a-kind",
      example: { heard: "thrown out for a single 12 volt", meant: 1 },
      pattern:
        "single(?= (?:speed|gear(?! knob)|\\d+ volts?|drive motor|electric motor|4 barrel|2 barrel|throat|barrel|turbo|cat|silencer|stack|fuel tank|gas tank|fan|alternator)(?: |$))",
    },
    () => [{ kind: "integer", value: 1, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "several-of-a-voltage",
      example: { heard: "two 6 volt batteries used to live here", meant: 2 },
      pattern: "(?<count>[1-6])(?= (?:6|8|12|24) (?:volts?|v)(?: |$))",
    },
    ({ count = "" }) => [{ kind: "integer", value: Number(count), weight: 0.9 }],
  ),
  phraseRule(
    {
      name: "volume-and-fraction",
      example: { heard: "oil takes a gallon and a half", meant: 1.5 },
      pattern: "(?<whole>an?|\\d{1,2}) (?<unit>gallon|quart|pint|lit(?:er|re))s? and (?:an? )?(?<part>half|quarter|3 quarters)",
    },
    ({ whole = "", unit = "", part = "" }) => [
      {
        kind: "measure",
        value: roundTo((/\d/.test(whole) ? Number(whole) : 1) + (part === "half" ? 0.5 : part === "quarter" ? 0.25 : 0.75), 2),
        unit: unit === "gallon" ? "gal" : unit === "quart" ? "qt" : unit === "pint" ? "pt" : "L",
        weight: 0.9,
        unitSaid: true,
      },
    ],
  ),
  phraseRule(
    {
      name: "hundreds-with-last-zero",
      example: { heard: "the axle had a three five oh in it", meant: 3.5 },
      pattern: "(?<first>[1-9]) (?<second>[1-9]) oh(?! (?:\\d|oh|well|yes|no|my|god|and|look|yeah)(?: |$))",
      takesUnit: true,
    },
    ({ first = "", second = "" }) =>
      threeDigitDrafts(`${first}${second}0`, { plural: false, spelled: true, whole: 0.5 }).map((draft) =>
        draft.kind === "integer" || draft.kind === "measure" ? { ...draft, repaired: true } : draft,
      ),
  ),
  phraseRule(
    {
      name: "both-of-a-kind",
      example: { heard: "both charging leads are in the bag", meant: 2 },
      pattern: "both(?= (?:of )?(?:your |the |its )?(?:charging |charge )?(?:leads|cables|cords)(?: |$))",
    },
    () => [{ kind: "integer", value: 2, weight: 0.5 }],
  ),
  phraseRule(
    {
      name: "duals",
      example: { heard: "it had duals when he got it", meant: 2 },
      pattern:
        "(?<=(?:^| )(?:had|has|got|runs|with|true|have) )(?:true )?duals(?! (?:on the (?:rear|back)|wheels|tires|tyres|in the back|out back))",
    },
    () => [{ kind: "integer", value: 2, weight: 0.4 }],
  ),
];
