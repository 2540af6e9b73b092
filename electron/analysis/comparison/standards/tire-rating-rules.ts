import type { Claim } from "../../../../shared-types/index.ts";
import { loadKilograms, readServiceDescription, speedSymbols } from "../../vocabulary/tire-ratings.ts";
import { type ConflictDraft, conflictOf } from "../conflict-of.ts";
import { positionsMeet } from "../slots/positions.ts";
import { moment } from "../wording.ts";
import type { ClaimIndex, StandardRule } from "./rule.ts";

const loadSource = "Tire load index table of the tire standards (e.g. 91 = 615 kg = 1356 lb)";
const speedSource = "Speed symbols of the tire standards (e.g. H = 210 km/h = 130 mph)";
const poundsPerKilogram = 1 / 0.45359237;
const kilometresPerMile = 1.609344;

/** Published tables round to a whole pound or mile, and speakers to a handy one. */
const roundingShare = 0.02;
const speedRoundingShare = 0.03;

/** Ratings looked at; a set of tires has a few. */
const mostRatings = 10;

const meets = (a: Claim, b: Claim): boolean => a.position === null || b.position === null || positionsMeet(a.position, b.position);

function loadIndexes(claims: ClaimIndex): { readonly claim: Claim; readonly loadIndex: number }[] {
  const counted = claims
    .of("tire", "count")
    .filter((claim) => /load index/i.test(claim.part ?? claim.quote))
    .map((claim) => ({ claim, loadIndex: Number(claim.value) }));
  const described = claims.of("tire", "type").flatMap((claim) => {
    const description = readServiceDescription(String(claim.value));
    return description ? [{ claim, loadIndex: description.loadIndex }] : [];
  });
  return [...counted, ...described].slice(0, mostRatings);
}

export const loadIndexAgainstLoad: StandardRule = {
  name: "load-index-against-load",
  source: loadSource,
  find: (claims) => {
    const loads = claims.of("tire", "size").filter((claim) => typeof claim.value === "number" && claim.unit === "lb");
    const conflicts: ConflictDraft[] = [];
    for (const { claim, loadIndex } of loadIndexes(claims)) {
      const kilograms = loadKilograms[loadIndex];
      const load = loads.find((candidate) => meets(claim, candidate));
      if (kilograms === undefined || !load) continue;
      const pounds = kilograms * poundsPerKilogram;
      if (Math.abs(Number(load.value) - pounds) <= roundingShare * pounds) continue;
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic: "tire load index against load",
          why: `Load index ${loadIndex} at ${moment(claim.start)} carries ${Math.round(pounds)} lb, and ${load.value} lb is given at ${moment(load.start)}.`,
          rule: "load-index-against-load",
          standard: {
            name: "Load index",
            source: loadSource,
            working: `Load index ${loadIndex} = ${kilograms} kg × 2.2046 = ${Math.round(pounds)} lb; spoken ${load.value} lb.`,
          },
          weight: 50,
          sides: [
            { value: claim.value, unit: null, claims: [claim] },
            { value: load.value, unit: "lb", claims: [load] },
          ],
        }),
      );
    }
    return { conflicts, remarks: [] };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "tire", attribute: "count", part: "load index", value: 91 },
      { component: "tire", attribute: "size", value: 2205, unit: "lb" },
    ],
    quiet: [
      [
        { component: "tire", attribute: "count", part: "load index", value: 91 },
        { component: "tire", attribute: "size", value: 1356, unit: "lb" },
      ],
      [
        { component: "tire", attribute: "type", part: "service description", value: "95H" },
        { component: "tire", attribute: "size", value: 1521, unit: "lb" },
      ],
    ],
  },
};

/** The symbol that a marking names: of a whole service description, or said alone. */
function symbolOf(claim: Claim): string | undefined {
  if (claim.part === "speed symbol") return String(claim.value);
  return readServiceDescription(String(claim.value))?.symbol;
}

export const speedSymbolAgainstSpeed: StandardRule = {
  name: "speed-symbol-against-speed",
  source: speedSource,
  find: (claims) => {
    const types = claims.of("tire", "type");
    const speeds = types.filter((claim) => claim.part === "speed rating");
    const conflicts: ConflictDraft[] = [];
    for (const marked of types.filter((claim) => symbolOf(claim) !== undefined).slice(0, mostRatings)) {
      const symbol = symbolOf(marked)!;
      const published = speedSymbols[symbol];
      const spoken = speeds.find((candidate) => meets(marked, candidate));
      const [amount, unit] = String(spoken?.value ?? "").split(" ");
      if (published === undefined || !spoken || !amount) continue;
      const spokenKmh = Number(amount) * (unit === "mph" ? kilometresPerMile : 1);
      if (Math.abs(spokenKmh - published) <= speedRoundingShare * published) continue;
      conflicts.push(
        conflictOf({
          kind: "standard",
          topic: "tire speed symbol against speed",
          why: `Speed symbol ${symbol} at ${moment(marked.start)} stands for ${published} km/h, and ${spoken.value} is given at ${moment(spoken.start)}.`,
          rule: "speed-symbol-against-speed",
          standard: {
            name: "Speed symbol",
            source: speedSource,
            working: `${symbol} = ${published} km/h ÷ 1.609 = ${Math.round(published / kilometresPerMile)} mph; spoken ${spoken.value}.`,
          },
          weight: 50,
          sides: [
            { value: marked.value, unit: null, claims: [marked] },
            { value: spoken.value, unit: null, claims: [spoken] },
          ],
        }),
      );
    }
    return { conflicts, remarks: [] };
  },
  example: {
    finds: "conflict",
    claims: [
      { component: "tire", attribute: "type", part: "service description", value: "95H" },
      { component: "tire", attribute: "type", part: "speed rating", value: "149 mph" },
    ],
    quiet: [
      [
        { component: "tire", attribute: "type", part: "service description", value: "91V" },
        { component: "tire", attribute: "type", part: "speed rating", value: "150 mph" },
      ],
      [
        { component: "tire", attribute: "type", part: "speed symbol", value: "T" },
        { component: "tire", attribute: "type", part: "speed rating", value: "190 km/h" },
      ],
    ],
  },
};
