import { type BrowserWindow, dialog } from "electron";
import { filled, type ShellTexts } from "./shell-texts.ts";

export interface CrashGuardParts {
  readonly texts: Pick<ShellTexts, "gone" | "hangs">;
  readonly note: (code: string) => void;
  readonly quit: () => void;
}

/** After so many ends within the time, opening the page once more is no longer what is offered first. */
const oftenEnds = 3;
const oftenMilliseconds = 60_000;

/**
 * A page that has crashed or hangs is opened again where it was, if the person wants that. Every edit is on disk before the page shows
 * it, so that only what was being typed is lost; the main process, with imports and analyses, goes on.
 */
export function guardAgainstCrashes(window: BrowserWindow, { texts, note, quit }: CrashGuardParts): void {
  let ends: number[] = [];
  let asked: AbortController | null = null;
  /** The page was ended from here: nobody need be asked about it. */
  let ending = false;

  const openAgain = () => {
    if (!window.isDestroyed()) window.webContents.reload();
  };

  window.webContents.on("render-process-gone", (_, { reason, exitCode }) => {
    note(`page-gone ${reason}`);
    if (reason === "clean-exit" || window.isDestroyed()) return;
    if (ending) {
      ending = false;
      return openAgain();
    }
    asked?.abort();
    const now = Date.now();
    ends = [...ends.filter((at) => now - at < oftenMilliseconds), now];
    const { message, detail, again, quit: quitText } = texts.gone;
    dialog
      .showMessageBox(window, {
        type: "error",
        message,
        detail: filled(detail, { reason: `${reason}, ${exitCode}` }),
        buttons: [again, quitText],
        defaultId: ends.length >= oftenEnds ? 1 : 0,
        cancelId: 1,
      })
      .then(({ response }) => (response === 0 ? openAgain() : quit()))
      .catch(() => quit());
  });

  window.on("unresponsive", () => {
    if (asked) return;
    note("page-hangs");
    const control = new AbortController();
    asked = control;
    const { message, detail, wait, again } = texts.hangs;
    dialog
      // The question goes by itself once the page answers again.
      .showMessageBox(window, {
        type: "warning",
        message,
        detail,
        buttons: [wait, again],
        defaultId: 0,
        cancelId: 0,
        signal: control.signal,
      })
      .then(({ response }) => {
        if (response !== 1 || control.signal.aborted || window.isDestroyed()) return;
        // A page that hangs does not hear that it is to load itself.
        ending = true;
        window.webContents.forcefullyCrashRenderer();
      })
      .catch(() => {})
      .finally(() => {
        if (asked === control) asked = null;
      });
  });
  window.on("responsive", () => {
    asked?.abort();
    asked = null;
  });
}
