import { describe, expect, test } from "vitest";
import { checkActionOf, checkShortcuts, choiceOfKey } from "../../renderer/check/check-shortcuts.ts";
import { markActionOf, markShortcuts, stripShortcuts } from "../../renderer/mark/shortcuts.ts";
import { type KeyTarget, keyName, shortcutMayTake } from "../../renderer/shared/keys.ts";

const none = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false };

test.for([
  { press: { ...none, key: "i" }, name: "I" },
  { press: { ...none, key: "A", shiftKey: true }, name: "Shift+A" },
  { press: { ...none, key: "z", ctrlKey: true }, name: "Ctrl+Z" },
  { press: { ...none, key: "Z", metaKey: true, shiftKey: true }, name: "Ctrl+Shift+Z" },
  { press: { ...none, key: " " }, name: "Space" },
  { press: { ...none, key: "?", shiftKey: true }, name: "?" },
  { press: { ...none, key: "ArrowLeft", shiftKey: true }, name: "Shift+ArrowLeft" },
  { press: { ...none, key: "I" }, name: "I" },
])("$press.key is named $name", ({ press, name }) => {
  expect(keyName(press)).toBe(name);
});

const page: KeyTarget = { tag: "BODY", role: null, inputType: null, editable: false, enclosed: false, inForm: false };

test.for([
  { key: "Space", target: page, may: true, why: "nothing has the focus" },
  { key: "Space", target: { ...page, tag: "BUTTON" }, may: false, why: "Space presses a button" },
  { key: "Space", target: { ...page, tag: "G", role: "button" }, may: false, why: "Space picks an area of the plan" },
  { key: "I", target: { ...page, tag: "BUTTON" }, may: true, why: "a letter does nothing to a button" },
  { key: "I", target: { ...page, tag: "INPUT", inputType: "text" }, may: false, why: "letters are typed" },
  { key: "Ctrl+Z", target: { ...page, tag: "TEXTAREA" }, may: false, why: "a field undoes its own typing" },
  { key: "Ctrl+Z", target: { ...page, tag: "INPUT", inputType: "radio" }, may: true, why: "a radio button has nothing to undo" },
  { key: "ArrowLeft", target: { ...page, role: "slider" }, may: false, why: "arrows nudge a border" },
  { key: "ArrowDown", target: { ...page, tag: "SECTION", role: "region" }, may: false, why: "arrows scroll the captions" },
  { key: "ArrowLeft", target: { ...page, tag: "BUTTON" }, may: true, why: "arrows do nothing to a button" },
  {
    key: "O",
    target: { ...page, tag: "BUTTON", role: "combobox", inForm: true },
    may: false,
    why: "a choice in a form finds by what is typed",
  },
  { key: "Shift+S", target: { ...page, tag: "BUTTON", role: "combobox", inForm: true }, may: false, why: "a capital finds too" },
  { key: "Alt+S", target: { ...page, tag: "BUTTON", role: "combobox", inForm: true }, may: true, why: "with Alt nothing is typed" },
  { key: "O", target: { ...page, tag: "BUTTON", role: "combobox" }, may: true, why: "a rate was picked, and marking goes on" },
  { key: "A", target: { ...page, enclosed: true }, may: false, why: "a dialog is open" },
])("$key: $why", ({ key, target, may }) => {
  expect(shortcutMayTake(key, target)).toBe(may);
});

describe("the tables", () => {
  const keys = markShortcuts.flatMap((group) => group.shortcuts.map(({ key }) => key as string));
  test("no key means two things at the Mark desk", () => {
    expect(new Set(keys).size).toBe(keys.length);
    for (const { key } of stripShortcuts.shortcuts) expect(markActionOf(key)).toBeUndefined();
  });
  test("every written key is found again", () => {
    for (const group of markShortcuts) for (const { key, action } of group.shortcuts) expect(markActionOf(key)).toBe(action);
    expect(markActionOf("constructor")).toBeUndefined();
  });
  test("digits choose a ruling and are free at the Check desk", () => {
    expect(choiceOfKey("1")).toBe(0);
    expect(choiceOfKey("9")).toBe(8);
    expect(choiceOfKey("0")).toBeNull();
    expect(choiceOfKey("A")).toBeNull();
    for (const { key, action } of checkShortcuts) {
      expect(choiceOfKey(key)).toBeNull();
      expect(checkActionOf(key)).toBe(action);
    }
    expect(new Set(checkShortcuts.map(({ key }) => key)).size).toBe(checkShortcuts.length);
  });
});
