import { globSync, readFileSync } from "node:fs";
import { dirname, join, normalize, sep } from "node:path";

export interface ImportOfFile {
  /** From the root, with forward slashes. */
  readonly file: string;
  /** As written. */
  readonly specifier: string;
  /** The file of the project that it means; null for a package. */
  readonly target: string | null;
  readonly typeOnly: boolean;
}

/**
 * Static, dynamic and re-exporting imports, also over several lines. Comments and the insides of other strings are blanked first, so
 * that an example in a comment is no import.
 */
const importPattern =
  /(?:^|[;\n}])\s*(?<keyword>import|export)\s+(?<type>type\s+)?(?<names>[^"';]*?)\s*(?:from\s*)?["'](?<from>[^"'\n]+)["']|\bimport\s*\(\s*["'](?<dynamic>[^"'\n]+)["']|\bnew\s+URL\(\s*["'](?<address>\.[^"'\n]+\.[cm]?tsx?)["']/g;

export function importsOf(file: string, source: string): ImportOfFile[] {
  const code = withoutComments(source);
  return [...code.matchAll(importPattern)].flatMap(({ groups = {} }) => {
    const specifier = groups.from ?? groups.dynamic ?? groups.address;
    if (specifier === undefined) return [];
    // "export const a = …" has no "from": the pattern would run on to a later string.
    if (groups.keyword === "export" && !/^(?:\*|\{)/.test(groups.names ?? "")) return [];
    const typeOnly = groups.type !== undefined || /^\{(?:\s*type\s+\w+(?:\s+as\s+\w+)?\s*,?)+\s*\}$/.test(groups.names ?? "");
    const target = specifier.startsWith(".")
      ? normalize(join(dirname(file), specifier))
          .split(sep)
          .join("/")
      : null;
    return [{ file, specifier, target, typeOnly }];
  });
}

function withoutComments(source: string): string {
  return source.replaceAll(
    /("(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*')|\/\*[\s\S]*?\*\/|(?<![:\\])\/\/[^\n]*/g,
    (whole, text: string | undefined) => text ?? whole.replaceAll(/[^\n]/g, " "),
  );
}

/** Every import of the project's sources. */
export function readProjectImports(root: string): ImportOfFile[] {
  return globSync(["shared-types/**/*.{ts,tsx}", "electron/**/*.{ts,tsx,mjs}", "renderer/**/*.{ts,tsx}"], { cwd: root })
    .map((file) => file.split(sep).join("/"))
    .sort()
    .flatMap((file) => importsOf(file, readFileSync(join(root, file), "utf8")));
}
