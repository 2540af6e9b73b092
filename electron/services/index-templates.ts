import { z } from "zod";
import { firstTemplate, IndexTemplate, type Input, type Output } from "../../shared-types/index.ts";
import { fillTemplate } from "../exports/templates/fill-template.ts";
import { readTemplate } from "../exports/templates/read-template.ts";
import type { Parts } from "./parts.ts";
import { recordingDetail } from "./recording-detail.ts";
import { Refusal } from "./refusals.ts";

const Templates = z.array(IndexTemplate);

/** The library's own texts with fields; one to begin with where it has none yet. */
export function indexTemplates({ library }: Pick<Parts, "library">): Output<"template.list"> {
  const kept = library.settings.get("indexTemplates");
  return kept === undefined ? [firstTemplate] : Templates.parse(JSON.parse(kept));
}

/** Keeps a template under its name, in the place of the one of that name. @throws Refusal with the place of the first fault. */
export function keepTemplate(parts: Pick<Parts, "library">, { template }: Input<"template.keep">): Output<"template.keep"> {
  withoutFault(template);
  return write(parts, (before) =>
    before.some(({ name }) => name === template.name)
      ? before.map((each) => (each.name === template.name ? template : each))
      : [...before, template],
  );
}

/**
 * The template of that name, with nothing in it that cannot be filled in; the library's first where none is named.
 * @throws Refusal
 */
export function templateNamed(parts: Pick<Parts, "library">, name: string | null): IndexTemplate {
  const templates = indexTemplates(parts);
  const template = name === null ? (templates[0] ?? firstTemplate) : templates.find((each) => each.name === name);
  if (!template) throw new Refusal("template-unknown", `There is no template “${name}”. Choose another, or write it first.`);
  return withoutFault(template);
}

/** @throws Refusal with the place of the first fault. */
export function withoutFault(template: IndexTemplate): IndexTemplate {
  const fault = readTemplate(template.text).faults[0];
  if (fault) throw templateRefusal(template.name, fault);
  return template;
}

export function removeTemplate(parts: Pick<Parts, "library">, { name }: Input<"template.remove">): Output<"template.remove"> {
  return write(parts, (before) => before.filter((each) => each.name !== name));
}

function write(parts: Pick<Parts, "library">, change: (before: IndexTemplate[]) => IndexTemplate[]): IndexTemplate[] {
  const { library } = parts;
  return library.transaction(() => {
    const after = change(indexTemplates(parts));
    library.settings.put("indexTemplates", JSON.stringify(after));
    return after;
  });
}

/** A template filled in from a recording, or the places where it cannot be. */
export function previewTemplate(
  parts: Pick<Parts, "library" | "now">,
  { recordingId, text }: Input<"template.preview">,
): Output<"template.preview"> {
  const filled = fillTemplate(text, recordingDetail(parts, recordingId), parts.now());
  return { text: filled.text, faults: [...filled.faults] };
}

function templateRefusal(name: string, { line, column, message }: { line: number; column: number; message: string }): Refusal {
  return new Refusal("template-fault", `“${name}”, line ${line}, column ${column}: ${message}`, { file: name, line });
}
