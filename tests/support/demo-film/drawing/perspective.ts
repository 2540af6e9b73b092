/** Metres: x towards the vehicle's nose, y towards its driver's side, z up; the middle of the vehicle on the ground is the origin. */
export type Point3 = readonly [x: number, y: number, z: number];
/** Pixels of the frame. */
export type Point2 = readonly [x: number, y: number];

export const frameWidth = 960;
export const frameHeight = 540;

export interface CameraPose {
  /** Degrees round the vehicle: 0 before the nose, 90 on the driver's side, -90 on the passenger's. */
  readonly azimuthDegrees: number;
  /** Metres from the point looked at, along the ground. */
  readonly distance: number;
  /** Metres above the ground. */
  readonly height: number;
  readonly target: Point3;
}

export interface Camera {
  readonly position: Point3;
  /** Null for a point at or behind the lens. */
  project(point: Point3): Point2 | null;
  /** Metres before the lens. */
  depth(point: Point3): number;
  /** Pixel row of the horizon. */
  readonly horizon: number;
}

/** Pixels of focal length: about 40 degrees across the frame, a phone held at arm's length. */
const focalLength = 1280;

export function cameraAt(pose: CameraPose): Camera {
  const azimuth = (pose.azimuthDegrees * Math.PI) / 180;
  const position: Point3 = [
    pose.target[0] + pose.distance * Math.cos(azimuth),
    pose.target[1] + pose.distance * Math.sin(azimuth),
    pose.height,
  ];
  const forward = unit(minus(pose.target, position));
  const right = unit(cross(forward, [0, 0, 1]));
  const up = cross(right, forward);
  const depth = (point: Point3) => dot(minus(point, position), forward);
  return {
    position,
    depth,
    project(point) {
      const away = minus(point, position);
      const distance = dot(away, forward);
      if (distance < 0.2) return null;
      return [frameWidth / 2 + (dot(away, right) / distance) * focalLength, frameHeight / 2 - (dot(away, up) / distance) * focalLength];
    },
    horizon: frameHeight / 2 + (forward[2] / Math.hypot(forward[0], forward[1])) * focalLength,
  };
}

export function minus(a: Point3, b: Point3): Point3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function dot(a: Point3, b: Point3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Point3, b: Point3): Point3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function unit(a: Point3): Point3 {
  const length = Math.hypot(...a) || 1;
  return [a[0] / length, a[1] / length, a[2] / length];
}

/** An SVG path through the points; "" when one of them is behind the lens. */
export function projectedPath(camera: Camera, points: readonly Point3[], closed = true): string {
  const seen: string[] = [];
  for (const point of points) {
    const pixel = camera.project(point);
    if (!pixel) return "";
    seen.push(`${pixel[0].toFixed(1)} ${pixel[1].toFixed(1)}`);
  }
  return `M${seen.join("L")}${closed ? "Z" : ""}`;
}

/** A filled polygon in space, or "" when it is behind the lens. */
export function polygon(camera: Camera, points: readonly Point3[], fill: string, more = ""): string {
  const path = projectedPath(camera, points);
  return path && `<path d="${path}" fill="${fill}" ${more}/>`;
}

/** A line in space, or "" when it is behind the lens. */
export function line(camera: Camera, points: readonly Point3[], stroke: string, width: number): string {
  const path = projectedPath(camera, points, false);
  return (
    path && `<path d="${path}" fill="none" stroke="${stroke}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`
  );
}
