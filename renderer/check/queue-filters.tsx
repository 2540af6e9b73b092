import { Toggle } from "@base-ui/react/toggle";
import { ToggleGroup } from "@base-ui/react/toggle-group";
import { type RecordingDetail, zoneLabels } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { asHeading } from "../shared/claim-words.ts";
import { conflictFilters } from "./queue.ts";
import { filterChoices, kindWords, type QueueFilter, wholeQueue } from "./queue-filter.ts";

export const filterLabels = { open: "Open", settled: "Settled", all: "All" } as const;

export interface QueueFiltersProps {
  readonly detail: RecordingDetail;
  readonly filter: QueueFilter;
  readonly onFilter: (filter: QueueFilter) => void;
}

/** In a list of choices, that which chooses nothing. */
const all = "all";

/** What of the queue is shown: each filter also steps by its key, which stands beside it. */
export function QueueFilters({ detail, filter, onFilter }: QueueFiltersProps) {
  const choices = filterChoices(detail);
  const narrowed = filter.kind !== null || filter.zone !== null || filter.weight !== null;
  const options = <Value extends string>(whole: string, values: readonly Value[], words: (value: Value) => string) => [
    { value: all, label: whole },
    ...values.map((value) => ({ value, label: words(value) })),
  ];
  const chosen = <Value extends string>(values: readonly Value[], value: string): Value | null =>
    values.find((one) => one === value) ?? null;
  return (
    <div className="queue-filters">
      <div className="queue-filter">
        <ToggleGroup
          className="queue-states"
          aria-label="Which conflicts"
          value={[filter.state]}
          onValueChange={(next) => {
            const state = conflictFilters.find((one) => one === next[0]);
            if (state) onFilter({ ...filter, state });
          }}
        >
          {conflictFilters.map((one) => (
            <Toggle key={one} value={one} className="button">
              {filterLabels[one]}
            </Toggle>
          ))}
        </ToggleGroup>
        <FilterKey letter="O" />
      </div>
      <div className="queue-filter">
        <Choice
          label="Kind of conflict"
          labelHidden
          value={filter.kind ?? all}
          options={options("Any kind", choices.kind, (kind) => asHeading(kindWords[kind][0]))}
          onChange={(value) => onFilter({ ...filter, kind: chosen(choices.kind, value) })}
        />
        <FilterKey letter="K" />
      </div>
      <div className="queue-filter">
        <Choice
          label="Zone where it was said"
          labelHidden
          value={filter.zone ?? all}
          options={options("Any zone", choices.zone, (zone) => zoneLabels[zone])}
          onChange={(value) => onFilter({ ...filter, zone: chosen(choices.zone, value) })}
        />
        <FilterKey letter="Z" />
      </div>
      <div className="queue-filter">
        <Choice
          label="Weight"
          labelHidden
          value={filter.weight ?? all}
          options={options("Any weight", choices.weight, asHeading)}
          onChange={(value) => onFilter({ ...filter, weight: chosen(choices.weight, value) })}
        />
        <FilterKey letter="W" />
      </div>
      {narrowed ? (
        <Button weight="quiet" shortcut="X" onClick={() => onFilter({ ...wholeQueue, state: filter.state })}>
          Show every one
        </Button>
      ) : null}
    </div>
  );
}

function FilterKey({ letter }: { readonly letter: string }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus
  return <kbd aria-hidden="true">{letter}</kbd>;
}
