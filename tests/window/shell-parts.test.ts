import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { diagnosticsText, safeLine } from "../../electron/window/diagnostics.ts";
import { recentRecordings } from "../../electron/window/recent-recordings.ts";
import { hashOfLink, readLink, recordingOfAddress } from "../../electron/window/roundwalk-link.ts";
import { openShellLog } from "../../electron/window/shell-log.ts";
import { filled, shellTexts } from "../../electron/window/shell-texts.ts";
import { argumentsToStartAgain, libraryOf, ownArguments, readWishes, wishesOf } from "../../electron/window/start-wishes.ts";
import { leastSize, placeOnScreens, readWindowPlace } from "../../electron/window/window-place.ts";
import { placeOfHash } from "../../renderer/shared/place.ts";
import { contract } from "../../shared-types/index.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const id = "3f2b8c1e-0000-4000-8000-00000000abcd";

describe("a link", () => {
  test.for([
    { link: `roundwalk://recording/${id}?t=75`, place: { recordingId: id, atSeconds: 75 }, why: "recording and second" },
    { link: `roundwalk://recording/${id}`, place: { recordingId: id, atSeconds: null }, why: "the recording alone" },
    { link: `roundwalk://recording/${id}/?t=1.5`, place: { recordingId: id, atSeconds: 1.5 }, why: "the slash that systems add" },
    { link: `ROUNDWALK://recording/${id.toUpperCase()}?t=0`, place: { recordingId: id, atSeconds: 0 }, why: "capitals" },
    { link: `roundwalk://recording/${id}?t=-1`, place: null, why: "before the beginning" },
    { link: `roundwalk://recording/${id}?t=1e3`, place: null, why: "an exponent" },
    { link: `roundwalk://recording/${id}?t=99999999`, place: null, why: "more seconds than any film" },
    { link: `roundwalk://recording/${id}?t=1&remove=1`, place: null, why: "anything more" },
    { link: `roundwalk://recording/${id}#/call`, place: null, why: "a place of the page's own" },
    { link: `roundwalk://recording/../${id}`, place: null, why: "a way up" },
    { link: `roundwalk://recording/%2e%2e/${id}`, place: null, why: "a way up in disguise" },
    { link: `roundwalk://remove/${id}`, place: null, why: "another verb" },
    { link: `roundwalk://user@recording/${id}`, place: null, why: "a user" },
    { link: `https://recording/${id}?t=1`, place: null, why: "another scheme" },
    { link: `roundwalk://recording/${id}?t=1\n--library=/tmp/x`, place: null, why: "a second line" },
    { link: "roundwalk://recording/", place: null, why: "no recording" },
    { link: "", place: null, why: "nothing" },
  ])("with $why", ({ link, place }) => {
    expect(readLink(link)).toEqual(place);
  });

  test("leads where the page itself finds that recording and second", () => {
    expect(placeOfHash(hashOfLink({ recordingId: id, atSeconds: 75 }))).toMatchObject({ screen: "recording", desk: "mark", id, at: 75 });
    expect(placeOfHash(hashOfLink({ recordingId: id, atSeconds: null }))).toMatchObject({ screen: "recording", id, at: null });
    expect(recordingOfAddress(`app://roundwalk/${hashOfLink({ recordingId: id, atSeconds: 3 })}`)).toBe(id);
    expect(recordingOfAddress("app://roundwalk/#/call?ask=recording")).toBeNull();
  });
});

