import type { BodyStyle } from "../../../shared-types/index.ts";
import { outlines } from "./outlines.ts";

/** The vehicle from beneath, small: rails, axles, shaft, tank and exhaust, nose to the left. */
export function UndersideDrawing({ bodyStyle }: { readonly bodyStyle: BodyStyle }) {
  const { frontAxle, rearAxle } = outlines[bodyStyle];
  const front = 4 + frontAxle * 112;
  const rear = 4 + rearAxle * 112;
  return (
    <svg className="plan-underside" viewBox="0 0 120 36" width="120" height="36" aria-hidden="true">
      <path d={`M5 12H${rear - 14}l6 -3H116M5 24H${rear - 14}l6 3H116M5 12V24M116 9V27M${front + 22} 12V24`} />
      <path d={`M${front} 3V33M${rear} 3V33`} />
      <path d={`M${front - 7} 2h14M${front - 7} 34h14M${rear - 7} 2h14M${rear - 7} 34h14`} className="plan-tread" />
      <path d={`M${front + 26} 18H${rear - 5}`} />
      <circle cx={rear} cy="18" r="5" />
      <rect x={front + 8} y="14.5" width="18" height="7" rx="2" />
      <path d={`M${front + 10} 28h${rear - front - 24}l6 5h20`} className="plan-pipe" />
    </svg>
  );
}
