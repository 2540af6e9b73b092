import { type BodyStyle, undersideShapes, undersideSize } from "../../../shared-types/index.ts";
import { Shapes } from "./body-drawing.tsx";

/** The vehicle from beneath, small: rails, axles, shaft, tank and exhaust, nose to the left. */
export function UndersideDrawing({ bodyStyle }: { readonly bodyStyle: BodyStyle }) {
  const { width, height } = undersideSize;
  return (
    <svg className="plan-underside" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <Shapes of={undersideShapes(bodyStyle)} />
    </svg>
  );
}
