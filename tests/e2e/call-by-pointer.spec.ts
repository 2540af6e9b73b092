import { expect, test } from "./support/host.ts";
import { importSecondVehicle } from "./support/second-vehicle.ts";
import { film } from "./support/steps.ts";

test.use({ permissions: ["clipboard-read", "clipboard-write"] });

test("the salesperson's whole job on the demo, by pointer", async ({ desk: page }) => {
  test.setTimeout(180_000);
  await page.getByRole("link", { name: /^Check / }).waitFor({ timeout: 60_000 });
  await importSecondVehicle(page);
  await page.getByRole("link", { name: "Call", exact: true }).click();
  const moments = page.getByRole("listbox", { name: "Moments" }).getByRole("option");
  const answer = page.getByRole("region", { name: "Answer" });

  await test.step("an example is asked, a moment chosen, played and told", async () => {
    await page.getByRole("button", { name: "underside", exact: true }).click();
    const zone = moments.filter({ hasText: "CK-2107" }).first();
    await zone.click();
    await answer.getByRole("button", { name: /^Play/ }).click();
    await expect.poll(async () => (await film(page)).time).toBeGreaterThan(60);
    await answer.getByRole("button", { name: "Copy the answer" }).click();
    await expect(answer.getByRole("status")).toHaveText("copied");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Stock CK-2107: underside from /);
  });

  await test.step("a double click plays; what was said with a doubt says so and has no sentence", async () => {
    await page.getByRole("combobox", { name: "Ask the library" }).fill("op-1988 fuel tank");
    await moments.filter({ hasText: "hedged" }).first().dblclick();
    await expect(page.getByRole("region", { name: /^Player, 1988 Ossler Pathmark/ })).toBeVisible();
    await expect(answer).toContainText("Said with a doubt");
    await expect(answer.getByRole("button", { name: "Copy the answer" })).toHaveCount(0);
  });

  await test.step("the conflict of a disputed claim is a click away, and it is that one", async () => {
    await page.getByRole("combobox", { name: "Ask the library" }).fill("front brakes");
    await moments.filter({ hasText: "in dispute" }).first().click();
    await answer.getByRole("link", { name: "See the conflict" }).click();
    await expect(page.getByRole("heading", { name: "Front brakes" })).toBeVisible();
    await page.goBack();
  });

  await test.step("two vehicles stand side by side, chosen from the list", async () => {
    await page.getByRole("combobox", { name: "Ask the library" }).fill("rear tire size");
    await page.getByRole("button", { name: "Compare vehicles" }).click();
    const table = page.getByRole("table");
    await expect(table.getByRole("row", { name: /^Rear tire size/ })).toContainText("215/70");
    await table.getByRole("button", { name: /215\/70/ }).click();
    await expect(answer).toContainText("Stock OP-1988: rear tire size 215/70");
    await page.getByRole("button", { name: /^Take away OP-1988/ }).click();
    await expect(table.getByRole("columnheader")).toHaveCount(2);
    await page.getByRole("combobox", { name: "Add a vehicle" }).click();
    await page.getByRole("option", { name: /OP-1988/ }).click();
    await expect(table.getByRole("columnheader")).toHaveCount(3);
    await page.getByRole("button", { name: "Ask the whole library" }).click();
    await expect(page.getByRole("combobox", { name: "Ask the library" })).toHaveValue("rear tire size");
  });

  await test.step("from a vehicle's row it is asked of that vehicle alone, with a way back to all", async () => {
    await page.getByRole("link", { name: "Library" }).click();
    await page.getByRole("link", { name: /^Call .*Havelin Tarrow/ }).click();
    await expect(page.getByRole("heading", { level: 1, name: /^Only 1971 Havelin Tarrow/ })).toBeVisible();
    const field = page.getByRole("combobox", { name: "Ask of this vehicle" });
    await field.fill("rear tire size");
    await expect(moments.first()).toContainText("CK-2107");
    await expect(moments.filter({ hasText: "OP-1988" })).toHaveCount(0);
    await field.fill("pathmark");
    await expect(page.getByText("Only this vehicle was asked of.")).toBeVisible();
    await page.getByRole("search").or(page.locator(".call-hints")).getByRole("button", { name: "Ask the whole library" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "The whole library" })).toBeVisible();
    await expect(moments.filter({ hasText: "OP-1988" }).first()).toBeVisible();
  });
});
