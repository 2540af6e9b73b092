import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { app, BrowserWindow, dialog, ipcMain, session, shell } from "electron";
import { openApplication } from "./services/open-application.ts";
import { createDispatch } from "./transport/dispatch.ts";
import { serveIpc } from "./transport/ipc-transport.ts";
import { createAddressServer } from "./transport/serve-addresses.ts";
import { createAppServer } from "./transport/serve-app.ts";
import { appOrigin, declareAppScheme, serveAppScheme } from "./window/app-scheme.ts";
import { setApplicationMenu } from "./window/application-menu.ts";
import { guardContents, guardSession } from "./window/guards.ts";
import { openMainWindow } from "./window/main-window.ts";
import { createWindowPrinter } from "./window/print-window.ts";

/** Built to `.build/desktop/main.mjs`; the page is beside it, the demo in the sources. */
const built = import.meta.dirname;
const root = join(built, "..", "..");

async function openDesktop(libraryFile: string | null): Promise<void> {
  const log = console.error;
  // Run from a built file, Electron would give its own version for ours.
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  const reveal = async (folder: string) => {
    const failure = await shell.openPath(folder);
    if (failure) throw new Error(failure);
  };
  const chooseFolder = async () => {
    const [window] = BrowserWindow.getAllWindows();
    const options = { title: "Choose a folder", properties: ["openDirectory"] } satisfies Electron.OpenDialogOptions;
    const { canceled, filePaths } = await (window ? dialog.showOpenDialog(window, options) : dialog.showOpenDialog(options));
    return canceled ? null : (filePaths[0] ?? null);
  };
  const application = openApplication({ host: { name: "desktop", version, reveal, pdf: createWindowPrinter(), chooseFolder }, libraryFile, log });
  const { parts } = application;
  guardSession(session.defaultSession);
  setApplicationMenu();
  serveAppScheme(
    createAddressServer({
      page: createAppServer(join(built, "..", "page")),
      mediaFile: application.mediaFile,
      download: application.download,
    }),
  );
  serveIpc({
    ipc: ipcMain,
    origin: appOrigin,
    dispatch: createDispatch(application.handlers, log),
    subscribe: parts.events.subscribe,
    offerPath: parts.files.offerPath,
    pages: () => BrowserWindow.getAllWindows().map(({ webContents }) => webContents),
    log,
  });
  let closing: Promise<void> | undefined;
  app.on("will-quit", (event) => {
    if (closing) return;
    event.preventDefault();
    closing = application.close().finally(() => app.quit());
  });
  await openMainWindow(join(built, "preload.cjs"));
  await application.start(join(root, "fixtures", "demo"));
}

const { values } = parseArgs({ args: process.argv.slice(2), options: { library: { type: "string" } }, strict: false });
const libraryFile = typeof values.library === "string" ? values.library : null;

app.setName("Roundwalk");
if (app.requestSingleInstanceLock()) {
  declareAppScheme();
  guardContents();
  app.on("second-instance", () => {
    const [window] = BrowserWindow.getAllWindows();
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  app.on("window-all-closed", () => app.quit());
  app
    .whenReady()
    .then(() => openDesktop(libraryFile))
    .catch((failure) => {
      console.error(failure);
      dialog.showErrorBox("Roundwalk cannot start", failure instanceof Error ? failure.message : String(failure));
      app.exit(1);
    });
} else {
  app.quit();
}
