import {
  type EventName,
  type EventPayload,
  type HostBridge,
  type Input,
  type MethodName,
  OfferedFile,
  type Output,
} from "../../shared-types/index.ts";
import type { Client } from "./client.ts";
import { payloadOfEvent, valueOfReply } from "./reply.ts";

declare global {
  interface Window {
    /** Put there by the desktop's preload; absent in a browser. */
    readonly roundwalk?: HostBridge<File>;
  }
}

export function bridgeClient(bridge: HostBridge<File>): Client {
  return {
    async call<Name extends MethodName>(name: Name, input: Input<Name>) {
      return valueOfReply(await bridge.call(name, input), "The desktop") as Output<Name>;
    },
    on<Name extends EventName>(name: Name, listener: (payload: EventPayload<Name>) => void) {
      return bridge.on(name, (payload) => {
        const known = payloadOfEvent(name, payload);
        if (known) listener(known);
      });
    },
    async offerFile(file) {
      return OfferedFile.parse(valueOfReply(await bridge.offerFile(file), "The desktop"));
    },
    mediaUrl: (recordingId) => bridge.mediaUrl(recordingId),
    // The window and its host are one program.
    onAway: () => () => {},
  };
}
