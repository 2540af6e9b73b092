import { join } from "node:path";
import { openApplication } from "./services/open-application.ts";
import type { PdfPrinter } from "./services/parts.ts";
import { createDispatch } from "./transport/dispatch.ts";
import { type Loopback, serveLoopback } from "./transport/http-transport.ts";
import { createAddressServer } from "./transport/serve-addresses.ts";
import { createAppServer } from "./transport/serve-app.ts";

export interface LoopbackOptions {
  /** Null for the user's own library. */
  readonly libraryFile: string | null;
  readonly pageFolder?: string;
  /** 0 takes any free port. */
  readonly port?: number;
  readonly version: string;
  /** Opens a folder in the system's own window; null where there is no display. */
  readonly reveal?: ((folder: string) => Promise<void>) | null;
  /** How exported pages become PDFs; left out where they cannot. */
  readonly pdf?: PdfPrinter;
  /** Null leaves a new library empty. */
  readonly demoFolder?: string | null;
  readonly log?: (line: string) => void;
}

const root = join(import.meta.dirname, "..");

/** The application behind http://127.0.0.1, for an ordinary browser. Resolves when it answers; the demo comes in right after. */
export async function openLoopback(
  options: LoopbackOptions,
): Promise<Loopback & { readonly libraryFile: string; readonly demo: Promise<void> }> {
  const { libraryFile, version, port = 0, reveal = null, pdf, log = console.error } = options;
  const application = openApplication({ host: { name: "browser", version, reveal, ...(pdf ? { pdf } : {}) }, libraryFile, log });
  const { parts } = application;
  try {
    const loopback = await serveLoopback(
      {
        dispatch: createDispatch(application.handlers, log),
        subscribe: parts.events.subscribe,
        serve: createAddressServer({
          page: createAppServer(options.pageFolder ?? join(root, ".build", "page")),
          mediaFile: application.mediaFile,
          copyFile: application.copyFile,
          download: application.download,
        }),
        receive: parts.files.receive,
        log,
      },
      port,
    );
    application.announce(loopback.entryAddress());
    const demo = options.demoFolder === null ? Promise.resolve() : application.start(options.demoFolder ?? join(root, "fixtures", "demo"));
    return {
      ...loopback,
      libraryFile: parts.library.file,
      demo,
      close: async () => {
        await loopback.close();
        await application.close();
      },
    };
  } catch (failure) {
    await application.close();
    throw failure;
  }
}
