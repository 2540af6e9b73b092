import { join } from "node:path";
import { app, dialog } from "electron";
import { type Desktop, openDesktop } from "./open-desktop.ts";
import { declareAppScheme } from "./window/app-scheme.ts";
import { guardContents } from "./window/guards.ts";
import { applicationWindow } from "./window/main-window.ts";
import { linkScheme } from "./window/roundwalk-link.ts";
import { shellDialogs } from "./window/shell-dialogs.ts";
import { openShellLog, type ShellLog } from "./window/shell-log.ts";
import { shellTexts } from "./window/shell-texts.ts";
import { libraryOf, ownArguments, readWishes, type StartWishes, wishesOf } from "./window/start-wishes.ts";

// What must be settled before Electron is ready, and the one instance. The rest is in open-desktop.ts.

const args = ownArguments(process.argv, app.isPackaged);
const own = wishesOf(args, process.cwd());

app.setName("Roundwalk");

/** What was asked for before the window stood: the system sends files and links as early as it likes. */
let early: StartWishes = own;
let desktop: Desktop | undefined;

function wish(more: StartWishes): void {
  if (desktop) desktop.wish(more);
  else early = { files: [...early.files, ...more.files], links: [...early.links, ...more.links].slice(-1) };
}

/** An error that nobody foresaw leaves the program in a state that nobody knows: what is on disk is whole, so it ends. */
function endOnFailure(log: ShellLog, failure: unknown): void {
  log.say(failure instanceof Error ? (failure.stack ?? failure.message) : String(failure));
  log.note("main-failed");
  dialog.showErrorBox(shellTexts.failed.title, shellTexts.failed.text);
  const end = () => app.exit(1);
  if (desktop) desktop.close().then(end, end);
  else end();
}

async function start(): Promise<void> {
  const log = openShellLog(join(app.getPath("logs"), "roundwalk.log"));
  process.on("uncaughtException", (failure) => endOnFailure(log, failure));
  process.on("unhandledRejection", (failure) => {
    log.say(`A promise failed: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`);
  });
  app.on("child-process-gone", (_, { type, reason }) => log.note(`child-gone ${type.replaceAll(/\W/g, "")}-${reason.replaceAll("-", "")}`));
  log.note("start");
  // An AppImage starts so where the system lets a program that is not installed wall off no page.
  if (app.commandLine.hasSwitch("no-sandbox")) log.note("sandbox-off");
  try {
    const libraryFile = libraryOf(args, process.cwd());
    const withDemo = !args.includes("--no-demo");
    desktop = await openDesktop({ libraryFile, withDemo, texts: shellTexts, log, wishes: () => early });
  } catch (failure) {
    log.say(failure instanceof Error ? (failure.stack ?? failure.message) : String(failure));
    dialog.showErrorBox(shellTexts.cannotStart.title, failure instanceof Error ? failure.message : String(failure));
    app.exit(1);
  }
}

if (app.requestSingleInstanceLock({ ...own })) {
  declareAppScheme();
  guardContents((address) => void shellDialogs(shellTexts, applicationWindow).openOutside(address));
  // The installers register the scheme; a program that was put there without one does it itself.
  if (app.isPackaged) app.setAsDefaultProtocolClient(linkScheme);
  app.on("second-instance", (_event, _argv, _folder, wishes) => {
    const window = applicationWindow();
    if (window?.isMinimized()) window.restore();
    window?.focus();
    wish(readWishes(wishes));
  });
  app.on("open-file", (event, path) => {
    event.preventDefault();
    wish(readWishes({ files: [path] }));
  });
  app.on("open-url", (event, link) => {
    event.preventDefault();
    wish(readWishes({ links: [link] }));
  });
  app.on("window-all-closed", () => app.quit());
  void app.whenReady().then(start);
} else {
  app.quit();
}
