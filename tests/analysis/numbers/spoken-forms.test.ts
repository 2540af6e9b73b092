import { describe, expect, test } from "vitest";
import { readNumbers } from "../../../electron/analysis/numbers/read-numbers.ts";
import { hundredsShorthand, inFull, misheard, pairInWords, plural, splitAtWord } from "../../support/speak-numbers.ts";
import { speechOf } from "../../support/speech-of.ts";

/**
 * From a value to words in every style, and back. Each block counts how many of all combinations come back as the first reading;
 * floors only rise. What is lost is printed in the failure.
 */
function share(cases: readonly { readonly heard: string | readonly string[]; readonly meant: string | number }[]) {
  const lost: string[] = [];
  for (const { heard, meant } of cases) {
    const firsts = readNumbers(speechOf(heard)).map((number) => number.readings[0]!.value);
    if (!firsts.includes(meant)) lost.push(`${[heard].flat().join(" | ")} -> ${firsts.join(", ")} (meant ${meant})`);
  }
  return { share: 1 - lost.length / cases.length, lost, count: cases.length };
}

const manners = ["as-said", "two-as-to", "figures", "tail-in-figures"] as const;
const settings = [
  (size: string) => size,
  (size: string) => `and the rears are ${size} and they look good`,
  (size: string) => `so on the front you got a ${size} with plenty of tread left`,
  (size: string) => `tyres are ${size} all round`,
] as const;

describe("metric tire sizes", () => {
  const widths = [155, 165, 175, 185, 195, 205, 215, 225, 235, 245, 255, 265, 275, 285, 295, 305, 315];
  const cases = widths.flatMap((width) =>
    [35, 40, 45, 50, 55, 60, 65, 70, 75, 80].flatMap((aspect) =>
      [13, 14, 15, 16, 17, 18, 19, 20, 22].flatMap((rim) => {
        const words = `${hundredsShorthand(width)} ${pairInWords(aspect)}`;
        const style = (width + aspect + rim) % 5;
        const tail = [
          ` ${pairInWords(rim)}`,
          ` r ${pairInWords(rim)}`,
          ` ${plural(pairInWords(rim))}`,
          ` on a ${pairInWords(rim)}`,
          ` R ${rim}`,
        ][style]!;
        const meant = `${width}/${aspect}R${rim}`;
        // One manner in two for each size keeps the block under a few seconds; all manners meet all widths, aspects and rims.
        return manners
          .filter((_, at) => (at + rim + aspect / 5) % 2 === 0)
          .map((manner, at) => ({ heard: settings[(at + rim) % settings.length]!(misheard(words, manner) + tail), meant }));
      }),
    ),
  );
  test(`${cases.length} spoken sizes`, { timeout: 60_000 }, () => {
    const found = share(cases);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.995);
  });
  test("split over two captions at any word", { timeout: 60_000 }, () => {
    const split = cases
      .filter((_, at) => at % 17 === 0)
      .flatMap(({ heard, meant }) => [0.3, 0.5, 0.7].map((at) => ({ heard: splitAtWord(heard, at), meant })));
    const found = share(split);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.995);
  });
});

describe("flotation, numeric and letter sizes", () => {
  const flotation = [29, 30, 31, 32, 33, 35, 37, 38, 40].flatMap((diameter) =>
    [9.5, 10.5, 11.5, 12.5, 13.5].flatMap((width) =>
      [15, 16, 17, 18, 20].flatMap((rim) => {
        const [whole] = String(width).split(".");
        const words = `${pairInWords(diameter)} ${pairInWords(Number(whole))} fifty ${pairInWords(rim)}`;
        return [words, plural(words), `${diameter} ${whole} 50 ${rim}s`, `${diameter}x${width.toFixed(2)}R${rim}`].map((size) => ({
          heard: `it sits on ${size}`,
          meant: `${diameter}x${width.toFixed(2)}R${rim}`,
        }));
      }),
    ),
  );
  test(`${flotation.length} flotation sizes`, () => {
    const found = share(flotation);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.99);
  });
  const numeric = [560, 590, 600, 640, 650, 670, 685, 695, 700, 710, 735, 750, 760, 775, 800, 820, 825, 855].flatMap((width) =>
    [13, 14, 15, 16].flatMap((rim) =>
      [
        `${hundredsShorthand(width)} ${pairInWords(rim)}`,
        `${hundredsShorthand(width)} by ${rim}`,
        `${(width / 100).toFixed(2)}-${rim}`,
      ].map((size) => ({
        heard: `these are ${size} bias ply tires`,
        meant: `${(width / 100).toFixed(2)}-${rim}`,
      })),
    ),
  );
  test(`${numeric.length} numeric sizes`, () => {
    const found = share(numeric);
    expect(found.share, found.lost.slice(0, 60).join("\n")).toBeGreaterThanOrEqual(0.93);
  });
  const letters = [..."ABCDEFGHJL"].flatMap((letter) =>
    [60, 70, 78].flatMap((aspect) =>
      [13, 14, 15].flatMap((rim) =>
        [
          `${letter} ${pairInWords(aspect)} ${pairInWords(rim)}`,
          `${letter} ${aspect} ${rim}`,
          `${letter}${aspect}-${rim}`,
          `${letter.toLowerCase()} ${aspect} ${rim}s`,
        ].map((size) => ({
          heard: `the old ${size} on the plain wheel`,
          meant: `${letter}${aspect}-${rim}`,
        })),
      ),
    ),
  );
  test(`${letters.length} letter sizes`, () => {
    const found = share(letters);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.99);
  });
});

