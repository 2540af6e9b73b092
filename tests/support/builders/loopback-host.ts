import { request as nodeRequest } from "node:http";
import { onTestFinished } from "vitest";
import { createDispatch } from "../../../electron/transport/dispatch.ts";
import { serveLoopback } from "../../../electron/transport/http-transport.ts";
import { createAddressServer } from "../../../electron/transport/serve-addresses.ts";
import { createAppServer } from "../../../electron/transport/serve-app.ts";
import type { MediaFile } from "../../../electron/transport/serve-media.ts";
import { sampleApplication } from "./sample-application.ts";

/** The sample application behind a loopback address. */
export async function loopbackHost({
  pageFolder,
  mediaFile,
}: {
  pageFolder: string;
  mediaFile?: (recordingId: string) => MediaFile | undefined;
}) {
  const application = sampleApplication();
  const { parts } = application;
  const loopback = await serveLoopback({
    dispatch: createDispatch(application.handlers, parts.log),
    subscribe: parts.events.subscribe,
    serve: createAddressServer({
      page: createAppServer(pageFolder),
      mediaFile: mediaFile ?? application.mediaFile,
      download: application.download,
    }),
    receive: parts.files.receive,
    log: parts.log,
  });
  onTestFinished(() => loopback.close());
  return { ...loopback, application, port: Number(new URL(loopback.origin).port) };
}

export interface RawAnswer {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly text: string;
}

/** A request as a program sends it that is no browser: any Host, any Origin, any path, unencoded. */
export function rawRequest(
  port: number,
  { method = "GET", path, headers = {}, body }: { method?: string; path: string; headers?: Record<string, string>; body?: string },
): Promise<RawAnswer> {
  return new Promise((resolve, reject) => {
    const request = nodeRequest({ host: "127.0.0.1", port, method, path, headers, setHost: headers.host === undefined }, (response) => {
      const chunks: Buffer[] = [];
      response.on("data", (chunk: Buffer) => chunks.push(chunk));
      response.on("error", reject);
      response.on("end", () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text: Buffer.concat(chunks).toString("utf8") }),
      );
    });
    request.on("error", reject);
    request.end(body);
  });
}
