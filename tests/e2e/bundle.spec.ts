import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import type { Input, MethodName, Output } from "../../shared-types/index.ts";
import { expect, test } from "./support/host.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** A walk round an invented vehicle that is at one with itself. */
const walk = `WEBVTT

00:00.000 --> 00:06.000
Good morning, here is the 1988 Ossler Pathmark wagon.

00:06.000 --> 00:20.000
Come round to the passenger side, the rear tires are two thirty five sixty fifteens, all good.

00:20.000 --> 00:40.000
In the cabin, it's a five speed manual.

00:40.000 --> 00:52.000
Up on the lift now, underneath, the frame is clean.
`;

let folder: string;
test.beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwalk-bundle-"));
});
test.afterEach(() => rmSync(folder, { recursive: true, force: true }));
test.use({ withDemo: false });

/** Asks the host what the page's own client would ask, to lay the ground for what is then done by hand. */
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

async function offer(page: Page, name: string, text: string): Promise<string> {
  const reply = await page.evaluate(
    async ([file, body]) => (await fetch(`/files?name=${file}`, { method: "POST", body })).json() as Promise<{ value: { id: string } }>,
    [name, text] as const,
  );
  return reply.value.id;
}

async function imported(page: Page, title: string, stockNumber: string, words = walk): Promise<string> {
  const { id } = await call(page, "recording.import", {
    transcript: await offer(page, "walk.vtt", words),
    video: null,
    stockSheet: null,
    title,
    stockNumber,
    vehicle: { name: "Ossler Pathmark", year: 1988, bodyStyle: "sedan", drive: "left-hand" },
  });
  await call(page, "settings.set", { initials: "AB" });
  await page.reload();
  await expect(page.getByRole("link", { name: title, exact: true })).toBeVisible();
  return id;
}

const paint = (page: Page, recordingId: string, start: number, end: number, zone: "roof" | "cargo") =>
  call(page, "zone.paint", { recordingId, start, end, zone, title: null, initials: "AB" });

/** By keyboard: the menu of a row or of the library, and an item of it. */
async function pickByKeyboard(page: Page, menu: string, item: RegExp): Promise<void> {
  await page.getByRole("button", { name: menu }).focus();
  await page.keyboard.press("Enter");
  const wanted = page.getByRole("menuitem", { name: item });
  await expect(wanted).toBeVisible();
  for (let step = 0; step < 12; step += 1) {
    if (await wanted.evaluate((element) => element.hasAttribute("data-highlighted"))) break;
    await page.keyboard.press("ArrowDown");
  }
  await page.keyboard.press("Enter");
}

async function expectAccessible(page: Page): Promise<void> {
  await page.waitForTimeout(200);
  const { violations } = await new AxeBuilder({ page }).include('[role="dialog"]').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}

test("by keyboard, a recording goes out as one file and comes back with nothing lost, here and on another machine", async ({
  desk: page,
}) => {
  test.setTimeout(150_000);
  const id = await imported(page, "Ossler wagon", "OP-1");
  await paint(page, id, 10, 20, "roof");
  const before = await call(page, "recording.get", { id });

  await pickByKeyboard(page, "More for Ossler wagon", /Bundle for another machine/);
  const keep = page.getByRole("dialog", { name: "Bundle “Ossler wagon”" });
  await keep.getByRole("textbox", { name: "Folder" }).fill(folder);
  await expectAccessible(page);
  await keep.getByRole("button", { name: "Write the bundle" }).press("Enter");
  await expect(keep.getByRole("status")).toContainText("1 bundle written");
  const [name] = readdirSync(folder);
  await expect(keep.getByRole("list", { name: "Written" })).toContainText(name ?? "");
  await keep.getByRole("button", { name: "Write the bundle" }).press("Enter");
  await expect(keep.getByRole("status")).toContainText("0 bundles written, 1 unchanged");
  await page.keyboard.press("Escape");
  await expect(keep).toBeHidden();

  // Another machine takes it, and gives the very same bytes again.
  const run = (...args: string[]) =>
    spawnSync(process.execPath, [join(root, "electron/run.mjs"), "bundle", ...args], {
      encoding: "utf8",
      env: { ...process.env, INIT_CWD: folder },
    });
  expect(run("import", folder, "--library", join(folder, "other", "library.sqlite")).stdout).toContain("imported   “Ossler wagon”");
  expect(run("export", "--to", join(folder, "again"), "--all", "--library", join(folder, "other", "library.sqlite")).status).toBe(0);
  expect(readFileSync(join(folder, "again", name ?? "")).equals(readFileSync(join(folder, name ?? "")))).toBe(true);

  await call(page, "recording.remove", { id });
  await expect(page.getByRole("heading", { name: "No recordings yet" })).toBeVisible();
  await page.keyboard.press("b");
  const bring = page.getByRole("dialog", { name: "Bring in bundles" });
  await bring.getByRole("textbox", { name: /folder on this machine/ }).fill(folder);
  await bring.getByRole("button", { name: "Look in the folder" }).press("Enter");
  await expect(bring.getByRole("list", { name: "Bundles" })).toContainText("new here");
  await expectAccessible(page);
  await bring.getByRole("button", { name: "Bring in the new recording" }).press("Enter");
  await expect(bring.getByRole("list", { name: "Bundles" })).toContainText("brought in");
  await bring.getByRole("button", { name: "Look in the folder" }).press("Enter");
  await expect(bring.getByRole("list", { name: "Bundles" })).toContainText("already here, and nothing in it is otherwise");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("link", { name: "Ossler wagon", exact: true })).toBeVisible();
  expect(await call(page, "recording.get", { id })).toEqual(before);
});

