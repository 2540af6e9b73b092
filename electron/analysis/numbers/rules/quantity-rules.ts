import { isPlausibleRatio, isSoldRatio, ratioOfTeeth } from "../../vocabulary/axle-ratios.ts";
import { isKnownDisplacement } from "../../vocabulary/displacements.ts";
import { metricRimsMm } from "../../vocabulary/tire-geometry.ts";
import { type Draft, digitsOf, type NumberRule, phraseRule, roundTo } from "../rule.ts";
import { dateCodeDrafts, monthOfYearDrafts, yearDrafts } from "./date-drafts.ts";

/** Sources of the patterns below: a digit piece, two digits, a zero as it is said. */
const one = "[1-9]";
const two = "[1-9]\\d";
const zero = "(?:0|oh)";

/** A three-digit number said or split as such: an axle ratio without its point, a displacement, a plain count. */
function threeDigitDrafts(digits: string, options: { plural: boolean; spelled: boolean; whole: number }): Draft[] {
  const value = Number(digits);
  // "308s" and "three seventies" name a set of gears far oftener than so many of anything.
  const drafts: Draft[] = [{ kind: "integer", value, weight: options.plural ? options.whole * 0.7 : options.whole, repaired: false }];
  const ratio = value / 100;
  if (isPlausibleRatio(ratio)) {
    const weight = (isSoldRatio(ratio) ? 0.42 : 0.2) + (options.plural && isSoldRatio(ratio) && !isTireWidth(value) ? 0.22 : 0);
    drafts.push({ kind: "ratio", value: ratio, weight, repaired: true, topic: "ratio" });
  }
  if (isKnownDisplacement(value)) drafts.push({ kind: "measure", value, unit: "cu in", weight: 0.4, topic: "displacement" });
  if (metricRimsMm.includes(value)) drafts.push({ kind: "measure", value, unit: "mm", weight: 0.4, topic: "wheel", needsTopic: true });
  if (value >= 390 && value <= 1250 && value % 5 === 0)
    drafts.push({ kind: "measure", value, unit: "cfm", weight: 0.35, topic: "flow", needsTopic: true });
  drafts.push(...dateCodeDrafts(digits, options.spelled));
  return drafts;
}

