import { frameHeight, frameWidth, type Point2 } from "./perspective.ts";
import { words, wordsWidth } from "./stroke-letters.ts";

const amber = "#ffc247";

/**
 * A part lit up, with its name on a tag. `path` is in the frame's pixels, `middle` where the tag's line ends,
 * `glow` 0 to 1.
 */
export function litShape(path: string, name: string, middle: Point2, glow: number): string {
  if (!path || glow <= 0) return "";
  const strength = glow.toFixed(2);
  const height = 13;
  const width = wordsWidth(name, height) + 28;
  const left = Math.min(frameWidth - width - 16, Math.max(16, middle[0] + 46));
  const top = Math.min(frameHeight - 120, Math.max(22, middle[1] - 104));
  return [
    `<g opacity="${strength}">`,
    `<path d="${path}" fill="none" stroke="${amber}" stroke-width="12" stroke-opacity=".28" stroke-linejoin="round"/>`,
    `<path d="${path}" fill="${amber}" fill-opacity=".26" stroke="${amber}" stroke-width="3" stroke-linejoin="round"/>`,
    `<path d="M${middle[0].toFixed(1)} ${middle[1].toFixed(1)}L${(left + 14).toFixed(1)} ${(top + 15).toFixed(1)}" stroke="#1b1d21" stroke-width="3.4"/>`,
    `<circle cx="${middle[0].toFixed(1)}" cy="${middle[1].toFixed(1)}" r="4.5" fill="#1b1d21" stroke="${amber}" stroke-width="2"/>`,
    `<rect x="${left.toFixed(1)}" y="${top.toFixed(1)}" width="${width.toFixed(1)}" height="30" rx="5" fill="#1b1d21" fill-opacity=".92"/>`,
    words(name, left + 14, top + 8.5, height, amber, 2),
    "</g>",
  ].join("");
}
