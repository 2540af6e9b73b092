import { createElement } from "react";
import { type BodyStyle, bodyShapes, type PlanShape, shapesUnder, type Vehicle } from "../../../shared-types/index.ts";

/** Shapes of a line drawing, in their order. */
export function Shapes({ of }: { readonly of: readonly PlanShape[] }) {
  return of.map(({ element, attributes, tone }) =>
    createElement(element, {
      ...attributes,
      key: JSON.stringify([element, attributes]),
      ...(tone ? { className: `plan-${tone}` } : {}),
    }),
  );
}

/** Wheels and mirrors, which show beside the body and so are drawn before it. */
export function BodyUnder({ bodyStyle }: { readonly bodyStyle: BodyStyle }) {
  return (
    <g className="plan-under">
      <Shapes of={shapesUnder(bodyStyle)} />
    </g>
  );
}

/** Glass, roof, seats, steering wheel and lids: lines only, so that the areas beneath show through. */
export function BodyLines({ bodyStyle, drive }: { readonly bodyStyle: BodyStyle; readonly drive: Vehicle["drive"] }) {
  return (
    <g className="plan-lines">
      <Shapes of={bodyShapes(bodyStyle, drive)} />
    </g>
  );
}