describe("the window's place", () => {
  const laptop = { x: 0, y: 25, width: 1440, height: 875 };
  const desk = { x: 1440, y: 0, width: 2560, height: 1440 };
  const kept = (x: number, y: number, width = 1200, height = 800) => ({ x, y, width, height, maximized: false, fullScreen: false });
  test.for([
    { why: "where it was", place: kept(1500, 100), screens: [laptop, desk], stands: { x: 1500, y: 100, width: 1200, height: 800 } },
    {
      why: "in the middle of what is left of the screens",
      place: kept(1500, 100),
      screens: [laptop],
      stands: { x: 120, y: 63, width: 1200, height: 800 },
    },
    {
      why: "where its title can no longer be grasped",
      place: kept(0, 890),
      screens: [laptop],
      stands: { x: 120, y: 63, width: 1200, height: 800 },
    },
    {
      why: "no larger than the screen",
      place: kept(0, 25, 4000, 3000),
      screens: [laptop],
      stands: { x: 0, y: 25, width: 1440, height: 875 },
    },
    { why: "no smaller than the page needs", place: kept(10, 30, 100, 50), screens: [laptop], stands: { x: 10, y: 30, ...leastSize } },
    {
      why: "at a screen left of the main one",
      place: kept(-1200, 100),
      screens: [laptop, { x: -1920, y: 0, width: 1920, height: 1080 }],
      stands: { x: -1200, y: 100, width: 1200, height: 800 },
    },
  ])("is $why", ({ place, screens, stands }) => {
    expect(placeOnScreens(place, screens)).toMatchObject(stands);
  });
  test("without a place kept, the window stands in the middle of the main screen and fits it", () => {
    expect(placeOnScreens(null, [laptop])).toEqual({ x: 0, y: 25, width: 1440, height: 875, maximized: false, fullScreen: false });
  });
  test.for([
    null,
    "x",
    { x: 1 },
    { x: 1, y: 2, width: "3", height: 4 },
    { x: 1e9, y: 2, width: 3, height: 4 },
    { x: 0.5, y: 2, width: 3, height: 4 },
  ])("a kept %j is none", (given) => {
    expect(readWindowPlace(given)).toBeNull();
  });
});

describe("a start's wishes", () => {
  test("are its files and its last link, not its options", () => {
    const args = [
      "--inspect=0",
      "walk.vtt",
      "--library",
      "x.sqlite",
      "/tmp/a b.mp4",
      `roundwalk://recording/${id}`,
      "https://other.example/",
      "",
    ];
    expect(wishesOf(args, "/home/x")).toEqual({ files: ["/home/x/walk.vtt", "/tmp/a b.mp4"], links: [`roundwalk://recording/${id}`] });
  });
  test("come from another start in its own form alone", () => {
    expect(readWishes({ files: ["/a.vtt", "b.vtt", 7, "/c\0.vtt"], links: ["roundwalk://recording/x", "file:///etc/passwd", {}] })).toEqual(
      {
        files: ["/a.vtt"],
        links: ["roundwalk://recording/x"],
      },
    );
    for (const given of [null, 7, "x", [], { files: "x" }]) expect(readWishes(given)).toEqual({ files: [], links: [] });
  });
  test("stand after the script, where there is one", () => {
    expect(ownArguments(["electron", "main.mjs", "a.vtt"], false)).toEqual(["a.vtt"]);
    expect(ownArguments(["electron", "--inspect=0", "main.mjs", "a.vtt"], false)).toEqual(["--inspect=0", "a.vtt"]);
    expect(ownArguments(["roundwalk", "a.vtt"], true)).toEqual(["a.vtt"]);
    expect(ownArguments(["electron"], false)).toEqual([]);
  });
  test.for([
    { argv: ["electron", "main.mjs", "a.vtt"], packaged: false, again: ["main.mjs"] },
    {
      argv: ["electron", "--no-sandbox", "--inspect=0", "main.mjs", "--no-demo", "a.vtt"],
      packaged: false,
      again: ["--no-sandbox", "main.mjs"],
    },
    { argv: ["roundwalk", "a.vtt", `roundwalk://recording/${id}`], packaged: true, again: [] },
    { argv: ["roundwalk", "--no-sandbox", "--library=/x.sqlite", "a.vtt"], packaged: true, again: ["--no-sandbox"] },
  ])("are left out when the program starts itself again: $argv", ({ argv, packaged, again }) => {
    expect(argumentsToStartAgain(argv, packaged)).toEqual(again);
  });
  test("may name a library", () => {
    expect(libraryOf(["a", "--library", "x.sqlite"], "/home/x")).toBe("/home/x/x.sqlite");
    expect(libraryOf(["--library=/y.sqlite"], "/home/x")).toBe("/y.sqlite");
    expect(libraryOf(["a"], "/")).toBeNull();
    expect(libraryOf(["--library"], "/")).toBeNull();
  });
});

test("recordings opened last come first, once each, and outlast the run", () => {
  const file = join(temporaryFolder(), "kept", "recent.json");
  const recent = recentRecordings(file);
  for (let index = 0; index < 12; index++) recent.opened(`id-${index}`);
  expect(recent.opened("id-11")).toBe(false);
  recent.opened("id-5");
  expect(recentRecordings(file).ids()).toEqual(["id-5", "id-11", "id-10", "id-9", "id-8", "id-7", "id-6", "id-4", "id-3", "id-2"]);
  writeFileSync(file, "{half");
  expect(recentRecordings(file).ids()).toEqual([]);
});

