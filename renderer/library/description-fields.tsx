import { Choice } from "../shared/choice.tsx";
import { TextField } from "../shared/text-field.tsx";
import { bySheetOption, type ChosenStyle, styleOptions } from "./body-styles.ts";
import type { DescriptionDraft, faultsOfDraft } from "./vehicle-form.ts";

export interface DescriptionFieldsProps {
  readonly draft: DescriptionDraft;
  readonly faults: ReturnType<typeof faultsOfDraft>;
  readonly onChange: (draft: DescriptionDraft) => void;
  /** Before an import the body style may be left to the stock sheet. */
  readonly style?: ChosenStyle;
  readonly onStyle?: (style: ChosenStyle) => void;
}

export function DescriptionFields({ draft, faults, onChange, style, onStyle }: DescriptionFieldsProps) {
  const set = (change: Partial<DescriptionDraft>) => onChange({ ...draft, ...change });
  return (
    <div className="description-fields">
      <div className="wide">
        <TextField label="Title" value={draft.title} onChange={(title) => set({ title })} fault={faults.title} maxLength={200} required />
      </div>
      <TextField label="Stock number" value={draft.stockNumber} onChange={(stockNumber) => set({ stockNumber })} maxLength={60} />
      <TextField label="Model year" value={draft.year} onChange={(year) => set({ year })} fault={faults.year} inputMode="numeric" />
      <div className="wide">
        <TextField
          label="Vehicle"
          value={draft.vehicleName}
          onChange={(vehicleName) => set({ vehicleName })}
          maxLength={200}
          hint="Make and model, as you name it"
        />
      </div>
      {style !== undefined && onStyle ? (
        <Choice label="Body style" value={style} options={[bySheetOption, ...styleOptions]} onChange={onStyle} />
      ) : (
        <Choice label="Body style" value={draft.bodyStyle} options={styleOptions} onChange={(bodyStyle) => set({ bodyStyle })} />
      )}
      <Choice
        label="Driver sits on the"
        value={draft.drive}
        options={[
          { value: "left-hand", label: "left (left-hand drive)" },
          { value: "right-hand", label: "right (right-hand drive)" },
        ]}
        onChange={(drive) => set({ drive })}
      />
    </div>
  );
}
