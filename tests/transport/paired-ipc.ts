import type { IpcMainEnd, IpcPage, SenderEvent } from "../../electron/transport/ipc-transport.ts";
import type { IpcPageEnd } from "../../electron/transport/preload-bridge.ts";

/**
 * Two ends that talk as Electron's do: values are structured clones (https://www.electronjs.org/docs/latest/api/ipc-renderer, "invoke"),
 * an error thrown in a handler arrives with its message alone, and a channel takes one handler.
 */
export function pairedIpc(pageOrigin: string) {
  const handlers = new Map<string, (event: SenderEvent, ...values: unknown[]) => unknown>();
  const listeners = new Map<string, ((event: unknown, ...values: unknown[]) => void)[]>();
  const sender: { event: SenderEvent; destroyed: boolean } = {
    event: { senderFrame: { origin: pageOrigin, parent: null } },
    destroyed: false,
  };
  const main: IpcMainEnd = {
    handle(channel, listener) {
      if (handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
      handlers.set(channel, listener);
    },
    removeHandler: (channel) => void handlers.delete(channel),
  };
  const page: IpcPageEnd = {
    async invoke(channel, ...values) {
      const handler = handlers.get(channel);
      if (!handler) throw new Error(`No handler registered for '${channel}'`);
      try {
        return structuredClone(await handler(sender.event, ...structuredClone(values)));
      } catch (failure) {
        throw new Error(`Error invoking remote method '${channel}': ${failure}`);
      }
    },
    on: (channel, listener) => listeners.set(channel, [...(listeners.get(channel) ?? []), listener]),
  };
  const webContents: IpcPage = {
    send(channel, ...values) {
      if (sender.destroyed) throw new Error("Object has been destroyed");
      for (const listener of listeners.get(channel) ?? []) listener({}, ...structuredClone(values));
    },
    isDestroyed: () => sender.destroyed,
  };
  return { main, page, webContents, sender };
}
