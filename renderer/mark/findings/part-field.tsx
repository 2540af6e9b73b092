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
  return (
    <div className="field">
      <label htmlFor={id}>Part</label>
      <Autocomplete.Root
        items={meant}
        mode="none"
        autoHighlight={false}
        value={value}
        itemToStringValue={(part) => part.part}
        onValueChange={(words) => onChange(words, partNamed(words))}
        open={open && meant.length > 0}
        onOpenChange={setOpen}
      >
        <Autocomplete.Input
          id={id}
          className="text-field"
          maxLength={80}
          placeholder="door, hood, corner…"
          onKeyDownCapture={(event) => {
            // An open list's Escape closes the list, not the form around it.
            if (event.key === "Escape" && open) {
              setOpen(false);
              event.stopPropagation();
              event.preventDefault();
            }
          }}
        />
        <Autocomplete.Portal>
          <Autocomplete.Positioner className="choice-positioner" sideOffset={2}>
            <Autocomplete.Popup className="choice-list">
              <Autocomplete.List>
                {(part: FindingPart) => (
                  <Autocomplete.Item key={part.part} value={part} className="choice-item">
                    {part.part}
                    <span className="part-of small soft">
                      {[componentLabel(part.component), positionLabel(part.position)].filter(Boolean).join(", ")}
                    </span>
                  </Autocomplete.Item>
                )}
              </Autocomplete.List>
            </Autocomplete.Popup>
          </Autocomplete.Positioner>
        </Autocomplete.Portal>
      </Autocomplete.Root>
    </div>
  );
}
