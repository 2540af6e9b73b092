import { Checkbox } from "@base-ui/react/checkbox";
import { Collapsible } from "@base-ui/react/collapsible";
import { useState } from "react";
import { type ExportFormat, exportFormats } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import { tickMark } from "../shared/tick-mark.tsx";
import { ExportFormatRow } from "./export-format-row.tsx";
import { exportGroups } from "./export-formats.ts";
import "./export-panel.css";

export interface ExportFormatGroupsProps {
  readonly chosen: readonly ExportFormat[];
  /** In the contract's order. */
  readonly onChange: (chosen: readonly ExportFormat[]) => void;
  readonly whyNot: (format: ExportFormat) => string | null;
  /** Null where there is no one recording to show a file of. */
  readonly onLook: ((format: ExportFormat) => void) | null;
}

type Group = (typeof exportGroups)[number];

/** All that can be written, by what it is of: a group is taken or left as a whole, or opened for its files. */
export function ExportFormatGroups({ chosen, onChange, whyNot, onLook }: ExportFormatGroupsProps) {
  const possible = exportFormats.filter((format) => whyNot(format) === null);
  const asked = possible.filter((format) => chosen.includes(format));
  const put = (formats: readonly ExportFormat[], on: boolean) =>
    onChange(possible.filter((format) => (formats.includes(format) ? on : asked.includes(format))));
  return (
    <>
      <div className="row">
        <Button weight="quiet" onClick={() => put(possible, true)} disabled={asked.length === possible.length}>
          Choose all
        </Button>
        <Button weight="quiet" onClick={() => put(possible, false)} disabled={asked.length === 0}>
          Choose none
        </Button>
        <span className="small soft">
          {asked.length} of {possible.length} chosen
        </span>
      </div>
      <ul className="export-groups" aria-label="What to export">
        {exportGroups.map((group) => (
          <GroupItem key={group.name} {...{ group, asked, possible, put, whyNot, onLook }} />
        ))}
      </ul>
    </>
  );
}

interface GroupItemProps extends Pick<ExportFormatGroupsProps, "whyNot" | "onLook"> {
  readonly group: Group;
  readonly asked: readonly ExportFormat[];
  readonly possible: readonly ExportFormat[];
  readonly put: (formats: readonly ExportFormat[], on: boolean) => void;
}

function GroupItem({ group: { name, purpose, formats }, asked, possible, put, whyNot, onLook }: GroupItemProps) {
  const [open, setOpen] = useState(false);
  const own = possible.filter((format) => (formats as readonly ExportFormat[]).includes(format));
  const taken = own.filter((format) => asked.includes(format)).length;
  const shown = `${open ? "Hide" : "Show"} ${counted(formats.length, "file", "files")}`;
  const some = taken > 0 && taken < own.length;
  return (
    <li className="export-group">
      <Collapsible.Root open={open} onOpenChange={setOpen}>
        <div className="export-group-head">
          {/* biome-ignore lint/a11y/noLabelWithoutControl: the checkbox inside is the control */}
          <label className="export-label">
            <Checkbox.Root
              className="checkbox"
              checked={own.length > 0 && taken === own.length}
              indeterminate={some}
              disabled={own.length === 0}
              onCheckedChange={(on) => put(own, on)}
            >
              <Checkbox.Indicator className="checkbox-mark">{some ? partMark : tickMark}</Checkbox.Indicator>
            </Checkbox.Root>
            <strong>{name}</strong>
          </label>
          <span className="small soft">{purpose}</span>
          <span className="small export-count">
            {taken} of {own.length}
          </span>
          <Collapsible.Trigger render={<Button weight="quiet" />} aria-label={`${shown} of ${name}`}>
            {shown}
          </Collapsible.Trigger>
        </div>
        <Collapsible.Panel>
          <ul className="export-formats" aria-label={name}>
            {formats.map((format) => (
              <ExportFormatRow
                key={format}
                format={format}
                chosen={asked.includes(format)}
                whyNot={whyNot(format)}
                onChoose={(on) => put([format], on)}
                onLook={onLook && (() => onLook(format))}
              />
            ))}
          </ul>
        </Collapsible.Panel>
      </Collapsible.Root>
    </li>
  );
}

/** What stands in the box of a group of which some files are taken. */
const partMark = (
  <svg viewBox="0 0 12 12" aria-hidden="true" focusable="false">
    <path d="M2 6h8" />
  </svg>
);
