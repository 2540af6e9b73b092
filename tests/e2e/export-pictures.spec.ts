import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import type { Input, MethodName, Output } from "../../shared-types/index.ts";
import { missingTools } from "../support/runner/find-tools.ts";
import { expect, test } from "./support/host.ts";
import { openDemo } from "./support/steps.ts";

// A machine without FFmpeg: the pictures of an index come from the page's own player.

const demoVideo = fileURLToPath(new URL("../../fixtures/demo/demo.webm", import.meta.url));
const former = process.env.ROUNDWALK_FFMPEG;
test.beforeAll(() => {
  process.env.ROUNDWALK_FFMPEG = join(tmpdir(), "there-is-no-ffmpeg-here");
});
test.afterAll(() => {
  if (former === undefined) delete process.env.ROUNDWALK_FFMPEG;
  else process.env.ROUNDWALK_FFMPEG = former;
});

async function call<Name extends MethodName>(page: Page, name: Name, input: Input<Name>): Promise<Output<Name>> {
  const reply = await page.evaluate(
    async ([method, body]) => {
      const answer = await fetch(`/rpc/${method}`, { method: "POST", headers: { "content-type": "application/json" }, body });
      return (await answer.json()) as { ok: boolean; value: unknown };
    },
    [name, JSON.stringify(input)] as const,
  );
  expect(reply, JSON.stringify(reply).slice(0, 500)).toMatchObject({ ok: true });
  return reply.value as Output<Name>;
}

/** A host that takes its time to keep a picture, so that somebody can see what happens and end it. */
async function keepSlowly(page: Page, milliseconds: number): Promise<void> {
  await page.route("**/rpc/still.keep", async (route) => {
    await new Promise((next) => setTimeout(next, milliseconds));
    await route.continue();
  });
}

interface Shown {
  readonly width: number;
  /** Red, green and blue of 16 by 9 fields. */
  readonly fields: number[];
}

/** What Chromium shows of the pictures of a page that stands alone. */
async function picturesOf(page: Page, file: string): Promise<Shown[]> {
  const alone = await page.context().newPage();
  await alone.goto(pathToFileURL(file).href);
  const shown = await alone.locator("img").evaluateAll((images) =>
    images.map((image) => {
      const canvas = document.createElement("canvas");
      canvas.width = 16;
      canvas.height = 9;
      const pen = canvas.getContext("2d")!;
      pen.drawImage(image as HTMLImageElement, 0, 0, 16, 9);
      const fields = Array.from(pen.getImageData(0, 0, 16, 9).data).filter((_, at) => at % 4 !== 3);
      return { width: (image as HTMLImageElement).naturalWidth, fields };
    }),
  );
  await alone.close();
  return shown;
}

const apart = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, at) => sum + Math.abs(value - (b[at] ?? 0)), 0) / a.length;

/** The same moment by FFmpeg, as 16 by 9 fields. */
function fieldsByFfmpeg(seconds: number): number[] {
  const args = ["-v", "error", "-ss", String(seconds), "-i", demoVideo, "-frames:v", "1", "-vf", "scale=16:9:flags=area"];
  return [...execFileSync("ffmpeg", [...args, "-pix_fmt", "rgb24", "-f", "rawvideo", "-"])];
}

function written(folder: string, ending: string): string[] {
  try {
    const names = readdirSync(folder, { recursive: true, encoding: "utf8" });
    return names.filter((name) => name.endsWith(ending)).map((name) => join(folder, name));
  } catch {
    return [];
  }
}

