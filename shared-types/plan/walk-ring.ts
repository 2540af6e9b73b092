import type { Vehicle } from "../recording.ts";
import type { ZoneName } from "../vocabulary.ts";
import { planSize } from "./outlines.ts";

/** A piece of the way round the vehicle, where the camera stands to see a zone. */
export interface RingPiece {
  readonly zone: ZoneName;
  readonly path: string;
  readonly labelX: number;
  readonly labelY: number;
  /** One line along the sides, two at nose and tail. */
  readonly lines: 1 | 2;
}

const { width, height } = planSize;
const bandX = 62;
const bandY = 30;
const corner = 34;
/** Half the gap between neighbouring pieces. */
const gap = 2;

const nose = [
  `M${bandX - gap} ${bandY + gap}L${corner * 0.55} ${corner * 0.3 + gap}`,
  `Q2 ${corner * 0.62} 2 ${corner * 1.3}V${height - corner * 1.3}`,
  `Q2 ${height - corner * 0.62} ${corner * 0.55} ${height - corner * 0.3 - gap}L${bandX - gap} ${height - bandY - gap}`,
  `Q${bandX - 14} ${height / 2} ${bandX - gap} ${bandY + gap}Z`,
].join("");

function mirrored(path: string): string {
  // Every command of the path is absolute and takes x,y pairs, but for V, which has no x to turn round.
  return path.replaceAll(
    /([MLQ ])(-?[\d.]+) (-?[\d.]+)/g,
    (_all, command: string, x: string, y: string) => `${command}${width - Number(x)} ${y}`,
  );
}

const upper = `M${corner * 0.62 + gap} ${corner * 0.25}Q${corner} 1 ${corner * 1.6} 1H${width - corner * 1.6}Q${width - corner} 1 ${width - corner * 0.62 - gap} ${corner * 0.25}L${width - bandX - gap} ${bandY - 1}H${bandX + gap}Z`;
const lower = `M${corner * 0.62 + gap} ${height - corner * 0.25}Q${corner} ${height - 1} ${corner * 1.6} ${height - 1}H${width - corner * 1.6}Q${width - corner} ${height - 1} ${width - corner * 0.62 - gap} ${height - corner * 0.25}L${width - bandX - gap} ${height - bandY + 1}H${bandX + gap}Z`;

/** The way round the vehicle, nose to the left: the vehicle's own left side is then the lower one, and the driver sits there in left-hand drive. */
export function walkRing(drive: Vehicle["drive"]): RingPiece[] {
  const [upperZone, lowerZone]: [ZoneName, ZoneName] =
    drive === "left-hand" ? ["passenger-side", "driver-side"] : ["driver-side", "passenger-side"];
  return [
    { zone: "front", path: nose, labelX: 27, labelY: height / 2, lines: 2 },
    { zone: upperZone, path: upper, labelX: width / 2, labelY: 15, lines: 1 },
    { zone: "rear", path: mirrored(nose), labelX: width - 27, labelY: height / 2, lines: 2 },
    { zone: lowerZone, path: lower, labelX: width / 2, labelY: height - 15, lines: 1 },
  ];
}
