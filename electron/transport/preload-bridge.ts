import { addresses, type HostBridge } from "../../shared-types/host-bridge.ts";
import type { Reply } from "../../shared-types/problem.ts";
import { ipcChannels } from "./ipc-channels.ts";

/** The part of Electron's `ipcRenderer` that the bridge uses. */
export interface IpcPageEnd {
  invoke(channel: string, ...values: unknown[]): Promise<unknown>;
  on(channel: string, listener: (event: unknown, ...values: unknown[]) => void): unknown;
}

/**
 * What the page gets: functions, never `ipcRenderer` itself. Imports no schema library, so that the preload stays a few hundred lines.
 * @param pathOf Electron's `webUtils.getPathForFile`; "" for a file that is on no disk.
 */
export function createBridge<PickedFile>(ipc: IpcPageEnd, pathOf: (file: PickedFile) => string): HostBridge<PickedFile> {
  const listeners = new Map<string, Set<(payload: unknown) => void>>();
  ipc.on(ipcChannels.event, (_, name, payload) => {
    for (const listener of listeners.get(String(name)) ?? []) listener(payload);
  });
  return {
    call: async (name, input) => (await ipc.invoke(ipcChannels.call, name, input)) as Reply,
    on(event, listener) {
      const known = listeners.get(event) ?? new Set();
      listeners.set(event, known.add(listener));
      return () => {
        known.delete(listener);
      };
    },
    offerFile: async (file) => (await ipc.invoke(ipcChannels.offerFile, pathOf(file))) as Awaited<ReturnType<HostBridge["offerFile"]>>,
    mediaUrl: (recordingId) => `${addresses.media}${encodeURIComponent(recordingId)}`,
  };
}
