import type { ConflictKind, PositionName, StandardReference } from "../../../shared-types/index.ts";
import { unitTable } from "../vocabulary/units.ts";
import { type ConflictDraft, conflictOf, type Side } from "./conflict-of.ts";
import { looseness } from "./slots/classes.ts";
import { type ClassedSlot, type Dispute, disputesIn } from "./slots/disputes.ts";
import type { Facet } from "./slots/facet.ts";
import { sameBreathSeconds, sidesSaidApart } from "./slots/said-apart.ts";
import { nearSides } from "./slots/widest-quarrel.ts";
import { capitalised, claimWords, listed, moment } from "./wording.ts";

/** Further moments stay in the sides and are left out of the sentence. */
const mostMomentsInWords = 4;

const rules = {
  measure: "two-figures-for-one-thing",
  count: "two-counts-of-one-thing",
  type: "two-types-of-one-part",
  material: "two-materials-of-one-part",
  color: "two-colors-of-one-part",
  presence: "there-and-not-there",
  originality: "original-and-replaced",
} as const satisfies Partial<Record<ConflictKind, string>>;

/** Conflicts between values of one slot. */
export function disagreementsIn(slot: ClassedSlot): ConflictDraft[] {
  return disputesIn(slot).flatMap((whole) => {
    const dispute = { ...whole, sides: nearSides(whole.sides) };
    if (dispute.sides.length < 2) return [];
    const facets = dispute.sides.flat();
    // A claim about a part says more of what the quarrel is about than one about the whole.
    const first = facets.find((facet) => facet.subject.part !== null) ?? facets[0]!;
    const spoken = dispute.sides.map((side) => side.map((facet) => facet.claim));
    // A figure said again in another unit is no slip put right: two units for one engine in one breath were meant to agree.
    const restated = unitsAgainstEachOther(dispute.sides, first) !== undefined;
    const apart = sidesSaidApart(spoken, restated ? 0 : sameBreathSeconds[first.kind]);
    if (apart.length < 2) return [];
    const sides = apart.map((side) => dispute.sides[side]!);
    return [conflictIn({ ...dispute, sides }, first)];
  });
}

const countedTopic = "number of ";

/** "rear tire size": the position, then the topic. */
export function placedTopic(topic: string, position: PositionName | null): string {
  if (position === null || position === "all") return topic;
  const words = position.split("-");
  if (topic.startsWith(countedTopic)) return `${countedTopic}${words.join(" ")} ${topic.slice(countedTopic.length)}`;
  // "passenger rear" and "rear door" share a word.
  return [...(topic.startsWith(`${words.at(-1)} `) ? words.slice(0, -1) : words), topic].join(" ");
}

function conflictIn(dispute: Dispute, first: Facet): ConflictDraft {
  const topic = placedTopic(first.subject.topic, dispute.position);
  const sides = dispute.sides.map((side) => sideOf(side));
  const standard = unitsAgainstEachOther(dispute.sides, first);
  const kind: ConflictKind = standard ? "standard" : first.kind;
  const doubtful = dispute.sides.some((side) => side.every((facet) => facet.claim.stance !== "stated"));
  return conflictOf({
    kind,
    topic,
    why: whyOf(topic, dispute.sides, first.kind),
    rule: standard ? unitRule(first) : (rules[first.kind as keyof typeof rules] ?? "two-values-of-one-thing"),
    ...(standard ? { standard } : {}),
    // A side that nobody stated flatly costs the dealer less.
    weight: first.subject.weight * (doubtful ? 0.8 : 1),
    sides,
  });
}

/**
 * The side's value as it was most exactly stated, else as most exactly said; choices and counts as such ("disc", 6).
 * The most exact, because a further mention in rounder words must not change the name that a ruling hangs on.
 */
