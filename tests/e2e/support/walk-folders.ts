import { appendFileSync, copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Locator, Page } from "@playwright/test";
import { expect } from "./host.ts";

const clip = fileURLToPath(new URL("../../../fixtures/media/clip.mp4", import.meta.url));

/** A walk of eight seconds round an invented vehicle. */
export function walkOf(vehicle: string): string {
  const lines = [
    `Good morning, here is the ${vehicle}.`,
    "Come round to the passenger side, the rears are to 35 60 15s, all good.",
    "Okay the back end of the car now, the bumper is straight.",
    "Up on the lift now, underneath, the frame is clean.",
  ];
  return `WEBVTT\n\n${lines.map((line, index) => `00:0${index * 2}.000 --> 00:0${index * 2 + 2}.000\n${line}\n`).join("\n")}`;
}

/** A film of its own content: an ISO file may end with free space (ISO/IEC 14496-12, 8.1.2), here with the mark in it. */
export function writeFilm(path: string, mark: string): void {
  copyFileSync(clip, path);
  const content = Buffer.from(mark.padEnd(16).slice(0, 16));
  const box = Buffer.alloc(8);
  box.writeUInt32BE(8 + content.length);
  box.write("free", 4, "latin1");
  appendFileSync(path, Buffer.concat([box, content]));
}

const made: string[] = [];

/** A folder of this name, in one of its own that `removeFolders` takes away. */
export function temporaryFolder(name: string): string {
  const parent = mkdtempSync(join(tmpdir(), "roundwalk-folder-"));
  made.push(parent);
  const folder = join(parent, name);
  mkdirSync(folder);
  return folder;
}

export function removeFolders(): void {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
}

/** Three recordings with their videos and a sheet for all; the transcript of OS-102 is broken. A picture is left over. */
export function folderOfThree(): string {
  const folder = temporaryFolder("forecourt");
  for (const [name, year] of [
    ["OS-101 wagon", 1985],
    ["OS-102 coupe", 1986],
    ["OS-103 van", 1987],
  ] as const) {
    writeFilm(join(folder, `${name}.mp4`), `film ${year}`);
    writeFileSync(join(folder, `${name}.vtt`), walkOf(`${year} Ossler Pathmark`));
  }
  writeFileSync(join(folder, "OS-102 coupe.vtt"), "WEBVTT\n\n00:01.000 --> 00:03.000\nfine\n\n00:09.000 --> 00:04.000\nbackwards\n");
  writeFileSync(
    join(folder, "lot.csv"),
    "Stock Number,Year,Make,Model,Mileage\nOS-101,1985,Ossler,Pathmark,68000\nOS-102,1986,Ossler,Pathmark,71000\nOS-103,1987,Ossler,Pathmark,5000\n",
  );
  writeFileSync(join(folder, "cover.jpg"), "no picture either");
  return folder;
}

export const importLines = (page: Page) => page.getByRole("list", { name: "Imports" });
export const lineOf = (page: Page, title: string) => importLines(page).getByRole("listitem").filter({ hasText: title });
export const recordingRows = (page: Page) => page.getByRole("list", { name: "Recordings", exact: true }).getByRole("listitem");

/** Holds back a file on its way to the host, as a long video would be. Gives back the function that lets later ones through. */
export async function holdBack(page: Page, name: RegExp): Promise<() => Promise<void>> {
  const address = (url: URL) => url.pathname === "/files" && name.test(url.searchParams.get("name") ?? "");
  await page.route(address, () => new Promise<void>(() => {}));
  return () => page.unroute(address);
}

/** Goes on with Tab until the control has the focus. */
export async function tabTo(page: Page, control: Locator): Promise<void> {
  for (let step = 0; step < 90; step++) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  await expect(control).toBeFocused({ timeout: 1 });
}
