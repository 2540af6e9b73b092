import { existsSync, readFileSync } from "node:fs";
import { basename, extname } from "node:path";
import { type IndexTemplate, longestTemplate } from "../../shared-types/index.ts";
import { indexTemplates, templateNamed, withoutFault } from "../services/index-templates.ts";
import type { Application } from "../services/open-application.ts";
import { Refusal } from "../services/refusals.ts";

/** The library's template of that name, else the text of that file under the file's name. @throws Refusal */
export function namedTemplate({ parts }: Pick<Application, "parts">, named: string): IndexTemplate {
  if (indexTemplates(parts).some(({ name }) => name === named) || !existsSync(named)) return templateNamed(parts, named);
  const text = readFileSync(named, "utf8");
  if (text.length > longestTemplate)
    throw new Refusal("template-too-long", `${named} has ${text.length} letters; ${longestTemplate} are the most of a template.`, {
      file: named,
    });
  return withoutFault({ name: templateFileName(named), text });
}

/** What a template that is a file is called. */
export function templateFileName(file: string): string {
  return basename(file, extname(file));
}
