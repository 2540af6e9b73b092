import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";
import { film } from "./support/steps.ts";

const clips = fileURLToPath(new URL("../../fixtures/media", import.meta.url));

/** A walk of eight seconds round an invented vehicle. */
const walk = captionsOf([
  [0, 2, "Good morning, here is the 1988 Ossler Pathmark wagon."],
  [2, 4, "Come round to the passenger side, the rears are to 35 60 15s, all good."],
  [4, 6, "Okay the back end of the car now, the bumper is straight."],
  [6, 8, "Up on the lift now, underneath, the frame is clean."],
]);

/** A minute in which the rear tires get two sizes, the second long after the first. */
const minuteWalk = captionsOf([
  [0, 6, "Good morning, here is the 1988 Ossler Pathmark wagon."],
  [6, 18, "Come round to the passenger side, the rears are to 35 60 15s, all good."],
  [18, 30, "Okay the back end of the car now, the bumper is straight and the lenses are clean."],
  [30, 42, "Round to the driver's side, the paint is good down here."],
  [42, 52, "and the rear tires on the car are two fifty five sixty fifteens."],
  [52, 64, "Up on the lift now, underneath, the frame is clean."],
]);

function captionsOf(lines: readonly (readonly [start: number, end: number, text: string])[]): string {
  const stamp = (seconds: number) => `00:${String(seconds).padStart(2, "0")}.000`.replace("00:60", "01:00").replace("00:64", "01:04");
  return `WEBVTT\n\n${lines.map(([start, end, text]) => `${stamp(start)} --> ${stamp(end)}\n${text}\n`).join("\n")}`;
}

