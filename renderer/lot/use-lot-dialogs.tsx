import { Menu } from "@base-ui/react/menu";
import { type ReactNode, useState } from "react";
import type { RecordingSummary } from "../../shared-types/index.ts";
import type { FoundFile } from "../library/files/found-file.ts";
import { libraryKeys } from "../library/library-shortcuts.ts";
import { Button } from "../shared/button.tsx";
import { ariaShortcut } from "../shared/keys.ts";
import "../shared/menu.css";
import { BringBundlesDialog } from "./bring-bundles-dialog.tsx";
import { IndexLotDialog } from "./index-lot-dialog.tsx";
import { KeepBundlesDialog } from "./keep-bundles-dialog.tsx";
import { LotSheetDialog } from "./lot-sheet-dialog.tsx";
import { TemplatesDialog } from "./templates-dialog.tsx";

type LotWindow =
  | { readonly kind: "keep"; readonly recording: RecordingSummary | null }
  | { readonly kind: "bring"; readonly files: readonly FoundFile[] }
  | { readonly kind: "sheet" | "index" | "templates" };

const bringKey = libraryKeys.bundles;

export interface LotDialogs {
  /** What can be done with the whole lot; for the top of the library. */
  readonly menu: ReactNode;
  readonly dialog: ReactNode;
  readonly bundle: (recording: RecordingSummary) => void;
  readonly bring: (files: readonly FoundFile[]) => void;
  /** Whether it was one of the keys of the menu. */
  readonly take: (key: string) => boolean;
}

/** Whole recordings that come and go, and what is done with many of them at once. */
export function useLotDialogs(recordings: readonly RecordingSummary[], onChanged: () => void): LotDialogs {
  const [open, setOpen] = useState<LotWindow | null>(null);
  const close = () => setOpen(null);
  const none = recordings.length === 0;
  return {
    menu: (
      <Menu.Root>
        <Menu.Trigger render={<Button />}>Whole lot</Menu.Trigger>
        <Menu.Portal render={<section aria-label="Whole lot" />}>
          <Menu.Positioner className="menu-positioner" sideOffset={4} align="end">
            <Menu.Popup className="menu">
              <Menu.Item
                className="menu-item"
                onClick={() => setOpen({ kind: "bring", files: [] })}
                aria-keyshortcuts={ariaShortcut(bringKey)}
              >
                Bring in bundles…
                {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus; the item tells its key itself */}
                <kbd aria-hidden="true">{bringKey}</kbd>
              </Menu.Item>
              <Menu.Item className="menu-item" disabled={none} onClick={() => setOpen({ kind: "keep", recording: null })}>
                Keep bundles in a folder…
              </Menu.Item>
              <Menu.Separator className="menu-line" />
              <Menu.Item className="menu-item" disabled={none} onClick={() => setOpen({ kind: "sheet" })}>
                Match a sheet of the whole lot…
              </Menu.Item>
              <Menu.Item className="menu-item" disabled={none} onClick={() => setOpen({ kind: "index" })}>
                Index all that is ready…
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={() => setOpen({ kind: "templates" })}>
                Index text templates…
              </Menu.Item>
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    ),
    dialog: open ? <LotWindowOf open={open} recordings={recordings} onClose={close} onChanged={onChanged} /> : null,
    bundle: (recording) => setOpen({ kind: "keep", recording }),
    bring: (files) => setOpen({ kind: "bring", files }),
    take: (key) => {
      if (key !== bringKey) return false;
      setOpen({ kind: "bring", files: [] });
      return true;
    },
  };
}

interface LotWindowProps {
  readonly open: LotWindow;
  readonly recordings: readonly RecordingSummary[];
  readonly onClose: () => void;
  readonly onChanged: () => void;
}

function LotWindowOf({ open, recordings, onClose, onChanged }: LotWindowProps) {
  switch (open.kind) {
    case "keep":
      return <KeepBundlesDialog recording={open.recording} recordings={recordings} onClose={onClose} />;
    case "bring":
      return <BringBundlesDialog files={open.files} onClose={onClose} onChanged={onChanged} />;
    case "sheet":
      return <LotSheetDialog onClose={onClose} onTaken={onChanged} />;
    case "index":
      return <IndexLotDialog onClose={onClose} />;
    case "templates":
      return <TemplatesDialog recordings={recordings} onClose={onClose} />;
  }
}
