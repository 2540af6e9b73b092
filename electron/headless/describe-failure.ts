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
  // A transcript's error names file and line itself.
  if (failure instanceof Error && "file" in failure && typeof failure.file === "string" && message.startsWith(failure.file)) {
    return oneLine(file.slice(0, file.length - failure.file.length) + message);
  }
  const line = failure instanceof Error && "line" in failure && typeof failure.line === "number" ? `:${failure.line}` : "";
  return `${file}${line}: ${oneLine(message)}`;
}

function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, " ").trim();
}
