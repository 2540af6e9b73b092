import type { AttributeName, ComponentName } from "../../../../shared-types/index.ts";
import type { Facet } from "./facet.ts";

/** How far apart two figures for one thing may lie and still be a quarrel about it. */
type Reach = { readonly by: "difference" | "ratio"; readonly most: number };

/**
 * Beyond these the second figure is about something else: the year a radio was made, what the paint cost, a first gear. Common practice;
 * a narrator who misstates his own vehicle misstates it by a little.
 */
export const widestQuarrels = {
  "vehicle.year": { by: "difference", most: 6 },
  "price.price": { by: "ratio", most: 1.6 },
  "final-drive.ratio": { by: "ratio", most: 1.6 },
  "final-drive.diameter": { by: "ratio", most: 1.5 },
  "engine.displacement": { by: "ratio", most: 1.8 },
  "wheel.diameter": { by: "ratio", most: 1.4 },
  // One of two tanks and both of them, the tank for the other fluid, a can.
  "fuel-tank.size": { by: "ratio", most: 1.75 },
  "exhaust.diameter": { by: "ratio", most: 1.7 },
  "steering.diameter": { by: "ratio", most: 1.4 },
  "brakes.diameter": { by: "ratio", most: 1.5 },
  "engine.power": { by: "ratio", most: 1.9 },
  "engine.torque": { by: "ratio", most: 1.9 },
  "fuel-system.flow": { by: "ratio", most: 1.8 },
  // Twelve volts of the one battery and four hundred of the other.
  "electrical.voltage": { by: "ratio", most: 2.1 },
  // With the seats folded it holds twice as much and more.
  "cargo-floor.size": { by: "ratio", most: 1.5 },
  "tire.pressure": { by: "ratio", most: 2 },
} as const satisfies Partial<Record<`${ComponentName}.${AttributeName}`, Reach>>;

/** The largest group of sides that lie near one of them, of equal ones the most often given; figures without a reach are all kept. */
export function nearSides(sides: readonly (readonly Facet[])[]): readonly (readonly Facet[])[] {
  const { subject } = sides[0]![0]!;
  const reach = (widestQuarrels as Partial<Record<string, Reach>>)[`${subject.component}.${subject.property}`];
  if (!reach) return sides;
  const groups = sides.map((center) => {
    const amount = amountOf(center);
    const near = sides.filter((side) => side === center || amount === undefined || isWithin(amount, amountOf(side), reach));
    return { near, moments: near.reduce((sum, side) => sum + side.length, 0) };
  });
  return groups.reduce((best, group) =>
    group.near.length > best.near.length || (group.near.length === best.near.length && group.moments > best.moments) ? group : best,
  ).near;
}

function isWithin(center: number, amount: number | undefined, { by, most }: Reach): boolean {
  if (amount === undefined) return true;
  if (by === "difference") return Math.abs(amount - center) <= most;
  const [small, large] = amount < center ? [amount, center] : [center, amount];
  return small > 0 && large / small <= most;
}

function amountOf(side: readonly Facet[]): number | undefined {
  const { reading } = side[0]!;
  return reading.by === "figure" ? reading.figure.amount : undefined;
}
