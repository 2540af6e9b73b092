import { Switch } from "@base-ui/react/switch";
import { type ReactNode, useState } from "react";
import { Modal } from "./dialog.tsx";
import { allowSingleKeys, keyCaps, singleKeysAllowed } from "./keys.ts";
import "./shortcut-sheet.css";

/** Keys of one kind, as the sheet lists them. */
export interface SheetGroup {
  readonly name: string;
  readonly shortcuts: readonly { readonly key: string; readonly words: string }[];
}

export interface ShortcutSheetProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly groups: readonly SheetGroup[];
  /** What the desk's signs mean. */
  readonly signs?: ReactNode;
}

/** Every key of a desk, what its signs mean, and the switch for keys without Ctrl. */
export function ShortcutSheet({ open, onClose, groups, signs }: ShortcutSheetProps) {
  const [single, setSingle] = useState(singleKeysAllowed);
  return (
    <Modal title="Keys and signs" open={open} onClose={onClose} wide>
      <SheetColumns groups={groups} signs={signs} />
      {/* biome-ignore lint/a11y/noLabelWithoutControl: the switch inside is the control */}
      <label className="sheet-switch">
        <Switch.Root
          className="switch"
          checked={single}
          onCheckedChange={(allowed) => {
            allowSingleKeys(allowed);
            setSingle(allowed);
          }}
        >
          <Switch.Thumb className="switch-thumb" />
        </Switch.Root>
        Keys without Ctrl act. Switch off when speech input types letters.
      </label>
    </Modal>
  );
}

/** The tables themselves, which the help shows too. */
export function SheetColumns({ groups, signs }: Pick<ShortcutSheetProps, "groups" | "signs">) {
  return (
    <div className="sheet-columns">
      {groups.map((group) => (
        <section key={group.name} className="sheet-group">
          <h3>{group.name}</h3>
          <dl>
            {group.shortcuts.map(({ key, words }) => (
              <div key={key} className="sheet-line">
                <dt>
                  <kbd>{keyCaps(key)}</kbd>
                </dt>
                <dd>{words}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      {signs ? (
        <section className="sheet-group">
          <h3>Signs</h3>
          <dl>{signs}</dl>
        </section>
      ) : null}
    </div>
  );
}

/** One sign and its meaning. */
export function SheetSign({ children, words }: { readonly children: ReactNode; readonly words: string }) {
  return (
    <div className="sheet-line">
      <dt>{children}</dt>
      <dd>{words}</dd>
    </div>
  );
}
