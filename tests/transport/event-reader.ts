import type { HostEvent } from "../../shared-types/index.ts";

/** Reads Server-Sent Events as a browser does: blocks end with an empty line, and "event" and "data" fields count. Gives back what ends it. */
export function eventsOfStream(response: Response, listener: (event: HostEvent) => void): () => void {
  const reader = (response.body as ReadableStream<Uint8Array>).getReader();
  const decoder = new TextDecoder();
  const read = async () => {
    let text = "";
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      text += decoder.decode(value, { stream: true });
      const blocks = text.split("\n\n");
      text = blocks.pop() ?? "";
      for (const block of blocks) {
        const fields = new Map(
          block.split("\n").map((line) => [line.slice(0, line.indexOf(":")), line.slice(line.indexOf(":") + 1).trimStart()]),
        );
        const name = fields.get("event");
        if (name) listener({ name, payload: JSON.parse(fields.get("data") ?? "null") } as HostEvent);
      }
    }
  };
  // The host ends the stream when it closes; that is no failure here.
  read().catch(() => {});
  return () => void reader.cancel().catch(() => {});
}
