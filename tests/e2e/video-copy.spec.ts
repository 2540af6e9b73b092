import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { missingTools, toolPath } from "../support/runner/find-tools.ts";
import { expect, test } from "./support/host.ts";
import { openDemo } from "./support/steps.ts";

const missing = missingTools("ffmpeg", "ffprobe", "mkvinfo");
test.skip(missing !== null || process.platform === "win32", `copies are made and read by ${missing ?? "a shell's ffmpeg"}`);

/** FFmpeg as it is on a slow disk: it tells a second of progress, and takes two to begin. */
let slow: string;
const former = process.env.ROUNDWALK_FFMPEG;
test.beforeAll(() => {
  slow = mkdtempSync(join(tmpdir(), "roundwalk-slow-"));
  const program = join(slow, "ffmpeg");
  writeFileSync(program, `#!/bin/sh\necho out_time_us=1000000\nsleep 2\nexec "${toolPath("ffmpeg")}" "$@"\n`);
  chmodSync(program, 0o755);
  process.env.ROUNDWALK_FFMPEG = program;
});
test.afterAll(() => {
  rmSync(slow, { recursive: true, force: true });
  if (former === undefined) delete process.env.ROUNDWALK_FFMPEG;
  else process.env.ROUNDWALK_FFMPEG = former;
});

const hashOf = (file: string): string => createHash("sha256").update(readFileSync(file)).digest("hex");

test("by keyboard, the copy is followed, cancelled without a trace, made, asked about, and read by other programs", async ({
  desk: page,
  host,
}) => {
  test.setTimeout(120_000);
  await openDemo(page, "Check");
  await expect(page.getByText(/[1-9]\d* left of/).first()).toBeVisible({ timeout: 30_000 });
  await page.getByRole("button", { name: "Export…" }).press("Enter");
  const dialog = page.getByRole("dialog", { name: "Export" });
  const copy = dialog.getByRole("region", { name: "The video with its chapters inside" });
  const exportsFolder = join(host.folder, "exports");
  const inFolder = () => {
    try {
      return readdirSync(exportsFolder, { recursive: true, encoding: "utf8" }).filter((name) => /\.(webm|part)$/.test(name));
    } catch {
      return [];
    }
  };
  await copy.getByRole("checkbox", { name: /captions put right as a track/ }).press("Space");
  await copy.getByRole("button", { name: "Make the copy" }).press("Enter");
  await expect(copy.getByRole("progressbar", { name: "Copying the video" })).toBeVisible();
  await expect(copy.getByRole("status")).toContainText("copying the video");
  await copy.getByRole("button", { name: "Cancel" }).press("Enter");
  await expect(copy).toContainText("The copy was cancelled. Nothing was left behind, and the original is as it was.");
  expect(inFolder()).toEqual([]);

  const demo = new URL("../../fixtures/demo/demo.webm", import.meta.url).pathname;
  const before = hashOf(demo);
  await copy.getByRole("button", { name: "Make the copy" }).press("Enter");
  await expect(copy.getByRole("status")).toContainText(/^Made, \d+(\.\d)? MB\./, { timeout: 30_000 });
  const { violations } = await new AxeBuilder({ page }).include('[role="dialog"]').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  const [name = ""] = inFolder();
  const file = join(exportsFolder, name);
  const probed = JSON.parse(
    execFileSync("ffprobe", ["-v", "error", "-show_chapters", "-show_streams", "-of", "json", file], { encoding: "utf8" }),
  ) as { chapters: { start_time: string; tags: { title: string } }[]; streams: { codec_type: string }[] };
  expect(probed.chapters.length).toBeGreaterThan(8);
  expect(Number(probed.chapters[0]?.start_time)).toBe(0);
  expect(probed.chapters.some(({ tags }) => tags.title.includes("[open conflict"))).toBe(true);
  expect(probed.streams.map(({ codec_type }) => codec_type)).toEqual(["video", "audio", "subtitle"]);
  const told = execFileSync("mkvinfo", ["--ui-language", "en_US", file], { encoding: "utf8" });
  expect(told.match(/Chapter atom/g)).toHaveLength(probed.chapters.length);
  expect(hashOf(demo)).toBe(before);

  // One that is there is asked about; the safe answer has the focus, and keeps it.
  const made = hashOf(file);
  await copy.getByRole("button", { name: "Make the copy" }).press("Enter");
  const ask = page.getByRole("alertdialog", { name: "Overwrite the last copy?" });
  await expect(ask.getByRole("button", { name: "Keep it" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(ask).toHaveCount(0);
  expect(hashOf(file)).toBe(made);
  const download = page.waitForEvent("download");
  await copy.getByRole("button", { name: "Make the copy" }).press("Enter");
  await ask.getByRole("button", { name: "Overwrite" }).press("Enter");
  await expect(copy.getByRole("status")).toContainText(/^Made, /, { timeout: 30_000 });
  await copy.getByRole("link", { name: "Download the copy" }).press("Enter");
  expect(hashOf(await (await download).path())).toBe(hashOf(file));
});
