import { addresses } from "../../shared-types/index.ts";
import { type FileWatch, ProblemError } from "./client.ts";

/** A browser may no longer read a file that was changed, moved or removed since it was chosen; asking it for a byte shows that. */
export async function isReadable(file: File): Promise<boolean> {
  return file
    .slice(0, 1)
    .arrayBuffer()
    .then(
      () => true,
      () => false,
    );
}

/**
 * Sends a file to the loopback host and tells how far it is; the host's reply. `fetch` tells nothing of a body on its way.
 * @throws ProblemError `file-cancelled` when it was stopped, `file-unreadable` when the browser can no longer read the file,
 * `file-not-sent` when the host was not to be had.
 */
export function sendFile(file: File, { signal, onSent }: FileWatch): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    const fail = (code: string, message: string) => reject(new ProblemError({ code, message, file: file.name }));
    const stop = () => request.abort();
    request.open("POST", `${addresses.files}?name=${encodeURIComponent(file.name)}`);
    request.setRequestHeader("content-type", "application/octet-stream");
    request.upload.onprogress = (event) => onSent(event.loaded);
    request.onload = () => {
      try {
        resolve(JSON.parse(request.responseText));
      } catch {
        fail("host-refused", `The host answered ${request.status}. Open the address it printed when it started, with its token.`);
      }
    };
    request.onerror = () =>
      void isReadable(file).then((readable) =>
        readable
          ? fail("file-not-sent", `${file.name} could not be handed over. See that Roundwalk still runs, and try again.`)
          : fail(
              "file-unreadable",
              `${file.name} was changed, moved or removed since it was chosen, and the browser can no longer read it: trying again will not help. Choose it anew; in the list of imports under “Other files…”.`,
            ),
      );
    request.onabort = () => fail("file-cancelled", `${file.name} was not handed over: it was cancelled.`);
    request.onloadend = () => signal.removeEventListener("abort", stop);
    signal.addEventListener("abort", stop, { once: true });
    request.send(file);
    if (signal.aborted) stop();
  });
}
