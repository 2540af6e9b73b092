import {
  addresses,
  type EventName,
  type EventPayload,
  type Input,
  type MethodName,
  OfferedFile,
  type Output,
} from "../../shared-types/index.ts";
import { type Client, ProblemError } from "./client.ts";
import { payloadOfEvent, valueOfReply } from "./reply.ts";
import { sendFile } from "./send-file.ts";

const hostGone = "The Roundwalk that served this page does not answer. Start it again, then open the address it prints.";

async function fetchReply(url: string, request: RequestInit): Promise<unknown> {
  let response: Response;
  try {
    response = await fetch(url, { ...request, credentials: "same-origin", cache: "no-store" });
  } catch {
    throw new ProblemError({ code: "host-unreachable", message: hostGone });
  }
  try {
    return await response.json();
  } catch {
    throw new ProblemError({
      code: "host-refused",
      message: `The host answered ${response.status} ${response.statusText}. Open the address it printed when it started, with its token.`,
    });
  }
}

/** The application behind a loopback address: JSON both ways, the session in a same-origin cookie. */
export function httpClient(): Client {
  // One stream for all listeners; browsers allow few connections to one host.
  let stream: EventSource | null = null;
  const opened = () => {
    stream ??= new EventSource(addresses.events);
    return stream;
  };
  return {
    async call<Name extends MethodName>(name: Name, input: Input<Name>) {
      const reply = await fetchReply(`${addresses.rpc}${name}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(input),
      });
      return valueOfReply(reply, "The host") as Output<Name>;
    },
    on<Name extends EventName>(name: Name, listener: (payload: EventPayload<Name>) => void) {
      const hear = (message: MessageEvent<string>) => {
        const payload = payloadOfEvent(name, JSON.parse(message.data));
        if (payload) listener(payload);
      };
      const source = opened();
      source.addEventListener(name, hear);
      return () => source.removeEventListener(name, hear);
    },
    async offerFile(file, watch) {
      if (watch) return OfferedFile.parse(valueOfReply(await sendFile(file, watch), "The host"));
      const answer = await fetchReply(`${addresses.files}?name=${encodeURIComponent(file.name)}`, {
        method: "POST",
        headers: { "content-type": "application/octet-stream" },
        body: file,
      });
      return OfferedFile.parse(valueOfReply(answer, "The host"));
    },
    onAway(listener) {
      // The browser reconnects by itself and tells both ends of the gap.
      const source = opened();
      const gone = () => listener(true);
      const back = () => listener(false);
      source.addEventListener("error", gone);
      source.addEventListener("open", back);
      return () => {
        source.removeEventListener("error", gone);
        source.removeEventListener("open", back);
      };
    },
    mediaUrl: (recordingId) => `${addresses.media}${encodeURIComponent(recordingId)}`,
  };
}
