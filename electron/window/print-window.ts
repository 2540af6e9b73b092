import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { BrowserWindow, session } from "electron";

/** Prints a page to a PDF in a window that is never shown. */
export function createWindowPrinter() {
  return {
    whyNot: () => null,
    print: (page: string, paper: "letter" | "a4", signal: AbortSignal): Promise<Uint8Array> =>
      withHiddenPage(page, signal, (window) =>
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
export function printOnPaper(page: string): Promise<boolean> {
  return withHiddenPage(
    page,
    new AbortController().signal,
    (window) =>
      new Promise<boolean>((resolve, reject) => {
        window.webContents.print({ silent: false, printBackground: true }, (printed, reason) => {
          if (printed) resolve(true);
          else if (/cancel/i.test(reason)) resolve(false);
          else reject(new Error(`The printer's own words: ${reason}`));
        });
      }),
  );
}

async function withHiddenPage<Result>(
  page: string,
  signal: AbortSignal,
  work: (window: BrowserWindow) => Promise<Result>,
): Promise<Result> {
  signal.throwIfAborted();
  const folder = await mkdtemp(join(tmpdir(), "roundwalk-print-"));
  // A session that is kept nowhere and reaches nothing: the page needs nothing from elsewhere.
  const alone = session.fromPartition(`print-${crypto.randomUUID()}`);
  alone.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  alone.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !/^(?:file|data):/.test(details.url) }));
  const window = new BrowserWindow({
    show: false,
    webPreferences: { session: alone, sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
  });
  const end = () => {
    if (!window.isDestroyed()) window.destroy();
  };
  signal.addEventListener("abort", end, { once: true });
  try {
    const file = join(folder, "page.html");
    await writeFile(file, page);
    await window.loadFile(file);
    signal.throwIfAborted();
    return await work(window);
  } finally {
    signal.removeEventListener("abort", end);
    end();
    await rm(folder, { recursive: true, force: true });
  }
}
