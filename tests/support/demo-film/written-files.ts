import { filmedVehicle, plantedConflicts, plantedLookAlikes } from "./script/film-script.ts";
import { writtenWords } from "./script/script-line.ts";
import type { TimedLine } from "./speech.ts";

export const fileNames = { video: "demo.webm", transcript: "demo.vtt", stockSheet: "stock-sheet.csv", gold: "demo.gold.json" } as const;

/** The transcript as the recogniser wrote it, as WebVTT. */
export function transcriptFile(lines: readonly TimedLine[]): string {
  const cues = lines.map(({ line, start, end }) => `${stamp(start)} --> ${stamp(end)}\n${writtenWords(line)}\n`);
  return `WEBVTT\n\n${cues.join("\n")}`;
}

/** hh:mm:ss.mmm */
export function stamp(seconds: number): string {
  const milliseconds = Math.round(seconds * 1000);
  const part = (size: number, unit: number, digits: number) => String(Math.floor(milliseconds / unit) % size).padStart(digits, "0");
  return `${part(100, 3_600_000, 2)}:${part(60, 60_000, 2)}:${part(60, 1000, 2)}.${part(1000, 1, 3)}`;
}

/** What demo.json holds: the recording as it is to be imported. */
export function recordingFile(): string {
  const { title, stockNumber, vehicle } = filmedVehicle;
  const { video, transcript, stockSheet } = fileNames;
  return `${JSON.stringify({ title, stockNumber, vehicle, video, transcript, stockSheet }, null, 2)}\n`;
}

/** What a careful person finds in the transcript. Caption numbers are the lines' places in the script. */
export function goldFile(lines: readonly TimedLine[], duration: number): string {
  const captionOf = (key: string): number => {
    const index = lines.findIndex(({ line }) => line.key === key);
    if (index < 0) throw new Error(`film-script.ts names the line "${key}", and the script has none of that name.`);
    return index;
  };
  const script = lines.map(({ line }) => line);
  const gold = {
    id: "demo",
    vehicle: { year: filmedVehicle.vehicle.year, name: filmedVehicle.vehicle.name, kind: filmedVehicle.kind },
    duration: Math.round(duration * 1000) / 1000,
    zones: script.flatMap((line, i) =>
      line.zone === script[i - 1]?.zone ? [] : [{ zone: line.zone, i, from: writtenWords(line).split(" ").slice(0, 6).join(" ") }],
    ),
    claims: script.flatMap((line, i) =>
      (line.claims ?? []).map(({ quote, component, position, attribute, value, unit, stance }) => ({
        i,
        quote,
        component,
        position: position ?? null,
        attribute,
        value,
        unit: unit ?? null,
        stance: stance ?? "stated",
      })),
    ),
    conflicts: plantedConflicts.map(({ id, kind, topic, sides }) => ({
      id,
      kind,
      topic,
      sides: sides.map(({ value, lines: keys }) => ({ value, at: keys.map(captionOf) })),
    })),
    look_alikes: plantedLookAlikes.map(({ topic, lines: keys, why }) => ({ topic, at: keys.map(captionOf), why })),
    repairs: script.flatMap((line, i) => (line.repairs ?? []).map((repair) => ({ i, ...repair }))),
    unreliable: script.flatMap((line, i) => (line.noise ? [{ i, why: line.noise.why }] : [])),
  };
  return `${JSON.stringify(gold, null, 1)}\n`;
}

const sheetColumns: readonly (readonly [string, string])[] = [
  ["Stock Number", filmedVehicle.stockNumber],
  ["Year", "1971"],
  ["Make", "Havelin"],
  ["Model", "Tarrow"],
  ["Body", "two-door hardtop"],
  ["Exterior Color", "burgundy"],
  ["Interior", "black vinyl"],
  ["Engine", "350 cu in V8"],
  ["Transmission", "4-speed manual"],
  ["Mileage", "61240"],
  // The title is where the dealer's own record denies the spoken word.
  ["Title Status", "rebuilt"],
  ["Keys", "2"],
  ["Asking Price", "32900"],
];

/** The dealer's own record of the vehicle: one row of fields. */
export function stockSheetFile(): string {
  return `${sheetColumns.map(([name]) => name).join(",")}\n${sheetColumns.map(([, value]) => value).join(",")}\n`;
}
