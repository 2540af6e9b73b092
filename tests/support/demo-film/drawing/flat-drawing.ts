import { litShape } from "./lit.ts";
import { frameHeight, frameWidth, type Point2 } from "./perspective.ts";

/** Flat drawings are made on a sheet this size. */
export const sheetWidth = 1600;
export const sheetHeight = 900;

export interface FlatPart {
  readonly name: string;
  readonly outlines: readonly (readonly Point2[])[];
  readonly focus: Point2;
}

/** A view that is drawn once, over which the camera moves. */
export interface FlatDrawing {
  readonly sheet: string;
  readonly parts: Readonly<Record<string, FlatPart>>;
  /** What moves by itself (a road), at so many seconds; drawn under the sheet. */
  readonly moving?: (seconds: number) => string;
}

export interface SheetPose {
  readonly center: Point2;
  /** 1 shows the whole sheet. */
  readonly zoom: number;
}

export function drawFlat(drawing: FlatDrawing, pose: SheetPose, part: string, glow: number, seconds: number): string {
  const scale = (frameWidth / sheetWidth) * pose.zoom;
  const halfWidth = frameWidth / 2 / scale;
  const halfHeight = frameHeight / 2 / scale;
  const x = Math.min(sheetWidth - halfWidth, Math.max(halfWidth, pose.center[0]));
  const y = Math.min(sheetHeight - halfHeight, Math.max(halfHeight, pose.center[1]));
  const place = ([across, down]: Point2): Point2 => [(across - x) * scale + frameWidth / 2, (down - y) * scale + frameHeight / 2];
  const moved = `translate(${(frameWidth / 2 - x * scale).toFixed(2)} ${(frameHeight / 2 - y * scale).toFixed(2)}) scale(${scale.toFixed(4)})`;
  const content = `<g transform="${moved}">${drawing.moving?.(seconds) ?? ""}${drawing.sheet}</g>`;
  if (!part) return content;
  const lit = flatPart(drawing, part);
  const path = lit.outlines
    .map(
      (outline) =>
        `M${outline
          .map((point) =>
            place(point)
              .map((n) => n.toFixed(1))
              .join(" "),
          )
          .join("L")}Z`,
    )
    .join("");
  return content + litShape(path, lit.name, place(lit.focus), glow);
}

/** @throws when the script names a part that is not drawn. */
export function flatPart(drawing: FlatDrawing, part: string): FlatPart {
  const lit = drawing.parts[part];
  if (!lit) throw new Error(`This view has no part "${part}"; it has: ${Object.keys(drawing.parts).join(", ")}.`);
  return lit;
}

/** An ellipse as an outline. */
export function ring(x: number, y: number, radiusX: number, radiusY = radiusX): Point2[] {
  return Array.from({ length: 48 }, (_, index): Point2 => {
    const turn = (index / 48) * 2 * Math.PI;
    return [x + Math.cos(turn) * radiusX, y + Math.sin(turn) * radiusY];
  });
}

export function box(x: number, y: number, width: number, height: number): Point2[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** Copies of a shape, made by a function of the copy's number. */
export function repeat(count: number, shape: (index: number) => string): string {
  return Array.from({ length: count }, (_, index) => shape(index)).join("");
}