test("by keyboard: they are seen being taken, can be ended, go on where they stopped, and show their moments", async ({
  desk: page,
  host,
}) => {
  test.setTimeout(150_000);
  await openDemo(page, "Check");
  // The demo is analyzed while the page already stands.
  await expect(page.getByText(/[1-9]\d* left of/).first()).toBeVisible({ timeout: 30_000 });
  const [{ id: recordingId } = { id: "" }] = await call(page, "recording.list", {});
  const { moments, hostTakes } = await call(page, "still.wanted", { recordingId });
  expect(hostTakes).toBe(false);
  expect(moments.length).toBeGreaterThan(8);
  await keepSlowly(page, 900);
  await page.getByRole("button", { name: "Export…" }).press("Enter");
  const dialog = page.getByRole("dialog", { name: "Export" });
  await expect(dialog.getByRole("region", { name: "The video with its chapters inside" })).toContainText(
    "This needs FFmpeg, and none was found.",
  );
  await dialog.getByRole("button", { name: "Choose none" }).press("Enter");
  await dialog.getByRole("button", { name: /^Show \d files of Condition index$/ }).press("Enter");
  await dialog.getByRole("checkbox", { name: "Condition index, page" }).press("Space");
  await dialog.getByRole("button", { name: "Write 1 file" }).press("Enter");
  await expect(dialog.getByRole("status")).toContainText(new RegExp(`Taking pictures from the video of “.*”: [1-9] of ${moments.length}`));
  await expect(dialog.getByRole("progressbar", { name: "Taking pictures" })).toBeVisible();
  await expect(dialog.locator(".pictures-last img")).toHaveJSProperty("naturalWidth", 640);
  const { violations } = await new AxeBuilder({ page }).include('[role="dialog"]').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await dialog.getByRole("button", { name: "Cancel" }).press("Enter");
  await expect(dialog.getByRole("status").last()).toHaveText("Cancelled. No file was written; the pictures taken so far are kept.");
  const exportsFolder = join(host.folder, "exports");
  expect(written(exportsFolder, ".html")).toEqual([]);
  const left = (await call(page, "still.wanted", { recordingId })).moments.length;
  expect(left).toBeLessThan(moments.length);
  expect(left).toBeGreaterThan(0);

  await page.unroute("**/rpc/still.keep");
  await dialog.getByRole("button", { name: "Write 1 file" }).press("Enter");
  await expect(dialog.getByRole("status").last()).toHaveText("1 file written.", { timeout: 60_000 });
  expect((await call(page, "still.wanted", { recordingId })).moments).toEqual([]);
  await expect(dialog.getByRole("list", { name: "Written files" })).not.toContainText(/picture/);
  const [file = ""] = written(exportsFolder, ".html");
  const shown = await picturesOf(page, file);
  expect(shown.map(({ width }) => width)).toEqual(moments.map(() => 640));
  // Each of its own moment: no two alike, and alike to what another program finds there.
  for (const [position, { fields }] of shown.entries()) {
    for (const other of shown.slice(position + 1)) expect(apart(fields, other.fields)).toBeGreaterThan(1);
    if (missingTools("ffmpeg") === null)
      expect(apart(fields, fieldsByFfmpeg((moments[position] ?? 0) / 1000)), `at ${moments[position]} ms`).toBeLessThan(12);
  }
});

