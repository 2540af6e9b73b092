import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Input, Output } from "../../../shared-types/index.ts";
import { fileStem } from "../../exports/build-export.ts";
import { fillTemplate } from "../../exports/templates/fill-template.ts";
import { exportFolderOf, writeExportsInto } from "../export-recording.ts";
import { indexTemplates, templateRefusal } from "../index-templates.ts";
import { namedFolder } from "../named-folder.ts";
import type { Parts } from "../parts.ts";
import { readyRecordings } from "../ready-recordings.ts";
import { recordingDetail } from "../recording-detail.ts";
import { Refusal } from "../refusals.ts";
import type { TellProgress } from "../work-tickets.ts";

export interface LotTemplate {
  readonly name: string;
  readonly text: string;
}

/** What an index text is called beside the other files of its recording. */
export function textFileName(recording: { readonly stockNumber: string; readonly title: string }, template: string): string {
  return `${fileStem(recording)}.${fileStem({ stockNumber: "", title: template })}.txt`;
}

export function templateNamed(parts: Pick<Parts, "library">, name: string): LotTemplate {
  const template = indexTemplates(parts).find((each) => each.name === name);
  if (!template) throw new Refusal("template-unknown", `There is no template “${name}”. Choose another, or write it first.`);
  return template;
}

/**
 * Writes the files of every recording that is ready, or of those that were asked for: each recording's whole or not at all, in a folder
 * of its own. One that fails is listed with its reason, and the rest goes on.
 */
export async function indexLot(
  parts: Parts,
  { recordingIds, formats, granularity, folder, overwrite }: Omit<Input<"lot.index">, "ticket" | "template">,
  template: LotTemplate | null,
  signal: AbortSignal,
  tell: TellProgress,
): Promise<Output<"lot.index">> {
  const place = folder === null ? null : namedFolder(folder);
  const all = readyRecordings(parts);
  const asked =
    recordingIds === null ? all.filter(({ ready }) => ready) : all.filter(({ recordingId }) => recordingIds.includes(recordingId));
  const outcome: Output<"lot.index"> = { written: [], failed: [], left: [], cancelled: false };
  if (recordingIds === null) {
    const left = all.filter(({ ready }) => !ready);
    outcome.left.push(...left.map(({ recordingId, title, why }) => ({ recordingId, title, why })));
  }
  for (const [done, { recordingId, title }] of asked.entries()) {
    if (signal.aborted) break;
    tell(title, done, asked.length);
    try {
      const target =
        place === null
          ? exportFolderOf(parts, recordingId)
          : join(place, `${fileStem(recordingDetail(parts, recordingId).summary)}-${recordingId.slice(0, 8)}`);
      const files = await indexOne(parts, { recordingId, formats, granularity, overwrite }, target, template, signal);
      outcome.written.push({ recordingId, title, folder: target, files });
    } catch (failure) {
      if (signal.aborted) break;
      if (!(failure instanceof Refusal)) throw failure;
      outcome.failed.push({ recordingId, title, why: failure.message });
    }
  }
  outcome.cancelled = signal.aborted;
  tell("", asked.length, asked.length);
  return outcome;
}

async function indexOne(
  parts: Parts,
  {
    recordingId,
    formats,
    granularity,
    overwrite,
  }: Pick<Input<"lot.index">, "formats" | "granularity" | "overwrite"> & { readonly recordingId: string },
  folder: string,
  template: LotTemplate | null,
  signal: AbortSignal,
): Promise<string[]> {
  const text = template && filledText(parts, recordingId, template);
  const path = text && join(folder, text.fileName);
  if (path && existsSync(path) && !overwrite) {
    throw new Refusal(
      "file-exists",
      `${path} is there already. Nothing of this recording was written. Ask for overwriting, or move it away.`,
      { file: path },
    );
  }
  const stage = path && `${path}.${randomUUID()}.part`;
  const isNew = !existsSync(folder);
  try {
    if (stage && text) {
      await mkdir(folder, { recursive: true });
      await writeFile(stage, text.content, { flag: "wx" });
    }
    const files: string[] = [];
    if (formats.length > 0) {
      const written = await writeExportsInto(parts, folder, { recordingId, formats, granularity, overwrite }, { signal });
      files.push(...written.files.map((file) => file.path));
    }
    if (stage && path) {
      await rename(stage, path);
      files.push(path);
    }
    return files;
  } catch (failure) {
    if (failure instanceof Refusal) throw failure;
    const reason = failure instanceof Error ? failure.message : String(failure);
    throw new Refusal("export-failed", `${folder} cannot be written to (${reason}). Check the folder and the space on its disk.`, {
      file: folder,
    });
  } finally {
    // Where the folder could not be made there is nothing to remove; the failure that is told is the first one.
    if (stage) await rm(stage, { force: true }).catch(() => undefined);
    // A folder that was made for nothing; one with files in it stays.
    if (isNew) await rmdir(folder).catch(() => undefined);
  }
}

function filledText(parts: Parts, recordingId: string, template: LotTemplate): { fileName: string; content: string } {
  const detail = recordingDetail(parts, recordingId);
  const { text, faults } = fillTemplate(template.text, detail, parts.now());
  const fault = faults[0];
  if (text === null) throw templateRefusal(template.name, fault ?? { line: 1, column: 1, message: "It cannot be filled in." });
  return { fileName: textFileName(detail.summary, template.name), content: text };
}
