import { Switch } from "@base-ui/react/switch";
import { useState } from "react";
import { Modal } from "../shared/dialog.tsx";
import { allowSingleKeys, keyCaps, singleKeysAllowed } from "../shared/keys.ts";
import { markShortcuts } from "./shortcuts.ts";
import "./shortcut-sheet.css";

const stripShortcuts = [
  { key: "=", words: "strip closer" },
  { key: "-", words: "strip wider" },
  { key: "0", words: "whole recording" },
  { key: "B", words: "take the border at the playhead; then ← → nudges it, Shift for a second" },
] as const;

/** Every key of the desk, and the switch for those without Ctrl. */
export function ShortcutSheet({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) {
  const [single, setSingle] = useState(singleKeysAllowed);
  return (
    <Modal title="Keys at this desk" open={open} onClose={onClose} wide>
      <div className="sheet-columns">
        {markShortcuts.map((group) => (
          <section key={group.name} className="sheet-group">
            <h3>{group.name}</h3>
            <dl>
              {group.shortcuts.map(({ key, words }) => (
                <SheetLine key={key} name={key} words={words} />
              ))}
            </dl>
          </section>
        ))}
        <section className="sheet-group">
          <h3>Lap strip</h3>
          <dl>
            {stripShortcuts.map(({ key, words }) => (
              <SheetLine key={key} name={key} words={words} />
            ))}
          </dl>
        </section>
      </div>
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

function SheetLine({ name, words }: { readonly name: string; readonly words: string }) {
  return (
    <div className="sheet-line">
      <dt>
        <kbd>{keyCaps(name)}</kbd>
      </dt>
      <dd>{words}</dd>
    </div>
  );
}
