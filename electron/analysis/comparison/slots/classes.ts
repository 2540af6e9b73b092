import { materialsAgree } from "../values/materials.ts";
import { figuresAgree } from "../values/quantities.ts";
import { tireDatesAgree } from "../values/tire-dates.ts";
import { isPartialTireSize } from "../values/tire-sizes.ts";
import { choicesAgree } from "../values/type-families/index.ts";
import type { Facet, Reading } from "./facet.ts";

/** A reading's plain text: equal for equal readings, and an order for the rest. */
function readingKey(reading: Reading): string {
  switch (reading.by) {
    case "figure":
      return `${reading.figure.amount.toPrecision(12)} ${reading.figure.step.toPrecision(6)} ${reading.figure.unit} ${reading.figure.loose}`;
    case "tire-size":
      return reading.size;
    case "tire-date":
      return reading.key;
    case "date":
      return reading.date;
    case "options":
      return [...reading.options].sort().join(" ");
    case "material":
      return reading.material;
    case "choice":
      return reading.choice;
    case "word":
      return reading.word;
  }
}

/** How exact a reading is; exact ones found classes, loose ones join them. Smaller comes first. */
export function looseness(reading: Reading): number {
  switch (reading.by) {
    case "figure":
      return reading.figure.step + (reading.figure.loose ? 1e9 : 0);
    case "tire-size":
      return isPartialTireSize(reading.size) ? 20 - reading.size.length : 0;
    case "tire-date":
      return reading.dates.length + (reading.dates.some((date) => date.year === null || date.week === null) ? 1 : 0);
    case "date":
      return 10 - reading.date.length;
    case "options":
      return reading.options.size;
    default:
      return 0;
  }
}

function agree(first: Reading, second: Reading): boolean {
  if (first.by === "figure" && second.by === "figure") return figuresAgree(first.figure, second.figure, first.agreement);
  if (first.by === "tire-size" && second.by === "tire-size") {
    const [short, long] = first.size.length <= second.size.length ? [first.size, second.size] : [second.size, first.size];
    return short === long || (isPartialTireSize(short) && long.startsWith(short));
  }
  if (first.by === "tire-date" && second.by === "tire-date") return tireDatesAgree(first.dates, second.dates);
  if (first.by === "date" && second.by === "date") return first.date.startsWith(second.date) || second.date.startsWith(first.date);
  if (first.by === "options" && second.by === "options") return [...first.options].some((option) => second.options.has(option));
  if (first.by === "material" && second.by === "material") return materialsAgree(first.material, second.material);
  if (first.by === "choice" && second.by === "choice") return choicesAgree(first.family, first.choice, second.choice);
  return readingKey(first) === readingKey(second);
}

/**
 * Sorts the facets of one slot into classes of equal value: the class number of each facet, in the facets' order.
 * Exact readings found classes and looser ones join the nearest that they agree with, so that a rounded figure never bridges two exact ones.
 * The outcome does not depend on the facets' order. Grows with n log n: figures are looked up by size, words by name.
 */
export function classesOf(facets: readonly Facet[]): number[] {
  const distinct = new Map<string, Reading>();
  for (const { reading } of facets) distinct.set(readingKey(reading), reading);
  const ordered = [...distinct].sort(
    ([firstKey, first], [secondKey, second]) =>
      looseness(first) - looseness(second) || (firstKey < secondKey ? -1 : firstKey > secondKey ? 1 : 0),
  );
  const founders = new Founders();
  const classByKey = new Map<string, number>();
  for (const [key, reading] of ordered) classByKey.set(key, founders.classFor(reading));
  return facets.map(({ reading }) => classByKey.get(readingKey(reading))!);
}

/** The readings that founded classes. */
class Founders {
  readonly #readings: Reading[] = [];
  /** Founders that are figures, by amount. */
  readonly #byAmount: { readonly amount: number; readonly number: number }[] = [];
  /** Founders that are names, by the text they must share to agree. */
  readonly #byName = new Map<string, number>();

  classFor(reading: Reading): number {
    const found = this.#candidates(reading).find((number) => agree(this.#readings[number]!, reading));
    if (found !== undefined) return found;
    const number = this.#readings.length;
    this.#readings.push(reading);
    if (reading.by === "figure")
      this.#byAmount.splice(this.#firstAtLeast(reading.figure.amount), 0, { amount: reading.figure.amount, number });
    else if (reading.by === "tire-size") {
      // A later partial size looks its full size up by each beginning it may have been cut to.
      for (const beginning of [reading.size, reading.size.slice(0, 3), reading.size.split(/R|-/)[0]!]) {
        if (!this.#byName.has(beginning)) this.#byName.set(beginning, number);
      }
    } else if (reading.by === "date") {
      for (const beginning of [reading.date, reading.date.slice(0, 7), reading.date.slice(0, 4)]) {
        if (!this.#byName.has(beginning)) this.#byName.set(beginning, number);
      }
    } else if (reading.by === "options") {
      for (const option of reading.options) if (!this.#byName.has(option)) this.#byName.set(option, number);
    } else if (reading.by === "word") this.#byName.set(reading.word, number);
    return number;
  }

  /** Classes that could agree, likeliest first. Materials, choices and tire dates have few founders: all of them are asked. */
  #candidates(reading: Reading): number[] {
    if (reading.by === "figure") {
      const at = this.#firstAtLeast(reading.figure.amount);
      const near = this.#byAmount.slice(Math.max(0, at - 2), at + 2);
      return near
        .sort((a, b) => Math.abs(a.amount - reading.figure.amount) - Math.abs(b.amount - reading.figure.amount))
        .map(({ number }) => number);
    }
    if (reading.by === "tire-size" || reading.by === "date" || reading.by === "word") {
      const number = this.#byName.get(readingKey(reading));
      return number === undefined ? [] : [number];
    }
    if (reading.by === "options") {
      return [...reading.options].flatMap((option) => this.#byName.get(option) ?? []).sort((a, b) => a - b);
    }
    return this.#readings.map((_, number) => number);
  }

  #firstAtLeast(amount: number): number {
    let low = 0;
    let high = this.#byAmount.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#byAmount[middle]!.amount < amount) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
