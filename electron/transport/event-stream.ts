import type { HostEvent } from "../../shared-types/index.ts";

export type Subscribe = (listener: (event: HostEvent) => void) => () => void;

/** Keeps proxies and sleeping laptops from taking the stream for dead. */
const heartbeatMilliseconds = 20_000;

/** The host's events as Server-Sent Events (WHATWG HTML, 9.2); ends when the page goes. */
export function serveEvents(request: Request, subscribe: Subscribe): Response {
  const encoder = new TextEncoder();
  let stop = () => {};
  const stream = new ReadableStream<Uint8Array>({
    start(controller) {
      const send = (text: string) => controller.enqueue(encoder.encode(text));
      const unsubscribe = subscribe(({ name, payload }) => send(`event: ${name}\ndata: ${JSON.stringify(payload)}\n\n`));
      const heartbeat = setInterval(() => send(":\n\n"), heartbeatMilliseconds);
      heartbeat.unref();
      stop = () => {
        unsubscribe();
        clearInterval(heartbeat);
      };
      request.signal.addEventListener("abort", stop, { once: true });
      send("retry: 1000\n\n");
    },
    cancel() {
      stop();
    },
  });
  return new Response(stream, {
    headers: { "content-type": "text/event-stream", "cache-control": "no-store", "x-accel-buffering": "no" },
  });
}
