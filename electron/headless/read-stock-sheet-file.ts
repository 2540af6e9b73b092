import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { readSheetRow, recordedOn } from "../services/read-stock-sheet.ts";
import { noChoices } from "../services/stock-sheet/judge-columns.ts";

/** A dealer's record read without a library, and so without what people chose there: columns in doubt are left out. @throws Refusal */
export function readStockSheetFile(path: string, stockNumber: string) {
  const { fields, meanings } = readSheetRow(readFileSync(path), basename(path), stockNumber, noChoices);
  return { fields, meanings, recordedOn: recordedOn(fields, meanings) };
}
