import { isAbsolute, resolve } from "node:path";
import { linkScheme } from "./roundwalk-link.ts";

/** What a start asks for beside the window itself. */
export interface StartWishes {
  /** Absolute paths. */
  readonly files: readonly string[];
  readonly links: readonly string[];
}

/** Most files that one start may hand over; more is a mistake of the shell's glob. */
const mostFiles = 500;

/**
 * Files and links among a start's arguments. Everything that begins with a dash is an option: Chromium puts its own between ours, and a
 * second start arrives with them.
 * @param args without the program itself and its main script.
 * @param folder that relative paths are relative to.
 */
export function wishesOf(args: readonly string[], folder: string): StartWishes {
  const files: string[] = [];
  const links: string[] = [];
  for (let index = 0; index < args.length; index++) {
    const text = args[index] ?? "";
    if (text === "--library") index++;
    else if (text.startsWith("-") || text.trim() === "") continue;
    else if (isLink(text)) links.push(text);
    // Any other address is no file, however it looks.
    else if (/^[a-z][a-z0-9+.-]+:\/\//i.test(text)) continue;
    else files.push(isAbsolute(text) ? text : resolve(folder, text));
  }
  return { files: files.slice(0, mostFiles), links: links.slice(-1) };
}

/** Wishes as another start of the same program hands them over; it may be of another version, so that nothing about them is certain. */
export function readWishes(given: unknown): StartWishes {
  const { files, links } = (typeof given === "object" && given !== null ? given : {}) as Record<string, unknown>;
  const texts = (list: unknown) => (Array.isArray(list) ? list.filter((text): text is string => typeof text === "string") : []);
  return {
    files: texts(files)
      .filter((path) => isAbsolute(path) && !path.includes("\0"))
      .slice(0, mostFiles),
    links: texts(links).filter(isLink).slice(-1),
  };
}

/** The library that a start names with `--library`; null where it names none. */
export function libraryOf(args: readonly string[], folder: string): string | null {
  const index = args.findIndex((text) => text === "--library" || text.startsWith("--library="));
  const named = args[index]?.includes("=") ? args[index].slice("--library=".length) : args[index + 1];
  return index === -1 || !named ? null : resolve(folder, named);
}

function isLink(text: string): boolean {
  return text.toLowerCase().startsWith(`${linkScheme}:`);
}

/**
 * The arguments after the program and, where a program runs a script, the script.
 * @param packaged whether the program is the application itself: it then takes no script.
 */
export function ownArguments(argv: readonly string[], packaged: boolean): string[] {
  const script = packaged ? -1 : placeOfScript(argv);
  return argv.filter((_, index) => index > 0 && index !== script);
}

/** What another start of the same program needs: its script, and the options before it. No library, file or link of this start. */
export function argumentsToStartAgain(argv: readonly string[], packaged: boolean): string[] {
  const script = packaged ? -1 : placeOfScript(argv);
  const options = (packaged ? argv : argv.slice(0, script)).filter((text, index) => index > 0 && text.startsWith("-"));
  const passing = /^--(?:library|inspect|remote-debugging)/;
  return [...options.filter((text) => !passing.test(text)), ...(script === -1 ? [] : argv.slice(script, script + 1))];
}

/** A second start's list has Chromium's switches before the script: the script is the first that is none. -1 without one. */
function placeOfScript(argv: readonly string[]): number {
  return argv.findIndex((text, index) => index > 0 && !text.startsWith("-"));
}
