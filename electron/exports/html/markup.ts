/** A piece of HTML that is safe to place as it is. Only `html` and `raw` make one. */
export class Markup {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  toString(): string {
    return this.text;
  }
}

type Placeable = string | number | null | undefined | false | Markup | readonly Placeable[];

const references: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

export function escapeHtml(text: string): string {
  return text.replaceAll(/[&<>"']/g, (character) => references[character]!);
}

function place(value: Placeable): string {
  if (value === null || value === undefined || value === false) return "";
  if (value instanceof Markup) return value.text;
  if (typeof value === "object") return value.map(place).join("");
  return escapeHtml(String(value));
}

/** HTML in which every placed value is escaped unless it was itself made by `html` or `raw`. */
export function html(parts: TemplateStringsArray, ...values: Placeable[]): Markup {
  return new Markup(parts.reduce((text, part, position) => text + place(values[position - 1]) + part));
}

/** For text of our own that is no HTML text, such as a script or a style sheet. Never for anything a person typed or a file brought. */
export function raw(text: string): Markup {
  return new Markup(text);
}
