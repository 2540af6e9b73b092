/**
 * Times as transcripts write them. Each function gives seconds, or null where the text is not such a time.
 * Fractions are read as decimals of a second whatever their length, so ",5" is half a second.
 */

/** The WebVTT parser's time: minutes and seconds of two digits below 60, hours of any length, exactly three decimals. */
export function readWebVttTime(text: string): number | null {
  const match = /^(?:(\d+):)?(\d{2}):(\d{2})\.(\d{3})$/.exec(text);
  if (!match) return null;
  return inSeconds(match[1] ?? "0", match[2] ?? "", match[3] ?? "", match[4] ?? "");
}

/**
 * SRT as it is met: comma or full stop, one to any number of decimals or none, one-digit parts, hours left out.
 * SubRip has no standard (see fixtures/transcripts/ORIGIN.md), so everything with one clear meaning is taken.
 */
export function readLiberalTime(text: string): number | null {
  const match = /^(?:(\d{1,4}):)?(\d{1,2}):(\d{1,2})(?:[.,:](\d{1,9}))?$/.exec(text);
  if (!match) return null;
  return inSeconds(match[1] ?? "0", match[2] ?? "", match[3] ?? "", match[4] ?? "0");
}

/** `m:ss` (minutes may pass 59) or `h:mm:ss`, with or without decimals: what people and tools write before plain text. */
export function readPlainTime(text: string): number | null {
  const match = /^(?:(\d{1,3}):)?(\d{1,4}):(\d{2})(?:[.,](\d{1,9}))?$/.exec(text);
  if (!match) return null;
  const [, hours, minutes = "", seconds = "", fraction = "0"] = match;
  if (Number(seconds) > 59 || (hours !== undefined && Number(minutes) > 59)) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(`${seconds}.${fraction}`);
}

function inSeconds(hours: string, minutes: string, seconds: string, fraction: string): number | null {
  if (Number(minutes) > 59 || Number(seconds) > 59) return null;
  // One division at the end keeps 11.544 as the nearest number to 11.544.
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(`${seconds}.${fraction}`);
}

/** Seconds as a person reads them: 75.5 is "1:15.5". */
export function spokenClock(seconds: number): string {
  const whole = Math.floor(Math.abs(seconds));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = (Math.round((Math.abs(seconds) - hours * 3600 - minutes * 60) * 1000) / 1000).toString();
  const padded = rest.indexOf(".") === 1 || rest.length === 1 ? `0${rest}` : rest;
  return `${seconds < 0 ? "-" : ""}${hours > 0 ? `${hours}:${String(minutes).padStart(2, "0")}` : minutes}:${padded}`;
}
