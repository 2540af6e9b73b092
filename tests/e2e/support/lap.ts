import type { Page } from "@playwright/test";
import { cornerRadius, outerReach } from "../../../renderer/mark/strip/lanes.ts";
import { pointOn, trackPieces } from "../../../renderer/mark/strip/track.ts";

/** The lap strip's box on the page, and a point in the middle of its band, by its share of the way round the plan. */
export async function lapOf(page: Page): Promise<(share: number) => { x: number; y: number }> {
  const box = await page.locator(".lap-drawing").boundingBox();
  if (!box) throw new Error("There is no lap strip on the page.");
  const pieces = trackPieces({ width: Math.floor(box.width), height: Math.floor(box.height), inset: outerReach, radius: cornerRadius });
  const length = pieces.at(-1)?.to ?? 0;
  return (share) => {
    const { x, y } = pointOn(pieces, cornerRadius, length * share);
    return { x: box.x + x, y: box.y + y };
  };
}
