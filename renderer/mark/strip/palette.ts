import { useEffect, useState } from "react";
import { type Grade, gradeShapes, type ZoneName, zoneNames } from "../../../shared-types/index.ts";
import { patternLine, patternTiles } from "../../shared/zone-patterns.tsx";

const inks = ["ink", "soft", "edge", "sheet", "ground", "lead", "dispute", "doubt"] as const;

/** The page's colours as a canvas takes them. */
export type Palette = Readonly<Record<(typeof inks)[number], string>> & {
  readonly zones: Readonly<Record<ZoneName, string>>;
  readonly patterns: Readonly<Record<ZoneName, CanvasPattern | string>>;
  /** Family of the page's letters. */
  readonly face: string;
  /** Puts a grade's shape at a point: full where it is a person's finding, hollow and dashed where it is proposed. */
  readonly stamp: (pen: CanvasRenderingContext2D, grade: Grade, accepted: boolean, x: number, y: number) => void;
};

/** What a style makes of a colour: names of tokens and mixtures become one that stands by itself. */
function resolver(): { readonly colorOf: (style: string) => string; readonly done: () => void } {
  const probe = document.createElement("span");
  probe.hidden = true;
  document.body.append(probe);
  return {
    colorOf: (style) => {
      probe.style.color = style;
      return getComputedStyle(probe).color;
    },
    done: () => probe.remove(),
  };
}

/** A zone's pattern, drawn once at the screen's own density. */
function patternOf(zone: ZoneName, ink: string, wash: string): CanvasPattern | string {
  const { size, path, filled } = patternTiles[zone];
  const density = Math.max(1, Math.ceil(devicePixelRatio));
  const tile = document.createElement("canvas");
  tile.width = size * density;
  tile.height = size * density;
  const pen = tile.getContext("2d");
  if (!pen) return wash;
  pen.scale(density, density);
  pen.fillStyle = wash;
  pen.fillRect(0, 0, size, size);
  const drawing = new Path2D(path);
  pen.lineWidth = patternLine;
  pen.strokeStyle = ink;
  pen.fillStyle = ink;
  if (filled) pen.fill(drawing);
  else pen.stroke(drawing);
  const pattern = pen.createPattern(tile, "repeat");
  pattern?.setTransform(new DOMMatrix().scale(1 / density));
  return pattern ?? wash;
}

/** Edge of a shape's picture, in CSS pixels: more than a shape with its line. */
const stampEdge = 16;

/** Shapes drawn once each and then put down as pictures: a view of a long recording holds hundreds. */
function stamper({ ink, soft, sheet }: Record<"ink" | "soft" | "sheet", string>): Palette["stamp"] {
  const density = Math.max(1, Math.ceil(devicePixelRatio));
  const made = new Map<string, HTMLCanvasElement>();
  const pictureOf = (grade: Grade, accepted: boolean) => {
    const name = `${grade} ${accepted}`;
    const known = made.get(name);
    if (known) return known;
    const picture = document.createElement("canvas");
    picture.width = stampEdge * density;
    picture.height = stampEdge * density;
    made.set(name, picture);
    const pen = picture.getContext("2d");
    if (!pen) return picture;
    pen.scale(density, density);
    pen.translate(stampEdge / 2, stampEdge / 2);
    pen.lineWidth = 1.4;
    pen.fillStyle = accepted ? ink : sheet;
    pen.strokeStyle = accepted ? ink : soft;
    if (!accepted) pen.setLineDash([2.4, 1.6]);
    const shape = new Path2D(gradeShapes[grade]);
    pen.fill(shape);
    pen.stroke(shape);
    return picture;
  };
  return (pen, grade, accepted, x, y) =>
    pen.drawImage(pictureOf(grade, accepted), Math.round(x) - stampEdge / 2, Math.round(y) - stampEdge / 2, stampEdge, stampEdge);
}

function readPalette(): Palette {
  const { colorOf, done } = resolver();
  const colors = Object.fromEntries(inks.map((ink) => [ink, colorOf(`var(--${ink})`)])) as Record<(typeof inks)[number], string>;
  const zones = {} as Record<ZoneName, string>;
  const patterns = {} as Record<ZoneName, CanvasPattern | string>;
  for (const zone of zoneNames) {
    zones[zone] = colorOf(`var(--zone-${zone})`);
    // As the style sheet washes the patterns of the drawings.
    patterns[zone] = patternOf(zone, zones[zone], colorOf(`color-mix(in oklab, var(--zone-${zone}) 14%, var(--sheet))`));
  }
  done();
  return { ...colors, zones, patterns, stamp: stamper(colors), face: getComputedStyle(document.body).fontFamily };
}

/** The colours of the ground that is shown, read anew when it changes, when the letters come, and when the window goes to another screen. */
export function usePalette(): Palette {
  const [palette, setPalette] = useState(readPalette);
  useEffect(() => {
    const again = () => setPalette(readPalette());
    const media = [matchMedia("(prefers-color-scheme: dark)"), matchMedia(`(resolution: ${devicePixelRatio}dppx)`)];
    for (const one of media) one.addEventListener("change", again);
    const watcher = new MutationObserver(again);
    watcher.observe(document.documentElement, { attributes: true, attributeFilter: ["data-ground"] });
    let here = true;
    void document.fonts.ready.then(() => (here ? again() : undefined));
    return () => {
      here = false;
      watcher.disconnect();
      for (const one of media) one.removeEventListener("change", again);
    };
  }, []);
  return palette;
}
