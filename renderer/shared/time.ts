import { timeLabel } from "../../shared-types/index.ts";

/** Seconds as `m:ss.t` (tenths, rounded down), or `h:mm:ss.t` from an hour on. */
export function tenthsLabel(seconds: number): string {
  // Rounded to milliseconds first: 2.3 is stored a hair under, and would show as 2.2.
  const milliseconds = Math.round(Math.max(0, seconds) * 1000);
  return `${timeLabel(milliseconds / 1000)}.${Math.floor((milliseconds % 1000) / 100)}`;
}

/** A length of time in words that screen readers say well: "1 min 12 s", "48 s", "1 h 2 min". */
export function lengthLabel(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = whole % 60;
  if (hours > 0) return minutes > 0 ? `${hours} h ${minutes} min` : `${hours} h`;
  if (minutes > 0) return rest > 0 ? `${minutes} min ${rest} s` : `${minutes} min`;
  return `${rest} s`;
}

/** Seconds from what a person typed: "2:41.3", "161.3", "1:02:03". Null when it is no time. */
export function secondsFromText(text: string): number | null {
  const match = /^\s*(?:(?:(\d+):)?([0-5]?\d):)?(\d+(?:\.\d+)?)\s*$/.exec(text);
  if (!match) return null;
  const [, hours, minutes, seconds] = match;
  const rest = Number(seconds);
  if (minutes !== undefined && rest >= 60) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + rest;
}