test("a finding's picture is taken too; what cannot be read is told, and the files are written all the same", async ({
  desk: page,
  host,
}) => {
  test.setTimeout(120_000);
  await openDemo(page, "Check");
  // The demo is analyzed while the page already stands.
  await expect(page.getByText(/[1-9]\d* left of/).first()).toBeVisible({ timeout: 30_000 });
  const [{ id: recordingId } = { id: "" }] = await call(page, "recording.list", {});
  const { findingProposals } = await call(page, "recording.get", { id: recordingId });
  const key = findingProposals[3]?.key ?? "";
  const before = (await call(page, "still.wanted", { recordingId })).moments;
  await call(page, "finding.accept", { recordingId, proposalKeys: [key], initials: "AB" });
  const wanted = (await call(page, "still.wanted", { recordingId })).moments;
  expect(wanted.length).toBe(before.length + 1);
  const write = async (before: () => Promise<unknown>) => {
    await page.reload();
    await page.getByRole("button", { name: "Export…" }).click();
    const dialog = page.getByRole("dialog", { name: "Export" });
    await dialog.getByRole("button", { name: "Choose none" }).click();
    await dialog.getByRole("button", { name: /^Show \d files of Condition index$/ }).click();
    await dialog.getByRole("checkbox", { name: "Condition index, page" }).click();
    await before();
    await dialog.getByRole("button", { name: "Write 1 file" }).click();
    return dialog;
  };
  // The desk's own player has its film by now; the one that pictures are taken of finds none.
  const failing = await write(() =>
    page.route("**/media/*", (route) => route.fulfill({ status: 200, contentType: "video/webm", body: "no film" })),
  );
  await expect(failing.getByRole("status").last()).toContainText(
    `1 file written. ${wanted.length} pictures could not be taken. The video cannot be read here.`,
  );
  await expect(failing.getByRole("list", { name: "Written files" })).toContainText(
    `${wanted.length} pictures are missing: FFmpeg, which takes them from the video, was not found`,
  );
  await page.unroute("**/media/*");
  const whole = await write(async () => {});
  await page.getByRole("button", { name: "Overwrite" }).click({ timeout: 60_000 });
  await expect(whole.getByRole("status").last()).toHaveText("1 file written.", { timeout: 60_000 });
  const [file = ""] = written(join(host.folder, "exports"), ".html");
  expect(await picturesOf(page, file)).toHaveLength(wanted.length);
  expect(readFileSync(file, "utf8")).toMatch(/<li class="finding pictured/);
});

test("of a whole lot they are taken for each recording before its files, PDFs with them", async ({ desk: page }) => {
  test.setTimeout(150_000);
  const folder = mkdtempSync(join(tmpdir(), "roundwalk-lot-"));
  try {
    await expect(page.getByRole("link", { name: /^Check / })).toBeVisible({ timeout: 60_000 });
    const [{ id } = { id: "" }] = await call(page, "recording.list", {});
    await expect
      .poll(async () => (await call(page, "still.wanted", { recordingId: id })).moments.length, { timeout: 30_000 })
      .toBeGreaterThan(8);
    await page.getByRole("button", { name: "Whole lot" }).click();
    await page.getByRole("menuitem", { name: /Index all/ }).click();
    const dialog = page.getByRole("dialog", { name: "Index all that is ready" });
    await dialog.getByText(/^Not ready/).click();
    await dialog.getByRole("list", { name: "Not ready" }).getByRole("checkbox").click();
    await dialog.getByRole("combobox", { name: "Paper of PDFs" }).click();
    await page.getByRole("option", { name: "A4", exact: true }).click();
    await dialog.getByRole("textbox", { name: "Folder" }).fill(folder);
    await keepSlowly(page, 900);
    await dialog.getByRole("button", { name: "Index 1 recording" }).click();
    await expect(dialog.getByRole("status").last()).toContainText(/Taking pictures from the video of “.*Tarrow.*”: [1-9] of/);
    await dialog.getByRole("button", { name: "Cancel" }).click();
    await expect(dialog.getByText("Cancelled. No file was written; the pictures taken so far are kept.")).toBeVisible();
    expect(readdirSync(folder)).toEqual([]);
    await page.unroute("**/rpc/still.keep");
    await dialog.getByRole("button", { name: "Index 1 recording" }).click();
    await expect(dialog.getByRole("list", { name: "Written" })).toContainText(/: 6 files in/, { timeout: 90_000 });
    const [html = ""] = written(folder, ".html");
    expect((await picturesOf(page, html)).length).toBeGreaterThan(8);
    const [pdf = ""] = written(folder, ".pdf");
    const bytes = readFileSync(pdf).toString("latin1");
    // ISO 216 A4 in points, and the pictures as JPEG (ISO 32000-1, 7.4.8: DCTDecode).
    expect(bytes).toMatch(/\/MediaBox \[0 0 594\.9\d* 841\.9\d*\]/);
    expect(bytes.match(/\/DCTDecode/g)?.length ?? 0).toBeGreaterThan(8);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
