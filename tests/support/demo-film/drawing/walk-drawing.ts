import { carBody, type Panel } from "./car-body.ts";
import { deckDetails, noseDetails, runningGear, sideDetails, tailDetails } from "./car-details.ts";
import { litShape } from "./lit.ts";
import { type LitOutside, litOutside } from "./lit-outside.ts";
import { lot } from "./lot.ts";
import { type Camera, dot, minus, type Point3, projectedPath, unit } from "./perspective.ts";

const body = carBody();
const sun = unit([0.35, -0.3, 0.9]);

type Rgb = readonly [number, number, number];

function mix(a: Rgb, b: Rgb, share: number): Rgb {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}

function css(color: Rgb): string {
  return `rgb(${color.map((part) => Math.round(Math.min(255, Math.max(0, part)))).join(",")})`;
}

function shade(panel: Panel, camera: Camera): string {
  const [, , upward] = panel.normal;
  const lit = Math.max(0, dot(panel.normal, sun));
  const toCamera = unit(minus(camera.position, panel.center));
  const half = unit([sun[0] + toCamera[0], sun[1] + toCamera[1], sun[2] + toCamera[2]]);
  const gloss = Math.max(0, dot(panel.normal, half)) ** 26;
  if (panel.material === "dark") return "#141416";
  if (panel.material === "chrome") {
    // A bright sky above, a dark lot below, as polished metal shows them.
    const sky = upward > 0.12 ? 0.95 : upward < -0.12 ? 0.25 : 0.62;
    return css(mix([70, 74, 78], [246, 248, 250], Math.min(1, sky + gloss * 0.4)));
  }
  if (panel.material === "glass") return css(mix([38, 48, 56], [176, 200, 212], Math.min(1, 0.1 + upward * 0.4 + gloss * 0.15)));
  const base = mix([62, 12, 20], [148, 36, 48], Math.min(1, 0.2 + lit * 0.95));
  return css(mix(base, [255, 232, 226], Math.min(0.75, gloss * 0.38 + Math.max(0, upward - 0.9) * 0.6)));
}

/** Panels that face the camera, farthest first. */
function paintLayer(layer: readonly Panel[], camera: Camera): string {
  return layer
    .filter((panel) => dot(panel.normal, minus(camera.position, panel.center)) > 0)
    .map((panel) => ({ panel, away: camera.depth(panel.center) }))
    .sort((a, b) => b.away - a.away)
    .map(({ panel }) => {
      const path = projectedPath(camera, panel.corners);
      const color = shade(panel, camera);
      // The stroke closes the hairlines that antialiasing leaves between neighbours.
      return path && `<path d="${path}" fill="${color}" stroke="${color}" stroke-width=".9"/>`;
    })
    .join("");
}

/** The car on the lot as the camera sees it, with one part lit. Returns SVG for a frame of the film. */
export function drawWalk(camera: Camera, part: string, glow: number): string {
  const skin = [body.hull, body.house, body.bumpers].map((layer) => paintLayer(layer, camera));
  const [x, y] = camera.position;
  const details = [
    x > 1 ? deckDetails(camera, 1) : "",
    x < -1 ? deckDetails(camera, -1) : "",
    x > 2.6 ? noseDetails(camera) : "",
    x < -2.6 ? tailDetails(camera) : "",
    y > 1.05 ? sideDetails(camera, 1) : "",
    y < -1.05 ? sideDetails(camera, -1) : "",
  ];
  return [lot(camera), runningGear(camera), ...skin, ...details, litOnWalk(camera, part, glow)].join("");
}

function litOnWalk(camera: Camera, part: string, glow: number): string {
  if (!part) return "";
  const lit = outsidePart(part);
  const side = camera.position[1] > 0 ? 1 : -1;
  const paths = lit.outlines(side).map((outline) => projectedPath(camera, outline));
  const middle = camera.project((lit.tag ?? lit.focus)(side));
  return middle ? litShape(paths.join(""), lit.name, middle, glow) : "";
}

/** @throws when the script names a part that is not drawn. */
export function outsidePart(part: string): LitOutside {
  const known: Readonly<Record<string, LitOutside>> = litOutside;
  const lit = known[part];
  if (!lit) throw new Error(`The outside has no part "${part}"; it has: ${Object.keys(known).join(", ")}.`);
  return lit;
}

/** Where the camera looks for a part, or the whole car. */
export function outsideFocus(part: string, side: 1 | -1): Point3 {
  return part ? outsidePart(part).focus(side) : [0, 0, 0.62];
}