describe("axle ratios", () => {
  const sold = [273, 300, 307, 308, 323, 331, 342, 350, 354, 355, 370, 373, 390, 391, 392, 410, 411, 430, 444, 456, 488];
  const sayings = [
    (said: string) => `it's got ${said} gears`,
    (said: string) => `rear end is a ${said}`,
    (said: string) => `axle tag says ${said}`,
    (said: string) => `${said} limited slip in the back`,
    (said: string) => `nine inch with ${plural(said)} in it`,
    (said: string) => `final drive ratio is ${said} so it cruises nice`,
  ];
  const cases = sold.flatMap((ratio) => {
    const words = hundredsShorthand(ratio).replace(/ hundred$/, " oh oh");
    const forms = [words, String(ratio), misheard(words, "figures"), words.replace(/^four/, "for"), `${(ratio / 100).toFixed(2)}`];
    return forms.flatMap((form) => sayings.map((say) => ({ heard: say(form), meant: ratio / 100 })));
  });
  test(`${cases.length} spoken ratios`, () => {
    const found = share(cases);
    expect(found.share, found.lost.slice(0, 60).join("\n")).toBeGreaterThanOrEqual(0.97);
  });
});

describe("mileage and price", () => {
  const figures = [
    4212, 12300, 18400, 28400, 47250, 58400, 58412, 61250, 61300, 73412, 84312, 92157, 104387, 112400, 131000, 142900, 148312,
  ];
  const mileage = figures.flatMap((miles) => {
    const [thousands, hundreds] = [Math.floor(miles / 1000), miles % 1000];
    const lead = thousands >= 100 ? hundredsShorthand(thousands) : pairInWords(thousands);
    const shorthand =
      hundreds === 0
        ? `${lead} thousand`
        : hundreds % 100 === 0
          ? `${lead} ${pairInWords(hundreds / 100)}`
          : `${lead} ${hundredsShorthand(hundreds)}`;
    // "four two twelve" for 4212 is hardly said; below ten thousand the hundreds are ("forty two twelve").
    const forms = [
      inFull(miles),
      inFull(miles, false),
      String(miles),
      miles.toLocaleString("en-US"),
      ...(thousands >= 10 ? [shorthand] : []),
    ];
    return forms.flatMap((form) => [
      { heard: `odometer says ${form}`, meant: miles },
      { heard: `it's showing ${form} on the clock`, meant: miles },
      { heard: `it's got ${form} original miles`, meant: miles },
    ]);
  });
  test(`${mileage.length} spoken mileages`, () => {
    const found = share(mileage);
    expect(found.share, found.lost.slice(0, 60).join("\n")).toBeGreaterThanOrEqual(0.97);
  });
  const prices = [4500, 7950, 8995, 11995, 12495, 18500, 18950, 24900, 38900, 42500, 54900, 61750].flatMap((price) => {
    const [thousands, hundreds] = [Math.floor(price / 1000), price % 1000];
    const shorthand =
      hundreds % 100 === 0
        ? `${pairInWords(thousands)} ${pairInWords(hundreds / 100)}`
        : `${pairInWords(thousands)} ${hundredsShorthand(hundreds)}`;
    return [shorthand, inFull(price), `$${price.toLocaleString("en-US")}`, `${price} dollars`].flatMap((form) => [
      { heard: `we're asking ${form} for it`, meant: price },
      { heard: `the price is ${form}`, meant: price },
    ]);
  });
  test(`${prices.length} spoken prices`, () => {
    const found = share(prices);
    expect(found.share, found.lost.slice(0, 60).join("\n")).toBeGreaterThanOrEqual(0.97);
  });
});

describe("dates", () => {
  const codes = ["0819", "1419", "2219", "2318", "3521", "4007", "4513", "5103"].flatMap((code) => {
    const [week, year] = [Number(code.slice(0, 2)), Number(code.slice(2))];
    const half = (value: number) => (value < 10 ? `oh ${pairInWords(value)}` : pairInWords(value));
    return [`${half(week)} ${half(year)}`, code, [...code].join(" ")].flatMap((form) => [
      { heard: `date code is ${form}`, meant: code },
      { heard: `the dot says ${form} on these tires`, meant: code },
    ]);
  });
  test(`${codes.length} spoken date codes`, () => {
    const found = share(codes);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.95);
  });
  const years = [1935, 1955, 1964, 1969, 1972, 1985, 1998].flatMap((year) => [
    { heard: `it's a ${year} coupe`, meant: year },
    { heard: `it's a nineteen ${pairInWords(year % 100)} coupe`, meant: year },
    { heard: `this is a '${year % 100}`, meant: year },
    ...(year > 1945
      ? [
          { heard: `motor is out of a ${year % 100} wagon`, meant: year },
          { heard: `they painted it in ${pairInWords(year % 100)} and it shows`, meant: year },
        ]
      : []),
  ]);
  const later = [2003, 2009, 2012, 2014, 2019, 2021].flatMap((year) => [
    { heard: `it's a ${year} hatchback`, meant: year },
    { heard: `it's a twenty ${year % 100 < 10 ? `oh ${pairInWords(year % 100)}` : pairInWords(year % 100)} hatchback`, meant: year },
  ]);
  test(`${years.length + later.length} spoken years`, () => {
    const found = share([...years, ...later]);
    expect(found.share, found.lost.slice(0, 40).join("\n")).toBeGreaterThanOrEqual(0.97);
  });
});
