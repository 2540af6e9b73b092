import { useState } from "react";
import { type LapSpan, zoneLabels, zoneNames } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { Modal } from "../shared/dialog.tsx";
import { ShortcutSheet } from "../shared/shortcut-sheet.tsx";
import { TextField } from "../shared/text-field.tsx";
import { tenthsLabel } from "../shared/time.ts";
import { ZoneSwatch } from "../shared/zone-patterns.tsx";
import { MarkSigns } from "./mark-signs.tsx";
import { markShortcuts, stripShortcuts } from "./shortcuts.ts";
import type { MarkActions, ZoneQuestion } from "./use-mark-actions.ts";

export const zoneOptions = zoneNames.map((value) => ({ value, label: zoneLabels[value], mark: <ZoneSwatch zone={value} /> }));

export function MarkDialogs({ desk }: { readonly desk: MarkActions }) {
  const { dialog, setDialog } = desk;
  const close = () => setDialog(null);
  return (
    <>
      <Modal
        title={dialog?.kind === "zone" ? `${tenthsLabel(dialog.question.start)} to ${tenthsLabel(dialog.question.end)} shows` : ""}
        open={dialog?.kind === "zone"}
        onClose={close}
      >
        {dialog?.kind === "zone" ? <ZoneForm question={dialog.question} onPaint={(question) => void desk.paint(question)} /> : null}
      </Modal>
      <Modal title="Chapter title" open={dialog?.kind === "title"} onClose={close}>
        {dialog?.kind === "title" ? <TitleForm span={dialog.span} onTitle={(title) => void desk.retitle(dialog.span, title)} /> : null}
      </Modal>
      <ShortcutSheet open={dialog?.kind === "sheet"} onClose={close} groups={[...markShortcuts, stripShortcuts]} signs={<MarkSigns />} />
    </>
  );
}

function ZoneForm({ question, onPaint }: { readonly question: ZoneQuestion; readonly onPaint: (question: ZoneQuestion) => void }) {
  const [zone, setZone] = useState(question.zone);
  const [title, setTitle] = useState(question.title ?? "");
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onPaint({ ...question, zone, title: title.trim() || null });
      }}
    >
      <Choice label="Zone" value={zone} options={zoneOptions} onChange={setZone} />
      <TextField
        label="Chapter title"
        value={title}
        onChange={setTitle}
        maxLength={200}
        hint={`Left empty, viewers read “${zoneLabels[zone]}”.`}
      />
      <div>
        <Button type="submit" weight="main">
          Set the zone
        </Button>
      </div>
    </form>
  );
}

function TitleForm({ span, onTitle }: { readonly span: LapSpan; readonly onTitle: (title: string | null) => void }) {
  const [title, setTitle] = useState(span.title);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onTitle(title.trim() || null);
      }}
    >
      <TextField
        label="Title"
        value={title}
        onChange={setTitle}
        maxLength={200}
        hint={`Left empty, viewers read “${zoneLabels[span.zone]}”.`}
      />
      <div>
        <Button type="submit" weight="main">
          Set the title
        </Button>
      </div>
    </form>
  );
}
