import { existsSync, mkdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { shellTexts } from "../../electron/window/shell-texts.ts";
import { temporaryFolder } from "../support/builders/temporary-folder.ts";
import { builtMain, type StandIn, startStandIn } from "../support/electron-stand-in/start-stand-in.ts";
import { buildWhatIsOld, call, ended, eventually, importSample, opened } from "./shell-ground.ts";

const { menu } = shellTexts;

describe("the desktop as it starts, and starts again", { timeout: 90_000 }, () => {
  beforeAll(buildWhatIsOld, 120_000);

  test("keeps the window's place, and puts it back on a screen that is there", async () => {
    const home = temporaryFolder();
    const args = ["--library", join(home, "library.sqlite")];
    const screens = [
      { x: 0, y: 0, width: 1600, height: 1000 },
      { x: 1600, y: 0, width: 1600, height: 1000 },
    ];
    const place = { x: 1700, y: 50, width: 1200, height: 800 };
    const first = await opened({ home, args, displays: screens });
    await first.ask("place-window", place);
    await ended(first);
    const second = await opened({ home, args, displays: screens });
    expect(second.of<{ bounds: object }>("shown")[0]?.bounds).toEqual(place);
    await ended(second);
    const third = await opened({ home, args, displays: screens.slice(0, 1) });
    expect(third.of<{ bounds: object }>("shown")[0]?.bounds).toEqual({ x: 200, y: 100, width: 1200, height: 800 });
    await ended(third);
  });

  test("a link at the start opens its recording at its second; one that leads nowhere is told and opens the library", async () => {
    const home = temporaryFolder();
    const args = ["--library", join(home, "library.sqlite")];
    const first = await opened({ home, args });
    const id = await importSample(first, home);
    await ended(first);
    const second = await opened({ home, args: [...args, `roundwalk://recording/${id}?t=12.5`] });
    expect(second.of<{ url: string }>("load").map(({ url }) => url)).toEqual([`app://roundwalk/#/recording/${id}/mark?at=12.5`]);
    // While it runs, the system may bring more of them; macOS has an event of its own for that.
    expect(await second.ask("open-url", `roundwalk://recording/${id}?t=3`)).toBe(true);
    await eventually(() => second.of<{ url: string }>("load").at(-1)?.url).toBe(`app://roundwalk/#/recording/${id}/mark?at=3`);
    for (const link of [
      `roundwalk://recording/${id}?t=3&remove=1`,
      `roundwalk://remove/${id}`,
      "roundwalk://recording/3f2b8c1e-0000-4000-8000-00000000abcd",
    ]) {
      const before = second.dialogs.length;
      await second.ask("open-url", link);
      await eventually(() => second.dialogs.length).toBe(before + 1);
    }
    expect(second.of("load")).toHaveLength(2);
    expect(second.dialogs.map(({ options }) => options.detail)).toEqual([
      shellTexts.link.invalid,
      shellTexts.link.invalid,
      shellTexts.link.unknown,
    ]);
    await ended(second);
  });

  test("a file and a link that macOS brings before the program is ready wait for the window", async () => {
    const home = temporaryFolder();
    const args = ["--library", join(home, "library.sqlite")];
    const first = await opened({ home, args });
    const id = await importSample(first, home);
    await ended(first);
    const file = join(home, "walk.txt");
    const second = await opened({
      home,
      args,
      early: [
        { event: "open-file", value: file },
        { event: "open-url", value: `roundwalk://recording/${id}?t=9` },
      ],
    });
    expect(second.of<{ url: string }>("load")[0]?.url).toBe(`app://roundwalk/#/recording/${id}/mark?at=9`);
    expect((await call(second, "file.handedOver", {})).files).toMatchObject([{ name: "walk.txt" }]);
    await ended(second);
  });

  test("installed, it takes links from the system, and its own arguments without a script", async () => {
    const home = temporaryFolder();
    const args = ["--library", join(home, "library.sqlite")];
    const first = await opened({ home, args: [...args, "--no-sandbox"], packaged: true });
    expect(first.of("protocol-client")).toEqual(["roundwalk"]);
    // Started without the pages' sandbox, as an AppImage may be, it does not keep that to itself.
    await first.ask("choose", `${menu.help} > ${menu.copyDiagnostics}`);
    await eventually(() => first.of("clipboard").at(-1)).toContain("info shell: sandbox-off");
    const id = await importSample(first, home);
    // As Windows and Linux start it for a link: the link alone after the program.
    const second = startStandIn({ home, packaged: true, args: [`roundwalk://recording/${id}?t=4`] });
    expect(await second.ended).toBe(0);
    await eventually(() => first.of<{ url: string }>("load").at(-1)?.url).toBe(`app://roundwalk/#/recording/${id}/mark?at=4`);
    await ended(first);
  });

  test("a window that is closed while its page loads ends the program without a complaint", async () => {
    const home = temporaryFolder();
    let closing: Promise<unknown> = Promise.resolve();
    const standIn: StandIn = startStandIn({
      home,
      args: ["--library", join(home, "library.sqlite"), join(home, "gone.vtt")],
      load: async () => {
        closing = standIn.ask("close-window");
        await closing.catch(() => {});
      },
    });
    expect(await standIn.ended).toBe(0);
    expect([standIn.of("error-box"), standIn.dialogs]).toEqual([[], []]);
  });

  test("the user's own library moves whole, and the next start finds it there", async () => {
    const home = realpathSync(temporaryFolder());
    const next = join(home, "new place");
    mkdirSync(next);
    const first = await opened({ home });
    const id = await importSample(first, home);
    const { libraryFile } = await call(first, "host.abilities", {});
    expect(libraryFile.startsWith(home)).toBe(true);
    first.answers.push({ canceled: false, filePaths: [next] }, { response: 1 });
    await first.ask("choose", `${menu.file} > ${menu.moveLibrary}`);
    expect(await first.ended).toBe(0);
    // It asked to be started again, without the files and links of this start.
    expect(first.of<{ args: string[] }>("relaunch")[0]?.args).toEqual([builtMain]);
    expect(existsSync(libraryFile)).toBe(false);

    const second = await opened({ home });
    expect((await call(second, "host.abilities", {})).libraryFile).toBe(join(next, "library.sqlite"));
    expect((await call(second, "recording.get", { id })).summary.title).toBe("Fallow & Kestrel");
    // Into itself it does not move, and stays in use all the same after the start that follows.
    second.answers.push({ canceled: false, filePaths: [next] }, { response: 1 });
    await second.ask("choose", `${menu.file} > ${menu.moveLibrary}`);
    expect(await second.ended).toBe(0);
    expect(second.dialogs.at(-1)?.options.message).toBe(shellTexts.moveLibrary.failedTitle);

    // An AppImage goes with its program, and so would Electron's helper: the image itself is started, once the place is free.
    const image = join(home, "Roundwalk.AppImage");
    const started = join(home, "started");
    writeFileSync(
      image,
      `#!/bin/sh\nls "${join(home, "user-data", "Roundwalk")}" > "${started}.part"\nmv "${started}.part" "${started}"\n`,
      {
        mode: 0o755,
      },
    );
    const installed = await opened({ home, packaged: true, env: { APPIMAGE: image } });
    const other = join(home, "other place");
    mkdirSync(other);
    installed.answers.push({ canceled: false, filePaths: [other] });
    await installed.ask("choose", `${menu.file} > ${menu.otherLibrary}`);
    expect(await installed.ended).toBe(0);
    expect([installed.of("relaunch"), installed.of("lock-released").length]).toEqual([[], 1]);
    await eventually(() => existsSync(started) && readFileSync(started, "utf8").split("\n")).not.toContain("instance");

    // On a disk that is away it is asked for, never replaced by an empty one.
    expect(existsSync(join(other, "library.sqlite"))).toBe(true);
    rmSync(other, { recursive: true });
    const third = startStandIn({ home });
    expect(await third.ended).toBe(0);
    expect(third.dialogs.map(({ options }) => options.message)).toEqual([shellTexts.libraryAway.message]);
    expect(third.of("window")).toEqual([]);
    expect(existsSync(other)).toBe(false);
  });
});
