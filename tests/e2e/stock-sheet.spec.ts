import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./support/host.ts";

/** A walk round an invented vehicle, whose mileage is told twice and whose keys are never told. */
const walk = `WEBVTT

00:00.000 --> 00:06.000
Good morning, here is the 1988 Ossler Pathmark wagon, it's showing sixty one thousand miles.

00:06.000 --> 00:20.000
Come round to the passenger side, the rear tires are two thirty five sixty fifteens, all good.

00:20.000 --> 00:40.000
In the cabin, it's a five speed manual.

00:40.000 --> 00:52.000
Up on the lift now, underneath, the frame is clean.
`;

/** Two vehicles; “Tacho” and “Ref” mean nothing to anybody, and “Intake price” is near a price. */
const lot = [
  "Ref,Year,Tacho,Rear tires,Transmission,Keys,Intake price",
  "OP-1,1988,61240,255/60R15,5-speed manual,2,4100",
  "OP-2,1990,99000,215/70R15,automatic,1,2100",
].join("\n");

let folder: string;
test.beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwalk-sheet-"));
});
test.afterEach(() => rmSync(folder, { recursive: true, force: true }));
test.use({ withDemo: false });

function file(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

async function fillImport(page: Page, { title, stockNumber, words = walk }: { title: string; stockNumber: string; words?: string }) {
  await page.getByRole("button", { name: "Import a recording…" }).first().click();
  const dialog = page.getByRole("dialog", { name: "Import a recording" });
  const slot = (name: RegExp) => dialog.getByRole("group", { name }).locator("input[type=file]");
  await slot(/Transcript/).setInputFiles(file("walk.vtt", words));
  await slot(/Stock sheet/).setInputFiles(file("lot.csv", lot));
  await dialog.getByLabel(/Title/).fill(title);
  await dialog.getByLabel(/Stock number/).fill(stockNumber);
  await dialog.getByRole("button", { name: "Import", exact: true }).press("Enter");
  return dialog;
}

/** Answers for a column by keyboard alone: opens the list, types the answer's first letters, takes it. */
async function answer(page: Page, columns: Locator, name: string, words: string): Promise<void> {
  const choice = columns.getByRole("combobox", { name: `${name} means` });
  await choice.focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("option", { name: words, exact: true })).toBeVisible();
  await page.keyboard.type(words, { delay: 15 });
  await page.keyboard.press("Enter");
  await expect(choice).toContainText(words);
}

test("a lot's columns are chosen once by keyboard, remembered, and chosen otherwise later", async ({ desk: page, host }) => {
  test.setTimeout(150_000);
  await fillImport(page, { title: "Ossler wagon", stockNumber: "OP-1" });
  const columns = page.getByRole("dialog", { name: "What the stock sheet's columns mean" });
  await expect(columns.getByRole("listitem").filter({ hasText: "Tacho" })).toContainText("“61240”, “99000”");
  await expect(columns.getByRole("listitem").filter({ hasText: "Intake price" })).toContainText("Perhaps Asking price");
  // The doubt is not passed over.
  await columns.getByRole("button", { name: "Use these columns" }).press("Enter");
  await expect(columns.getByRole("alert")).toContainText("Choose what “Intake price” means, or leave it out.");
  await answer(page, columns, "Ref", "Stock number");
  await answer(page, columns, "Tacho", "Mileage, miles");
  await answer(page, columns, "Intake price", "Leave out");
  await columns.getByRole("button", { name: "Use these columns" }).press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: "Ossler wagon" })).toBeVisible();

  await page.getByRole("link", { name: "Check", exact: true }).click();
  const sheet = page.getByRole("region", { name: "What the stock sheet says" });
  await expect(sheet.getByRole("region", { name: /says otherwise/ })).toContainText("Rear tires");
  const supports = sheet.getByRole("region", { name: /bears out/ });
  await supports.getByRole("button", { name: /^Mileage/ }).press("Enter");
  await expect(page.getByRole("article")).toContainText("61,000 mi");
  await expect(page.getByRole("article")).toContainText("as far as the spoken figure goes");
  await expect(page.getByRole("article").getByRole("button", { name: /^Hear 0:0/ })).toBeVisible();
  await sheet.getByRole("button", { name: /^Number of keys/ }).press("Enter");
  await expect(page.getByRole("article")).toContainText("no claim says how many");

  // The next vehicle out of the same sheet is asked nothing, also after a restart.
  const again = await host.restart();
  await page.goto(again.address);
  await fillImport(page, { title: "Second wagon", stockNumber: "op 2", words: walk.replace("Good morning", "Good evening") });
  await expect(page.getByRole("heading", { level: 1, name: "Second wagon" })).toBeVisible();
  await page.getByRole("link", { name: "Check", exact: true }).click();
  await expect(sheet.getByRole("region", { name: /says otherwise/ })).toContainText(/sheet: 99000, said: .* at 0:0\d/);

  // A person thinks otherwise of a column: the recordings are read anew.
  await sheet.getByRole("button", { name: "Columns…" }).press("Enter");
  await answer(page, columns, "tacho", "Leave out");
  await columns.getByRole("button", { name: "Use these columns" }).press("Enter");
  await expect(sheet.getByRole("region", { name: /says otherwise/ })).not.toContainText("sheet 99000");
});

test("a number that no row has is told beside the sheet, and nothing is imported", async ({ desk: page }) => {
  const dialog = await fillImport(page, { title: "Ossler wagon", stockNumber: "OP-9" });
  const columns = page.getByRole("dialog", { name: "What the stock sheet's columns mean" });
  await answer(page, columns, "Ref", "Stock number");
  await answer(page, columns, "Intake price", "Leave out");
  await columns.getByRole("button", { name: "Use these columns" }).press("Enter");
  const slot = dialog.getByRole("group", { name: /Stock sheet/ });
  await expect(slot.getByRole("alert")).toContainText("none of the 2 rows has the stock number “OP-9” under “Ref”");

  // Whoever chose wrongly chooses again, before anything is in the library.
  await slot.getByRole("button", { name: "Columns…" }).press("Enter");
  await answer(page, columns, "Ref", "Leave out");
  await columns.getByRole("button", { name: "Use these columns" }).press("Enter");
  await expect(columns).toBeHidden();
  await dialog.getByRole("button", { name: "Import", exact: true }).press("Enter");
  await expect(slot.getByRole("alert")).toContainText("no column is known to hold stock numbers");
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(page.getByRole("heading", { name: "No recordings yet" })).toBeVisible();
});