export const quantityRules: readonly NumberRule[] = [
  phraseRule(
    {
      name: "plain-integer",
      example: { heard: "about 300 of them", meant: 300 },
      pattern: "(?<minus>minus )?(?<digits>\\d+)(?<plural>s?)",
      takesUnit: true,
    },
    ({ digits = "", minus, plural }, line, first) => {
      const value = Number(digits) * (minus ? -1 : 1);
      const piece = line.pieces[first]!;
      const { written } = piece;
      const scaled = written === "scaled" || written === "mixed";
      const weight = scaled ? 0.85 : 0.6;
      const drafts: Draft[] = [];
      if (digits.length === 3 && !digits.startsWith("0") && !scaled)
        drafts.push(...threeDigitDrafts(digits, { plural: plural !== "", spelled: false, whole: weight }));
      else if (digits.length <= 7) drafts.push({ kind: "integer", value, weight, repaired: written === "mixed" });
      else return [];
      if (plural) drafts.push(...pluralDrafts(value));
      drafts.push(...yearDrafts(digits, { decade: plural !== "", written }));
      if (digits.length === 4 && written === "digits") drafts.push(...dateCodeDrafts(digits, false), ...monthOfYearDrafts(digits));
      if (digits.length === 3 && digits.startsWith("0")) drafts.push(...dateCodeDrafts(digits, false));
      if (!plural && value >= 10 && value < 200 && digits.length <= 3)
        drafts.push({ kind: "integer", value: value * 1000, weight: 0.12, repaired: true, topic: "price", needsTopic: true });
      if (!plural && value >= 10 && value < 400 && digits.length <= 3)
        drafts.push({ kind: "integer", value: value * 1000, weight: 0.1, repaired: true, topic: "mileage", needsTopic: true });
      // Tire, oil and compression figures are often given bare: "they're at thirty five".
      if (value >= 20 && value <= 200 && !plural)
        drafts.push({ kind: "measure", value, unit: "psi", weight: 0.25, topic: "pressure", needsTopic: true });
      drafts.push(...mishearing(value, written));
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "plain-decimal",
      example: { heard: "it has a 4.11", meant: 4.11 },
      pattern: "(?<minus>minus )?(?<digits>\\d+\\.\\d+)s?",
      takesUnit: true,
    },
    ({ digits = "", minus }) => decimalDrafts(Number(digits) * (minus ? -1 : 1), digits, false),
  ),
  phraseRule(
    {
      name: "spoken-point",
      example: { heard: "eight hundred eighteen point three o three", meant: 818.303 },
      pattern: `(?<whole>(?:(?:\\d+|oh|for|to|too) )?)(?:point|comma|dot) (?<places>(?:\\d{1,3}|oh)(?: (?:\\d{1,2}|oh))*)(?:s(?= |$))?`,
      takesUnit: true,
    },
    ({ whole = "", places = "" }, line, first) => {
      const digits = `${digitsOf(whole.trim()) || "0"}.${digitsOf(places)}`;
      const comma = / comma /.test(line.text.slice(line.starts[first], line.starts[first]! + whole.length + 7));
      return decimalDrafts(Number(digits), digits, comma || /^(?:for|too?) /.test(whole));
    },
  ),
  phraseRule(
    {
      name: "european-comma",
      example: { heard: "3 comma 4 5", meant: 3.45 },
      pattern: `(?<whole>\\d{1,3}) comma (?<places>\\d(?: \\d)*)`,
      takesUnit: true,
    },
    ({ whole = "", places = "" }) => decimalDrafts(Number(`${whole}.${digitsOf(places)}`), `${whole}.${digitsOf(places)}`, true),
  ),
  phraseRule(
    {
      name: "hundreds-shorthand",
      example: { heard: "three fifty", meant: 350 },
      pattern: `(?<lead>${one}|for|won) (?<tail>${two})(?<plural>s?)`,
      takesUnit: true,
    },
    ({ lead = "", tail = "", plural }, line, first) => {
      const homophone = !/\d/.test(lead);
      const drafts = threeDigitDrafts(digitsOf(`${lead} ${tail}`), {
        plural: plural !== "",
        spelled: /\d\d/.test(tail) && line.pieces[first]!.written === "digits",
        whole: homophone ? 0.15 : 0.6,
      });
      if (engineLayouts.has(line.pieces[first - 1]?.text ?? "")) return [];
      // "for eleven" is a ratio or an hour's worth of anything: only a word about gears makes it a number.
      if (homophone) return drafts.filter((draft) => draft.kind === "ratio").map((draft) => ({ ...draft, needsTopic: true }));
      if (line.pieces[first]!.written === "digits" && line.pieces[first + 1]!.written === "digits")
        return drafts.map((draft) => (draft.kind === "integer" ? { ...draft, weight: 0.45, repaired: true } : draft));
      return [...drafts, ...thousandsWithPlaces(lead, tail)];
    },
  ),
  phraseRule(
    {
      name: "hundreds-with-zero",
      example: { heard: "three oh oh", meant: 300 },
      pattern: `(?<lead>${one}|for) ${zero} (?<last>\\d|oh)(?<plural>s?)`,
      takesUnit: true,
    },
    ({ lead = "", last = "", plural }) => {
      const digits = digitsOf(`${lead} oh ${last}`);
      const drafts = threeDigitDrafts(digits, { plural: plural !== "", spelled: true, whole: 0.5 }).map((draft) =>
        draft.kind === "ratio" ? { ...draft, weight: draft.weight + (last === "oh" ? 0.2 : 0.05) } : draft,
      );
      return /\d/.test(lead) ? drafts : drafts.filter((draft) => draft.kind === "ratio").map((draft) => ({ ...draft, needsTopic: true }));
    },
  ),
  phraseRule(
    {
      name: "three-single-digits",
      example: { heard: "4 5 4", meant: "454" },
      pattern: `(?<digits>${one} (?:\\d|oh) \\d)(?<plural>s?)`,
      takesUnit: true,
    },
    ({ digits = "", plural }) =>
      countedAloud(digits) ??
      threeDigitDrafts(digitsOf(digits), { plural: plural !== "", spelled: true, whole: 0.5 }).map((draft) =>
        draft.kind === "integer" || draft.kind === "measure" ? { ...draft, repaired: true } : draft,
      ),
  ),
  phraseRule(
    {
      name: "two-single-digits",
      example: { heard: "five seven liter", meant: 5.7 },
      pattern: `(?<lead>${one}) (?<last>${one})`,
      takesUnit: true,
    },
    ({ lead = "", last = "" }) => [
      { kind: "decimal", value: Number(`${lead}.${last}`), weight: 0.3, repaired: true, topic: "displacement" },
      { kind: "integer", value: Number(lead) * 1000 + Number(last) * 100, weight: 0.16, repaired: true, topic: "price", needsTopic: true },
      {
        kind: "integer",
        value: Number(lead) * 1000 + Number(last) * 100,
        weight: 0.16,
        repaired: true,
        topic: "mileage",
        needsTopic: true,
      },
    ],
  ),
  phraseRule(
    {
      name: "teeth-over-teeth",
      example: { heard: "the axle is 37 over ten", meant: 3.7 },
      pattern: `(?<ring>${two}) (?<over>(?:over|to|by|and|slash|/) )?(?:an? )?(?<pinion>\\d\\d?)`,
    },
    ({ ring = "", pinion = "", over }) => {
      const ratio = ratioOfTeeth(Number(ring), Number(pinion));
      if (ratio === undefined) return [];
      return [
        {
          kind: "ratio",
          value: ratio,
          parts: [Number(ring), Number(pinion)],
          weight: over ? 0.45 : 0.25,
          repaired: over === "",
          topic: "ratio",
          needsTopic: true,
        },
      ];
    },
  ),
  phraseRule(
    {
      name: "ratio-to-one",
      example: { heard: "three point nine to one", meant: 3.9 },
      pattern:
        "(?<whole>\\d+)(?: (?:(?<and>and (?:a |an )?(?<part>half|quarter|3 quarters))|point (?<places>\\d+(?: \\d)*)|(?<shorthand>\\d\\d)))? (?:to|:) 1",
    },
    ({ whole = "", and, part = "", places = "", shorthand = "" }) => {
      const fraction = part.startsWith("3") ? 0.75 : part === "half" ? 0.5 : part === "quarter" ? 0.25 : 0;
      const value = places
        ? Number(`${whole}.${digitsOf(places)}`)
        : shorthand
          ? Number(`${whole}.${shorthand}`)
          : Number(whole) / (whole.length === 3 ? 100 : 1) + (and ? fraction : 0);
      return value >= 1 && value <= 30 ? [{ kind: "ratio", value, weight: 0.85, repaired: shorthand !== "" || whole.length === 3 }] : [];
    },
  ),
  phraseRule(
    { name: "decimal-ratio-to-one", example: { heard: "a 3.9 to 1 axle", meant: 3.9 }, pattern: "(?<ratio>\\d+\\.\\d+) (?:to|:) 1" },
    ({ ratio = "" }) => [{ kind: "ratio", value: Number(ratio), weight: 0.9 }],
  ),
  phraseRule(
    {
      name: "two-pairs",
      example: { heard: "twenty two nineteen", meant: "2219" },
      pattern: `(?<lead>${two}) (?:, )?(?<tail>${two}|${zero} \\d)`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      const digits = digitsOf(`${lead} ${tail}`);
      const comma = line.pieces[first + 1]!.text === ",";
      const asDigits = line.pieces[first]!.written === "digits";
      if (comma) return dateCodeDrafts(digits, true).map((draft) => ({ ...draft, weight: draft.weight * 0.6, needsTopic: true }));
      const drafts: Draft[] = [{ kind: "integer", value: Number(digits), weight: asDigits ? 0.25 : 0.5, repaired: asDigits }];
      // "twenty six, twenty seven": about so much. "twenty twenty one" is a year.
      if (Number(digitsOf(tail)) === Number(lead) + 1 && !asYearPair(digits))
        drafts.push({ kind: "range", value: `${lead}-${digitsOf(tail)}`, parts: [Number(lead), Number(lead) + 1], weight: 0.6 });
      drafts.push(
        ...yearDrafts(digits, { decade: false, written: "words" }),
        ...dateCodeDrafts(digits, true),
        ...monthOfYearDrafts(digits),
      );
      if (!tail.includes("oh") && tail !== "")
        drafts.push({ kind: "decimal", value: Number(`${lead}.${digitsOf(tail)}`), weight: 0.12, repaired: true });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "thousands-shorthand",
      example: { heard: "odometer says fifty eight four", meant: 58400 },
      pattern: `(?<lead>(?:1 )?${two}|1 oh ${one}|1\\d\\d) (?<tail>${one})`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }) => {
      const thousands = Number(digitsOf(lead));
      return [
        { kind: "integer", value: thousands * 1000 + Number(tail) * 100, weight: 0.46, repaired: true, topic: "mileage" },
        { kind: "integer", value: thousands * 1000 + Number(tail) * 100, weight: 0.46, repaired: true, topic: "price" },
        { kind: "decimal", value: Number(`${thousands}.${tail}`), weight: 0.4, repaired: true, topic: "voltage" },
      ];
    },
  ),
  phraseRule(
    {
      name: "thousands-and-hundreds-shorthand",
      example: { heard: "asking eighteen nine fifty", meant: 18950 },
      pattern: `(?<lead>(?:1 )?${two}|1 oh ${one}|${one}|1\\d\\d) (?<tail>(?:${one}|oh) (?:${two}|${zero} \\d|\\d \\d)|\\d{3}|oh ${one})`,
      takesUnit: true,
    },
    ({ lead = "", tail = "" }, line, first) => {
      const thousands = Number(digitsOf(lead));
      const rest = digitsOf(tail).padStart(3, "0");
      const splitDigits = /^\d{3}$/.test(tail) && line.pieces[first]!.written === "digits";
      // "one forty two nine hundred": the hundreds were said as such.
      const spoken =
        tail.includes(" ") ||
        (line.pieces[first + lead.split(" ").length]!.written === "scaled" && line.pieces[first]!.written !== "scaled");
      if (lead.length === 1 && !spoken) return [];
      const weight = lead.length === 1 ? 0.2 : spoken ? 0.5 : splitDigits && thousands < 100 ? 0.22 : 0.35;
      const needsTopic = weight < 0.5;
      const value = thousands * 1000 + Number(rest);
      return [
        { kind: "integer", value, weight, repaired: true, topic: "mileage", needsTopic },
        { kind: "integer", value, weight, repaired: true, topic: "price", needsTopic },
      ];
    },
  ),
  phraseRule(
    {
      name: "digit-by-digit",
      example: { heard: "the odometer reads 1 4 8 3 1 2", meant: 148312 },
      pattern: `(?<digits>(?:\\d|oh)(?: (?:\\d|oh)){3,6})(?<more>(?: (?:\\d|oh))*)`,
    },
    ({ digits = "", more }) => {
      const spelled = digitsOf(digits);
      const aloud = countedAloud(`${digits}${more}`);
      if (aloud) return aloud;
      if (more) return [{ kind: "telephone", value: `${spelled}${digitsOf(more)}`, weight: 0.7 }];
      const drafts: Draft[] = [
        { kind: "integer", value: Number(spelled), weight: 0.5, repaired: true, topic: "mileage" },
        ...(spelled.length === 4 ? [...dateCodeDrafts(spelled, true), ...yearDrafts(spelled, { decade: false, written: "words" })] : []),
      ];
      if (spelled.length === 7) drafts.push({ kind: "telephone", value: spelled, weight: 0.6 });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "thousands-letter",
      example: { heard: "it has 61k on it", meant: 61000 },
      pattern: "(?<digits>\\d+(?:\\.\\d+)?) (?:k|grand)",
      takesUnit: true,
    },
    ({ digits = "" }, line, first) => {
      const grand = line.pieces[first + 1]!.text === "grand";
      const value = roundTo(Number(digits) * 1000, 0);
      const drafts: Draft[] = [{ kind: "integer", value, weight: 0.8, topic: grand ? "price" : "mileage" }];
      if (grand) drafts.unshift({ kind: "money", value, unit: line.british ? "GBP" : "USD", weight: 0.85, topic: "price" });
      return drafts;
    },
  ),
  phraseRule(
    {
      name: "grand-and-a-half",
      example: { heard: "about twelve and a half grand", meant: 12500 },
      pattern: "(?<digits>\\d+) and (?:a )?half (?:k|grand|thousand)",
    },
    ({ digits = "" }, line) => [
      { kind: "money", value: (Number(digits) + 0.5) * 1000, unit: line.british ? "GBP" : "USD", weight: 0.85, topic: "price" },
    ],
  ),
  phraseRule(
    {
      name: "million",
      example: { heard: "two million dollars", meant: 2_000_000 },
      pattern: "(?<digits>\\d+(?:\\.\\d+)?) million",
      takesUnit: true,
    },
    ({ digits = "" }) => [{ kind: "integer", value: roundTo(Number(digits) * 1e6, 0), weight: 0.85 }],
  ),
];

