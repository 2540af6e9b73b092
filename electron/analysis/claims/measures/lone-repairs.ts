import type { Repair } from "../../../../shared-types/index.ts";
import { type NumberKind, type Reading, type Speech, type SpokenNumber, spansOfTokens } from "../../model.ts";

/** A reading at least this likely, and this far before the next, is sure enough to be shown though no claim uses it. */
const leastLikelihood = 0.55;
const leastLead = 0.12;
const surely = 0.8;

/** Kinds whose meaning does not hang on what the sentence is about. */
const plainMeaning: ReadonlySet<NumberKind> = new Set([
  "tire-size",
  "tire-partial",
  "designation",
  "ratio",
  "date-code",
  "measure",
  "money",
  "integer",
  "decimal",
  "fraction",
  "year",
  "date",
  "dimensions",
]);

/**
 * Repairs of numbers that became no claim: what the recogniser broke is shown wherever its meaning is plain. `repaired` holds the first tokens of
 * numbers that have theirs already.
 */
export function loneRepairs(speech: Speech, numbers: readonly SpokenNumber[], repaired: ReadonlySet<number>, made: number): Repair[] {
  const repairs: Repair[] = [];
  for (const number of numbers) {
    const reading = plainReading(number);
    if (!reading || repaired.has(number.first)) continue;
    const spans = spansOfTokens(speech.tokens, number.first, number.end);
    repairs.push({
      id: `q${made + repairs.length + 1}`,
      caption: spans[0]!.caption,
      spans,
      heard: spans.map((span) => speech.captions[span.caption]!.text.slice(span.start, span.end)).join(" "),
      meant: writtenOut(reading),
      rule: reading.rule,
      sure: true,
    });
  }
  return repairs;
}

function plainReading({ readings }: SpokenNumber): Reading | undefined {
  const [first, second] = readings;
  if (!first?.repaired || !plainMeaning.has(first.kind) || first.likelihood < leastLikelihood) return undefined;
  // "Eleven" for 11,000 and "three nine" for 3.9 hang on what is spoken of; the claims decide.
  const supposed =
    (first.rule === "plain-integer" && Number(first.value) >= 1000 && Number(first.value) % 1000 === 0) ||
    first.rule === "two-single-digits";
  if (supposed && first.likelihood < surely) return undefined;
  const rival = readings.find((reading) => reading.value !== first.value) ?? second;
  return rival && rival !== first && first.likelihood - rival.likelihood < leastLead ? undefined : first;
}

function writtenOut({ kind, value, unit }: Reading): string {
  if (typeof value !== "number") return value;
  const figure =
    kind === "ratio"
      ? value.toFixed(2)
      : value >= 10_000 && Number.isInteger(value)
        ? String(value).replace(/\B(?=(\d{3})+$)/g, ",")
        : String(value);
  return unit === null ? figure : `${figure} ${unit}`;
}
