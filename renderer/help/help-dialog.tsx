import { Tabs } from "@base-ui/react/tabs";
import { useEffect, useState } from "react";
import { news } from "../../shared-types/index.ts";
import { callSheet } from "../call/call-sheet.ts";
import { checkSheet } from "../check/check-shortcuts.ts";
import { useClient } from "../client/use-client.ts";
import { librarySheet } from "../library/library-shortcuts.ts";
import { MarkSigns } from "../mark/mark-signs.tsx";
import { markShortcuts, stripShortcuts } from "../mark/shortcuts.ts";
import { Modal } from "../shared/dialog.tsx";
import { placeOfHash } from "../shared/place.ts";
import { SheetColumns, type SheetGroup } from "../shared/shortcut-sheet.tsx";
import { DeskCards } from "./desk-cards.tsx";
import "./help.css";
import { cautionTexts, fileTexts, helpKey } from "./help-texts.ts";
import { NewsList } from "./news-list.tsx";
import { UpdatePart } from "./update-part.tsx";
import type { HelpPart } from "./use-help.ts";

const partNames = {
  desks: "The three desks",
  keys: "Keys and signs",
  files: "Your files",
  cautions: "Cautions",
  news: "What is new",
  updates: "Newer versions",
} as const satisfies Record<HelpPart, string>;
const parts = Object.keys(partNames) as HelpPart[];

const everywhere: SheetGroup = { name: "Everywhere", shortcuts: [{ key: helpKey, words: "this help" }] };
const sheets: readonly { readonly screen: string; readonly groups: readonly SheetGroup[] }[] = [
  { screen: "library", groups: librarySheet },
  { screen: "mark", groups: [...markShortcuts, stripShortcuts] },
  { screen: "check", groups: checkSheet },
  { screen: "call", groups: callSheet },
];

/** Every key; those of the screen that the help lies over come first. */
function sheetAt(hash: string): readonly SheetGroup[] {
  const place = placeOfHash(hash);
  const here = place.screen === "recording" ? place.desk : place.screen;
  const inOrder = [...sheets.filter(({ screen }) => screen === here), ...sheets.filter(({ screen }) => screen !== here)];
  return [everywhere, ...inOrder.flatMap(({ groups }) => groups)];
}

export interface HelpDialogProps {
  readonly part: HelpPart;
  readonly onPart: (part: HelpPart) => void;
  readonly onClose: () => void;
}

/** All of the help; nothing of it comes from elsewhere. */
export function HelpDialog({ part, onPart, onClose }: HelpDialogProps) {
  const client = useClient();
  const [demoId, setDemoId] = useState<string | null>(null);
  useEffect(() => {
    client.call("start.state", {}).then(
      (state) => setDemoId(state.demoId),
      // Without it the desks have no links; the help itself stands.
      () => {},
    );
  }, [client]);
  return (
    <Modal title="Help" open onClose={onClose} wide>
      <Tabs.Root className="help" value={part} onValueChange={(next: HelpPart) => onPart(next)} orientation="vertical">
        <Tabs.List className="help-parts" aria-label="Parts of the help" activateOnFocus>
          {parts.map((one) => (
            <Tabs.Tab key={one} value={one} className="help-part">
              {partNames[one]}
            </Tabs.Tab>
          ))}
        </Tabs.List>
        <Tabs.Panel value={part} className="help-page" tabIndex={0}>
          <h2>{partNames[part]}</h2>
          {part === "desks" ? <DeskCards demoId={demoId} onFollow={onClose} /> : null}
          {part === "keys" ? <SheetColumns groups={sheetAt(window.location.hash)} signs={<MarkSigns />} /> : null}
          {part === "files" ? <Told rows={fileTexts} /> : null}
          {part === "cautions" ? <Told rows={cautionTexts} /> : null}
          {part === "news" ? <NewsList news={news} /> : null}
          {part === "updates" ? <UpdatePart /> : null}
        </Tabs.Panel>
      </Tabs.Root>
    </Modal>
  );
}

function Told({ rows }: { readonly rows: readonly { readonly name: string; readonly words: string }[] }) {
  return (
    <dl className="help-told">
      {rows.map(({ name, words }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
