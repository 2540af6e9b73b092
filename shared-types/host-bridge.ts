import type { EventName, EventPayload, OfferedFile } from "./contract.ts";
import type { Reply } from "./problem.ts";

/** Something the host tells the page without being asked. */
export type HostEvent = { [Name in EventName]: { readonly name: Name; readonly payload: EventPayload<Name> } }[EventName];

/**
 * What the desktop's preload puts on `window[bridgeName]`; in a browser it is absent and the same is reached over HTTP (`addresses`).
 * `PickedFile` is the DOM's `File`, which this layer does not know.
 */
export interface HostBridge<PickedFile = unknown> {
  /** The reply is the one `POST /rpc/NAME` would give. */
  call(name: string, input: unknown): Promise<Reply>;
  /** Gives back the function that stops listening. */
  on(event: string, listener: (payload: unknown) => void): () => void;
  /** The file stays where it is; the page gets an id for it, never its path. */
  offerFile(file: PickedFile): Promise<Reply<OfferedFile>>;
  mediaUrl(recordingId: string): string;
}

export const bridgeName = "roundwalk";

/** Where things are on the page's own origin, on both hosts alike save `rpc`, `events` and `files`, which only the loopback host has. */
export const addresses = {
  /** `POST /rpc/METHOD` with a JSON body; always answers a `Reply` as JSON. */
  rpc: "/rpc/",
  /** Server-Sent Events: event name and JSON payload as in `events`. */
  events: "/events",
  /** `POST /files?name=NAME` with the file as the body; answers `Reply<OfferedFile>`. */
  files: "/files",
  /** `GET /media/RECORDING-ID`: the video, with byte ranges. */
  media: "/media/",
  /** `GET /exports/RECORDING-ID/FORMAT`: the export as a download; in place of a format `copyAddress` for the copy of the video. */
  exports: "/exports/",
} as const;

/** Stands where an export's format would, for the copy of the video with its chapters inside. */
export const copyAddress = "video-copy";
