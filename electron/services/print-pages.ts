import type { Paper } from "../../shared-types/index.ts";
import type { Parts, PdfPrinter } from "./parts.ts";
import { Refusal } from "./refusals.ts";

/** For a host that brings no engine. */
export const noPdfPrinter: PdfPrinter = {
  whyNot: () => "This host cannot make PDFs. Open the exported page in a browser and print it to a PDF there.",
  print: () => Promise.reject(new Error("This host cannot make PDFs.")),
};

/**
 * A page as a PDF whose bytes depend on the page alone: the moment of printing in it gives way to the moment that the page names.
 * @param writtenAt ISO 8601 UTC.
 * @throws Refusal where the machine has no engine for it, where it was ended, or where the engine gave no PDF.
 */
export async function printPage(
  { pdf }: Pick<Parts, "pdf">,
  page: string,
  { paper, writtenAt, signal }: { readonly paper: Paper; readonly writtenAt: string; readonly signal: AbortSignal },
): Promise<Uint8Array> {
  const whyNot = pdf.whyNot();
  if (whyNot !== null) throw new Refusal("no-pdf-printer", whyNot);
  let printed: Uint8Array;
  try {
    printed = await pdf.print(page, paper, signal);
  } catch (failure) {
    if (signal.aborted) throw cancelled();
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal(
      "pdf-failed",
      `The PDF could not be made (${reason}). Nothing was written; open the exported page in a browser and print it there.`,
    );
  }
  if (signal.aborted) throw cancelled();
  return withoutChance(printed, writtenAt);
}

export function cancelled(): Refusal {
  return new Refusal("export-cancelled", "The export was ended before it was done. Nothing was written.");
}

/**
 * The engine writes its clock into the document information (ISO 32000-1, 14.3.3 and 7.9.4: `D:YYYYMMDDHHmmSS+00'00'`) and numbers the
 * elements of the structure tree by a counter that other work moves on (14.7.2, `ID`). A date and numbers of the same length in their
 * place move nothing in the file; numbers by rank keep the order that the tree of ids is sorted by.
 */
export function withoutChance(pdf: Uint8Array, writtenAt: string): Uint8Array {
  const date = `D:${writtenAt.replaceAll(/\D/g, "").slice(0, 14)}+00'00'`;
  const text = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString("latin1");
  const ids = [...new Set(text.match(elementId))].toSorted();
  const rank = new Map(ids.map((id, position) => [id, `(node${String(position + 1).padStart(8, "0")})`]));
  const settled = text
    .replaceAll(/(?<=\/(?:CreationDate|ModDate) \()D:\d{14}[+-]\d{2}'\d{2}'(?=\))/g, date)
    .replaceAll(elementId, (id) => rank.get(id) ?? id);
  return Buffer.from(settled, "latin1");
}

const elementId = /\(node\d{8}\)/g;
