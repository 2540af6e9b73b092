import { rename, rm, writeFile } from "node:fs/promises";
import { printOnPaper } from "./print-window.ts";
import type { ShellDialogs } from "./shell-dialogs.ts";
import { filled, type ShellTexts } from "./shell-texts.ts";

/** The condition index of a recording, as the exports make it. */
export interface IndexSource {
  /** The recording that the page shows; null where it shows none. */
  readonly shown: () => string | null;
  readonly page: (recordingId: string) => Promise<string | undefined>;
  readonly pdf: (recordingId: string) => Promise<{ readonly fileName: string; readonly content: Uint8Array } | undefined>;
}

/** Printing and saving the condition index from the menu. */
export function indexPaper(source: IndexSource, dialogs: ShellDialogs, texts: Pick<ShellTexts, "print">, log: (line: string) => void) {
  const withShown = async (work: (recordingId: string) => Promise<void>): Promise<void> => {
    const shown = source.shown();
    if (shown === null) return dialogs.tell(texts.print.title, texts.print.none, "info");
    try {
      await work(shown);
    } catch (failure) {
      const reason = failure instanceof Error ? failure.message : String(failure);
      log(`The condition index was not made: ${failure instanceof Error ? (failure.stack ?? reason) : reason}`);
      await dialogs.tell(texts.print.title, filled(texts.print.failed, { reason }), "error");
    }
  };
  return {
    print: () =>
      withShown(async (recordingId) => {
        const page = await source.page(recordingId);
        if (page !== undefined) await printOnPaper(page, texts.print);
      }),
    savePdf: () =>
      withShown(async (recordingId) => {
        const pdf = await source.pdf(recordingId);
        if (!pdf) return;
        const place = await dialogs.savePdf(pdf.fileName);
        if (place !== null) await writeWhole(place, pdf.content);
      }),
  };
}

/** A reader of the file never meets half of it, and what was there before stays when the disk is full. */
async function writeWhole(place: string, content: Uint8Array): Promise<void> {
  const beside = `${place}.${process.pid}.part`;
  try {
    await writeFile(beside, content);
    await rename(beside, place);
  } catch (failure) {
    await rm(beside, { force: true });
    throw failure;
  }
}
