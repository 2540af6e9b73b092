import { useState } from "react";
import { Button } from "../shared/button.tsx";
import { Modal } from "../shared/dialog.tsx";
import { Tick } from "../shared/tick.tsx";
import "./known-dialog.css";

/** Something that would stand in the library twice. */
export interface KnownLine {
  readonly key: string;
  readonly title: string;
  /** What is there already. */
  readonly why: string;
}

export interface KnownDialogProps {
  readonly title: string;
  readonly lines: readonly KnownLine[];
  /** What becomes of those that are not ticked: "left out". */
  readonly otherwise: string;
  readonly onClose: () => void;
  /** @param keys those that the person means to have beside what is there. */
  readonly onSettled: (keys: ReadonlySet<string>) => void;
}

/** Asks about all that the library has already in one window; nothing is ticked, so that nothing comes in twice by itself. */
export function KnownDialog({ title, lines, otherwise, onClose, onSettled }: KnownDialogProps) {
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const set = (key: string, on: boolean) => {
    const next = new Set(ticked);
    if (on) next.add(key);
    else next.delete(key);
    setTicked(next);
  };
  const rest = lines.length - ticked.size;
  return (
    <Modal
      title={title}
      open
      onClose={onClose}
      foot={
        <>
          <span className="soft import-state" role="status">
            {[ticked.size > 0 ? `${ticked.size} beside what is there` : "", rest > 0 ? `${rest} ${otherwise}` : ""]
              .filter(Boolean)
              .join(", ")}
          </span>
          <Button onClick={onClose}>Decide later</Button>
          <Button weight="main" onClick={() => onSettled(ticked)}>
            Go on
          </Button>
        </>
      }
    >
      <p>
        Tick those that are meant beside the other: another day's walk of the same vehicle. Where one takes the other's place, bring it in
        and remove the other afterwards; people's work on that one goes with it.
      </p>
      <div className="row">
        <Button onClick={() => setTicked(new Set(lines.map(({ key }) => key)))}>Tick all</Button>
        <Button onClick={() => setTicked(new Set())}>Tick none</Button>
      </div>
      <ul className="known-lines" aria-label="In the library already">
        {lines.map(({ key, title: name, why }) => (
          <li key={key}>
            <Tick on={ticked.has(key)} onChange={(on) => set(key, on)}>
              <strong>{name}</strong>
              <span className="small soft">{why}</span>
            </Tick>
          </li>
        ))}
      </ul>
    </Modal>
  );
}
