import { existsSync, mkdirSync, readFileSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import log from "electron-log/node.js";

export interface ShellLog {
  readonly file: string;
  /** What the application says of a failure; may hold names and paths, and stays on this machine. */
  readonly say: (line: string) => void;
  /** Something of the shell's own, as a code that diagnostics may show: "page-gone crashed". */
  readonly note: (code: string) => void;
  /** The lines written last, the oldest first, also those before the last rotation. */
  readonly lastLines: (count: number) => string[];
}

/** A full file becomes `.1`, that `.2`; what was `.2` goes. */
const oldFiles = 2;
const usualBytes = 1024 * 1024;

/** @param options `fullBytes`: after which a new file is begun; `quiet`: nothing on the terminal. */
export function openShellLog(file: string, options: { readonly fullBytes?: number; readonly quiet?: boolean } = {}): ShellLog {
  const { fullBytes = usualBytes, quiet = false } = options;
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const logger = log.create({ logId: `shell-${file}` });
  const { file: writer, console: terminal } = logger.transports;
  if (terminal) terminal.level = quiet ? false : "info";
  // Else it looks for a package.json from the folder that the program was started in, and writes nothing where there is none.
  writer.setAppName("Roundwalk");
  writer.resolvePathFn = () => file;
  writer.maxSize = fullBytes;
  // Written before the call returns: the line that matters most is the one before the end.
  writer.sync = true;
  writer.format = "[{iso}] [{level}] {text}";
  writer.writeOptions = { flag: "a", mode: 0o600, encoding: "utf8" };
  writer.archiveLogFn = ({ path }) => {
    rmSync(`${path}.${oldFiles}`, { force: true });
    for (let age = oldFiles - 1; age >= 1; age--) {
      if (existsSync(`${path}.${age}`)) renameSync(`${path}.${age}`, `${path}.${age + 1}`);
    }
    renameSync(path, `${path}.1`);
  };
  return {
    file,
    say: (line) => logger.error(line),
    note: (code) => logger.info(`shell: ${code}`),
    lastLines: (count) =>
      [`${file}.1`, file]
        .flatMap((each) => (existsSync(each) ? readFileSync(each, "utf8").split("\n") : []))
        .filter((line) => line !== "")
        .slice(-count),
  };
}
