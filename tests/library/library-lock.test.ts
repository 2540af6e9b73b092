import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { lockFileOf, lockLibrary } from "../../electron/library/library-lock.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";

const libraryIn = (folder: string) => join(folder, "library.sqlite");
const holder = (rest: object) => JSON.stringify({ pid: process.ppid, machine: hostname(), since: Date.now(), address: null, ...rest });

describe("one host at a time", () => {
  test("a second opening is refused with the holder's address, and let in once the first has closed", () => {
    const library = libraryIn(temporaryFolder());
    const lock = lockLibrary(library);
    lock.announce("http://127.0.0.1:5000/enter?token=t");
    expect(() => lockLibrary(library)).toThrow(/already open .*process \d+\)\.\nIt is at http:\/\/127\.0\.0\.1:5000\/enter\?token=t/s);
    lock.release();
    expect(existsSync(lockFileOf(library))).toBe(false);
    lockLibrary(library).release();
  });

  test("the address lets a browser in, so only the owner may read it", () => {
    const library = libraryIn(temporaryFolder());
    const lock = lockLibrary(library);
    expect(statSync(lockFileOf(library)).mode & 0o077).toBe(0);
    lock.release();
  });

  test("a lock of a running process holds", () => {
    const library = libraryIn(temporaryFolder());
    writeFileSync(lockFileOf(library), holder({}));
    expect(() => lockLibrary(library)).toThrow(`process ${process.ppid}`);
    expect(readFileSync(lockFileOf(library), "utf8")).toContain(String(process.ppid));
  });

  test("another machine's lock holds, and the message says what to do when it is a forgotten one", () => {
    const library = libraryIn(temporaryFolder());
    writeFileSync(lockFileOf(library), holder({ machine: "the-other-desk" }));
    expect(() => lockLibrary(library)).toThrow(/on the-other-desk.*remove .*library\.sqlite\.lock/s);
  });

  const ended = spawnSync(process.execPath, ["-e", ""]).pid;
  test.for([
    ["of a process that has ended", holder({ pid: ended })],
    ["of a process that ran before the machine was started", holder({ since: 0 })],
    ["of an earlier process with this one's id", holder({ pid: process.pid })],
    ["that was cut short", '{"pid":'],
  ])("a lock %s is taken over", ([, text]) => {
    const library = libraryIn(temporaryFolder());
    writeFileSync(lockFileOf(library), text as string);
    const lock = lockLibrary(library);
    expect(JSON.parse(readFileSync(lockFileOf(library), "utf8"))).toMatchObject({ pid: process.pid });
    lock.release();
  });
});
