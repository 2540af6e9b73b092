import { type IndexField, indexFieldRows, indexFields, type TemplateFault } from "../../../shared-types/index.ts";

/** A template in pieces: text as it stands, and fields to fill in. */
export type TemplatePiece = { readonly text: string } | { readonly field: IndexField };

export interface ReadTemplate {
  readonly pieces: readonly TemplatePiece[];
  /** In the order of the text; a template with any is not filled in. */
  readonly faults: readonly TemplateFault[];
}

/** Longest piece of an unknown field's name that is repeated to the person. */
const longestNamed = 40;

/** Cuts a template at its fields. `{{` and `}}` stand for one brace. Never throws: what cannot be read is a fault with its place. */
export function readTemplate(text: string): ReadTemplate {
  const pieces: TemplatePiece[] = [];
  const faults: TemplateFault[] = [];
  let plain = "";
  const fault = (at: number, message: string) => faults.push({ ...placeOf(text, at), message });
  let at = 0;
  while (at < text.length) {
    const sign = text[at];
    if (sign !== "{" && sign !== "}") {
      plain += sign;
      at += 1;
    } else if (text[at + 1] === sign) {
      plain += sign;
      at += 2;
    } else if (sign === "}") {
      fault(at, "This brace closes nothing. Write two of them, “}}”, for a brace in the text.");
      at += 1;
    } else {
      const end = closingBrace(text, at);
      if (end === null) {
        fault(at, "This brace is not closed on its line. Write “{stock-number}” for a field, or “{{” for a brace in the text.");
        at += 1;
        continue;
      }
      const named = text.slice(at + 1, end).trim();
      const field = fieldNamed(named);
      if (field === null) fault(at, unknownField(named));
      else {
        if (plain !== "") pieces.push({ text: plain });
        plain = "";
        pieces.push({ field });
      }
      at = end + 1;
    }
  }
  if (plain !== "") pieces.push({ text: plain });
  return { pieces, faults };
}

function closingBrace(text: string, open: number): number | null {
  const rest = /[{}\r\n]/.exec(text.slice(open + 1));
  return rest?.[0] === "}" ? open + 1 + rest.index : null;
}

function fieldNamed(named: string): IndexField | null {
  const name = named.toLowerCase();
  return Object.hasOwn(indexFieldRows, name) ? (name as IndexField) : null;
}

function unknownField(named: string): string {
  const near = indexFields.find((field) => field.replaceAll("-", "") === named.toLowerCase().replaceAll(/[\s_-]/g, ""));
  const shown = named.length > longestNamed ? `${named.slice(0, longestNamed)}…` : named;
  return near
    ? `There is no field “${shown}”. Did you mean “{${near}}”?`
    : `There is no field “${shown}”. The fields are ${indexFields.join(", ")}.`;
}

/** Line and column from 1, in letters as a person counts them. */
function placeOf(text: string, at: number): { line: number; column: number } {
  const lines = text.slice(0, at).split(/\r\n|\n|\r/);
  return { line: lines.length, column: [...(lines.at(-1) ?? "")].length + 1 };
}
