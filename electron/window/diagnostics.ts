/** Facts about the program and the machine; none is about a customer, a vehicle or a person. */
export interface DiagnosticFacts {
  readonly version: string;
  /** "electron", "chrome", "node", "sqlite" and their versions. */
  readonly engines: Readonly<Record<string, string>>;
  readonly system: string;
  readonly memoryBytes: number;
  readonly recordings: number;
  /** Seconds since the start. */
  readonly upSeconds: number;
}

/** @param logLines as the log has them; only what is known to be the program's own comes through. */
export function diagnosticsText(facts: DiagnosticFacts, logLines: readonly string[], methods: ReadonlySet<string>): string {
  const { version, engines, system, memoryBytes, recordings, upSeconds } = facts;
  return [
    `Roundwalk ${version}`,
    ...Object.entries(engines).map(([name, its]) => `${name} ${its}`),
    `system ${system}`,
    `memory ${Math.round(memoryBytes / 2 ** 20)} MiB`,
    `recordings ${recordings}`,
    `running ${Math.round(upSeconds)} s`,
    "log:",
    ...logLines.map((line) => safeLine(line, methods)),
    "",
  ].join("\n");
}

const headPattern = /^\[(?<at>\d{4}-\d\d-\d\dT[\d:.]+Z)\] \[(?<level>[a-z]+)\]\s+(?<text>.*)$/;
const notePattern = /^shell: [a-z]+(?:-[a-z]+)*(?: -?\w{1,40})?$/;
const failurePattern = /^(?<method>[a-zA-Z]+\.[a-zA-Z]+) failed: (?<kind>[A-Z]\w{0,40}Error|Error)\b/;
/** A step of a stack: the function, and the name of the program's own file without its folder. */
const framePattern =
  /^\s+at (?:(?<call>(?:async |new )?[\w.$<>]{1,80}(?: \[as \w+\])?) \()?(?:.*[/\\])?(?<place>(?:node:)?[\w.-]+(?:\/[\w.-]+)*\.?[cm]?[jt]?s?:\d+:\d+)\)?$/;

/**
 * A line of the log with nothing in it that could be a customer's: it is built from what is known, never by striking out what is not
 * wanted, since a title or a path may look like anything.
 */
export function safeLine(line: string, methods: ReadonlySet<string>): string {
  const frame = framePattern.exec(line)?.groups;
  if (frame) {
    const place = frame.place?.split("/").at(-1) ?? "";
    return /^[\w.-]+\.[cm]?[jt]s:\d+:\d+$/.test(place) ? `    at ${frame.call ? `${frame.call} ` : ""}${place}` : "    at (left out)";
  }
  const head = headPattern.exec(line)?.groups;
  if (!head) return "  (left out)";
  const { at, level, text = "" } = head;
  if (notePattern.test(text)) return `${at} ${level} ${text}`;
  const failure = failurePattern.exec(text)?.groups;
  if (failure?.method !== undefined && methods.has(failure.method)) return `${at} ${level} ${failure.method} failed: ${failure.kind}`;
  return `${at} ${level} (left out)`;
}
