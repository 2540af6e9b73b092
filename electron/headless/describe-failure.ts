/**
 * One line that says which file could not be used, where, what was found and what to do. A transcript error brings its own
 * line number and advice; the file system's errors are put into words here.
 */
export function describeFailure(file: string, failure: unknown): string {
  const code = failure instanceof Error && "code" in failure ? String(failure.code) : "";
  if (code === "ENOENT") return `${file}: there is no such file. Check the name and the folder.`;
  if (code === "EISDIR") return `${file}: this is a folder. Name the transcript file in it.`;
  if (code === "EACCES" || code === "EPERM") return `${file}: this file may not be read. Check its permissions.`;
  const message = failure instanceof Error ? failure.message : String(failure);
  // An error of a transcript or a stock sheet names file and line itself; the folder goes before it.
  const named = failingFile(failure);
  if (named !== undefined && message.startsWith(named)) {
    return oneLine((file.endsWith(named) ? file.slice(0, file.length - named.length) : "") + message);
  }
  const line = failure instanceof Error && "line" in failure && typeof failure.line === "number" ? `:${failure.line}` : "";
  return `${file}${line}: ${oneLine(message)}`;
}

/** The file that a failure says it is about: a transcript's error has it itself, a refusal within its problem. */
export function failingFile(failure: unknown): string | undefined {
  if (!(failure instanceof Error)) return undefined;
  const { file, problem } = failure as { file?: unknown; problem?: { file?: unknown } };
  const named = file ?? problem?.file;
  return typeof named === "string" ? named : undefined;
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, " ").trim();
}
