import type { ZoneName } from "../../../../shared-types/index.ts";
import { frameHeight, frameWidth } from "./perspective.ts";
import { words, wordsWidth } from "./stroke-letters.ts";

/** What the plate says, and where the small plan of the car shows the camera (degrees as in CameraPose; null: inside or under it). */
const plates = {
  opening: { name: "OPENING", view: "ALL OF IT", stand: 40 },
  front: { name: "FRONT", view: "FROM AHEAD", stand: 0 },
  "passenger-side": { name: "PASSENGER'S SIDE", view: "FROM THE RIGHT", stand: -90 },
  rear: { name: "REAR", view: "FROM BEHIND", stand: 180 },
  cargo: { name: "TRUNK", view: "LID UP", stand: 180 },
  "driver-side": { name: "DRIVER'S SIDE", view: "FROM THE LEFT", stand: 90 },
  cabin: { name: "CABIN", view: "FROM THE BACK SEAT", stand: null },
  documents: { name: "PAPERS", view: "ON THE TABLE", stand: null },
  "engine-bay": { name: "ENGINE BAY", view: "HOOD UP", stand: 0 },
  drive: { name: "ON THE ROAD", view: "FROM THE SEAT", stand: null },
  underside: { name: "UNDERSIDE", view: "ON THE LIFT", stand: null },
  roof: { name: "ROOF", view: "FROM ABOVE", stand: null },
  closing: { name: "CLOSING", view: "ALL OF IT", stand: 40 },
} satisfies Record<ZoneName, { name: string; view: string; stand: number | null }>;

/** The plate at the foot of the frame: the zone, the view, and a small plan with the camera's place on it. */
export function plate(zone: ZoneName, standDegrees: number | null): string {
  const { name, view, stand } = plates[zone];
  const height = 62;
  const top = frameHeight - height - 20;
  const width = Math.max(wordsWidth(name, 19), wordsWidth(view, 10)) + 142;
  const planX = 20 + 56;
  const planY = top + height / 2;
  const at = standDegrees ?? stand;
  const eye = at === null ? "" : eyeMark(planX, planY, at);
  return [
    `<rect x="20" y="${top}" width="${width.toFixed(0)}" height="${height}" rx="8" fill="#16181b" fill-opacity=".86"/>`,
    `<rect x="${planX - 25}" y="${planY - 10}" width="50" height="20" rx="7" fill="none" stroke="#cfd3d6" stroke-width="2"/><path d="M${planX + 6} ${planY - 8}v16M${planX - 14} ${planY - 8}v16" stroke="#cfd3d6" stroke-width="1.6"/>`,
    at === null ? `<circle cx="${planX - 2}" cy="${planY}" r="4" fill="#ffc247"/>` : eye,
    words(name, 20 + 114, top + 13, 19, "#f4f1e4", 2.6),
    words(view, 20 + 115, top + 41, 10, "#b9bdb6", 1.5),
    `<rect x="${frameWidth - 222}" y="${frameHeight - 48}" width="202" height="28" rx="6" fill="#23403d" fill-opacity=".9"/>`,
    words("COPPER KETTLE MOTORS", frameWidth - 212, frameHeight - 39, 10, "#f0d9a8", 1.6),
  ].join("");
}

/** The plan's nose is on the right, so the driver's side is above it. */
function eyeMark(x: number, y: number, degrees: number): string {
  const turn = (-degrees * Math.PI) / 180;
  const ex = x + Math.cos(turn) * 38;
  const ey = y + Math.sin(turn) * 24;
  return `<circle cx="${ex.toFixed(1)}" cy="${ey.toFixed(1)}" r="5" fill="#ffc247"/>`;
}
