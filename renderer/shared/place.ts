import { useSyncExternalStore } from "react";
import { mostCompared } from "../../shared-types/index.ts";

export type Desk = "mark" | "check" | "call";

/** Where in the application the page is; kept in the address after `#`, so that the browser's own back and forward work. */
export type Place =
  | { readonly screen: "library" }
  | {
      readonly screen: "call";
      readonly query: string;
      /** Recordings to put side by side; null while one question is asked over the whole library. */
      readonly compared: readonly string[] | null;
      /** The one recording that is asked of; without it the whole library is. */
      readonly only?: string;
    }
  | {
      readonly screen: "recording";
      readonly desk: "mark" | "check";
      readonly id: string;
      readonly at: number | null;
      readonly conflict: string | null;
      /** Something to check that is no conflict, as "kind:key". */
      readonly item: string | null;
    };

export function placeOfHash(hash: string): Place {
  const [path = "", query = ""] = hash.replace(/^#\/?/, "").split("?");
  const [first, id, desk] = path.split("/");
  if (first === "call") {
    const asked = new URLSearchParams(query);
    const compared = comparedOf(asked.get("compare"));
    const only = asked.get("of") ?? "";
    return {
      screen: "call",
      query: (asked.get("ask") ?? "").slice(0, 200),
      compared,
      ...(compared === null && uuid.test(only) ? { only } : {}),
    };
  }
  if (first === "recording" && id) {
    const asked = new URLSearchParams(query);
    const at = Number(asked.get("at") ?? Number.NaN);
    return {
      screen: "recording",
      desk: desk === "check" ? "check" : "mark",
      id: decoded(id),
      at: Number.isFinite(at) && at >= 0 ? at : null,
      conflict: plain(asked.get("conflict")),
      item: plain(asked.get("item")),
    };
  }
  return { screen: "library" };
}

/** A conflict's or an item's name as an address may hold it: nothing that is longer than any name, and nothing that cannot be seen. */
function plain(name: string | null): string | null {
  return name !== null && name.length <= 600 && /^[^\p{Cc}\p{Cf}]+$/u.test(name) ? name : null;
}

const uuid = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** What is no recording's id is left out, and no more than can be compared is taken. */
function comparedOf(ids: string | null): string[] | null {
  return ids === null ? null : [...new Set(ids.split(",").filter((id) => uuid.test(id)))].slice(0, mostCompared);
}

/** An address that was cut or mistyped may hold a broken escape; it is then an id that no recording has. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export function hashOfPlace(place: Place): string {
  if (place.screen === "library") return "#/";
  if (place.screen === "call") {
    const asked = new URLSearchParams();
    if (place.query !== "") asked.set("ask", place.query);
    if (place.compared !== null) asked.set("compare", place.compared.join(","));
    else if (place.only !== undefined) asked.set("of", place.only);
    return asked.size > 0 ? `#/call?${asked}` : "#/call";
  }
  const query = new URLSearchParams();
  if (place.at !== null) query.set("at", String(place.at));
  if (place.conflict !== null) query.set("conflict", place.conflict);
  if (place.item !== null) query.set("item", place.item);
  const tail = query.size > 0 ? `?${query}` : "";
  return `#/recording/${encodeURIComponent(place.id)}/${place.desk}${tail}`;
}

export function recordingPlace(id: string, desk: "mark" | "check", more: { at?: number; conflict?: string; item?: string } = {}): string {
  const { at = null, conflict = null, item = null } = more;
  return hashOfPlace({ screen: "recording", desk, id, at, conflict, item });
}

/** Puts the place that is shown into the address without a step of its own in the browser's history. */
export function replaceHash(hash: string): void {
  if (window.location.hash === hash) return;
  window.history.replaceState(null, "", hash);
  window.dispatchEvent(new HashChangeEvent("hashchange"));
}

const lastRecording = "roundwalk.last-recording";

/** The recording opened last, so that its desks stay one step away from the Call desk. */
export function rememberRecording(id: string | null): void {
  if (id === null) localStorage.removeItem(lastRecording);
  else localStorage.setItem(lastRecording, id);
}
export function rememberedRecording(): string | null {
  return localStorage.getItem(lastRecording);
}

function subscribe(changed: () => void): () => void {
  window.addEventListener("hashchange", changed);
  return () => window.removeEventListener("hashchange", changed);
}

export function useHash(): string {
  return useSyncExternalStore(subscribe, () => window.location.hash);
}
