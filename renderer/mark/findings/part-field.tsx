import { Autocomplete } from "@base-ui/react/autocomplete";
import { useId, useState } from "react";
import { componentLabel, type FindingPart, partNamed, partsMeant, positionLabel, type ZoneName } from "../../../shared-types/index.ts";

export interface PartFieldProps {
  readonly value: string;
  readonly zone: ZoneName;
  /** The words as typed, with the part of the list that they name, if any. */
  readonly onChange: (words: string, named: FindingPart | undefined) => void;
}

/** The part, found by typing its beginning, or in free words. */
export function PartField({ value, zone, onChange }: PartFieldProps) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const meant = partsMeant(value, zone);
  const shown = open && meant.length > 0;
  return (
    <div className="field part-field">
      <label htmlFor={id}>Part</label>
      <Autocomplete.Root
        items={meant}
        mode="none"
        autoHighlight={false}
        value={value}
        itemToStringValue={(part) => part.part}
        onValueChange={(words, { reason }) => {
          // A picked part comes by its own way, with all that is known of it.
          if (reason !== "input-change") return;
          setOpen(true);
          onChange(words, partNamed(words));
        }}
        // In the form's own place: a floating list would take the rest of the page out of a screen reader's reach.
        inline
        open={shown}
        onOpenChange={setOpen}
      >
        <Autocomplete.Input
          id={id}
          className="text-field"
          maxLength={80}
          placeholder="door, hood, corner…"
          // In its own place the list counts as open for good; it is so only while it is shown.
          aria-expanded={shown}
          onClick={() => setOpen(true)}
          onBlur={() => setOpen(false)}
          onKeyDownCapture={(event) => {
            if (event.key === "ArrowDown") setOpen(true);
            // An open list's Escape closes the list, not the form around it.
            if (event.key === "Escape" && shown) {
              setOpen(false);
              event.stopPropagation();
              event.preventDefault();
            }
          }}
        />
        {shown ? (
          <Autocomplete.List className="choice-list part-list">
            {(part: FindingPart) => (
              <Autocomplete.Item
                key={part.part}
                value={part}
                className="choice-item"
                onClick={() => {
                  setOpen(false);
                  onChange(part.part, part);
                }}
              >
                {part.part}
                <span className="part-of small soft">
                  {[componentLabel(part.component), positionLabel(part.position)].filter(Boolean).join(", ")}
                </span>
              </Autocomplete.Item>
            )}
          </Autocomplete.List>
        ) : null}
      </Autocomplete.Root>
    </div>
  );
}
