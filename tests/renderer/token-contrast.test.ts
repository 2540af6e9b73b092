import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

/**
 * The pairs of ink and ground in tokens.css, measured.
 * Contrast ratio and relative luminance: WCAG 2.2, definitions “contrast ratio” and “relative luminance”, https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio.
 * OKLCH to sRGB: CSS Color 4, https://www.w3.org/TR/css-color-4/#color-conversion-code; the matrices are Björn Ottosson's, as printed there.
 */

type Ground = "light" | "dark";
const sheet = readFileSync(fileURLToPath(new URL("../../renderer/shared/tokens.css", import.meta.url)), "utf8");

/** Linear-light sRGB, each 0 to 1; clipped, as a screen of that gamut must. */
type Linear = readonly [number, number, number];

function linearOf(lightness: number, chroma: number, hueDegrees: number): Linear {
  const hue = (hueDegrees * Math.PI) / 180;
  const a = chroma * Math.cos(hue);
  const b = chroma * Math.sin(hue);
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const channels = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  const [red = 0, green = 0, blue = 0] = channels.map((channel) => Math.min(1, Math.max(0, channel)));
  return [red, green, blue];
}

function luminance([red, green, blue]: Linear): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: Linear, other: Linear): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

const pair = /--([a-z-]+):\s*light-dark\(oklch\(([\d.]+) ([\d.]+) ([\d.]+)\), oklch\(([\d.]+) ([\d.]+) ([\d.]+)\)\)/g;
const tokens = new Map(
  [...sheet.matchAll(pair)].map(([, name = "", ...numbers]) => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers.map(Number);
    return [name, { light: linearOf(a, b, c), dark: linearOf(d, e, f) }] as const;
  }),
);
function color(name: string, ground: Ground): Linear {
  const found = tokens.get(name);
  if (!found) throw new Error(`tokens.css has no --${name} with a light and a dark color.`);
  return found[ground];
}

const zones = [...tokens.keys()].filter((name) => name.startsWith("zone-"));
const grounds = ["ground", "sheet", "sunk"];
const inks = ["ink", "soft", "lead", "dispute", "repair", "settled"];

/** Words on what lies under them: 4.5:1 (WCAG 2.2, 1.4.3, text that is not large). */
const words: readonly (readonly [string, string])[] = [
  ...inks.flatMap((ink) => grounds.map((ground) => [ink, ground] as const)),
  ["on-lead", "lead"],
  ["ink", "lead-ground"],
  ["soft", "lead-ground"],
  ["lead", "lead-ground"],
  ["dispute", "lead-ground"],
  ["ink", "dispute-ground"],
  ["soft", "dispute-ground"],
  ["dispute", "dispute-ground"],
  ["ink", "repair-ground"],
  ["repair", "repair-ground"],
  ["sheet", "ink"],
];

/** Borders of controls, signs and the ring of the focus: 3:1 (WCAG 2.2, 1.4.11). */
const signs: readonly (readonly [string, string])[] = [
  ...["edge", "lead", "dispute", "settled", "repair", "doubt", ...zones].flatMap((sign) =>
    grounds.map((ground) => [sign, ground] as const),
  ),
  ["edge", "lead-ground"],
  ["lead", "lead-ground"],
  ["lead", "dispute-ground"],
];

const rows = (["light", "dark"] as const).flatMap((ground) => [
  ...words.map(([ink, under]) => ({ ink, under, ground, least: 4.5 })),
  ...signs.map(([ink, under]) => ({ ink, under, ground, least: 3 })),
]);

test.for(rows)("$ink on $under, $ground: at least $least to 1", ({ ink, under, ground, least }) => {
  expect(contrast(color(ink, ground), color(under, ground))).toBeGreaterThanOrEqual(least);
});

test("the measure is the standard's: white on black 21 to 1, a grey of #767676 on white just over 4.5 to 1", () => {
  const white = linearOf(1, 0, 0);
  expect(contrast(white, [0, 0, 0])).toBeCloseTo(21, 2);
  // sRGB 0x76 made linear by the standard's own formula.
  const grey = ((0x76 / 255 + 0.055) / 1.055) ** 2.4;
  expect(contrast(white, [grey, grey, grey])).toBeCloseTo(4.54, 2);
  // CSS Color 4 gives oklch(62.8% 0.2577 29.23) for red.
  const [red, green, blue] = linearOf(0.62796, 0.25768, 29.2339);
  expect(red).toBeCloseTo(1, 2);
  expect(green).toBeCloseTo(0, 2);
  expect(blue).toBeCloseTo(0, 2);
});

test("every zone has an ink that was measured", () => {
  expect(zones).toHaveLength(13);
});
