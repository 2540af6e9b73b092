/** Whether a file is a bundle, by its name: no other file of a recording is a ZIP. What it really is, the host says. */
export function isBundle({ name }: { readonly name: string }): boolean {
  return name.toLowerCase().endsWith(".zip");
}
