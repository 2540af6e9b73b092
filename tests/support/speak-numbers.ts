/**
 * Speaks numbers as narrators do and misspells them as recognisers do, for tests that go from a value to words and back.
 * Written apart from the reader: it knows nothing of its rules. Styles are common practice of the trade.
 */

const ones = ["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"] as const;
const teens = ["ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"] as const;
const tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"] as const;

/** 1 to 99 in words. */
export function pairInWords(value: number): string {
  if (value < 10) return ones[value]!;
  if (value < 20) return teens[value - 10]!;
  return value % 10 === 0 ? tens[Math.floor(value / 10)]! : `${tens[Math.floor(value / 10)]} ${ones[value % 10]}`;
}

/** "two fifteen", "two oh five", "two hundred". */
export function hundredsShorthand(value: number): string {
  const [lead, rest] = [Math.floor(value / 100), value % 100];
  if (rest === 0) return `${ones[lead]} hundred`;
  return `${ones[lead]} ${rest < 10 ? `oh ${ones[rest]}` : pairInWords(rest)}`;
}

/** "two hundred and fifteen" to 999, "fifty eight thousand four hundred and twelve" beyond. */
export function inFull(value: number, and = true): string {
  if (value >= 1000) {
    const rest = value % 1000;
    const joint = rest > 0 && rest < 100 && and ? " and " : rest > 0 ? " " : "";
    return `${inFull(Math.floor(value / 1000), and)} thousand${joint}${rest > 0 ? inFull(rest, and) : ""}`;
  }
  if (value < 100) return pairInWords(value);
  const rest = value % 100;
  return `${ones[Math.floor(value / 100)]} hundred${rest > 0 ? `${and ? " and" : ""} ${pairInWords(rest)}` : ""}`;
}

export function plural(words: string): string {
  return words.endsWith("y") ? `${words.slice(0, -1)}ies` : words.endsWith("x") ? `${words}es` : `${words}s`;
}

/** "two thirty five" as a recogniser may write it: leading two as to, tens in figures, all in figures. */
export function misheard(words: string, manner: "as-said" | "two-as-to" | "figures" | "tail-in-figures"): string {
  if (manner === "as-said") return words;
  if (manner === "two-as-to") return words.replace(/^two\b/, "to");
  const figures = words
    .split(" ")
    .map((word) => wordFigure(word))
    .reduce<string[]>((found, word, at, all) => {
      const before = all[at - 1];
      const joins = before !== undefined && /^[2-9]0$/.test(before) && /^[1-9]$/.test(word);
      if (joins) found[found.length - 1] = String(Number(before) + Number(word));
      else found.push(word);
      return found;
    }, []);
  if (manner === "figures") return figures.join(" ");
  return [words.split(" ")[0], ...figures.slice(1)].join(" ");
}

function wordFigure(word: string): string {
  const one = ones.indexOf(word as (typeof ones)[number]);
  if (one >= 0) return String(one);
  const teen = teens.indexOf(word as (typeof teens)[number]);
  if (teen >= 0) return String(teen + 10);
  const ten = tens.indexOf(word as (typeof tens)[number]);
  return ten > 0 ? String(ten * 10) : word;
}

/** Cuts a caption in two at a word border. */
export function splitAtWord(text: string, share: number): string[] {
  const words = text.split(" ");
  const at = Math.max(1, Math.min(words.length - 1, Math.round(words.length * share)));
  return [words.slice(0, at).join(" "), words.slice(at).join(" ")];
}
