import { join } from "node:path";
import type { IndexTemplate, Input, Output } from "../../../shared-types/index.ts";
import { fileStem } from "../../exports/build-export.ts";
import { exportFolderOf, writeExportsInto } from "../export-recording.ts";
import { withoutFault } from "../index-templates.ts";
import { namedFolder } from "../named-folder.ts";
import type { Parts } from "../parts.ts";
import { readyRecordings } from "../ready-recordings.ts";
import { recordingDetail } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import type { TellProgress } from "../work-tickets.ts";

type LotInput = Omit<Input<"lot.index">, "ticket" | "template">;

/**
 * Writes the files of every recording that is ready, or of those that were asked for: each recording's whole or not at all, in a folder
 * of its own. One that fails is listed with its reason, and the rest goes on.
 * @param template of the text that each gets; null writes none that the formats do not ask for.
 * @throws Refusal for what would fail with every recording: a folder that is none, a template with a fault.
 */
export async function indexLot(
  parts: Parts,
  { recordingIds, folder, ...asked }: LotInput,
  template: IndexTemplate | null,
  signal: AbortSignal,
  tell: TellProgress,
): Promise<Output<"lot.index">> {
  const place = folder === null ? null : namedFolder(folder);
  const text = template && withoutFault(template);
  const formats: LotInput["formats"] = text ? [...asked.formats, "index-text"] : asked.formats;
  const all = readyRecordings(parts);
  const going =
    recordingIds === null ? all.filter(({ ready }) => ready) : all.filter(({ recordingId }) => recordingIds.includes(recordingId));
  const outcome: Output<"lot.index"> = { written: [], failed: [], left: [], cancelled: false };
  if (recordingIds === null) {
    const left = all.filter(({ ready }) => !ready);
    outcome.left.push(...left.map(({ recordingId, title, why }) => ({ recordingId, title, why })));
  }
  for (const [done, { recordingId, title }] of going.entries()) {
    if (signal.aborted) break;
    tell(title, done, going.length);
    try {
      const target =
        place === null
          ? exportFolderOf(parts, recordingId)
          : join(place, `${fileStem(recordingDetail(parts, recordingId).summary)}-${recordingId.slice(0, 8)}`);
      const { files } = await writeExportsInto(parts, target, { ...asked, recordingId, formats }, { signal, template: text });
      const warnings = [...new Set(files.flatMap((file) => file.warnings))];
      outcome.written.push({ recordingId, title, folder: target, files: files.map(({ path }) => path), warnings });
    } catch (failure) {
      if (signal.aborted) break;
      if (!(failure instanceof Refusal)) throw failure;
      outcome.failed.push({ recordingId, title, why: failure.message });
    }
  }
  outcome.cancelled = signal.aborted;
  tell("", going.length, going.length);
  return outcome;
}
