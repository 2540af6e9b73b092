import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { exportFormats } from "../../shared-types/index.ts";
import { expect, test } from "./support/host.ts";
import { doMainJob } from "./support/main-job.ts";
import { openDemo } from "./support/steps.ts";

test("the main job on the demo: play, jump to the underside, rule on a conflict, export, find the files", async ({ desk: page, host }) => {
  test.setTimeout(180_000);

  await doMainJob(page, host.folder);

  await test.step("Chromium's own track parser reads the chapters", async () => {
    const [recording] = readdirSync(join(host.folder, "exports"));
    const folder = join(host.folder, "exports", recording!);
    const text = readFileSync(join(folder, readdirSync(folder).find((name) => name.endsWith("chapters.vtt"))!), "utf8");
    const other = await page.context().newPage();
    const cues = await other.evaluate(async (webvtt) => {
      const video = document.createElement("video");
      const track = document.createElement("track");
      track.kind = "chapters";
      track.src = `data:text/vtt,${encodeURIComponent(webvtt)}`;
      video.append(track);
      document.body.append(video);
      track.track.mode = "hidden";
      await new Promise((done, failed) => {
        track.onload = done;
        track.onerror = failed;
      });
      return Array.from(track.track.cues ?? [], (cue) => ({ start: cue.startTime, text: (cue as VTTCue).text }));
    }, text);
    expect(cues.length).toBe(text.split("-->").length - 1);
    expect(cues[0]?.start).toBe(0);
  });
});

test("the condition index page jumps in the video beside it, from the file alone", async ({ desk: page, host, context }) => {
  await openDemo(page, "Check");
  await page.getByRole("button", { name: "Export…" }).click();
  await page.getByRole("button", { name: /^Write \d+ files?$/ }).click();
  await expect(page.getByRole("list", { name: "Written files" }).getByRole("link", { name: /^Download / })).toHaveCount(
    exportFormats.length,
    { timeout: 60_000 },
  );
  const [recording] = readdirSync(join(host.folder, "exports"));
  const folder = join(host.folder, "exports", recording!);
  const complaints: string[] = [];
  const index = await context.newPage();
  index.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
  await index.goto(`file://${join(folder, readdirSync(folder).find((name) => name.endsWith(".html"))!)}`);
  await expect(index.getByRole("heading", { level: 1 })).toContainText("Havelin Tarrow");
  await expect.poll(() => index.locator("video").evaluate((video: HTMLVideoElement) => video.readyState)).toBeGreaterThan(0);
  await index.locator("ol.chapters li", { hasText: "Underside" }).getByRole("button").click();
  await expect.poll(() => index.locator("video").evaluate((video: HTMLVideoElement) => video.currentTime)).toBeGreaterThan(60);
  await expect(index.locator(".open").first()).toBeVisible();
  expect(complaints).toEqual([]);
});
