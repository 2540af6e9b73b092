import type { BodyStyle, Vehicle } from "../../../shared-types/index.ts";
import { alongX, bodyBox, bodyPath, centreY, outlines } from "./outlines.ts";

const half = bodyBox.halfWidth;

/** A line across the body at a share of its length, bowed towards the nose by `bow` units. */
function across(share: number, widthShare: number, bow: number): string {
  const x = alongX(share);
  return `M${x} ${centreY - half * widthShare}Q${x - bow} ${centreY} ${x} ${centreY + half * widthShare}`;
}

/** Wheels and mirrors, which show beside the body and so are drawn before it. */
export function BodyUnder({ bodyStyle }: { readonly bodyStyle: BodyStyle }) {
  const { frontAxle, rearAxle, cowl } = outlines[bodyStyle];
  return (
    <g className="plan-under">
      {[frontAxle, rearAxle].flatMap((axle) =>
        [-1, 1].map((side) => (
          <rect key={`${axle}${side}`} x={alongX(axle) - 15} y={centreY + side * (half - 1) - 4.5} width="30" height="9" rx="3" />
        )),
      )}
      {[-1, 1].map((side) => (
        <path key={side} d={`M${alongX(cowl) + 10} ${centreY + side * half * 0.9}l4 ${side * 9}h6l-1 ${side * -9}z`} />
      ))}
    </g>
  );
}

/** Glass, roof, seats, steering wheel and lids: lines only, so that the areas beneath show through. */
export function BodyLines({ bodyStyle, drive }: { readonly bodyStyle: BodyStyle; readonly drive: Vehicle["drive"] }) {
  const outline = outlines[bodyStyle];
  const { cowl, roofFrom, roofTo, deck, roofWidth, rows, bed, uprightTail } = outline;
  const driverSide = drive === "left-hand" ? 1 : -1;
  const openTop = roofFrom === roofTo;
  const seatX = alongX(roofFrom) + (openTop ? 18 : 6);
  const cabinEnd = uprightTail ? deck : openTop ? deck : roofTo;
  return (
    <g className="plan-lines">
      <path d={bodyPath(outline)} />
      <path d={across(0.07, 0.8, 7)} />
      <path
        d={`M${alongX(0.09)} ${centreY - half * 0.34}H${alongX(cowl) - 8}M${alongX(0.09)} ${centreY + half * 0.34}H${alongX(cowl) - 8}`}
        className="plan-faint"
      />
      <path d={across(cowl, 0.86, 12)} />
      <path d={across(roofFrom, roofWidth, 8)} />
      <path
        d={`M${alongX(cowl)} ${centreY - half * 0.86}L${alongX(roofFrom)} ${centreY - half * roofWidth}M${alongX(cowl)} ${centreY + half * 0.86}L${alongX(roofFrom)} ${centreY + half * roofWidth}`}
      />
      {openTop ? null : (
        <>
          <path
            d={`M${alongX(roofFrom)} ${centreY - half * roofWidth}H${alongX(roofTo)}M${alongX(roofFrom)} ${centreY + half * roofWidth}H${alongX(roofTo)}`}
          />
          <path d={across(roofTo, roofWidth, -5)} />
        </>
      )}
      {uprightTail ? (
        <path d={across(deck, roofWidth, 0)} className="plan-faint" />
      ) : (
        <>
          <path
            d={`M${alongX(openTop ? deck : roofTo)} ${centreY - half * roofWidth}L${alongX(deck)} ${centreY - half * 0.84}M${alongX(openTop ? deck : roofTo)} ${centreY + half * roofWidth}L${alongX(deck)} ${centreY + half * 0.84}`}
          />
          <path d={across(deck, 0.84, bed ? 0 : -7)} />
        </>
      )}
      {bed ? (
        <path d={`M${alongX(deck) + 4} ${centreY - half * 0.78}H${alongX(0.965)}V${centreY + half * 0.78}H${alongX(deck) + 4}Z`} />
      ) : (
        <path d={across(0.965, 0.78, -4)} />
      )}
      {[-1, 1].map((side) => (
        <rect key={side} className="plan-faint" x={seatX + 8} y={centreY + side * half * 0.33 - 11} width="20" height="22" rx="5" />
      ))}
      {rows === 2 ? (
        <rect className="plan-faint" x={alongX(cabinEnd) - 24} y={centreY - half * 0.58} width="17" height={half * 1.16} rx="5" />
      ) : null}
      <ellipse cx={seatX + 1} cy={centreY + driverSide * half * 0.33} rx="2.6" ry="8" />
    </g>
  );
}