/** "flathead six eighty five horse": the six counts cylinders. */
const engineLayouts: ReadonlySet<string> = new Set("straight inline flathead slant flat v vee boxer rotary big pushrod".split(" "));

/** 235, 255: "two thirty fives" are tires unless gears are spoken of; 355 and 455 are no common width. */
function isTireWidth(value: number): boolean {
  return value % 10 === 5 && value >= 155 && value <= 325;
}

function asYearPair(digits: string): boolean {
  return Number(digits) >= 1900 && Number(digits) <= 2039;
}

/** "one two three four": a step of one from number to number is someone counting. */
function countedAloud(text: string): Draft[] | undefined {
  const parts = text.trim().split(" ").map(Number);
  const step = parts[1]! - parts[0]!;
  if (parts.length < 3 || Math.abs(step) !== 1 || parts.some((part, at) => at > 0 && part - parts[at - 1]! !== step)) return undefined;
  return [{ kind: "counting", value: parts.join(" "), parts, weight: 0.7 }];
}

/** "seventeens", "thirty fives": wheels or off-road tires named by their inches. */
function pluralDrafts(value: number): Draft[] {
  const drafts: Draft[] = [];
  if (value >= 12 && value <= 26) drafts.push({ kind: "measure", value, unit: "in", weight: 0.64, topic: "wheel" });
  if (value >= 27 && value <= 54) drafts.push({ kind: "measure", value, unit: "in", weight: 0.62, topic: "tire" });
  return drafts;
}

