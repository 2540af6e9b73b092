import { z } from "zod";
import type { Library } from "../../library/open-library.ts";

/** Bundles remembered for a recording: those of the last years of daily work. */
const mostSeals = 100;

const Seals = z.record(z.string(), z.array(z.string()));

function read(library: Pick<Library, "settings">): Record<string, string[]> {
  const kept = library.settings.get("bundlesSeen");
  return kept === undefined ? {} : Seals.parse(JSON.parse(kept));
}

/**
 * Whether this library wrote that bundle or has brought it in: then nothing is in it that nobody here has decided about.
 * @param seal SHA-256 of the bundle's manifest.
 */
export function wasSeen(library: Pick<Library, "settings">, recordingId: string, seal: string): boolean {
  return read(library)[recordingId]?.includes(seal) ?? false;
}

/** To be called within a transaction, or alone. */
export function rememberSeen(library: Pick<Library, "settings">, recordingId: string, seal: string): void {
  const seals = read(library);
  const former = seals[recordingId]?.filter((each) => each !== seal) ?? [];
  library.settings.put("bundlesSeen", JSON.stringify({ ...seals, [recordingId]: [...former, seal].slice(-mostSeals) }));
}
