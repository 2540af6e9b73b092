import { useId } from "react";

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly fault?: string;
  readonly hint?: string;
  readonly maxLength?: number;
  readonly required?: boolean;
  readonly inputMode?: "numeric" | "text";
  /** The field that a form opened by the person starts in. */
  readonly autoFocus?: boolean;
  /** Rows of a larger field; one line without. */
  readonly rows?: number;
}

/** One line or several, with its name above and what is wrong with it below. */
export function TextField({ label, value, onChange, fault, hint, rows, ...rest }: TextFieldProps) {
  const id = useId();
  const said = [hint ? `${id}-hint` : null, fault ? `${id}-fault` : null].filter(Boolean).join(" ");
  const shared = {
    id,
    className: "text-field",
    value,
    "aria-invalid": fault ? true : undefined,
    "aria-describedby": said || undefined,
    autoComplete: "off",
    ...rest,
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {rows ? (
        <textarea {...shared} rows={rows} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input {...shared} onChange={(event) => onChange(event.target.value)} />
      )}
      {hint ? (
        <span className="small soft" id={`${id}-hint`}>
          {hint}
        </span>
      ) : null}
      {fault ? (
        <span className="small field-fault" id={`${id}-fault`}>
          {fault}
        </span>
      ) : null}
    </div>
  );
}
