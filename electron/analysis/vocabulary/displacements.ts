/**
 * Engine displacements in cubic inches that are known by that number (common practice, from memory): they tell a bare "three fifty"
 * that could be an engine from one that cannot. The conversion pairs are checked in the tests.
 */
const knownCubicInches: ReadonlySet<number> = new Set([
  97, 98, 104, 110, 113, 116, 121, 122, 134, 140, 144, 151, 153, 164, 170, 173, 181, 183, 194, 198, 200, 201, 207, 215, 216, 218, 220, 221,
  223, 225, 226, 228, 230, 231, 232, 235, 236, 239, 240, 241, 242, 244, 245, 246, 248, 250, 251, 252, 255, 256, 258, 260, 262, 263, 265,
  266, 267, 268, 272, 273, 276, 277, 281, 283, 287, 289, 290, 292, 298, 299, 300, 301, 302, 303, 304, 305, 307, 308, 312, 313, 315, 317,
  318, 320, 322, 324, 325, 326, 327, 330, 331, 332, 333, 334, 336, 337, 340, 341, 342, 343, 345, 346, 347, 348, 350, 351, 352, 353, 354,
  355, 357, 358, 359, 360, 361, 362, 363, 364, 365, 366, 368, 370, 371, 374, 376, 377, 378, 379, 380, 382, 383, 387, 388, 389, 390, 391,
  392, 393, 394, 395, 396, 400, 401, 402, 403, 404, 406, 407, 408, 409, 410, 411, 413, 414, 415, 416, 418, 421, 425, 426, 427, 428, 429,
  430, 431, 434, 438, 440, 441, 444, 445, 448, 450, 451, 454, 455, 460, 462, 464, 468, 472, 474, 482, 489, 493, 496, 499, 500, 502, 505,
  509, 511, 512, 514, 521, 522, 525, 528, 532, 540, 543, 545, 547, 555, 557, 565, 572, 582, 598, 604, 632,
]);

export function isKnownDisplacement(cubicInches: number): boolean {
  return knownCubicInches.has(cubicInches);
}

/** Bounds of a road engine, by unit. */
export const displacementBounds = {
  "cu in": { least: 20, most: 900 },
  L: { least: 0.4, most: 9.9 },
  cc: { least: 49, most: 9900 },
} as const;
