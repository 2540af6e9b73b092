import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import {
  chooseLibraryFile,
  chosenLibraryFile,
  defaultLibraryFile,
  placeFile,
  usualLibraryFile,
} from "../../electron/library/default-place.ts";
import { adoptLibraryIn, moveLibrary } from "../../electron/library/move-library.ts";
import { openLibrary } from "../../electron/library/open-library.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

beforeEach(() => {
  const home = temporaryFolder();
  vi.stubEnv("XDG_CONFIG_HOME", join(home, "config"));
  vi.stubEnv("XDG_DATA_HOME", join(home, "data"));
});
afterEach(() => {
  vi.unstubAllEnvs();
});

/** A library with something in each of its places, and a stranger's file beside it. */
function filledLibrary(folder: string): string {
  const file = join(folder, "library.sqlite");
  const library = openLibrary(file);
  library.transaction(() => library.settings.put("initials", "QX"));
  library.close();
  for (const name of ["media", "exports/walk"]) mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, "media", "walk.mp4"), "film");
  writeFileSync(join(folder, "exports", "walk", "index.html"), "<p>index</p>");
  writeFileSync(join(folder, "letter.txt"), "not the library's");
  return file;
}

const everything = (folder: string) => (existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: "utf8" }).sort() : []);
const whole = ["exports", "exports/walk", "exports/walk/index.html", "library.sqlite", "media", "media/walk.mp4"];

describe("a library that moves", () => {
  test("is at its new place with all it had, and what is not its own stays", async () => {
    const [old, next] = [temporaryFolder(), temporaryFolder()];
    const moved = await moveLibrary(filledLibrary(old), next, chooseLibraryFile);
    expect(moved).toEqual({ file: join(next, "library.sqlite"), left: [] });
    expect(everything(next)).toEqual(whole);
    expect(everything(old)).toEqual(["letter.txt"]);
    expect(defaultLibraryFile()).toBe(moved.file);
    const library = openLibrary(moved.file);
    expect(library.settings.get("initials")).toBe("QX");
    expect(library.integrity()).toBe("ok");
    library.close();
  });

  test.for([
    {
      why: "the new place cannot be remembered",
      prepare: () => {},
      settle: () => {
        throw new Error("no room for the note");
      },
      code: "library-not-moved",
    },
    {
      why: "there is a library already",
      prepare: (next: string) => writeFileSync(join(next, "library.sqlite"), ""),
      settle: () => {},
      code: "folder-taken",
    },
    {
      why: "there is a media folder already",
      prepare: (next: string) => mkdirSync(join(next, "media")),
      settle: () => {},
      code: "folder-taken",
    },
  ])("stays as it was when $why", async ({ prepare, settle, code }) => {
    const [old, next] = [temporaryFolder(), temporaryFolder()];
    const file = filledLibrary(old);
    prepare(next);
    const before = everything(next);
    await expect(moveLibrary(file, next, settle)).rejects.toMatchObject({ problem: { code } });
    expect(everything(next)).toEqual(before);
    expect(everything(old)).toEqual([...whole, "letter.txt"].sort());
    expect(chosenLibraryFile()).toBeNull();
    const library = openLibrary(file);
    expect(library.settings.get("initials")).toBe("QX");
    library.close();
  });

  test("stays when the file is damaged, and when somebody has it open", async () => {
    const [old, next] = [temporaryFolder(), temporaryFolder()];
    const file = filledLibrary(old);
    writeFileSync(
      `${file}.lock`,
      JSON.stringify({ pid: process.ppid, machine: (await import("node:os")).hostname(), since: Date.now(), address: null }),
    );
    await expect(moveLibrary(file, next, () => {})).rejects.toMatchObject({ problem: { code: "library-open" } });
    expect(everything(next)).toEqual([]);
  });

  test.for([
    { why: "where it is", folder: (old: string) => old, code: "library-there" },
    { why: "into its own media", folder: (old: string) => join(old, "media"), code: "folder-within" },
    { why: "into a folder that is none", folder: (old: string) => join(old, "letter.txt"), code: "folder-missing" },
    { why: "into nowhere", folder: (old: string) => join(old, "nowhere"), code: "folder-missing" },
  ])("does not move $why", async ({ folder, code }) => {
    const old = temporaryFolder();
    const file = filledLibrary(old);
    await expect(moveLibrary(file, folder(old), () => {})).rejects.toMatchObject({ problem: { code } });
    expect(everything(old)).toEqual([...whole, "letter.txt"].sort());
  });
});

describe("the library's place", () => {
  test("is the usual one until another is chosen, and again when that is taken back", () => {
    expect(defaultLibraryFile()).toBe(usualLibraryFile());
    const file = adoptLibraryIn(temporaryFolder(), chooseLibraryFile);
    expect(defaultLibraryFile()).toBe(file);
    chooseLibraryFile(null);
    expect(defaultLibraryFile()).toBe(usualLibraryFile());
  });
  test("is never silently another when the chosen one is away", () => {
    chooseLibraryFile("/media/away/library.sqlite");
    expect(() => defaultLibraryFile()).toThrow(expect.objectContaining({ problem: expect.objectContaining({ code: "library-away" }) }));
  });
  test("adopts no file that is none of Roundwalk's", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "library.sqlite"), "a shopping list that is long enough");
    expect(() => adoptLibraryIn(folder, chooseLibraryFile)).toThrow(/not a Roundwalk library/);
    expect(chosenLibraryFile()).toBeNull();
    expect(readFileSync(join(folder, "library.sqlite"), "utf8")).toBe("a shopping list that is long enough");
  });
  test.for(["{half", '{"file":"relative.sqlite"}', '{"file":7}', "[]"])("a note of %s is none", (note) => {
    mkdirSync(join(placeFile(), ".."), { recursive: true });
    writeFileSync(placeFile(), note);
    expect(defaultLibraryFile()).toBe(usualLibraryFile());
  });
});
