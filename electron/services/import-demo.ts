import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { type RecordingSummary, Vehicle } from "../../shared-types/index.ts";
import type { Analyst } from "./analyse-recording.ts";
import { importRecording } from "./import-recording.ts";
import type { Parts } from "./parts.ts";

const plainName = z.string().regex(/^[\w.-]+$/);

/** The demo's description, `demo.json`, beside its files. */
const DemoDescription = z.object({
  title: z.string(),
  stockNumber: z.string(),
  vehicle: Vehicle,
  video: plainName.nullable(),
  transcript: plainName,
  stockSheet: plainName.nullable(),
});

/** Libraries that the demo is just coming into: it stands among the recordings before it is known as the demo. */
const coming = new WeakSet<Parts["library"]>();

export function demoIsComing({ library }: Pick<Parts, "library">): boolean {
  return coming.has(library);
}

/**
 * Puts the demo recording into a library that never had it: someone who removed it is not given it again.
 * A missing or damaged demo is told in the log and keeps nobody from starting.
 */
export async function importDemoOnce(parts: Parts, analyst: Analyst, folder: string): Promise<RecordingSummary | undefined> {
  const { library, files, log } = parts;
  if (library.settings.get("demo") !== undefined || library.recordings.count() > 0) return undefined;
  const description = join(folder, "demo.json");
  if (!existsSync(description)) {
    log(`The demo recording is missing, so the library starts empty: there is no ${description}. "npm run demo:make" makes it.`);
    return undefined;
  }
  coming.add(library);
  try {
    const parsed = DemoDescription.safeParse(JSON.parse(readFileSync(description, "utf8")));
    if (!parsed.success) throw new Error(`demo.json is not as it should be: ${z.prettifyError(parsed.error)}`);
    const { title, stockNumber, vehicle, ...names } = parsed.data;
    const offer = (name: string | null) => (name === null ? null : files.offerPath(join(folder, name)).id);
    const hasVideo = names.video !== null && existsSync(join(folder, names.video));
    if (!hasVideo && names.video !== null)
      log(`The demo's video (${names.video}) is not here; its transcript goes into the library alone.`);
    const transcript = files.offerPath(join(folder, names.transcript)).id;
    const summary = await importRecording(parts, analyst, {
      transcript,
      video: hasVideo ? offer(names.video) : null,
      stockSheet: offer(names.stockSheet),
      title,
      stockNumber,
      vehicle,
    });
    library.transaction(() => library.settings.put("demo", summary.id));
    return summary;
  } catch (failure) {
    log(`The demo recording in ${folder} cannot be used: ${failure instanceof Error ? failure.message : String(failure)}`);
    return undefined;
  } finally {
    coming.delete(library);
    parts.events.publish("library.changed", { recordingId: null });
  }
}
