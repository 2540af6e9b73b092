import { useState } from "react";
import type { SheetColumns } from "../../../shared-types/index.ts";
import type { Client } from "../../client/client.ts";
import { isAsked } from "../../sheet/sheet-answers.ts";
import { type FoundFile, offeredId } from "../files/found-file.ts";

/** What a person must be asked about a sheet, and how to go on when it is answered or not. */
export interface SheetQuestion {
  readonly fileName: string;
  readonly sheet: SheetColumns;
  readonly answer: (answered: boolean) => void;
}

/** Asks about the columns of several sheets, one after the other. */
export function useSheetQuestions(client: Client) {
  const [question, setQuestion] = useState<SheetQuestion | null>(null);
  /** False where the person did not answer, and the import must wait. @throws ProblemError for a sheet that cannot be read. */
  const settleSheets = async (sheets: readonly FoundFile[]): Promise<boolean> => {
    for (const file of sheets) {
      const id = await offeredId(client, file, { signal: new AbortController().signal, onSent: () => {} });
      // Looked at after the one before was answered: sheets of one form are asked about once.
      const sheet = await client.call("stockSheet.look", { stockSheet: id });
      if (typeof file.source !== "string") client.call("file.letGo", { files: [id] }).catch(() => undefined);
      if (!sheet.columns.some(isAsked)) continue;
      const answered = await new Promise<boolean>((answer) => setQuestion({ fileName: file.name, sheet, answer }));
      setQuestion(null);
      if (!answered) return false;
    }
    return true;
  };
  return { question, settleSheets };
}