test("by pointer, a dropped bundle that differs is shown, merged by choice, and one undo takes it back", async ({ desk: page }) => {
  test.setTimeout(150_000);
  const id = await imported(page, "Ossler wagon", "OP-1");
  await paint(page, id, 10, 20, "roof");
  await call(page, "bundle.keep", { ticket: crypto.randomUUID(), recordingIds: [id], withVideo: true, folder, overwrite: false });
  const [name = ""] = readdirSync(folder);
  const summary = (await call(page, "recording.get", { id })).summary;
  await call(page, "recording.describe", { id, title: "Ossler, renamed", stockNumber: "OP-1", vehicle: summary.vehicle });
  const here = await paint(page, id, 12, 30, "cargo");
  await page.reload();

  // Dropped into the import window's place for a transcript.
  await page.getByRole("button", { name: "Import a recording…" }).first().click();
  const bytes = readFileSync(join(folder, name));
  await page
    .getByRole("dialog", { name: "Import a recording" })
    .getByRole("group", { name: /Transcript/ })
    .locator("input[type=file]")
    .setInputFiles({ name, mimeType: "application/zip", buffer: bytes });
  const bring = page.getByRole("dialog", { name: "Bring in bundles" });
  await expect(bring.getByRole("listitem")).toContainText(/already here; \d+ things are otherwise/);
  await bring.getByRole("button", { name: "See what differs in Ossler wagon" }).click();
  const merge = page.getByRole("dialog", { name: "Merge “Ossler wagon”" });
  await expect(merge.getByRole("region", { name: "Title, stock number and vehicle" }).getByRole("row", { name: /^Title/ })).toContainText(
    "Ossler, renamed",
  );
  await expect(merge.getByRole("region", { name: "Zones" })).toContainText(/Load space.*AB, \d{4}-\d\d-\d\d/);
  await expectAccessible(page);
  await merge.getByRole("button", { name: "Merge", exact: true }).click();
  await expect(merge.getByRole("alert")).toContainText("Choose what counts for: Title, stock number and vehicle, Zones.");
  await merge.getByRole("button", { name: "Take the bundle's" }).click();
  await merge.getByRole("combobox", { name: /^What counts for title/ }).click();
  await page.getByRole("option", { name: "Keep what is here" }).click();
  await merge.getByRole("button", { name: "Merge", exact: true }).click();
  await expect(bring.getByRole("listitem")).toContainText("merged");
  await bring.getByRole("button", { name: "Close" }).click();

  const after = await call(page, "recording.get", { id });
  expect([after.summary.title, after.lap.some(({ zone, zoneSpanId }) => zone === "cargo" && zoneSpanId !== null)]).toEqual([
    "Ossler, renamed",
    false,
  ]);
  await page.getByRole("link", { name: "Ossler, renamed", exact: true }).click();
  await page.getByRole("button", { name: /Undo/ }).click();
  await expect.poll(async () => (await call(page, "recording.get", { id })).lap).toEqual(here.lap);
});

