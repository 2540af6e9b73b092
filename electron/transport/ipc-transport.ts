import { type OfferedFile, Problem, type Reply } from "../../shared-types/index.ts";
import type { Dispatch } from "./dispatch.ts";
import type { Subscribe } from "./event-stream.ts";
import { ipcChannels } from "./ipc-channels.ts";

/** Who sent a message. A frame that has navigated or gone is null; one inside another has a parent. */
export interface SenderEvent {
  readonly senderFrame: { readonly origin: string; readonly parent: unknown } | null;
}

/** The part of Electron's `ipcMain` that is used. */
export interface IpcMainEnd {
  handle(channel: string, listener: (event: SenderEvent, ...values: unknown[]) => unknown): void;
  removeHandler(channel: string): void;
}

/** A page that hears events: Electron's `webContents`. */
export interface IpcPage {
  send(channel: string, ...values: unknown[]): void;
  isDestroyed(): boolean;
}

export interface IpcParts {
  readonly ipc: IpcMainEnd;
  /** The application's own origin, "app://roundwalk"; every other sender is refused. */
  readonly origin: string;
  readonly dispatch: Dispatch;
  readonly subscribe: Subscribe;
  readonly offerPath: (path: string) => OfferedFile;
  readonly pages: () => readonly IpcPage[];
  readonly log: (line: string) => void;
}

/** Serves the application to its own window. Gives back the function that ends it. */
export function serveIpc({ ipc, origin, dispatch, subscribe, offerPath, pages, log }: IpcParts): () => void {
  const own = ({ senderFrame }: SenderEvent): boolean =>
    senderFrame !== null && senderFrame.parent === null && senderFrame.origin === origin;

  ipc.handle(ipcChannels.call, async (event, name, input): Promise<Reply> => {
    if (!own(event)) return refusedSender;
    // Over HTTP a value arrives as JSON; here a Date or a Map would come through, and the two hosts would differ.
    return asJson(await dispatch(name, asJson(input)));
  });
  ipc.handle(ipcChannels.offerFile, (event, path): Reply => {
    if (!own(event)) return refusedSender;
    if (typeof path !== "string" || path === "") {
      return problem("file-without-path", "This file is on no disk that Roundwalk can read. Save it first, then choose it again.");
    }
    try {
      return { ok: true, value: offerPath(path) };
    } catch (failure) {
      const foreseen = Problem.safeParse((failure as { problem?: unknown } | null)?.problem);
      if (foreseen.success) return { ok: false, problem: foreseen.data };
      log(`A file was not taken: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
      return problem("failed", "The file was not taken; the log has the details.");
    }
  });
  const unsubscribe = subscribe(({ name, payload }) => {
    for (const page of pages()) {
      if (!page.isDestroyed()) page.send(ipcChannels.event, name, asJson(payload));
    }
  });
  return () => {
    unsubscribe();
    ipc.removeHandler(ipcChannels.call);
    ipc.removeHandler(ipcChannels.offerFile);
  };
}

const refusedSender = problem("sender-foreign", "Only Roundwalk's own window may ask this.");

function problem(code: string, message: string): Reply {
  return { ok: false, problem: { code, message } };
}

function asJson<Value>(value: Value): Value {
  return value === undefined ? value : (JSON.parse(JSON.stringify(value)) as Value);
}