function decimalDrafts(value: number, digits: string, repaired: boolean): Draft[] {
  const drafts: Draft[] = [{ kind: "decimal", value, weight: 0.7, repaired }];
  const places = digits.split(".")[1]?.length ?? 0;
  if (places >= 1 && places <= 2 && isPlausibleRatio(value))
    drafts.push({ kind: "ratio", value, weight: isSoldRatio(value) && places === 2 ? 0.6 : 0.35, repaired, topic: "ratio" });
  if (places === 1 && value >= 0.6 && value <= 8.9)
    drafts.push({ kind: "measure", value, unit: "L", weight: 0.4, repaired, topic: "displacement" });
  return drafts;
}

/** "one twenty" as 1.20 and the like are not said; "seven twenty five" may be 7.25 inches. */
function thousandsWithPlaces(lead: string, tail: string): Draft[] {
  if (!["25", "50", "75"].includes(tail)) return [];
  return [{ kind: "decimal", value: Number(`${lead}.${tail}`), weight: 0.12, repaired: true }];
}

/** Thirteen and thirty and their like sound alike: the other one stays a candidate, never the first. */
function mishearing(value: number, written: string): Draft[] {
  if (written !== "words") return [];
  if (value >= 13 && value <= 19) return [{ kind: "integer", value: (value - 10) * 10, weight: 0.05, repaired: true }];
  if (value >= 30 && value <= 90 && value % 10 === 0) return [{ kind: "integer", value: value / 10 + 10, weight: 0.05, repaired: true }];
  return [];
}
