import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import {
  type AttributeName,
  attributeNames,
  type ComponentName,
  componentNames,
  type PositionName,
  positionNames,
} from "../../../shared-types/index.ts";

/** What a sentence of the bank claims. */
export interface Label {
  readonly component: ComponentName;
  readonly attribute: AttributeName;
  readonly value: string;
  readonly part: string | null;
  readonly position: PositionName | null;
}

/** A sentence as dealers say it, and what it claims; no label where it claims nothing of the kind. */
export interface LabelledSentence {
  readonly file: string;
  /** Line of the file, from 1. */
  readonly line: number;
  readonly text: string;
  readonly labels: readonly Label[];
}

export const sentencesFolder = fileURLToPath(new URL("../../../fixtures/sentences/", import.meta.url));

/** `brakes/type=disc (rotor)@front`: part and position may be missing. */
const form = /^([a-z-]+)\/([a-z]+)=([^(@]+?)\s*(?:\(([^)]+)\))?\s*(?:@([a-z-]+))?$/;

/** @throws Error that says what is wrong with the label. */
export function readLabel(text: string): Label {
  const found = form.exec(text.trim());
  if (!found)
    throw new Error(`"${text}" is no label; write component/attribute=value (part)@position, part and position where they are meant.`);
  const [, component = "", attribute = "", value = "", part, position] = found;
  const known = (names: readonly string[], name: string, what: string) => {
    if (!names.includes(name)) throw new Error(`"${name}" in "${text}" is no ${what}; use one of ${names.join(", ")}.`);
  };
  known(componentNames, component, "component");
  known(attributeNames, attribute, "attribute");
  if (position !== undefined) known(positionNames, position, "position");
  return {
    component: component as ComponentName,
    attribute: attribute as AttributeName,
    value: value.trim().toLowerCase(),
    part: part?.trim().toLowerCase() ?? null,
    position: (position as PositionName | undefined) ?? null,
  };
}

/**
 * Every sentence of a folder of `labels<TAB>words` files, in the order of names and lines.
 * @throws Error with file and line where a row is broken.
 */
export function readSentences(folder: string = sentencesFolder): LabelledSentence[] {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".tsv"))
    .sort();
  return files.flatMap((file) =>
    readFileSync(join(folder, file), "utf8")
      .split("\n")
      .flatMap((row, index): LabelledSentence[] => {
        if (row.trim() === "" || row.startsWith("#")) return [];
        const [labels, text, ...more] = row.split("\t");
        const line = index + 1;
        if (!labels || !text || more.length > 0) throw new Error(`${file}:${line}: write labels, one tab, words.`);
        try {
          return [{ file, line, text, labels: labels.trim() === "-" ? [] : labels.split(";").map(readLabel) }];
        } catch (failure) {
          throw new Error(`${file}:${line}: ${(failure as Error).message}`);
        }
      }),
  );
}
