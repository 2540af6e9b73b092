import { type Ref, useId } from "react";
import { Choice } from "../../shared/choice.tsx";
import { orderLabels, type RecordingOrder, recordingOrders } from "./arrange-recordings.ts";

/** From so many recordings on, looking through them by eye is slow. */
export const manyRecordings = 8;

export interface ListToolsProps {
  readonly words: string;
  readonly order: RecordingOrder;
  readonly shown: number;
  readonly all: number;
  readonly field: Ref<HTMLInputElement>;
  readonly onWords: (words: string) => void;
  readonly onOrder: (order: RecordingOrder) => void;
}

export function ListTools({ words, order, shown, all, field, onWords, onOrder }: ListToolsProps) {
  const id = useId();
  return (
    <search className="list-tools">
      <div className="field">
        <label htmlFor={id}>
          Find a recording{" "}
          {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus; the field tells its key itself */}
          <kbd aria-hidden="true">/</kbd>
        </label>
        <input
          ref={field}
          id={id}
          type="search"
          className="text-field"
          value={words}
          autoComplete="off"
          aria-keyshortcuts="/"
          placeholder="title, stock number, vehicle, year, “video missing”"
          onChange={(event) => onWords(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === "Escape") onWords("");
          }}
        />
      </div>
      <Choice
        label="Order"
        value={order}
        options={recordingOrders.map((value) => ({ value, label: orderLabels[value] }))}
        onChange={onOrder}
      />
      <p className="soft" role="status">
        {words.trim() === "" ? `${all} recordings` : `${shown} of ${all} recordings`}
      </p>
    </search>
  );
}
