import { Combobox } from "@base-ui/react/combobox";
import { useState } from "react";
import { mostCompared, type RecordingSummary } from "../../shared-types/index.ts";
import "./compare.css";

export interface VehicleChoiceProps {
  readonly recordings: readonly RecordingSummary[];
  readonly chosen: readonly string[];
  readonly onChosen: (ids: readonly string[]) => void;
}

/** How a vehicle is called in a row of others. */
export function vehicleName({
  stockNumber,
  title,
  recordingTitle,
}: {
  stockNumber: string;
  title?: string;
  recordingTitle?: string;
}): string {
  return [stockNumber, title ?? recordingTitle ?? ""].filter(Boolean).join(", ");
}

/** The vehicles to put side by side, found by stock number or name as they are typed. */
export function VehicleChoice({ recordings, chosen, onChosen }: VehicleChoiceProps) {
  const byId = new Map(recordings.map((recording) => [recording.id, recording]));
  const [open, setOpen] = useState(false);
  const full = chosen.length >= mostCompared;
  return (
    <Combobox.Root
      multiple
      items={recordings.map((recording) => recording.id)}
      itemToStringLabel={(one: string) => {
        const recording = byId.get(one);
        return recording ? `${vehicleName(recording)} ${recording.vehicle.name} ${recording.vehicle.year ?? ""}` : one;
      }}
      value={[...chosen]}
      open={open}
      onOpenChange={setOpen}
      onValueChange={(next: string[]) => {
        // The list would lie over the very table that it has just changed.
        setOpen(false);
        onChosen(next.slice(0, mostCompared));
      }}
      autoHighlight
    >
      <div className="vehicles">
        <span className="field-name">Vehicles side by side</span>
        <div className="vehicles-chosen">
          <ul className="vehicles-list" aria-label="Chosen vehicles">
            {chosen.map((one) => {
              const recording = byId.get(one);
              const name = recording ? vehicleName(recording) : "no longer in the library";
              return (
                <li key={one} className="vehicle-chip">
                  <span>{name}</span>
                  <button
                    type="button"
                    className="vehicle-away"
                    aria-label={`Take away ${name}`}
                    onClick={() => onChosen(chosen.filter((other) => other !== one))}
                  >
                    <svg width="9" height="9" viewBox="0 0 9 9" aria-hidden="true">
                      <path d="M1 1l7 7M8 1L1 8" stroke="currentColor" strokeWidth="1.5" />
                    </svg>
                  </button>
                </li>
              );
            })}
          </ul>
          <Combobox.Trigger className="button" disabled={full} aria-label="Add a vehicle">
            {full ? `${mostCompared} are as many as can be read` : "Add a vehicle…"}
          </Combobox.Trigger>
        </div>
      </div>
      <Combobox.Portal>
        <Combobox.Positioner className="choice-positioner" sideOffset={2} align="start">
          <Combobox.Popup className="choice-list" aria-label="Add a vehicle">
            <Combobox.Input className="text-field" placeholder="Stock number or name" aria-label="Stock number or name" />
            <Combobox.Empty className="vehicle-none">No recording is called so.</Combobox.Empty>
            <Combobox.List>
              {(one: string) => (
                <Combobox.Item key={one} value={one} className="choice-item">
                  <span className="vehicle-mark" aria-hidden="true">
                    {chosen.includes(one) ? "✓" : ""}
                  </span>
                  {byId.get(one) ? vehicleName(byId.get(one) as RecordingSummary) : one}
                </Combobox.Item>
              )}
            </Combobox.List>
          </Combobox.Popup>
        </Combobox.Positioner>
      </Combobox.Portal>
    </Combobox.Root>
  );
}
