import type { Claim } from "../../../../shared-types/index.ts";
import { convert } from "../../vocabulary/units.ts";
import { conflictOf } from "../conflict-of.ts";
import { circumstanceOf } from "../slots/circumstances.ts";
import { slotPart } from "../slots/parts.ts";
import { figureOf, quantityRuleFor } from "../values/quantities.ts";
import { cylindersIn } from "../values/type-families/index.ts";
import { claimWords, moment } from "../wording.ts";
import type { ClaimIndex, StandardRule } from "./rule.ts";

const sweptVolume = "Swept volume = π ÷ 4 × bore² × stroke × cylinders (arithmetic)";

/** Bore and stroke are spoken to a hundredth, displacements are sold to the nearest inch or tenth: wider apart is another engine. */
const mostShareApart = 0.02;

/** The one value that all of them give, with the claims; undefined where they differ, which is a conflict of its own. */
function agreed(claims: readonly Claim[], amountOf: (claim: Claim) => number | undefined) {
  const known = claims.flatMap((claim) => {
    const amount = amountOf(claim);
    return amount === undefined ? [] : [{ claim, amount }];
  });
  const first = known[0];
  if (!first || known.some(({ amount }) => Math.abs(amount - first.amount) > 0.005 * first.amount)) return undefined;
  return { amount: first.amount, claims: known.map(({ claim }) => claim) };
}

/** Inches; a bare figure is one of inches below 30 and of millimeters above. */
function inches(claim: Claim): number | undefined {
  if (typeof claim.value !== "number") return undefined;
  return convert(claim.value, claim.unit ?? (claim.value < 30 ? "in" : "mm"), "in");
}

function ofPart(claims: ClaimIndex, part: "bore" | "stroke"): Claim[] {
  return (["diameter", "size"] as const)
    .flatMap((attribute) => claims.of("engine", attribute))
    .filter((claim) => claim.part === part || (claim.part === null && new RegExp(`\\b${part}\\b`, "i").test(claim.quote)))
    .filter((claim) => circumstanceOf(claim) === null);
}

/** Cylinders as counted or as the layout names them ("straight six"). */
function cylinders(claims: ClaimIndex) {
  const counted = claims.of("engine", "count").filter((claim) => slotPart(claim) === "cylinder");
  const named = claims.of("engine", "type").filter((claim) => cylindersIn(String(claim.value)) !== undefined);
  return agreed([...counted, ...named], (claim) => (typeof claim.value === "number" ? claim.value : cylindersIn(String(claim.value))));
}

const usualCylinders = [2, 3, 4, 5, 6, 8, 10, 12];

const displacementRule = quantityRuleFor("engine", "displacement");

function litres(claim: Claim): number | undefined {
  const figure = figureOf(claim, displacementRule);
  return figure?.dimension === "volume" ? figure.amount : undefined;
}

