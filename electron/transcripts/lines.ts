/** The file's lines, whichever of CR LF, LF and CR end them, without their ends. */
export function linesOf(text: string): string[] {
  return text.split(/\r\n|\n|\r/);
}