let folder: string;
test.beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwalk-own-"));
});
test.afterEach(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

async function importRecording(page: Page, files: { transcript: string; video?: string }, title: string): Promise<void> {
  await page.getByRole("button", { name: "Import a recording…" }).first().click();
  const dialog = page.getByRole("dialog", { name: "Import a recording" });
  await dialog
    .getByRole("group", { name: /Transcript/ })
    .locator("input[type=file]")
    .setInputFiles(files.transcript);
  if (files.video) await dialog.getByRole("group", { name: /Video/ }).locator("input[type=file]").setInputFiles(files.video);
  await dialog.getByLabel(/Title/).fill(title);
  await dialog.getByRole("button", { name: "Import", exact: true }).click();
}

/** A recording that came in opens at once on the Mark desk. */
async function atMarkDesk(page: Page, title: string): Promise<void> {
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
  await expect(page.getByRole("region", { name: "Captions" })).toBeVisible();
}

async function sign(page: Page): Promise<void> {
  await page.getByRole("textbox", { name: "Initials" }).fill("MK");
  await page.getByRole("button", { name: "Use these initials" }).click();
}

test.describe("a recording of one's own", () => {
  test.use({ withDemo: false });

  for (const video of ["clip.mp4", "clip.mov", "clip.webm", "clip.mkv"]) {
    test(`${video} is imported, plays and seeks`, async ({ desk: page }) => {
      await importRecording(page, { transcript: file("walk.vtt", walk), video: join(clips, video) }, "Ossler wagon");
      await atMarkDesk(page, "Ossler wagon");
      await expect.poll(async () => (await film(page)).width, { message: "the browser reads the video" }).toBe(320);
      const start = await film(page);
      await page
        .getByRole("region", { name: "Captions" })
        .getByRole("button", { name: /Go to 0:06/ })
        .click();
      await expect.poll(async () => (await film(page)).time).toBeGreaterThan(5.5);
      await expect.poll(async () => (await film(page)).picture).not.toBe(start.picture);
    });
  }

  test("is marked by keyboard, ruled on, found by a caller, and keeps every change over a restart", async ({ desk: page, host }) => {
    test.setTimeout(180_000);
    await importRecording(page, { transcript: file("walk.vtt", minuteWalk), video: join(clips, "minute.mp4") }, "Ossler wagon");
    await atMarkDesk(page, "Ossler wagon");
    await expect.poll(async () => (await film(page)).width).toBe(192);

    // Mark from the caption at 0:52 to the end as underside, with a finding, without the mouse.
    await page
      .getByRole("region", { name: "Captions" })
      .getByRole("button", { name: /Go to 0:06/ })
      .press("Enter");
    await page.keyboard.press("i");
    await page.getByRole("slider", { name: "Playhead" }).press("End");
    await page.keyboard.press("o");
    await page.keyboard.press("f");
    const form = page.getByRole("form", { name: /finding/i });
    await form.getByLabel(/seen/i).fill("Light surface rust on the frame");
    await form.getByRole("radio", { name: "Worn" }).check({ force: true });
    await form.getByLabel(/seen/i).press("Enter");
    await sign(page);
    const findings = page.getByRole("list", { name: "Findings" });
    await expect(findings).toContainText("Light surface rust on the frame");

    await page.keyboard.press("Control+z");
    await expect(findings).not.toContainText("Light surface rust on the frame");
    await page.keyboard.press("Control+Shift+z");
    await expect(findings).toContainText("Light surface rust on the frame");

    await page.getByRole("link", { name: "Check", exact: true }).click();
    await page
      .getByRole("list", { name: "Conflicts by weight" })
      .getByRole("button", { name: /rear tire size/i })
      .click();
    await page.getByRole("radio", { name: /A stands/ }).check({ force: true });
    await page.getByLabel("Reason").fill("Read off the sidewall.");
    await page.keyboard.press("Control+Enter");
    await expect(page.getByText("0 left of 1")).toBeVisible();

    const again = await host.restart();
    await page.goto(again.address);
    await expect(page.getByRole("link", { name: /^Check .*1 of 1 settled/ })).toBeVisible();
    await page.getByRole("link", { name: /^Mark / }).click();
    await page.getByRole("tab", { name: /Findings/ }).click();
    await expect(page.getByRole("list", { name: "Findings" })).toContainText("Light surface rust on the frame");

    await page.getByRole("link", { name: "Call", exact: true }).click();
    await page.getByRole("combobox", { name: "Ask the library" }).fill("chassis");
    await expect(page.getByRole("listbox", { name: "Moments" }).getByRole("option").first()).toContainText("Underside");
  });

  test("a transcript without a video is a recording too", async ({ desk: page }) => {
    await importRecording(page, { transcript: file("walk.vtt", walk) }, "Words alone");
    await atMarkDesk(page, "Words alone");
    await expect(page.getByRole("region", { name: "Captions" })).toContainText("to 35 60 15s");
    await page.getByRole("button", { name: /^Play/ }).click();
    await expect(page.getByRole("button", { name: /^Pause/ })).toBeVisible();
  });

  test("an import goes off by Enter in any field, under the title that the vehicle gives it", async ({ desk: page }) => {
    for (const [key, year] of [
      ["Enter", "1978"],
      ["Control+Enter", "1979"],
    ] as const) {
      await page.getByRole("button", { name: "Import a recording…" }).first().click();
      const dialog = page.getByRole("dialog", { name: "Import a recording" });
      const transcript = dialog.getByRole("group", { name: /Transcript/ }).locator("input[type=file]");
      await transcript.setInputFiles(file(`walk ${year}.vtt`, walk.replace("to 35", `to 35 ${year}`)));
      await expect(dialog.getByLabel(/Title/)).toHaveValue(`walk ${year}`);
      await dialog.getByLabel("Model year").fill(year);
      await dialog.getByLabel("Vehicle").fill("Orvane Delmot");
      await dialog.getByLabel("Vehicle").press(key);
      await atMarkDesk(page, `${year} Orvane Delmot`);
      await page.getByRole("link", { name: "Library" }).click();
    }
  });

  test("the same transcript again is asked about first", async ({ desk: page }) => {
    const transcript = file("walk.vtt", walk);
    await importRecording(page, { transcript }, "First");
    await atMarkDesk(page, "First");
    // The import dialog hides what lies under it from assistive programs.
    const rows = page.getByRole("list", { name: "Recordings", includeHidden: true }).getByRole("listitem", { includeHidden: true });
    await page.getByRole("link", { name: "Library" }).click();
    await importRecording(page, { transcript }, "Second");
    const question = page.getByRole("alertdialog");
    await expect(question).toContainText("already in the library as “First”");
    await question.getByRole("button", { name: "Do not import" }).click();
    await expect(rows).toHaveCount(1);
    await page.getByRole("button", { name: "Import", exact: true }).click();
    await question.getByRole("button", { name: "Import it again" }).click();
    await atMarkDesk(page, "Second");
    await page.getByRole("link", { name: "Library" }).click();
    await expect(rows).toHaveCount(2);
  });

  test("a file that cannot be used is refused beside its place, with the line, and nothing is imported", async ({ desk: page, host }) => {
    const bad = file("walk.srt", "1\n00:00:01,000 --> 00:00:03,000\nfine\n\n2\n00:00:09,000 --> 00:00:04,000\nbackwards\n");
    await importRecording(page, { transcript: bad }, "Bad file");
    const slot = page.getByRole("dialog").getByRole("group", { name: /Transcript/ });
    await expect(slot.getByRole("alert")).toContainText("walk.srt");
    await expect(slot.getByRole("alert")).toContainText(/line 6/i);
    // The same place takes the mended file.
    await slot.locator("input[type=file]").setInputFiles(file("mended.vtt", walk));
    await page.getByRole("button", { name: "Import", exact: true }).click();
    await atMarkDesk(page, "Bad file");
    await page.getByRole("link", { name: "Library" }).click();
    await expect(page.getByRole("list", { name: "Recordings" }).getByRole("listitem")).toHaveCount(1);
    expect(readdirSync(host.folder)).not.toContain("media");
  });
});

test("an export is downloaded as it was written", async ({ desk: page, host }) => {
  await page.getByRole("link", { name: /^Check / }).click({ timeout: 60_000 });
  await page.getByRole("button", { name: "Export…" }).click();
  await page.getByRole("button", { name: /^Write \d+ files?$/ }).click();
  const link = page.getByRole("list", { name: "Written files" }).getByRole("link").first();
  const [download] = await Promise.all([page.waitForEvent("download"), link.click()]);
  const [recording] = readdirSync(join(host.folder, "exports"));
  const written = readFileSync(join(host.folder, "exports", recording!, download.suggestedFilename()));
  expect(readFileSync(await download.path())).toEqual(written);
});
