import { Select } from "@base-ui/react/select";
import { type ReactNode, useId } from "react";

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly mark?: ReactNode;
}

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly ChoiceOption<Value>[];
  readonly onChange: (value: Value) => void;
  /** The name is for screen readers only; what stands around the control says it already. */
  readonly labelHidden?: boolean;
  readonly id?: string;
}

/** A choice from a closed list. */
export function Choice<Value extends string>({ label, value, options, onChange, labelHidden, id }: ChoiceProps<Value>) {
  const labelId = useId();
  const chosen = options.find((option) => option.value === value);
  return (
    <div className="field">
      <span id={labelId} className={labelHidden ? "visually-hidden" : "field-name"}>
        {label}
      </span>
      <Select.Root
        items={options.map((option) => ({ value: option.value, label: option.label }))}
        value={value}
        onValueChange={(next) => {
          if (next !== null) onChange(next as Value);
        }}
        modal={false}
      >
        <Select.Trigger className="choice" aria-labelledby={labelId} id={id}>
          <span>
            {chosen?.mark} <Select.Value />
          </span>
          <svg className="choice-mark" viewBox="0 0 9 9" aria-hidden="true">
            <path d="M1 3l3.5 3.5L8 3" fill="none" stroke="currentColor" strokeWidth="1.5" />
          </svg>
        </Select.Trigger>
        <Select.Portal render={<section aria-label={`Choices, ${label}`} />}>
          <Select.Positioner className="choice-positioner" alignItemWithTrigger={false} sideOffset={2}>
            <Select.Popup className="choice-list">
              {options.map((option) => (
                <Select.Item key={option.value} value={option.value} className="choice-item">
                  {option.mark}
                  <Select.ItemText>{option.label}</Select.ItemText>
                </Select.Item>
              ))}
            </Select.Popup>
          </Select.Positioner>
        </Select.Portal>
      </Select.Root>
    </div>
  );
}