describe("the log", () => {
  test("begins a new file when one is full, keeps three, and can be read by nobody else", async () => {
    const file = join(temporaryFolder(), "logs", "roundwalk.log");
    const log = openShellLog(file, { fullBytes: 2000, quiet: true });
    for (let index = 0; index < 200; index++) log.say(`line ${index} ${"x".repeat(40)}`);
    const { readdirSync, statSync } = await import("node:fs");
    const names = readdirSync(join(file, ".."));
    expect(names.sort()).toEqual(["roundwalk.log", "roundwalk.log.1", "roundwalk.log.2"]);
    for (const name of names) expect(statSync(join(file, "..", name)).size).toBeLessThan(2200);
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(log.lastLines(1)[0]).toContain("line 199");
    expect(log.lastLines(1000).length).toBeGreaterThan(20);
  });
});

describe("diagnostics", () => {
  const methods = new Set(Object.keys(contract));
  test.for([
    { line: "[2026-05-01T10:00:00.000Z] [info] shell: page-gone crashed", shown: "2026-05-01T10:00:00.000Z info shell: page-gone crashed" },
    {
      line: "[2026-05-01T10:00:00.000Z] [error] recording.import failed: TypeError: Ms Quill's Fallow Kestrel",
      shown: "2026-05-01T10:00:00.000Z error recording.import failed: TypeError",
    },
    { line: "    at openLibrary (/home/quill/walks/open-library.ts:12:5)", shown: "    at openLibrary open-library.ts:12:5" },
    { line: "    at file:///C:/Users/quill/main-abc.mjs:1:2", shown: "    at main-abc.mjs:1:2" },
    { line: "    at quill (/home/quill/FK-1971 Quill.vtt)", shown: "  (left out)" },
    { line: "    at Quill FK-1971 (walk.vtt:1:2)", shown: "  (left out)" },
    {
      line: "[2026-05-01T10:00:00.000Z] [error] /home/quill/walk.vtt could not be read",
      shown: "2026-05-01T10:00:00.000Z error (left out)",
    },
    { line: "[2026-05-01T10:00:00.000Z] [error] quill.kestrel failed: Error: x", shown: "2026-05-01T10:00:00.000Z error (left out)" },
    { line: "[2026-05-01T10:00:00.000Z] [info] shell: Quill bought it", shown: "2026-05-01T10:00:00.000Z info (left out)" },
    { line: "Quill, 12 Fern Road", shown: "  (left out)" },
  ])("show of “$line” what is the program's own", ({ line, shown }) => {
    expect(safeLine(line, methods)).toBe(shown);
  });
  test("hold versions and counts, and nothing of a log full of names", () => {
    const facts = {
      version: "1.2.3",
      engines: { node: "24.1.0" },
      system: "linux x64 6.1",
      memoryBytes: 2 ** 33,
      recordings: 7,
      upSeconds: 61.4,
    };
    const text = diagnosticsText(facts, ["Quill", "[x] Quill", "    at Quill (Quill:1:1)"], methods);
    expect(text).toContain("Roundwalk 1.2.3\nnode 24.1.0\nsystem linux x64 6.1\nmemory 8192 MiB\nrecordings 7\nrunning 61 s\nlog:");
    expect(text).not.toContain("Quill");
  });
});

test("every gap of the shell's texts is filled by name, and every text of the shell's files is in the table", () => {
  expect(filled(shellTexts.moveLibrary.message, { folder: "/new" })).toBe("Move the library into /new?");
  expect(filled("{a} {b}", { a: "{b}" })).toBe("{b} {b}");
  const window = join(import.meta.dirname, "..", "..", "electron", "window");
  for (const file of [
    "application-menu.ts",
    "crash-guard.ts",
    "shell-dialogs.ts",
    "index-paper.ts",
    "main-window.ts",
    "print-window.ts",
    "start-again.ts",
    "../open-desktop.ts",
    "../main.ts",
  ]) {
    const source = readFileSync(join(window, file), "utf8");
    // What a person reads is given by name: label, message, detail, title and buttons are never written out there.
    expect(source.match(/\b(?:label|message|detail|buttons|buttonLabel)\s*:\s*\[?\s*["'`]|new Error\(["'`]/g) ?? [], file).toEqual([]);
  }
});
