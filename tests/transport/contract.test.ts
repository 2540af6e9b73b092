import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { createDispatch } from "../../electron/transport/dispatch.ts";
import { serveLoopback } from "../../electron/transport/http-transport.ts";
import { serveIpc } from "../../electron/transport/ipc-transport.ts";
import { createBridge } from "../../electron/transport/preload-bridge.ts";
import { createAddressServer } from "../../electron/transport/serve-addresses.ts";
import { createAppServer } from "../../electron/transport/serve-app.ts";
import { events, type HostEvent, type OfferedFile, type Reply } from "../../shared-types/index.ts";
import { sampleApplication } from "../support/builders/sample-application.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";
import { contractSuite } from "./contract.suite.ts";
import { eventsOfStream } from "./event-reader.ts";
import { pairedIpc } from "./paired-ipc.ts";

function offeredFile(reply: Reply): OfferedFile {
  if (!reply.ok) throw new Error(reply.problem.message);
  return reply.value as OfferedFile;
}

contractSuite("dispatch itself", async () => {
  const application = sampleApplication();
  const { handlers, parts, folder } = application;
  return {
    call: createDispatch(handlers, application.parts.log),
    offer: async (fileName, text) => {
      const path = join(folder, fileName);
      writeFileSync(path, text);
      return parts.files.offerPath(path);
    },
    listen: async (listener) => parts.events.subscribe(listener),
    close: application.close,
  };
});

contractSuite("HTTP", async () => {
  const application = sampleApplication();
  const { handlers, parts } = application;
  const loopback = await serveLoopback({
    dispatch: createDispatch(handlers, parts.log),
    subscribe: parts.events.subscribe,
    serve: createAddressServer({
      page: createAppServer(temporaryFolder()),
      mediaFile: application.mediaFile,
      download: application.download,
    }),
    receive: parts.files.receive,
    log: parts.log,
  });
  const headers = { authorization: `Bearer ${loopback.token}` };
  return {
    call: async (name, input) => {
      const response = await fetch(`${loopback.origin}/rpc/${encodeURIComponent(name)}`, {
        method: "POST",
        headers: { ...headers, "content-type": "application/json" },
        body: JSON.stringify(input),
      });
      return (await response.json()) as Reply;
    },
    offer: async (fileName, text) => {
      const address = `${loopback.origin}/files?name=${encodeURIComponent(fileName)}`;
      return offeredFile((await (await fetch(address, { method: "POST", headers, body: text })).json()) as Reply);
    },
    listen: async (listener) => eventsOfStream(await fetch(`${loopback.origin}/events`, { headers }), listener),
    close: async () => {
      await loopback.close();
      await application.close();
    },
  };
});

contractSuite("paired IPC ends", async () => {
  const application = sampleApplication();
  const { handlers, parts, folder } = application;
  const ends = pairedIpc("app://roundwalk");
  const stop = serveIpc({
    ipc: ends.main,
    origin: "app://roundwalk",
    dispatch: createDispatch(handlers, parts.log),
    subscribe: parts.events.subscribe,
    offerPath: parts.files.offerPath,
    pages: () => [ends.webContents],
    log: parts.log,
  });
  const bridge = createBridge<{ readonly path: string }>(ends.page, ({ path }) => path);
  return {
    call: bridge.call,
    offer: async (fileName, text) => {
      const path = join(folder, fileName);
      writeFileSync(path, text);
      return offeredFile(await bridge.offerFile({ path }));
    },
    listen: async (listener) => {
      const stops = Object.keys(events).map((name) => bridge.on(name, (payload) => listener({ name, payload } as HostEvent)));
      return () => {
        for (const end of stops) end();
      };
    },
    close: async () => {
      stop();
      await application.close();
    },
  };
});
