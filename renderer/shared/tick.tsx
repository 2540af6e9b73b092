import { Checkbox } from "@base-ui/react/checkbox";
import type { ReactNode } from "react";
import "./tick.css";
import { tickMark } from "./tick-mark.tsx";

export interface TickProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly disabled?: boolean;
  readonly children: ReactNode;
}

/** A box to tick, with its words. */
export function Tick({ on, onChange, disabled = false, children }: TickProps) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the checkbox inside is the control
    <label className="tick">
      <Checkbox.Root className="checkbox" checked={on} disabled={disabled} onCheckedChange={onChange}>
        <Checkbox.Indicator className="checkbox-mark">{tickMark}</Checkbox.Indicator>
      </Checkbox.Root>
      <span>{children}</span>
    </label>
  );
}
