import { useLayoutEffect, useRef, useState } from "react";
import { type Matter, matterName, type RecordingDetail } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { useInitials } from "../shared/initials.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { TextField } from "../shared/text-field.tsx";
import { Tick } from "../shared/tick.tsx";
import { choiceOfKey } from "./check-shortcuts.ts";
import { matterStates, mattersLeft } from "./matters-at-hand.ts";
import {
  emptySeen,
  faultsOfSeen,
  otherOpen,
  othersWords,
  type SeenDraft,
  type SeenDrafts,
  type SeenOption,
  saidOfSeen,
  seenOptions,
} from "./seen-draft.ts";
import "./ruling.css";

export interface SeenFormProps {
  readonly matter: Matter;
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  readonly drafts: SeenDrafts;
}

/** Notes that a denial, a promise or a question was seen, and why it may stand; or opens it again. */
export function SeenForm({ matter, detail, edit, drafts }: SeenFormProps) {
  const { initials } = useInitials();
  const name = matterName(matter);
  const [draft, setDraft] = useState(() => drafts.get(name) ?? emptySeen);
  const [tried, setTried] = useState(false);
  /** Whoever chose by digit goes on typing. */
  const [byDigit, setByDigit] = useState(0);
  const form = useRef<HTMLFormElement>(null);
  useLayoutEffect(() => {
    if (byDigit > 0) form.current?.querySelector("textarea")?.focus();
  }, [byDigit]);
  const set = (change: Partial<SeenDraft>) => {
    const next = { ...draft, ...change };
    drafts.set(name, next);
    setDraft(next);
  };
  const state = matterStates(detail)(matter);
  const options = seenOptions(state.open);
  const chosen = options.find((option) => option.state === draft.state) ?? null;
  const others = chosen?.state === "seen" ? otherOpen(matter, mattersLeft(detail)) : [];
  const found = faultsOfSeen({ ...draft, state: chosen?.state ?? null });
  const faults = tried ? found : {};
  useShortcuts((key) => {
    const option = options[choiceOfKey(key) ?? -1];
    if (!option) return false;
    setByDigit((times) => times + 1);
    set({ state: option.state });
    return true;
  });

  const note = async () => {
    setTried(true);
    if (chosen === null || Object.keys(found).length > 0) return;
    const matters = [matter, ...(draft.others ? others : [])];
    const saved = await edit(
      "matter.note",
      { matters: matters.map(({ about, key }) => ({ about, key })), state: chosen.state, reason: draft.reason.trim() },
      saidOfSeen(chosen.state, matters),
    );
    // A refused note stays in the form, so that nothing typed is lost.
    if (!saved) return;
    drafts.delete(name);
    setDraft(emptySeen);
    setTried(false);
  };

  return (
    <form
      ref={form}
      className="ruling"
      aria-label="Note"
      onSubmit={(event) => {
        event.preventDefault();
        void note();
      }}
      onKeyDown={(event) => {
        if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) void note();
      }}
    >
      <fieldset className="ruling-options">
        <legend>{state.open ? "Your note" : `Dealt with (${state.sign}). Note it again; the note before is kept as superseded`}</legend>
        {options.map((option, index) => (
          <Option
            key={option.state}
            option={option}
            digit={index + 1}
            on={chosen === option}
            onChoose={() => set({ state: option.state })}
          />
        ))}
      </fieldset>
      <p className="small soft">
        {matter.about === "denial"
          ? "Kept in the review record. What is told stays: the index marks the claim, and the Call desk offers no sentence for it."
          : "Kept in the review record. It changes nothing of what is told."}
      </p>
      {chosen ? (
        <div className="ruling-words">
          <TextField
            label="Reason"
            value={draft.reason}
            onChange={(reason) => set({ reason })}
            fault={faults.reason}
            maxLength={2000}
            rows={1}
          />
          {others.length > 0 ? (
            <Tick on={draft.others} onChange={(on) => set({ others: on })}>
              {othersWords(matter.about, others.length)}
            </Tick>
          ) : null}
          <div className="row">
            <Button type="submit" weight="main" aria-keyshortcuts="Control+Enter">
              {chosen.state === "seen" ? "Note as seen" : "Open again"}
            </Button>
            <span className="small soft">{initials ? `signed ${initials}` : "your initials are asked for"}</span>
          </div>
        </div>
      ) : null}
    </form>
  );
}

interface OptionProps {
  readonly option: SeenOption;
  readonly digit: number;
  readonly on: boolean;
  readonly onChoose: () => void;
}

function Option({ option, digit, on, onChoose }: OptionProps) {
  return (
    <label className="ruling-option">
      <input type="radio" name="seen" className="cover" checked={on} onChange={onChoose} />
      {option.label}
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus */}
      <kbd aria-hidden="true">{digit}</kbd>
    </label>
  );
}
