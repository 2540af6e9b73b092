/** In the screen's own units (device-independent pixels). */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How the window was left. */
export interface WindowPlace extends Rectangle {
  readonly maximized: boolean;
  readonly fullScreen: boolean;
}

export const usualSize = { width: 1440, height: 900 } as const;
export const leastSize = { width: 960, height: 640 } as const;

/** So much of the window's upper edge must be on a screen that a hand can take hold of it. */
const graspWidth = 160;
const graspHeight = 32;

/** What was kept, if it has the right form; a file may be old, cut or from another hand. */
export function readWindowPlace(kept: unknown): WindowPlace | null {
  if (typeof kept !== "object" || kept === null) return null;
  const { x, y, width, height, maximized, fullScreen } = kept as Record<string, unknown>;
  const numbers = [x, y, width, height];
  if (!numbers.every((value) => typeof value === "number" && Number.isInteger(value) && Math.abs(value) < 100_000)) return null;
  return {
    ...({ x, y, width, height } as Rectangle),
    maximized: maximized === true,
    fullScreen: fullScreen === true,
  };
}

/**
 * The kept place where a screen of today still shows enough of it; else the middle of the nearest screen. Never larger than the screen,
 * never smaller than the page can be used.
 * @param workAreas of the screens that are there now, the first being the main one.
 */
export function placeOnScreens(kept: WindowPlace | null, workAreas: readonly Rectangle[]): WindowPlace {
  const main = workAreas[0] ?? { x: 0, y: 0, ...usualSize };
  if (!kept) return { ...centred(usualSize, main), maximized: false, fullScreen: false };
  const { maximized, fullScreen } = kept;
  const held = workAreas.find((area) => canBeGrasped(kept, area));
  const area = held ?? nearest(kept, workAreas) ?? main;
  const width = Math.min(Math.max(kept.width, leastSize.width), Math.max(area.width, leastSize.width));
  const height = Math.min(Math.max(kept.height, leastSize.height), Math.max(area.height, leastSize.height));
  const place = held ? { x: kept.x, y: kept.y, width, height } : centred({ width, height }, area);
  return { ...place, maximized, fullScreen };
}

function canBeGrasped({ x, y, width }: Rectangle, area: Rectangle): boolean {
  const across = Math.min(x + width, area.x + area.width) - Math.max(x, area.x);
  return across >= Math.min(graspWidth, width) && y >= area.y && y + graspHeight <= area.y + area.height;
}

function centred(size: { readonly width: number; readonly height: number }, area: Rectangle): Rectangle {
  const width = Math.min(size.width, area.width);
  const height = Math.min(size.height, area.height);
  return {
    x: area.x + Math.round((area.width - width) / 2),
    y: area.y + Math.round((area.height - height) / 2),
    width,
    height,
  };
}

function nearest(place: Rectangle, areas: readonly Rectangle[]): Rectangle | undefined {
  const middle = ({ x, y, width, height }: Rectangle) => ({ x: x + width / 2, y: y + height / 2 });
  const from = middle(place);
  const distance = (area: Rectangle) => Math.hypot(middle(area).x - from.x, middle(area).y - from.y);
  return areas.toSorted((a, b) => distance(a) - distance(b))[0];
}
