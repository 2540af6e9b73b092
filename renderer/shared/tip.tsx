import { Tooltip } from "@base-ui/react/tooltip";
import type { ReactElement } from "react";

/** A short sentence beside a control, on hover and on focus. */
export function Tip({ text, children }: { readonly text: string; readonly children: ReactElement<Record<string, unknown>> }) {
  return (
    <Tooltip.Root>
      <Tooltip.Trigger render={children} />
      <Tooltip.Portal>
        <Tooltip.Positioner sideOffset={6} className="tip-positioner">
          <Tooltip.Popup className="tip">{text}</Tooltip.Popup>
        </Tooltip.Positioner>
      </Tooltip.Portal>
    </Tooltip.Root>
  );
}
