import { useEffect, useEffectEvent } from "react";
import type { Problem } from "../../../shared-types/index.ts";
import { problemOf } from "../../client/client.ts";
import { useClient, useHostEvent } from "../../client/use-client.ts";
import { type FoundFile, isOfTheSystem } from "./found-file.ts";

/** Takes files that the system handed over to the host, now and whenever more arrive. */
export function useHandedFiles(onFiles: (files: readonly FoundFile[]) => void, onProblem: (problem: Problem) => void): void {
  const client = useClient();
  const take = useEffectEvent(() => {
    client.call("file.handedOver", {}).then(
      ({ files }) => {
        const wanted = files.filter(({ name }) => !isOfTheSystem(name));
        // Two of one name may come from two folders, so that the host's own id tells them apart.
        if (wanted.length > 0) onFiles(wanted.map(({ id, name, bytes }) => ({ key: id, name, folder: "", bytes, source: id })));
      },
      (thrown: unknown) => onProblem(problemOf(thrown)),
    );
  });
  useEffect(() => take(), []);
  useHostEvent("file.waiting", () => take());
}

/** Shows the library, where files are taken in, when some arrive while another screen is open. */
export function HandedFilesGuide(): null {
  useHostEvent("file.waiting", () => {
    window.location.hash = "#/";
  });
  return null;
}
