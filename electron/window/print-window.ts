import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { BrowserWindow, session } from "electron";
import { filled, type ShellTexts } from "./shell-texts.ts";

type Texts = Pick<ShellTexts["print"], "pageEnded" | "printer">;

/** Prints a page to a PDF in a window that is never shown. */
export function createWindowPrinter(texts: Texts) {
  return {
    whyNot: () => null,
    print: (page: string, paper: "letter" | "a4", signal: AbortSignal): Promise<Uint8Array> =>
      withHiddenPage(page, texts, signal, (window) =>
        window.webContents.printToPDF({
          pageSize: paper === "a4" ? "A4" : "Letter",
          printBackground: true,
          // Margins and running lines are the page's own.
          preferCSSPageSize: false,
          generateTaggedPDF: true,
          generateDocumentOutline: true,
        }),
      ),
  };
}

/** Prints a page on paper, after the system's own window has asked on which. @returns false when the person left that window. */
export function printOnPaper(page: string, texts: Texts): Promise<boolean> {
  return withHiddenPage(
    page,
    texts,
    new AbortController().signal,
    (window) =>
      new Promise<boolean>((resolve, reject) => {
        window.webContents.print({ silent: false, printBackground: true }, (printed, reason) => {
          if (printed) resolve(true);
          else if (/cancel/i.test(reason)) resolve(false);
          else reject(new Error(filled(texts.printer, { reason })));
        });
      }),
  );
}

async function withHiddenPage<Result>(
  page: string,
  texts: Texts,
  signal: AbortSignal,
  work: (window: BrowserWindow) => Promise<Result>,
): Promise<Result> {
  signal.throwIfAborted();
  const folder = await mkdtemp(join(tmpdir(), "roundwalk-print-"));
  const file = join(folder, "page.html");
  // A session that is kept nowhere and reaches nothing but that one file: the page needs nothing from elsewhere, on this machine either.
  const alone = session.fromPartition(`print-${crypto.randomUUID()}`);
  alone.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  alone.webRequest.onBeforeRequest((details, answer) =>
    answer({ cancel: !(details.url.startsWith("data:") || leadsTo(file, details.url)) }),
  );
  const window = new BrowserWindow({
    show: false,
    webPreferences: { session: alone, sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
  });
  let stop = () => {};
  // What is asked of a window that goes meanwhile may never be answered.
  const ended = new Promise<never>((_, reject) => {
    stop = () => reject(signal.reason);
    window.webContents.once("render-process-gone", (_event, { reason }) => reject(new Error(filled(texts.pageEnded, { reason }))));
  });
  // Who has no part in the race any more is not waited for.
  ended.catch(() => {});
  signal.addEventListener("abort", stop, { once: true });
  try {
    await writeFile(file, page);
    await Promise.race([window.loadFile(file), ended]);
    signal.throwIfAborted();
    return await Promise.race([work(window), ended]);
  } finally {
    signal.removeEventListener("abort", stop);
    if (!window.isDestroyed()) window.destroy();
    await rm(folder, { recursive: true, force: true });
  }
}

/** By its path: an address may be written in more than one way, with "~" as it is or as "%7E". */
function leadsTo(file: string, url: string): boolean {
  try {
    return fileURLToPath(url) === file;
  } catch {
    return false;
  }
}
