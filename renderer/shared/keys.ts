import { useEffect, useEffectEvent } from "react";

/** What `keyName` needs of a keyboard event. */
export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/**
 * A key press as the shortcut tables write it: "I", "Shift+A", "Ctrl+Shift+Z", "Space", "ArrowLeft", "?".
 * Command counts as Ctrl. Shift is written only where it does not already show in the character.
 */
export function keyName(press: KeyPress): string {
  const named = press.key === " " ? "Space" : press.key;
  const letter = named.length === 1 && named.toUpperCase() !== named.toLowerCase();
  const shiftShows = named.length === 1 && !letter;
  const parts: string[] = [];
  if (press.ctrlKey || press.metaKey) parts.push("Ctrl");
  if (press.altKey) parts.push("Alt");
  if (press.shiftKey && !shiftShows) parts.push("Shift");
  parts.push(letter ? named.toUpperCase() : named);
  return parts.join("+");
}

/** A key name as it stands on the key's cap. */
export function keyCaps(name: string): string {
  return name.replace("ArrowLeft", "←").replace("ArrowRight", "→").replace("ArrowUp", "↑").replace("ArrowDown", "↓").replaceAll("+", " ");
}

/** A key name as `aria-keyshortcuts` wants it. */
export function ariaShortcut(name: string): string {
  return name.replace("Ctrl", "Control");
}

/** What has the keyboard, as far as shortcuts must know. */
export interface KeyTarget {
  readonly tag: string;
  readonly role: string | null;
  readonly inputType: string | null;
  readonly editable: boolean;
  /** Inside a dialog or an open list, whose keys are its own. */
  readonly enclosed: boolean;
  /** Inside a form that is being filled in. */
  readonly inForm: boolean;
}

const typedInto = new Set(["text", "search", "number", "email", "url", "tel", "password", "date", "time"]);
const pressedRoles = new Set(["button", "tab", "option", "menuitem", "switch", "checkbox", "radio", "link", "combobox"]);
const pressedTags = new Set(["BUTTON", "A", "SUMMARY", "INPUT"]);
const arrowRoles = new Set(["tab", "slider", "radio", "combobox", "listbox", "option", "separator", "region"]);

/** Whether a shortcut may take this key, or what has the focus needs it itself. */
export function shortcutMayTake(name: string, target: KeyTarget): boolean {
  if (target.enclosed) return false;
  const typing =
    target.editable ||
    target.tag === "TEXTAREA" ||
    target.tag === "SELECT" ||
    (target.tag === "INPUT" && typedInto.has(target.inputType ?? "text"));
  // Text fields have an undo of their own.
  if (typing) return false;
  // A closed choice finds by what is typed. In a form it is being filled in; on a toolbar its keys stay the page's, as after a rate was picked.
  if (target.inForm && target.role === "combobox" && /^(?:Shift\+)?.$/.test(name)) return false;
  if (name === "Space" || name === "Enter") return !pressedTags.has(target.tag) && !pressedRoles.has(target.role ?? "");
  if (/Arrow|Home|End|Page/.test(name)) return !arrowRoles.has(target.role ?? "") && target.tag !== "INPUT";
  return true;
}

function describeTarget(target: EventTarget | null): KeyTarget {
  if (!(target instanceof Element)) return { tag: "BODY", role: null, inputType: null, editable: false, enclosed: false, inForm: false };
  return {
    tag: target.tagName.toUpperCase(),
    // A section that has the focus scrolls; it is a region without saying so.
    role: target.getAttribute("role") ?? (target.tagName === "SECTION" ? "region" : null),
    inputType: target instanceof HTMLInputElement ? target.type : null,
    editable: target instanceof HTMLElement && target.isContentEditable,
    enclosed: target.closest('[role="dialog"], [role="alertdialog"], [role="listbox"][data-open], [role="menu"]') !== null,
    inForm: target.closest("form") !== null,
  };
}

const singleKeysSetting = "roundwalk.single-keys";

/** Whether keys without Ctrl or Alt act at all; speech input and some assistive programs need them off. */
export function singleKeysAllowed(): boolean {
  return localStorage.getItem(singleKeysSetting) !== "off";
}
export function allowSingleKeys(allowed: boolean): void {
  localStorage.setItem(singleKeysSetting, allowed ? "on" : "off");
}

/** Listens for shortcuts on the whole page while the component is there. `act` says whether it knew the key. */
export function useShortcuts(act: (name: string) => boolean): void {
  const hear = useEffectEvent((event: KeyboardEvent) => {
    if (event.defaultPrevented || event.isComposing) return;
    const name = keyName(event);
    if (!/^(?:Ctrl|Alt)\+/.test(name) && !singleKeysAllowed()) return;
    if (shortcutMayTake(name, describeTarget(event.target)) && act(name)) event.preventDefault();
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent) => hear(event);
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, []);
}