export const displacementAgainstBore: StandardRule = {
  name: "displacement-against-bore-and-stroke",
  source: sweptVolume,
  find: (claims) => {
    const bore = agreed(ofPart(claims, "bore"), inches);
    const stroke = agreed(ofPart(claims, "stroke"), inches);
    const count = cylinders(claims);
    if (!bore || !stroke) return { conflicts: [], remarks: [] };
    const displacements = claims.of("engine", "displacement").filter((claim) => slotPart(claim) === null && circumstanceOf(claim) === null);
    const spokenLitres = displacements.map(litres).find((spoken) => spoken !== undefined);
    if (spokenLitres === undefined) return { conflicts: [], remarks: [] };
    // Where nobody said how many cylinders there are, the number that comes nearest is taken: the speaker has the benefit of it.
    const inchesOf = (cylinderCount: number): number => (Math.PI / 4) * bore.amount ** 2 * stroke.amount * cylinderCount;
    const litresOf = (cylinderCount: number): number => convert(inchesOf(cylinderCount), "cu in", "L")!;
    const cylinderCount =
      count?.amount ?? usualCylinders.toSorted((a, b) => Math.abs(litresOf(a) - spokenLitres) - Math.abs(litresOf(b) - spokenLitres))[0]!;
    const cubicInches = inchesOf(cylinderCount);
    const sweptLitres = litresOf(cylinderCount);
    // Any that fits settles it: the others are told of elsewhere.
    const apart = displacements.filter((claim) => {
      const spoken = litres(claim);
      return spoken !== undefined && Math.abs(spoken - sweptLitres) > Math.max(0.1, mostShareApart * sweptLitres);
    });
    const first = apart[0];
    if (!first || apart.length < displacements.filter((claim) => litres(claim) !== undefined).length) return { conflicts: [], remarks: [] };
    const sum = `π ÷ 4 × ${bore.amount.toFixed(2)}² × ${stroke.amount.toFixed(2)} × ${cylinderCount} = ${cubicInches.toFixed(0)} cu in (${sweptLitres.toFixed(1)} L)`;
    return {
      conflicts: [
        conflictOf({
          kind: "standard",
          topic: "displacement against bore and stroke",
          why: `The engine is given as ${claimWords(first)} at ${moment(first.start)}, and the bore and stroke told at ${moment(bore.claims[0]!.start)} make ${cubicInches.toFixed(0)} cu in.`,
          rule: "displacement-against-bore-and-stroke",
          standard: { name: "Swept volume", source: sweptVolume, working: `${sum}; spoken ${claimWords(first)}.` },
          weight: 80,
          sides: [
            { value: first.value, unit: first.unit, claims: apart },
            { value: Math.round(cubicInches), unit: "cu in", claims: [...bore.claims, ...stroke.claims] },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "engine", attribute: "displacement", value: 427, unit: "cu in" },
      { component: "engine", attribute: "type", value: "v8" },
      { component: "engine", attribute: "diameter", part: "bore", value: 4, unit: "in" },
      { component: "engine", attribute: "size", part: "stroke", value: 3.5, unit: "in" },
    ],
    quiet: [
      [
        // 4.25 in × 3.38 in × 8 is 383.6 cu in, which is 6.3 L.
        { component: "engine", attribute: "displacement", value: 383, unit: "cu in" },
        { component: "engine", attribute: "displacement", value: 6.3, unit: "L" },
        { component: "engine", attribute: "count", part: "cylinder", value: 8 },
        { component: "engine", attribute: "diameter", part: "bore", value: 4.25, unit: "in" },
        { component: "engine", attribute: "size", part: "stroke", value: 3.38, unit: "in" },
      ],
      [
        // Six or eight cylinders, nobody said which: eight of these are 352 cu in.
        { component: "engine", attribute: "displacement", value: 352, unit: "cu in" },
        { component: "engine", attribute: "diameter", part: "bore", value: 4, unit: "in" },
        { component: "engine", attribute: "size", part: "stroke", value: 3.5, unit: "in" },
      ],
    ],
  },
};

/** Spoken of as one for each cylinder. */
const onePerCylinder = /\b(spark )?plugs?\b|\bcoil packs?\b|\bcoils? on plug\b|\b(plug )?(leads?|wires?)\b|\binjectors?\b/i;

export const plugsAgainstCylinders: StandardRule = {
  name: "plugs-against-cylinders",
  source: "A gasoline engine has one spark plug for each cylinder, or two (common practice)",
  find: (claims) => {
    const count = cylinders(claims);
    if (!count) return { conflicts: [], remarks: [] };
    const plugs = agreed(
      claims
        .of("ignition", "count")
        .filter((claim) => onePerCylinder.test(`${claim.part ?? ""} ${claim.quote}`) && claim.circumstance === null),
      (claim) => (typeof claim.value === "number" && claim.value > 2 ? claim.value : undefined),
    );
    if (!plugs || plugs.amount === count.amount || plugs.amount === 2 * count.amount) return { conflicts: [], remarks: [] };
    return {
      conflicts: [
        conflictOf({
          kind: "count",
          topic: "spark plugs against cylinders",
          why: `${plugs.amount} plugs or leads are counted at ${moment(plugs.claims[0]!.start)}, and the engine has ${count.amount} cylinders (${moment(count.claims[0]!.start)}).`,
          rule: "plugs-against-cylinders",
          standard: {
            name: "Plugs for each cylinder",
            source: "Common practice: one for each cylinder, or two",
            working: `${count.amount} cylinders take ${count.amount} or ${2 * count.amount}; spoken ${plugs.amount}.`,
          },
          weight: 65,
          sides: [
            { value: count.amount, unit: null, claims: count.claims },
            { value: plugs.amount, unit: null, claims: plugs.claims },
          ],
        }),
      ],
      remarks: [],
    };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "engine", attribute: "type", value: "straight six" },
      { component: "ignition", attribute: "count", part: "plug lead", value: 5 },
    ],
    quiet: [
      [
        { component: "engine", attribute: "type", value: "v8" },
        { component: "ignition", attribute: "count", part: "spark plug", value: 8 },
      ],
      [
        { component: "engine", attribute: "count", part: "cylinder", value: 8 },
        { component: "ignition", attribute: "count", part: "spark plug", value: 16 },
      ],
      [
        { component: "engine", attribute: "count", part: "cylinder", value: 4 },
        { component: "ignition", attribute: "count", part: "coil", value: 1 },
      ],
    ],
  },
};
