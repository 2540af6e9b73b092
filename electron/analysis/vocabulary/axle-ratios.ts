/**
 * Final-drive ratios sold in cars and light trucks. The tooth pairs are ring over pinion
 * (https://demandaam.com/technical-support/to-determine-gear-ratio and common practice); the list adds ratios quoted without their teeth (common practice, from memory).
 */
export const axleRatioBounds = { least: 2.15, most: 7.2 } as const;

export const toothPairs: readonly { readonly ring: number; readonly pinion: number; readonly quoted: number }[] = [
  { ring: 41, pinion: 10, quoted: 4.1 },
  { ring: 41, pinion: 12, quoted: 3.42 },
  { ring: 40, pinion: 13, quoted: 3.08 },
  { ring: 41, pinion: 11, quoted: 3.73 },
  { ring: 37, pinion: 10, quoted: 3.7 },
  { ring: 37, pinion: 9, quoted: 4.11 },
  { ring: 39, pinion: 11, quoted: 3.55 },
  { ring: 43, pinion: 14, quoted: 3.07 },
  { ring: 45, pinion: 11, quoted: 4.09 },
  { ring: 43, pinion: 13, quoted: 3.31 },
  { ring: 36, pinion: 11, quoted: 3.27 },
  { ring: 36, pinion: 13, quoted: 2.77 },
  { ring: 41, pinion: 15, quoted: 2.73 },
];

const soldHundredths: ReadonlySet<number> = new Set([
  226, 228, 229, 235, 241, 245, 247, 250, 253, 256, 259, 262, 264, 269, 271, 272, 273, 275, 276, 277, 278, 279, 280, 283, 287, 288, 292,
  293, 294, 300, 303, 306, 307, 308, 309, 310, 311, 313, 315, 316, 318, 320, 321, 323, 325, 327, 330, 331, 333, 334, 336, 338, 340, 342,
  343, 345, 346, 347, 348, 350, 351, 354, 355, 356, 357, 358, 360, 362, 363, 364, 365, 367, 368, 369, 370, 371, 372, 373, 374, 375, 377,
  378, 380, 382, 383, 385, 387, 389, 390, 391, 392, 393, 394, 396, 400, 405, 406, 407, 408, 409, 410, 411, 412, 420, 422, 425, 427, 428,
  429, 430, 433, 437, 440, 443, 444, 445, 450, 454, 455, 456, 457, 462, 463, 464, 467, 470, 471, 477, 478, 480, 486, 487, 488, 489, 490,
  500, 512, 513, 514, 517, 520, 525, 529, 537, 538, 542, 543, 550, 557, 560, 571, 583, 586, 600, 614, 617, 620, 633, 650, 666, 700, 717,
]);

/** True for a ratio someone sold. */
export function isSoldRatio(ratio: number): boolean {
  return soldHundredths.has(Math.round(ratio * 100));
}

export function isPlausibleRatio(ratio: number): boolean {
  return ratio >= axleRatioBounds.least && ratio <= axleRatioBounds.most;
}

/** Ring over pinion to two decimals; undefined where the teeth make no axle (a car's pinion has 7 to 19 teeth). */
export function ratioOfTeeth(ring: number, pinion: number): number | undefined {
  if (ring < 27 || ring > 60 || pinion < 6 || pinion > 19) return undefined;
  const ratio = Math.round((ring / pinion) * 100) / 100;
  return isPlausibleRatio(ratio) ? ratio : undefined;
}
