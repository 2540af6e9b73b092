import { join } from "node:path";
import envPaths from "env-paths";

/** Where the library is when nobody names another place: the system's own folder for a program's data. */
export function defaultLibraryFile(): string {
  return join(envPaths("roundwalk", { suffix: "" }).data, "library.sqlite");
}
