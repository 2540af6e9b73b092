import { useLayoutEffect, useRef, useState } from "react";
import { type Conflict, type RecordingDetail, timeLabel } from "../../shared-types/index.ts";
import type { Edit } from "../client/use-recording.ts";
import { Button } from "../shared/button.tsx";
import { sideLetter, sideValues } from "../shared/claim-words.ts";
import { useInitials } from "../shared/initials.tsx";
import { useShortcuts } from "../shared/keys.ts";
import { TextField } from "../shared/text-field.tsx";
import { choiceOfKey } from "./check-shortcuts.ts";
import {
  digitOfMisheard,
  emptyRuling,
  faultOfRightWords,
  faultsOfRuling,
  type RulingDraft,
  type RulingDrafts,
  rulingOfDigit,
  rulingOptions,
  type SideWords,
  saidOfRuling,
  sideOfRuling,
  wordsOfSide,
} from "./ruling-draft.ts";
import "./ruling.css";

export interface RulingFormProps {
  readonly conflict: Conflict;
  readonly detail: RecordingDetail;
  readonly edit: Edit;
  readonly drafts: RulingDrafts;
}

export function RulingForm({ conflict, detail, edit, drafts }: RulingFormProps) {
  const { initials } = useInitials();
  const [draft, setDraft] = useState(() => drafts.get(conflict.key) ?? emptyRuling);
  const { option, misheard, reason, rightWords } = draft;
  const set = (change: Partial<RulingDraft>) => {
    const next = { ...draft, ...change };
    drafts.set(conflict.key, next);
    setDraft(next);
  };
  const [tried, setTried] = useState(false);
  /**
   * Whoever chose by digit goes on typing; whoever walks the choices with the arrow keys must not be carried away from them. A side that was
   * misheard keeps the keyboard: another digit corrects it, and is never typed into the words. Tab goes on to them.
   */
  const [byDigit, setByDigit] = useState<{ readonly goTo: "side" | "reason" } | null>(null);
  const form = useRef<HTMLFormElement>(null);
  // Before the next key: what is typed right after the digit is the reason's, not the page's.
  useLayoutEffect(() => {
    if (byDigit === null) return;
    const found = fieldSelectors[byDigit.goTo].map((selector) => form.current?.querySelector<HTMLElement>(selector));
    found.find(Boolean)?.focus();
  }, [byDigit]);
  // Opened, the form stands where the page has it, which may be below what is seen.
  useLayoutEffect(() => {
    if (option !== null) form.current?.scrollIntoView({ block: "nearest" });
  }, [option]);
  const options = rulingOptions(conflict);
  const values = sideValues(conflict, detail.analysis.claims);
  const found = faultsOfRuling(draft, faultOfRightWords(conflict, misheard, rightWords, detail));
  const replaced = wordsOfSide(conflict, misheard, detail);
  /** The field starts with the words it replaces; what the person wrote meanwhile is kept. */
  const withMisheard = (side: number): Partial<RulingDraft> => {
    const untouched = rightWords.trim() === "" || rightWords === replaced[0]?.words;
    return { misheard: side, ...(untouched ? { rightWords: wordsOfSide(conflict, side, detail)[0]?.words ?? "" } : {}) };
  };
  const faults = tried ? found : {};
  const ruledBefore = detail.rulings.some((ruling) => ruling.conflictKey === conflict.key);
  useShortcuts((key) => {
    const chosen = rulingOfDigit(options, conflict.sides.length, choiceOfKey(key));
    if (!chosen) return false;
    // The side is asked for before the words: they are prefilled from it.
    setByDigit({ goTo: chosen.option.decision === "recogniser-error" ? "side" : "reason" });
    set({ option: chosen.option, ...(chosen.misheard === null ? {} : withMisheard(chosen.misheard)) });
    return true;
  });

  const rule = async () => {
    setTried(true);
    if (option === null || Object.keys(found).length > 0) return;
    const saved = await edit(
      "conflict.rule",
      {
        conflictKey: conflict.key,
        decision: option.decision,
        side: sideOfRuling(draft),
        reason: reason.trim(),
        rightWords: option.decision === "recogniser-error" ? rightWords.trim() : null,
      },
      saidOfRuling(option, conflict.topic),
    );
    // A refused ruling stays in the form, so that nothing typed is lost.
    if (!saved) return;
    drafts.delete(conflict.key);
    setDraft(emptyRuling);
    setTried(false);
  };

  return (
    <form
      ref={form}
      className="ruling"
      aria-label="Ruling"
      onSubmit={(event) => {
        event.preventDefault();
        void rule();
      }}
      onKeyDown={(event) => {
        if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) void rule();
      }}
    >
      <fieldset className="ruling-options">
        <legend>{ruledBefore ? "Decide again; the ruling before is kept as superseded" : "Your ruling"}</legend>
        {options.map((one, index) => (
          <label key={one.label} className="ruling-option">
            <input
              type="radio"
              name="ruling"
              className="cover"
              checked={option?.decision === one.decision && option.side === one.side}
              onChange={() => {
                setByDigit(null);
                set({ option: one });
              }}
            />
            {one.label}
            {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus */}
            <kbd aria-hidden="true">{index + 1}</kbd>
          </label>
        ))}
      </fieldset>
      {option?.decision === "look-at-vehicle" ? <p className="small soft">The conflict stays open until someone has looked.</p> : null}
      {option ? (
        <div className="ruling-words">
          {option.decision === "recogniser-error" ? (
            <fieldset className="ruling-options ruling-misheard">
              <legend>Which side was misheard?</legend>
              {values.map((value, index) => (
                <label key={sideLetter(index)} className="ruling-option">
                  <input
                    type="radio"
                    name="misheard"
                    className="cover"
                    checked={misheard === index}
                    onChange={() => set(withMisheard(index))}
                  />
                  {sideLetter(index)}: {value}
                  {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus */}
                  {digitOfMisheard(options, index) === null ? null : <kbd aria-hidden="true">{digitOfMisheard(options, index)}</kbd>}
                </label>
              ))}
              {faults.misheard ? <span className="small field-fault">{faults.misheard}</span> : null}
            </fieldset>
          ) : null}
          {option.decision === "recogniser-error" ? (
            <TextField
              label="The right words"
              value={rightWords}
              onChange={(words) => set({ rightWords: words })}
              fault={faults.rightWords}
              hint={replacedLine(replaced)}
              maxLength={500}
            />
          ) : null}
          <TextField
            label="Reason"
            value={reason}
            onChange={(words) => set({ reason: words })}
            fault={faults.reason}
            maxLength={2000}
            rows={1}
          />
          <div className="row">
            <Button type="submit" weight="main" aria-keyshortcuts="Control+Enter">
              Decide
            </Button>
            <span className="small soft">{initials ? `signed ${initials}` : "your initials are asked for"}</span>
          </div>
        </div>
      ) : null}
    </form>
  );
}

/** Where a digit takes the keyboard: to the first of these that is there. */
const fieldSelectors = {
  side: ['input[name="misheard"]:checked', 'input[name="misheard"]'],
  reason: [".ruling-words textarea"],
} as const;

/** Which words of the captions are replaced, and where: "In place of “to 55 60 15” at 2:54". */
function replacedLine(replaced: readonly SideWords[]): string {
  if (replaced.length === 0) return "Choose the side first; its words are put here to be edited.";
  return `In place of ${replaced.map(({ words, start }) => `“${words}” at ${timeLabel(start)}`).join(", ")}`;
}
