import { existsSync, readFileSync } from "node:fs";
import { arch, release, totalmem } from "node:os";
import { join } from "node:path";
import { app, clipboard, ipcMain, session, shell } from "electron";
import { contract } from "../shared-types/index.ts";
import { chooseLibraryFile, usualLibraryFile } from "./library/default-place.ts";
import { adoptLibraryIn, moveLibrary } from "./library/move-library.ts";
import { type Application, openApplication } from "./services/open-application.ts";
import { createDispatch } from "./transport/dispatch.ts";
import { serveIpc } from "./transport/ipc-transport.ts";
import { createAddressServer } from "./transport/serve-addresses.ts";
import { createAppServer } from "./transport/serve-app.ts";
import { appOrigin, serveAppScheme } from "./window/app-scheme.ts";
import { menuTemplate, setApplicationMenu } from "./window/application-menu.ts";
import { guardAgainstCrashes } from "./window/crash-guard.ts";
import { diagnosticsText } from "./window/diagnostics.ts";
import { guardSession } from "./window/guards.ts";
import { indexPaper } from "./window/index-paper.ts";
import { applicationWindow, openMainWindow } from "./window/main-window.ts";
import { createWindowPrinter } from "./window/print-window.ts";
import { recentRecordings } from "./window/recent-recordings.ts";
import { hashOfLink, readLink, recordingOfAddress } from "./window/roundwalk-link.ts";
import { type ShellDialogs, shellDialogs } from "./window/shell-dialogs.ts";
import type { ShellLog } from "./window/shell-log.ts";
import { filled, type ShellTexts } from "./window/shell-texts.ts";
import { startAgain } from "./window/start-again.ts";
import type { StartWishes } from "./window/start-wishes.ts";

/** Built to `.build/desktop/`; the page is beside it, the demo in the sources. */
const built = import.meta.dirname;
const root = join(built, "..", "..");

export interface DesktopOptions {
  /** Null for the user's own library. */
  readonly libraryFile: string | null;
  /** Whether a library that never had the demo recording is given it. */
  readonly withDemo: boolean;
  readonly texts: ShellTexts;
  readonly log: ShellLog;
  /** Files and links that were asked for until the window stands. */
  readonly wishes: () => StartWishes;
}

export interface Desktop {
  /** Takes files in and follows a link. */
  readonly wish: (wishes: StartWishes) => void;
  /** Resolves when everything is on disk. */
  readonly close: () => Promise<void>;
}

/** Lines of the log that diagnostics look at. */
const diagnosticLines = 200;

