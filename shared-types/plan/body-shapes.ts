import type { Vehicle } from "../recording.ts";
import type { BodyStyle } from "../vocabulary.ts";
import { alongX, bodyBox, bodyPath, centreY, outlines } from "./outlines.ts";

/** One piece of a line drawing, as SVG names it, so that the page and the exports draw the same. */
export interface PlanShape {
  readonly element: "path" | "rect" | "ellipse" | "circle";
  readonly attributes: Readonly<Record<string, string | number>>;
  /** What stands back or is drawn otherwise than a plain line. */
  readonly tone?: "faint" | "tread" | "pipe";
}

const half = bodyBox.halfWidth;

const path = (d: string, tone?: PlanShape["tone"]): PlanShape => ({ element: "path", attributes: { d }, ...(tone ? { tone } : {}) });

/** A line across the body at a share of its length, bowed towards the nose by `bow` units. */
function across(share: number, widthShare: number, bow: number): string {
  const x = alongX(share);
  return `M${x} ${centreY - half * widthShare}Q${x - bow} ${centreY} ${x} ${centreY + half * widthShare}`;
}

/** Wheels and mirrors, which show beside the body and so are drawn before it. */
export function shapesUnder(bodyStyle: BodyStyle): PlanShape[] {
  const { frontAxle, rearAxle, cowl } = outlines[bodyStyle];
  return [
    ...[frontAxle, rearAxle].flatMap((axle) =>
      [-1, 1].map(
        (side): PlanShape => ({
          element: "rect",
          attributes: { x: alongX(axle) - 15, y: centreY + side * (half - 1) - 4.5, width: 30, height: 9, rx: 3 },
        }),
      ),
    ),
    ...[-1, 1].map((side) => path(`M${alongX(cowl) + 10} ${centreY + side * half * 0.9}l4 ${side * 9}h6l-1 ${side * -9}z`)),
  ];
}

/** Glass, roof, seats, steering wheel and lids: lines only, so that the areas beneath show through. The outline comes first. */
export function bodyShapes(bodyStyle: BodyStyle, drive: Vehicle["drive"]): PlanShape[] {
  const outline = outlines[bodyStyle];
  const { cowl, roofFrom, roofTo, deck, roofWidth, rows, bed, uprightTail } = outline;
  const driverSide = drive === "left-hand" ? 1 : -1;
  const openTop = roofFrom === roofTo;
  const seatX = alongX(roofFrom) + (openTop ? 18 : 6);
  const cabinEnd = uprightTail ? deck : openTop ? deck : roofTo;
  const glassFrom = openTop ? deck : roofTo;
  return [
    path(bodyPath(outline)),
    path(across(0.07, 0.8, 7)),
    path(
      `M${alongX(0.09)} ${centreY - half * 0.34}H${alongX(cowl) - 8}M${alongX(0.09)} ${centreY + half * 0.34}H${alongX(cowl) - 8}`,
      "faint",
    ),
    path(across(cowl, 0.86, 12)),
    path(across(roofFrom, roofWidth, 8)),
    path(
      `M${alongX(cowl)} ${centreY - half * 0.86}L${alongX(roofFrom)} ${centreY - half * roofWidth}M${alongX(cowl)} ${centreY + half * 0.86}L${alongX(roofFrom)} ${centreY + half * roofWidth}`,
    ),
    ...(openTop
      ? []
      : [
          path(
            `M${alongX(roofFrom)} ${centreY - half * roofWidth}H${alongX(roofTo)}M${alongX(roofFrom)} ${centreY + half * roofWidth}H${alongX(roofTo)}`,
          ),
          path(across(roofTo, roofWidth, -5)),
        ]),
    ...(uprightTail
      ? [path(across(deck, roofWidth, 0), "faint")]
      : [
          path(
            `M${alongX(glassFrom)} ${centreY - half * roofWidth}L${alongX(deck)} ${centreY - half * 0.84}M${alongX(glassFrom)} ${centreY + half * roofWidth}L${alongX(deck)} ${centreY + half * 0.84}`,
          ),
          path(across(deck, 0.84, bed ? 0 : -7)),
        ]),
    bed
      ? path(`M${alongX(deck) + 4} ${centreY - half * 0.78}H${alongX(0.965)}V${centreY + half * 0.78}H${alongX(deck) + 4}Z`)
      : path(across(0.965, 0.78, -4)),
    ...[-1, 1].map(
      (side): PlanShape => ({
        element: "rect",
        attributes: { x: seatX + 8, y: centreY + side * half * 0.33 - 11, width: 20, height: 22, rx: 5 },
        tone: "faint",
      }),
    ),
    ...(rows === 2
      ? [
          {
            element: "rect",
            attributes: { x: alongX(cabinEnd) - 24, y: centreY - half * 0.58, width: 17, height: half * 1.16, rx: 5 },
            tone: "faint",
          } as const,
        ]
      : []),
    { element: "ellipse", attributes: { cx: seatX + 1, cy: centreY + driverSide * half * 0.33, rx: 2.6, ry: 8 } },
  ];
}

/** Size of the drawing from beneath, in its own units. */
export const undersideSize = { width: 120, height: 36 } as const;

/** The vehicle from beneath, small: rails, axles, shaft, tank and exhaust, nose to the left. */
export function undersideShapes(bodyStyle: BodyStyle): PlanShape[] {
  const { frontAxle, rearAxle } = outlines[bodyStyle];
  const front = 4 + frontAxle * 112;
  const rear = 4 + rearAxle * 112;
  return [
    path(`M5 12H${rear - 14}l6 -3H116M5 24H${rear - 14}l6 3H116M5 12V24M116 9V27M${front + 22} 12V24`),
    path(`M${front} 3V33M${rear} 3V33`),
    path(`M${front - 7} 2h14M${front - 7} 34h14M${rear - 7} 2h14M${rear - 7} 34h14`, "tread"),
    path(`M${front + 26} 18H${rear - 5}`),
    { element: "circle", attributes: { cx: rear, cy: 18, r: 5 } },
    { element: "rect", attributes: { x: front + 8, y: 14.5, width: 18, height: 7, rx: 2 } },
    path(`M${front + 10} 28h${rear - front - 24}l6 5h20`, "pipe"),
  ];
}
