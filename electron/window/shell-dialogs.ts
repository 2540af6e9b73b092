import { type BrowserWindow, dialog, shell } from "electron";
import { isOutside } from "./guards.ts";
import { filled, type ShellTexts } from "./shell-texts.ts";

/** Endings of the files that the import takes; what is inside decides in the end. */
const walkFileEndings = ["vtt", "srt", "sbv", "txt", "json", "csv", "tsv", "mp4", "m4v", "mov", "webm", "mkv", "roundwalk", "zip"];

export type ShellDialogs = ReturnType<typeof shellDialogs>;

/** The system's own windows. @param window that they belong to; undefined while there is none. */
export function shellDialogs(texts: ShellTexts, window: () => BrowserWindow | undefined) {
  const choose = async (options: Electron.OpenDialogOptions): Promise<string[]> => {
    const parent = window();
    const { canceled, filePaths } = await (parent ? dialog.showOpenDialog(parent, options) : dialog.showOpenDialog(options));
    return canceled ? [] : filePaths;
  };
  const ask = async (options: Electron.MessageBoxOptions): Promise<number> => {
    const parent = window();
    return (await (parent ? dialog.showMessageBox(parent, options) : dialog.showMessageBox(options))).response;
  };
  return {
    ask,
    tell: async (message: string, detail: string, type: "info" | "warning" | "error" = "warning"): Promise<void> => {
      await ask({ type, message, detail, buttons: [texts.ok], defaultId: 0 });
    },
    chooseFolder: async (title: string): Promise<string | null> =>
      (await choose({ title, buttonLabel: texts.choose.here, properties: ["openDirectory", "createDirectory"] }))[0] ?? null,
    chooseFiles: (): Promise<string[]> =>
      choose({
        title: texts.choose.importFiles,
        properties: ["openFile", "multiSelections"],
        filters: [
          { name: texts.kinds.walkFiles, extensions: walkFileEndings },
          { name: texts.kinds.allFiles, extensions: ["*"] },
        ],
      }),
    /** Where a PDF is to be saved; the system's window asks before it lets one be overwritten. Null when the person left it. */
    savePdf: async (fileName: string): Promise<string | null> => {
      const options = { title: texts.choose.savePdf, defaultPath: fileName, filters: [{ name: texts.kinds.pdf, extensions: ["pdf"] }] };
      const parent = window();
      const { canceled, filePath } = await (parent ? dialog.showSaveDialog(parent, options) : dialog.showSaveDialog(options));
      return canceled || filePath === "" ? null : filePath;
    },
    /** Opens an https address in the person's browser after asking; any other is passed over. */
    openOutside: async (address: string): Promise<void> => {
      if (!isOutside(address)) return;
      const { message, detail, yes, no } = texts.outside;
      const buttons = [no, yes];
      if ((await ask({ type: "question", message, detail: filled(detail, { address }), buttons, defaultId: 0, cancelId: 0 })) === 1) {
        await shell.openExternal(address);
      }
    },
  };
}