/** The application in its own window. Electron must be ready. */
export async function openDesktop({ libraryFile, withDemo, texts, log, wishes }: DesktopOptions): Promise<Desktop> {
  // Run from a built file, Electron would give its own version for ours.
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  const dialogs = shellDialogs(texts, applicationWindow);
  const reveal = async (folder: string) => {
    const failure = await shell.openPath(folder);
    if (failure) throw new Error(failure);
  };
  const chooseFolder = () => dialogs.chooseFolder(texts.choose.folder);
  const host = { name: "desktop", version, reveal, pdf: createWindowPrinter(texts.print), chooseFolder } as const;
  const opened = await openWhereItIs(libraryFile, texts, dialogs, (file) => openApplication({ host, libraryFile: file, log: log.say }));
  if (!opened) {
    app.quit();
    return { wish: () => {}, close: async () => {} };
  }
  const { application, own } = opened;
  const { parts } = application;
  const { library } = parts;

  guardSession(session.defaultSession, (item) =>
    item.setSaveDialogOptions({ title: texts.choose.saveFile, defaultPath: join(app.getPath("downloads"), item.getFilename()) }),
  );
  serveAppScheme(
    createAddressServer({
      page: createAppServer(join(built, "..", "page")),
      mediaFile: application.mediaFile,
      copyFile: application.copyFile,
      download: application.download,
    }),
  );
  serveIpc({
    ipc: ipcMain,
    origin: appOrigin,
    dispatch: createDispatch(application.handlers, log.say),
    subscribe: parts.events.subscribe,
    offerPath: parts.files.offerPath,
    pages: () => [applicationWindow()].flatMap((window) => window?.webContents ?? []),
    log: log.say,
  });

  let closing: Promise<void> | undefined;
  let closed = false;
  const close = () => {
    closing ??= application.close().finally(() => {
      closed = true;
    });
    return closing;
  };
  app.on("will-quit", (event) => {
    // Also a second time: whoever quits twice must not cut off what the first is still writing.
    if (closed) return;
    event.preventDefault();
    void close().finally(() => app.quit());
  });

  const recent = recentRecordings(join(app.getPath("userData"), "recent-recordings.json"));
  const shown = () => recordingOfAddress(applicationWindow()?.webContents.getURL() ?? "");
  const goTo = (hash: string) => {
    // The same document: the page moves, and nothing is loaded anew.
    applicationWindow()
      ?.loadURL(`${appOrigin}/${hash}`)
      .catch((failure: unknown) => log.say(`A link was not followed: ${String(failure)}`));
  };
  const takeFiles = (paths: readonly string[]) => {
    const refused = application.handOver(paths);
    if (refused.length > 0) void dialogs.tell(texts.files.title, refused.slice(0, 10).join("\n"));
  };
  /** The page's address for a link; null, and said, where it leads nowhere. */
  const hashOf = (link: string): string | null => {
    const place = readLink(link);
    if (place && library.recordings.get(place.recordingId)) return hashOfLink(place);
    void dialogs.tell(texts.link.invalidTitle, place ? texts.link.unknown : texts.link.invalid);
    return null;
  };
  const paper = indexPaper(
    {
      shown,
      page: async (id) => (await application.download(id, "index-html", "zones", "letter"))?.content.toString(),
      pdf: async (id) => {
        const made = await application.download(id, "index-pdf", "zones", "letter");
        return made && { fileName: made.fileName, content: Buffer.from(made.content) };
      },
    },
    dialogs,
    texts,
    log.say,
  );
  const actions = {
    importFiles: () => void dialogs.chooseFiles().then(takeFiles),
    openRecording: (recordingId: string) => goTo(hashOfLink({ recordingId, atSeconds: null })),
    print: () => void paper.print(),
    savePdf: () => void paper.savePdf(),
    showLibrary: () => shell.showItemInFolder(library.file),
    showLog: () => shell.showItemInFolder(log.file),
    // The help is the page's, and opens by its key wherever the person is.
    openHelp: () => {
      for (const type of ["keyDown", "keyUp"] as const) applicationWindow()?.webContents.sendInputEvent({ type, keyCode: "F1" });
    },
    copyDiagnostics: () => {
      const engines = { electron: process.versions.electron ?? "-", chrome: process.versions.chrome ?? "-", node: process.versions.node };
      const facts = { version, engines, system: `${process.platform} ${arch()} ${release()}`, memoryBytes: totalmem() };
      const counts = { recordings: library.recordings.count(), upSeconds: process.uptime() };
      const text = diagnosticsText({ ...facts, ...counts }, log.lastLines(diagnosticLines), new Set(Object.keys(contract)));
      void clipboard.writeText(text);
      void dialogs.tell(texts.diagnostics.message, texts.diagnostics.detail, "info");
    },
    // A start that named its library would open that one again.
    ...(own
      ? {
          moveLibrary: () => void changePlace("move").catch((failure: unknown) => log.say(String(failure))),
          otherLibrary: () => void changePlace("other").catch((failure: unknown) => log.say(String(failure))),
        }
      : {}),
  };
  async function changePlace(how: "move" | "other"): Promise<void> {
    const folder = await dialogs.chooseFolder(how === "move" ? texts.choose.moveLibrary : texts.choose.otherLibrary);
    if (folder === null) return;
    const { message, detail, yes, no, failedTitle, failedText, left } = texts.moveLibrary;
    if (how === "move") {
      const asked = { type: "question" as const, message: filled(message, { folder }), detail, buttons: [no, yes] };
      if ((await dialogs.ask({ ...asked, defaultId: 1, cancelId: 0 })) !== 1) return;
      // Nothing may write while it moves; whatever comes of it, the program starts again.
      await close();
    }
    try {
      if (how === "move") {
        const moved = await moveLibrary(library.file, folder, chooseLibraryFile);
        if (moved.left.length > 0) await dialogs.tell(message, filled(left, { files: moved.left.join(", ") }));
      } else {
        adoptLibraryIn(folder, chooseLibraryFile);
        await close();
      }
    } catch (failure) {
      const reason = failure instanceof Error ? failure.message : String(failure);
      log.say(`The library's place was not changed: ${failure instanceof Error ? (failure.stack ?? reason) : reason}`);
      await dialogs.tell(failedTitle, filled(failedText, { reason }), "error");
      if (how === "other") return;
    }
    startAgain();
  }
  const showMenu = () => {
    if (closing) return;
    const known = recent.ids().flatMap((id) => {
      const title = library.recordings.get(id)?.title;
      return title === undefined ? [] : [{ id, title }];
    });
    setApplicationMenu(menuTemplate(texts, actions, { recent: known, recordingShown: shown() !== null }, process.platform));
  };
  const followPlace = () => {
    const id = shown();
    if (id !== null && library.recordings.get(id)) recent.opened(id);
    showMenu();
  };
  parts.events.subscribe(({ name }) => {
    if (name === "library.changed") showMenu();
  });
  app.setAboutPanelOptions({ applicationName: "Roundwalk", applicationVersion: version });

  const first = wishes();
  const firstHash = first.links.map(hashOf).at(-1) ?? "";
  const window = await openMainWindow({
    preload: join(built, "preload.cjs"),
    placeFile: join(app.getPath("userData"), "window-place.json"),
    hash: firstHash,
    prepare: (window) => {
      guardAgainstCrashes(window, { texts, note: log.note, quit: () => app.quit() });
      window.webContents.on("did-navigate", followPlace);
      window.webContents.on("did-navigate-in-page", followPlace);
    },
  });
  // Closed before its page was there.
  if (window.isDestroyed()) return { wish: () => {}, close };
  // What came while the page was loading is in the list by now.
  const { files, links } = wishes();
  if (files.length > 0) takeFiles(files);
  for (const link of links.filter((each) => !first.links.includes(each))) {
    const hash = hashOf(link);
    if (hash) goTo(hash);
  }
  showMenu();
  // The demo comes in while the window stands; a program that ends meanwhile brings it in at the next start.
  const demo = withDemo ? application.start(join(root, "fixtures", "demo")) : Promise.resolve();
  demo.catch((failure: unknown) => {
    if (!closing) log.say(`The demo did not come in: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
  });
  return {
    wish: (more) => {
      // Who comes while everything is being closed comes too late; nothing of theirs is touched.
      if (closing) return;
      for (const link of more.links) {
        const hash = hashOf(link);
        if (hash) goTo(hash);
      }
      if (more.files.length > 0) takeFiles(more.files);
    },
    close,
  };
}

/**
 * Opens the library; where the user's own was put on a disk that is not there now, asks what to do.
 * @returns undefined when the person chose to quit; `own` tells whether the library's place is the user's to change.
 */
async function openWhereItIs(
  libraryFile: string | null,
  texts: ShellTexts,
  dialogs: ShellDialogs,
  open: (file: string | null) => Application,
): Promise<{ readonly application: Application; readonly own: boolean } | undefined> {
  for (;;) {
    try {
      return { application: open(libraryFile), own: libraryFile === null };
    } catch (failure) {
      const { code, file = "" } = (failure as { problem?: { code: string; file?: string } }).problem ?? {};
      if (code !== "library-away") throw failure;
      const { message, detail, again, usual, quit } = texts.libraryAway;
      const buttons = [again, usual, quit];
      const answer = await dialogs.ask({ type: "warning", message, detail: filled(detail, { file }), buttons, defaultId: 0, cancelId: 2 });
      if (answer === 2) return undefined;
      // For this run alone: the chosen place stays chosen.
      if (answer === 1) return { application: open(usualLibraryFile()), own: false };
      if (existsSync(file)) continue;
    }
  }
}
