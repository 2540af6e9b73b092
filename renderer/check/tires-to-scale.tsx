import type { ClaimValue } from "../../shared-types/index.ts";
import { tireShape } from "./tire-size.ts";

export interface TiresToScaleProps {
  readonly tires: readonly { readonly letter: string; readonly value: ClaimValue }[];
}

const drawingHeight = 118;
/** Room for the captions below. */
const captionHeight = 32;

/** Two tires from the side and from behind, to one scale, standing on one line. Shown only when both sizes give a shape. */
export function TiresToScale({ tires }: TiresToScaleProps) {
  const shapes = tires.flatMap(({ letter, value }) => {
    const shape = tireShape(value);
    return shape ? [{ letter, value, shape }] : [];
  });
  if (shapes.length < 2) return null;
  const scale = (drawingHeight - 6) / Math.max(...shapes.map(({ shape }) => shape.overallMm));
  const seat = 172;
  const ground = drawingHeight - 2;
  return (
    <section aria-labelledby="grounds-tires">
      <h3 id="grounds-tires">To scale</h3>
      <svg
        className="tires"
        viewBox={`0 0 ${shapes.length * seat} ${drawingHeight + captionHeight}`}
        role="img"
        aria-label={shapes
          .map(({ letter, shape }) => `${letter}: ${Math.round(shape.overallMm)} mm across, ${Math.round(shape.widthMm)} mm wide`)
          .join("; ")}
      >
        <path className="tires-ground" d={`M0 ${ground + 1}H${shapes.length * seat}`} />
        {shapes.map(({ letter, shape }, index) => {
          const radius = (shape.overallMm * scale) / 2;
          const middle = index * seat + 62;
          const width = shape.widthMm * scale;
          return (
            <g key={letter} className="tires-one">
              <circle cx={middle} cy={ground - radius} r={radius} className="tires-rubber" />
              <circle cx={middle} cy={ground - radius} r={(shape.rimMm * scale) / 2} className="tires-rim" />
              <rect x={middle + 66} y={ground - radius * 2} width={width} height={radius * 2} rx={width / 4} className="tires-rubber" />
              <text x={middle - 54} y={drawingHeight + 14} className="tires-name">
                {letter}
              </text>
              <text x={middle - 40} y={drawingHeight + 14}>
                {(shape.overallMm / 25.4).toFixed(1)} in across
              </text>
              <text x={middle - 40} y={drawingHeight + 28}>
                {Math.round(shape.overallMm)} mm, {Math.round(shape.widthMm)} mm wide
              </text>
            </g>
          );
        })}
      </svg>
    </section>
  );
}
