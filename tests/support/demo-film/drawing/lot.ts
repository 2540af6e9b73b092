import { type Camera, frameHeight, frameWidth, line, type Point3, polygon } from "./perspective.ts";
import { wordsPath } from "./stroke-letters.ts";

/** A repeatable scatter, so that the film comes out the same every time. */
function scatter(seed: number): number {
  const wave = Math.sin(seed * 127.1 + 11.7) * 43758.5453;
  return wave - Math.floor(wave);
}

const trees = Array.from({ length: 90 }, (_, index) => {
  const turn = (index / 90) * 2 * Math.PI + scatter(index) * 0.05;
  const away = 34 + scatter(index + 200) * 16;
  return {
    at: [Math.cos(turn) * away, Math.sin(turn) * away] as const,
    tall: 3.2 + scatter(index + 400) * 3.4,
    shade: scatter(index + 600),
  };
});

function tree(camera: Camera, at: readonly [number, number], tall: number, shade: number): string {
  const foot = camera.project([at[0], at[1], 0]);
  const top = camera.project([at[0], at[1], tall]);
  if (!foot || !top || foot[0] < -120 || foot[0] > frameWidth + 120) return "";
  const height = foot[1] - top[1];
  const greens = ["#6f8a63", "#7b966b", "#648160", "#879d70"];
  return `<ellipse cx="${foot[0].toFixed(1)}" cy="${(top[1] + height * 0.5).toFixed(1)}" rx="${(height * 0.42).toFixed(1)}" ry="${(height * 0.52).toFixed(1)}" fill="${greens[Math.floor(shade * 4)]}"/>`;
}

/** The shop, on the driver's side of the car: long wall, doors, and its sign. */
function shop(camera: Camera): string {
  const wall = 9;
  const at = (x: number, z: number): Point3 => [x, wall, z];
  const block = (x0: number, x1: number, z0: number, z1: number, fill: string) =>
    polygon(camera, [at(x0, z0), at(x0, z1), at(x1, z1), at(x1, z0)], fill);
  const drawn = [block(-11, 11, 0, 3.3, "#b9a48c"), block(-11.2, 11.2, 3.2, 3.5, "#8d7762"), block(-11, 11, 0, 0.5, "#9a8670")];
  for (let course = 0; course < 4; course++)
    drawn.push(line(camera, [at(-11, 0.9 + course * 0.55), at(11, 0.9 + course * 0.55)], "#ab9780", 0.8));
  for (const door of [-7.4, -2.2, 3]) {
    drawn.push(block(door, door + 3.6, 0, 1.95, "#e9e4d8"));
    for (let slat = 1; slat < 5; slat++) drawn.push(line(camera, [at(door, slat * 0.39), at(door + 3.6, slat * 0.39)], "#c9c2b3", 1.2));
    drawn.push(block(door + 0.4, door + 3.2, 1.24, 1.5, "#8fa9b5"));
  }
  drawn.push(block(7.6, 8.8, 0, 2.1, "#5e6f6b"), block(-4.3, 4.3, 2.14, 2.78, "#23403d"));
  // The wall faces the car, so seen from the passenger's side its letters run towards the nose.
  const path = wordsPath("COPPER KETTLE MOTORS", 0, 0, 0.42);
  const strokes = path.split("M").filter(Boolean);
  for (const stroke of strokes) {
    const points = stroke.split("L").map((point): Point3 => {
      const [across = 0, down = 0] = point.split(" ").map(Number);
      return [-3.9 + across, wall - 0.02, 2.67 - down];
    });
    drawn.push(line(camera, points, "#f0d9a8", 2));
  }
  return drawn.join("");
}

/** The wagon that is not for sale, by the shop's wall. */
function greenWagon(camera: Camera): string {
  const outline = "-2.4,.35 -2.4,.9 -2.2,1.35 -.3,1.42 .3,1.4 .95,.95 2.1,.85 2.35,.7 2.35,.35";
  const glass = "-2.1,.95 -2.0,1.28 -.1,1.33 .25,1.28 .7,.95";
  const place = (points: string): Point3[] =>
    points.split(" ").map((point) => {
      const [x = 0, z = 0] = point.split(",").map(Number);
      return [x - 5.1, 6, z];
    });
  const disc = (x: number, radius: number): Point3[] =>
    Array.from({ length: 24 }, (_, i): Point3 => [x - 5.1 + Math.cos(i * 0.262) * radius, 5.98, 0.33 + Math.sin(i * 0.262) * radius]);
  return [
    polygon(camera, place(outline), "#4f7256"),
    polygon(camera, place(glass), "#2c3a40"),
    ...[-1.5, 1.4].flatMap((x) => [polygon(camera, disc(x, 0.34), "#1b1c1e"), polygon(camera, disc(x, 0.19), "#a9aeb2")]),
  ].join("");
}

/** Sky, trees, the shop, and the painted lot under the car. */
export function lot(camera: Camera): string {
  const horizon = camera.horizon;
  const drawn = [
    `<rect width="${frameWidth}" height="${frameHeight}" fill="url(#sky)"/>`,
    `<rect y="${horizon.toFixed(1)}" width="${frameWidth}" height="${Math.max(0, frameHeight - horizon).toFixed(1)}" fill="url(#ground)"/>`,
    ...trees.map((each) => tree(camera, each.at, each.tall, each.shade)),
    `<rect y="${(horizon - 1).toFixed(1)}" width="${frameWidth}" height="7" fill="#a4a594"/>`,
  ];
  if (camera.position[1] < 8) drawn.push(shop(camera), greenWagon(camera));
  for (const x of [-7.5, -4.2, 4.2, 7.5]) {
    const stripe: Point3[] = [
      [x, -3.2, 0],
      [x + 0.12, -3.2, 0],
      [x + 0.12, 3.2, 0],
      [x, 3.2, 0],
    ];
    drawn.push(polygon(camera, stripe, "#dcd9cf"));
  }
  // Old seams of the paving, so that the ground is seen to move.
  for (const y of [-9, -6, -3.6, 3.6, 6])
    drawn.push(
      line(
        camera,
        Array.from({ length: 9 }, (_, i): Point3 => [-12 + i * 3, y, 0]).filter((point) => camera.depth(point) > 1),
        "#8a887e",
        1.6,
      ),
    );
  for (const x of [-10, -5.8, 5.8, 10])
    drawn.push(
      line(
        camera,
        Array.from({ length: 9 }, (_, i): Point3 => [x, -9 + i * 2.2, 0]).filter((point) => camera.depth(point) > 1),
        "#8a887e",
        1.6,
      ),
    );
  const shadow = Array.from({ length: 40 }, (_, i): Point3 => [Math.cos(i * 0.157) * 2.75, Math.sin(i * 0.157) * 1.22, 0]);
  const core = shadow.map(([x, y]): Point3 => [x * 0.9, y * 0.82, 0]);
  drawn.push(polygon(camera, shadow, "#4b4a47", `fill-opacity=".45"`), polygon(camera, core, "#2f2e2d", `fill-opacity=".6"`));
  return drawn.join("");
}