function sideOf(facets: readonly Facet[]): Side {
  const flat = facets.filter((facet) => facet.claim.stance === "stated");
  const spokesman = (flat.length > 0 ? flat : facets).reduce((best, facet) =>
    looseness(facet.reading) < looseness(best.reading) ? facet : best,
  );
  const { reading, claim } = spokesman;
  const claims = facets.map((facet) => facet.claim);
  if (reading.by === "choice") return { value: reading.choice, unit: null, claims };
  // "Straight six" counts cylinders without being a number.
  if (spokesman.kind === "count" && typeof claim.value !== "number" && reading.by === "options") {
    return { value: Number([...reading.options][0]), unit: null, claims };
  }
  if (reading.by === "word") return { value: reading.word, unit: null, claims };
  return { value: claim.value, unit: claim.unit, claims };
}

function whyOf(topic: string, sides: readonly (readonly Facet[])[], kind: ConflictKind): string {
  const said = sides.map((side) => {
    const moments = [...new Set(side.map((facet) => moment(facet.claim.start)))].slice(0, mostMomentsInWords);
    return { words: sideWords(side), moments: listed(moments) };
  });
  const [first, ...others] = said;
  if (kind === "presence") {
    return capitalised(
      `the ${topic} is said to be ${[first!, ...others].map(({ words, moments }) => `${words} at ${moments}`).join(" and ")}.`,
    );
  }
  const rest = others.map(({ words, moments }) => `${words} at ${moments}`);
  return `For the ${topic}, ${first!.words} is said at ${first!.moments}, and ${listed(rest)}.`;
}

function sideWords(facets: readonly Facet[]): string {
  const { value, unit } = sideOf(facets);
  const spokesman = facets.find((facet) => facet.claim.value === value);
  return spokesman ? claimWords(spokesman.claim) : `${value}${unit === null ? "" : ` ${unit}`}`;
}

/** Figures given in different units on the two sides rest on the conversion, which is shown. */
function unitsAgainstEachOther(sides: readonly (readonly Facet[])[], first: Facet): StandardReference | undefined {
  if (first.reading.by !== "figure" || sides.length !== 2) return undefined;
  const [one, other] = sides.map(
    (side) => new Set(side.map((facet) => (facet.reading.by === "figure" ? facet.reading.figure.unit : null))),
  );
  if ([...one!].some((unit) => other!.has(unit))) return undefined;
  const figure = figureIn(sides[0]!);
  const distance = figure?.unit === "mi" || figure?.unit === "km";
  const base = figure?.unit ? (distance ? "km" : baseUnits[unitTable[figure.unit].dimension]) : undefined;
  if (base === undefined) return undefined;
  const perBase = distance ? unitTable.km.factor : 1;
  const working = sides.map((side) => {
    const figure = figureIn(side);
    if (!figure?.unit) return "";
    const factor = unitTable[figure.unit].factor / perBase;
    return figure.unit === base
      ? `${figure.spoken} ${base}`
      : `${figure.spoken} ${figure.unit} × ${plainFactor(factor)} ${base} = ${plainFactor(figure.amount / perBase)} ${base}`;
  });
  if (first.reading.agreement.by === "displacement") {
    return {
      name: "Displacement in metric and inch units",
      source: "1 in = 25.4 mm exactly, so 1 cu in = 16.387064 mL (NIST SP 811, Appendix B.8)",
      working: `${working.join("; ")}. They differ by more than 0.1 L of rounding.`,
    };
  }
  return {
    name: "One figure in two units",
    source: "Conversion factors: NIST SP 811, Appendix B.8; PS = 75 kgf·m/s = 0.73549875 kW (DIN 66036)",
    working: `${working.join("; ")}. They differ by more than rounding.`,
  };
}

function unitRule(first: Facet): string {
  return first.subject.property === "displacement" ? "displacement-in-two-units" : "figures-in-two-units";
}

/** What each dimension's factors count in. */
const baseUnits: Readonly<Partial<Record<string, string>>> = {
  length: "mm",
  volume: "L",
  power: "kW",
  torque: "N·m",
  pressure: "kPa",
  mass: "kg",
};

function figureIn(side: readonly Facet[]) {
  const { reading } = side[0]!;
  return reading.by === "figure" ? reading.figure : undefined;
}

/** As many places as a person would write. */
function plainFactor(figure: number): string {
  return String(Number(figure.toPrecision(Math.abs(figure) >= 1 ? 5 : 8)));
}
