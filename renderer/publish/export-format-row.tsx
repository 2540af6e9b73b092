import { Checkbox } from "@base-ui/react/checkbox";
import { type ExportFormat, isPdfFormat } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { tickMark } from "../shared/tick-mark.tsx";
import { exportWords } from "./export-formats.ts";

export interface ExportFormatRowProps {
  readonly format: ExportFormat;
  readonly chosen: boolean;
  /** Why it cannot be written here; null where it can. */
  readonly whyNot: string | null;
  readonly onChoose: (on: boolean) => void;
  /** Null where there is no one recording to show it of. */
  readonly onLook: (() => void) | null;
}

/** One thing that can be exported: whether it is written, what it is for, and a look at it where it is text. */
export function ExportFormatRow({ format, chosen, whyNot, onChoose, onLook }: ExportFormatRowProps) {
  const { name, purpose } = exportWords[format];
  return (
    <li className="export-format">
      {/* biome-ignore lint/a11y/noLabelWithoutControl: the checkbox inside is the control */}
      <label className="export-label">
        <Checkbox.Root className="checkbox" checked={chosen} disabled={whyNot !== null} onCheckedChange={onChoose}>
          <Checkbox.Indicator className="checkbox-mark">{tickMark}</Checkbox.Indicator>
        </Checkbox.Root>
        <span>{name}</span>
      </label>
      <span className="small soft">{whyNot ?? purpose}</span>
      {onLook === null || isPdfFormat(format) ? null : (
        <Button weight="quiet" onClick={onLook} aria-label={`Look at ${name}`}>
          Look
        </Button>
      )}
    </li>
  );
}
