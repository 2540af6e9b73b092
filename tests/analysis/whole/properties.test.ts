import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { analyse } from "../../../electron/analysis/analyse.ts";
import { Analysis, type Caption, type Claim, type Transcript } from "../../../shared-types/index.ts";
import { readCases } from "../../corpus/read-cases.ts";

const cases = readCases(fileURLToPath(new URL("../../../fixtures/corpus/dev", import.meta.url)));
const options = { stockSheet: null, recordedOn: null };

function transcriptOf(texts: readonly string[], secondsEach = 6): Transcript {
  const captions = texts.map((text, index): Caption => ({ index, start: index * secondsEach, end: (index + 1) * secondsEach, text }));
  return { format: "plain", captions, duration: texts.length * secondsEach };
}

/** What a claim says, without where it stands in the list of captions. */
function meaning(claim: Claim): string {
  return [claim.component, claim.part, claim.position, claim.attribute, claim.value, claim.unit, claim.stance, claim.time].join("|");
}

/** Words of the trade, in an order that means nothing: far likelier to trip a rule than random letters. */
const tradeWord = fc.constantFrom(
  ..."to two 35 60 15s tires rear front the driver side passenger four eleven gears 390 three fifty cubic inch miles thousand and a half by no sorry I think it came with original block replaced disc drum odometer says fifty eight four VIN one G 4 A H 5 9 seventeen inch wheels oh 205 over R 16 psi hot cold $ 18,500 week of 2019 title clean underside alright pop the hood . , ?".split(
    " ",
  ),
);

describe("any transcript", () => {
  test("of any characters is analysed without an error, into the form the schema asks for", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "binary", maxLength: 120 }), { maxLength: 12 }), (texts) => {
        Analysis.parse(analyse(transcriptOf(texts), options));
      }),
      { numRuns: 150 },
    );
  });

  test("of trade words in any order is analysed without an error; zones cover it without gap or overlap, and quotes are its own words", () => {
    fc.assert(
      fc.property(fc.array(fc.array(tradeWord, { minLength: 1, maxLength: 30 }), { minLength: 1, maxLength: 8 }), (lines) => {
        const transcript = transcriptOf(lines.map((words) => words.join(" ")));
        const analysis = Analysis.parse(analyse(transcript, options));
        expect(analysis.zones[0]?.start).toBe(0);
        expect(analysis.zones.at(-1)?.end).toBe(transcript.duration);
        for (const [i, zone] of analysis.zones.entries()) if (i > 0) expect(zone.start).toBe(analysis.zones[i - 1]?.end);
        const ids = new Set(analysis.claims.map((claim) => claim.id));
        for (const conflict of analysis.conflicts)
          for (const side of conflict.sides) for (const id of side.claims) expect(ids).toContain(id);
        for (const claim of analysis.claims) {
          for (const { caption, start, end } of claim.spans) {
            expect(end).toBeGreaterThan(start);
            expect(end).toBeLessThanOrEqual(transcript.captions[caption]!.text.length);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  test.for(["", "   ", "…", "0", "\u0000\uFFFD", "a".repeat(20_000), "two ".repeat(5_000)])("even %j", (text) => {
    Analysis.parse(analyse(transcriptOf([text]), options));
  });
});

describe.for(cases)("$gold.id", ({ transcript, gold }) => {
  const whole = { ...transcript, duration: gold.duration };
  const analysis = analyse(whole, options);

  test("gives the same bytes each time", () => {
    expect(JSON.stringify(analyse(structuredClone(whole), options))).toBe(JSON.stringify(analysis));
  });

  test("loses nothing in JSON", () => {
    expect(JSON.parse(JSON.stringify(analysis))).toEqual(analysis);
  });

  test("a caption about nothing at the end changes no claim elsewhere", () => {
    const extra: Caption = {
      index: whole.captions.length,
      start: gold.duration,
      end: gold.duration + 4,
      text: "And that is about all I have to say.",
    };
    const longer = analyse({ ...whole, captions: [...whole.captions, extra], duration: gold.duration + 4 }, options);
    expect(longer.claims.map(meaning)).toEqual(analysis.claims.map(meaning));
  });

  test("another name for the vehicle changes nothing", () => {
    const [first, ...rest] = gold.vehicle.name.split(" ");
    const names = [first, ...rest].filter((name): name is string => Boolean(name && /^[A-Z][a-z]{3,}$/.test(name)));
    const renamed = names.reduce(
      (captions, name, i) =>
        captions.map((caption) => ({
          ...caption,
          text: caption.text.replaceAll(new RegExp(name, "gi"), (found) => sameCase(["Quorvel", "Brenthik"][i % 2]!, found)),
        })),
      whole.captions,
    );
    expect(analyse({ ...whole, captions: renamed }, options).claims.map(meaning)).toEqual(analysis.claims.map(meaning));
  });
});

function sameCase(name: string, like: string): string {
  return like === like.toLowerCase() ? name.toLowerCase() : name;
}
