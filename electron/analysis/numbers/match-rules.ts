import { singleDigitCounts } from "../vocabulary/number-words.ts";
import { asideUnits, derivedUnits, spokenUnits } from "../vocabulary/unit-words.ts";
import { isNumberPiece, type Line, pieceAtOffset } from "./pieces.ts";
import { type Draft, type Find, type NumberRule, roundTo } from "./rule.ts";
import { numberRules } from "./rules/index.ts";

/** A find with the names of the rules that made its drafts. */
export interface Candidate {
  readonly first: number;
  readonly end: number;
  readonly drafts: readonly (Draft & { readonly rule: string })[];
}

/** Words that may open a number though they are none: tried as starts beside the number pieces. */
const opener =
  /^(?:[$£€']|a|an|the|to|too|for|fore|won|oh|half|quarter|point|dot|minus|inch|inches|between|from|anywhere|couple|pair|another|twin|duals?|both|true|double|single|dozen|week|group|r|are|our|ar|january|jan|february|feb|march|april|may|june|july|august|aug|september|sept|october|oct|november|nov|december|dec|p|pee|lt|l|t|tee|tea|st|[a-h]r?|[jkmn]r?|lr|gee|jee|ef|eff|ee|aitch|jay|el|dee|bee|see)$/;

/** All finds of all rules at every place a number may start, those with a unit behind them extended over it. */
export function matchRules(line: Line): Candidate[] {
  const candidates: Candidate[] = [];
  for (const [at, piece] of line.pieces.entries()) {
    if (!isNumberPiece(piece) && !opener.test(piece.text)) continue;
    if (piece.glued && isNameTail(line, at)) continue;
    for (const rule of numberRules) for (const found of rule.find(line, at)) addFind(line, rule, found, candidates);
  }
  return candidates;
}

/** "c10", "mk2": digits glued to a name are part of it, unless the letters are a tire's or an engine's. */
function isNameTail(line: Line, at: number): boolean {
  const before = line.pieces[at - 1];
  return (
    before !== undefined &&
    /^[a-z]+$/.test(before.text) &&
    before.end === line.pieces[at]!.end &&
    before.written === "none" &&
    !/^v$/.test(before.text)
  );
}

function addFind(line: Line, rule: NumberRule, found: Find, candidates: Candidate[]): void {
  if (found.takesUnit && endsInCount(line, found)) return;
  candidates.push({ first: found.first, end: found.end, drafts: found.drafts.map((draft) => ({ ...draft, rule: rule.name })) });
  if (!found.takesUnit) return;
  for (const aside of asides) {
    const end = aside.endAt(line, found.end);
    if (end === undefined) continue;
    const drafts = found.drafts.filter((draft) => typeof draft.value === "number" && !draft.needsTopic && draft.kind !== "year");
    const kept = drafts.filter((draft) => draft.unit === undefined);
    if (kept.length === 0) continue;
    candidates.push({
      first: found.first,
      end,
      drafts: kept.map((draft) => ({
        ...draft,
        kind: aside.kind,
        weight: draft.weight < leastOwnWeight ? draft.weight : 0.5 + draft.weight * 0.5,
        topic: undefined,
        rule: rule.name,
      })),
    });
  }
  const measured = new Map<number, Draft[]>();
  for (const spoken of units) {
    const end = spoken.endAt(line, found.end);
    if (end === undefined) continue;
    addHomophoneHundreds(line, rule, found, spoken, end, candidates);
    // "… at twenty four | six mil of tread": the unit belongs to the figure that opens the caption, not to both run together.
    const lastOpensCaption = found.end - found.first > 1 && opensCaption(line, found.end - 1);
    const drafts = found.drafts.flatMap((draft) =>
      lastOpensCaption && draft.kind === "decimal" && draft.repaired
        ? []
        : (measure(draft, spoken, line, rulesOfLostPoints.has(rule.name)) ?? []),
    );
    if (drafts.length > 0) measured.set(end, [...(measured.get(end) ?? []), ...drafts]);
  }
  const own = Math.max(...found.drafts.map((draft) => draft.weight));
  for (const [end, drafts] of measured) {
    // The number with its unit explains more words than the number alone, so its best reading is no less likely.
    const scale = Math.max(1, own / Math.max(...drafts.map((draft) => draft.weight)));
    candidates.push({
      first: found.first,
      end,
      drafts: [
        ...drafts.map((draft) => ({ ...draft, weight: Math.min(0.99, draft.weight * scale), rule: rule.name })),
        // The word may be no unit at all ("390 four V"): the bare number stays a late candidate.
        ...found.drafts
          .filter((draft) => draft.kind === "integer" && !draft.needsTopic)
          .map((draft) => ({ ...draft, weight: draft.weight * 0.25, rule: rule.name })),
      ],
    });
  }
}

/**
 * "to 10 microns": a leading two heard as "to". Taken only where the number as it stands would be an unlikely figure for its unit and
 * two hundred more a likely one; "goes to 30 pounds" stays thirty.
 */
function addHomophoneHundreds(line: Line, rule: NumberRule, found: Find, spoken: UnitMatcher, end: number, candidates: Candidate[]): void {
  const lead = line.pieces[found.first - 1]?.text;
  if ((lead !== "to" && lead !== "too") || end === found.end || rule.name !== "plain-integer") return;
  const stated = found.drafts[0]!.value;
  if (typeof stated !== "number" || stated < 10 || stated > 99) return;
  const meant = 200 + stated;
  const typical = (value: number) => value >= spoken.typical[0] && value <= spoken.typical[1];
  if (typical(stated) || !typical(meant) || spoken.factor !== 1) return;
  candidates.push({
    first: found.first - 1,
    end,
    drafts: [
      {
        kind: "measure",
        value: meant,
        unit: spoken.unit,
        weight: 0.7,
        repaired: true,
        topic: unitTopic(spoken.unit),
        rule: "two-heard-as-to-before-unit",
      },
    ],
  });
}

function opensCaption(line: Line, at: number): boolean {
  const token = line.pieces[at]!.first;
  return token > 0 && line.tokens[token - 1]!.caption !== line.tokens[token]?.caption;
}

/** "two four, four cylinder": a number said in parts cannot end in the digit that counts the next thing. */
function endsInCount(line: Line, found: Find): boolean {
  if (found.end - found.first < 2 || !/^[1-9]$/.test(line.pieces[found.end - 1]!.text)) return false;
  // "seven point 4 v eight": a point must have a digit behind it.
  if (line.pieces[found.end - 2]!.text === "point") return false;
  // "five three v 8": the V opens the engine's name and is counted by its own number.
  if (line.pieces[found.end]?.text === "v" && isNumberPiece(line.pieces[found.end + 1])) return false;
  return singleDigitCounts.includes(line.pieces[found.end]?.text ?? "");
}

interface UnitMatcher {
  readonly unit: (typeof spokenUnits)[number]["unit"];
  readonly factor: number;
  readonly least: number;
  readonly most: number;
  readonly typical: readonly [number, number];
  readonly share: number;
  readonly endAt: (line: Line, at: number) => number | undefined;
}

/** Piece index just past the words `said` (regular-expression source) if they stand at piece `at`; "of an inch" and the like are taken in. */
function wordsAt(said: string): (line: Line, at: number) => number | undefined {
  const pattern = new RegExp(`(?:of an? )?(?:${said})(?= |$)`, "y");
  return (line, at) => {
    if (at >= line.pieces.length) return undefined;
    pattern.lastIndex = line.starts[at]!;
    const match = pattern.exec(line.text);
    return match ? pieceAtOffset(line, match.index + match[0].length + 1) : undefined;
  };
}

const units: readonly UnitMatcher[] = [
  ...spokenUnits.map((spoken) => ({ ...spoken, factor: 1, endAt: wordsAt(spoken.said) })),
  ...derivedUnits.map((derived) => ({
    ...derived,
    typical: [derived.least, derived.most] as const,
    share: 0.9,
    endAt: wordsAt(derived.said),
  })),
];
const asides = asideUnits.map((aside) => ({ kind: aside.kind, endAt: wordsAt(aside.said) }));

/** A reading less likely than this (a mishearing) gains nothing from the unit that follows: the unit speaks for every reading alike. */
const leastOwnWeight = 0.1;

/** A reading that needs its topic and is likelier than this by itself is satisfied by a unit of that topic. */
const leastWeightWithUnit = 0.3;

const money: ReadonlySet<string> = new Set(["USD", "GBP", "EUR"]);

/** Rules whose decimals were said without a point. */
const rulesOfLostPoints: ReadonlySet<string> = new Set(["two-single-digits", "thousands-shorthand", "two-pairs", "hundreds-shorthand"]);
const unitsOfDecimals: ReadonlySet<string> = new Set(["L", "V", "mm", "mil", "kWh", "bar", "lb-ft", "USD", "GBP", "EUR"]);

function measure(draft: Draft, spoken: UnitMatcher, line: Line, pointLost: boolean): Draft | undefined {
  if (draft.kind === "range" && draft.parts) {
    const usual = draft.parts.every((part) => part >= spoken.typical[0] && part <= spoken.typical[1]);
    return { ...draft, unit: spoken.unit, weight: draft.weight + (usual ? 0.15 : -0.1) * spoken.share, topic: unitTopic(spoken.unit) };
  }
  if (typeof draft.value !== "number" || draft.kind === "year" || draft.kind === "ratio" || draft.kind === "date-code") return undefined;
  if (draft.unit !== undefined && draft.unit !== spoken.unit) return undefined;
  if (draft.value < spoken.least || draft.value > spoken.most) return undefined;
  // "two six inch speakers", "twelve four inch bolts" count things of a size; a lost point is likely only with these units.
  if (pointLost && draft.kind === "decimal" && !unitsOfDecimals.has(spoken.unit)) return undefined;
  // "one twelve volt outlet": batteries come in twelve and twenty-four.
  if (spoken.unit === "V" && draft.value > 100 && [12, 24].includes(draft.value % 100)) return undefined;
  const typical = draft.value >= spoken.typical[0] && draft.value <= spoken.typical[1];
  // A reading that needed a topic ("58" for 58,000) does not gain one from a unit that says otherwise.
  if (draft.needsTopic && draft.weight <= 0.14) return undefined;
  if (draft.needsTopic && !(money.has(spoken.unit) || spoken.unit === "mi" || spoken.unit === "km")) return undefined;
  const home = spoken.unit === "GBP" && !/sterling|quid/.test(line.text) ? (line.british ? 1.3 : 0.25) : 1;
  return {
    kind: money.has(spoken.unit) ? "money" : "measure",
    value: spoken.factor === 1 ? draft.value : roundTo(draft.value * spoken.factor, 6),
    unit: spoken.unit,
    weight:
      draft.weight < leastOwnWeight ? draft.weight : Math.min(0.99, (typical ? 0.55 : 0.3) * spoken.share * home + draft.weight * 0.45),
    repaired: draft.repaired,
    topic: draft.needsTopic ? draft.topic : draft.weight < leastOwnWeight ? undefined : unitTopic(spoken.unit),
    // "38 4 12 kilometers": the unit itself speaks of distance.
    needsTopic: draft.needsTopic && (spoken.share < 0.9 || draft.weight < leastWeightWithUnit),
    unitSaid: spoken.share >= 0.9,
  };
}

function unitTopic(unit: string): Draft["topic"] {
  return money.has(unit)
    ? "price"
    : unit === "psi"
      ? "pressure"
      : unit === "V"
        ? "voltage"
        : unit === "mi" || unit === "km"
          ? "mileage"
          : unit === "lb" || unit === "kg"
            ? "weight"
            : unit === "hp" || unit === "kW" || unit === "PS"
              ? "power"
              : unit === "mil" || unit === "µm"
                ? "thickness"
                : undefined;
}