test("the lot: a sheet matched, a text by a template, and every ready recording indexed", async ({ desk: page }) => {
  test.setTimeout(150_000);
  const id = await imported(page, "Ossler wagon", "OP-1");
  await imported(
    page,
    "Ossler quarrel",
    "OP-2",
    `${walk}\n00:52.000 --> 01:00.000\nBack at the rear, the rear tires are two fifty five sixty fifteens.\n`,
  );

  await page.getByRole("button", { name: "Whole lot" }).click();
  await page.getByRole("menuitem", { name: /Match a sheet/ }).click();
  const sheet = page.getByRole("dialog", { name: "Match a sheet of the whole lot" });
  const lot = join(folder, "lot.csv");
  writeFileSync(lot, "Stock,Model Year,Keys\nop1,1988,2\nOP-3,1990,1\nOP-4,1991,1\nOP 4,1992,3\n");
  await sheet.locator("input[type=file]").setInputFiles(lot);
  await expect(sheet.getByRole("status").first()).toContainText(
    "1 of 4 rows matched; 3 without a recording, 1 recording without a row, 1 number twice.",
  );
  await expect(sheet.getByRole("list", { name: /twice/ })).toContainText("OP-4: lines 4, 5");
  await expect(sheet.getByRole("list", { name: "Recordings without a row" })).toContainText("OP-2, Ossler quarrel: No row has its number.");
  await expectAccessible(page);
  await sheet.getByRole("button", { name: "Give 1 row to its recording" }).click();
  await expect(sheet).toContainText("One recording has its row now");
  await sheet.getByRole("button", { name: "Close" }).click();
  await expect
    .poll(async () => (await call(page, "recording.get", { id })).stockSheet)
    .toEqual({ stock: "op1", "model year": "1988", keys: "2" });

  await page.getByRole("button", { name: "Whole lot" }).click();
  await page.getByRole("menuitem", { name: /Index text templates/ }).click();
  const templates = page.getByRole("dialog", { name: "Index text templates" });
  await expect(templates.getByRole("region", { name: "Preview" })).toContainText("1988 Ossler Pathmark, stock OP-");
  await templates.getByRole("textbox", { name: "Name" }).fill("Advert");
  await templates.getByRole("textbox", { name: "Text", exact: true }).fill("{vehicle} at {price}");
  await expect(templates.getByRole("list", { name: "What cannot be filled in" })).toContainText(
    "Line 1, column 14: There is no field “price”",
  );
  await expect(templates.getByRole("button", { name: "Keep this template" })).toBeDisabled();
  await templates.getByRole("textbox", { name: "Text", exact: true }).fill("Come and see: ");
  await templates.getByRole("button", { name: "{vehicle}", exact: true }).click();
  await expect(templates.getByRole("region", { name: "Preview" })).toContainText("Come and see: 1988 Ossler Pathmark");
  await expectAccessible(page);
  await templates.getByRole("button", { name: "Keep this template" }).click();
  await expect(templates.getByRole("status")).toContainText("“Advert” is kept.");
  await templates.getByRole("button", { name: "Close" }).click();

  await page.getByRole("button", { name: "Whole lot" }).click();
  await page.getByRole("menuitem", { name: /Index all/ }).click();
  const index = page.getByRole("dialog", { name: "Index all that is ready" });
  await expect(index).toContainText("1 recording goes out; 1 is not ready.");
  await index.getByText(/^Not ready/).click();
  await expect(index.getByRole("list", { name: "Not ready" })).toContainText("1 conflict is open");
  await index.getByRole("combobox", { name: /by the template/ }).click();
  await page.getByRole("option", { name: "Advert" }).click();
  await index.getByRole("textbox", { name: "Folder" }).fill(join(folder, "out"));
  await expectAccessible(page);
  await index.getByRole("button", { name: "Index 1 recording" }).click();
  // A page, the same on paper, a table, JSON, the chapters, the record, and the text.
  await expect(index.getByRole("list", { name: "Written" })).toContainText("Ossler wagon: 7 files in", { timeout: 60_000 });
  const [place = ""] = readdirSync(join(folder, "out"));
  expect(readFileSync(join(folder, "out", place, "op-1-ossler-wagon.advert.text.txt"), "utf8")).toMatch(
    /^Come and see: 1988 Ossler Pathmark\n/,
  );
  const pdf = readFileSync(join(folder, "out", place, "op-1-ossler-wagon.condition-index.pdf")).toString("latin1");
  expect(pdf.startsWith("%PDF-")).toBe(true);
});
