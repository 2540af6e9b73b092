import { expect, test } from "./support/host.ts";
import { openDemo } from "./support/steps.ts";

test("the reviewer's whole job on the demo, by pointer", async ({ desk: page }) => {
  test.setTimeout(180_000);
  await openDemo(page, "Check");
  const nav = page.getByRole("navigation", { name: "What to check" });
  const queue = page.getByRole("list", { name: "Conflicts by weight" }).getByRole("button");
  const all = await queue.count();
  const left = nav.getByRole("status");

  await test.step("the queue is narrowed by its lists", async () => {
    await page.getByRole("combobox", { name: "Kind of conflict" }).click();
    await page.getByRole("option", { name: "Measure" }).click();
    await expect.poll(() => queue.count()).toBeLessThan(all);
    await expect(queue.filter({ hasText: "Rear tire size" })).toBeVisible();
    await page.getByRole("combobox", { name: "Zone where it was said" }).click();
    await page.getByRole("option", { name: "Underside" }).click();
    await expect(queue).toHaveCount(1);
    await expect(queue).toContainText("Axle ratio");
    await page.getByRole("button", { name: "Show every one" }).click();
    await expect(queue).toHaveCount(all);
  });

  await test.step("a conflict is heard, ruled a recognizer's error, and shown settled", async () => {
    await queue.filter({ hasText: "Front brakes" }).click();
    await expect(page.getByRole("heading", { name: "Front brakes" })).toBeVisible();
    await page.getByRole("button", { name: "Hear A" }).click();
    await expect
      .poll(() =>
        page
          .locator("video")
          .first()
          .evaluate((film) => (film as HTMLVideoElement).paused),
      )
      .toBe(false);
    await page.getByText("Recognizer's error").click();
    await page.getByText(/^A: /).click();
    await expect(page.getByLabel("The right words")).not.toHaveValue("");
    await expect(page.getByText(/^In place of “/)).toBeVisible();
    await page.getByLabel("The right words").fill("front discs");
    await page.getByLabel("Reason").fill("Heard again, and looked at.");
    await page.getByRole("button", { name: "Decide", exact: true }).click();
    await page.getByRole("textbox", { name: "Initials" }).fill("RT");
    await page.getByRole("button", { name: "Use these initials" }).click();
    await expect(left).toContainText(`${all - 1} left of ${all}`);
    await expect(page.locator(".side[data-settled]")).toHaveCount(2);
    await page.getByRole("button", { name: "Settled", exact: true }).click();
    await expect(queue).toHaveCount(1);
    await page.getByRole("button", { name: "All", exact: true }).click();
    await expect(queue).toHaveCount(all);
  });

  await test.step("promises, the stock sheet and what was never said stand under their own headings", async () => {
    for (const name of ["Promises", "What the stock sheet says", "Questions", "Doubtful captions"])
      await expect(nav.getByRole("region", { name })).toBeVisible();
    await nav.getByRole("region", { name: "Promises" }).getByRole("button").first().click();
    await expect(page.getByText("A hint for review, not legal advice.")).toBeVisible();
    await expect(page.locator(".side-quote mark")).toHaveText("it's sixty one thousand two hundred and forty");
  });

  await test.step("a denial and a question are noted as seen, each with its reason", async () => {
    for (const [region, item] of [
      ["What the stock sheet says", /^Title status/],
      ["Questions", /^VIN/],
    ] as const) {
      await nav.getByRole("region", { name: region, exact: true }).getByRole("button", { name: item }).click();
      const form = page.getByRole("form", { name: "Note" });
      await form.getByText("Seen, because…").click();
      await form.getByRole("button", { name: "Note as seen" }).click();
      await expect(form.getByText("Say why, for whoever reads the record later.")).toBeVisible();
      await form.getByRole("textbox", { name: "Reason" }).fill("Seen on the vehicle.");
      await form.getByRole("button", { name: "Note as seen" }).click();
      await expect(page.getByRole("region", { name: "Notes" })).toContainText("Seen on the vehicle.");
      await expect(nav.getByRole("button", { name: item })).toContainText("seen by RT");
    }
    // Undone from the top: it waits again, and what was noted stays to be read.
    await page.getByRole("button", { name: "Undo", exact: true }).click();
    await expect(nav.getByRole("button", { name: /^VIN/ })).toContainText("open");
    await expect(page.getByRole("region", { name: "Notes" })).toContainText("superseded");
  });

  await test.step("what is open is a click away from the publishing place, and it is published knowing it", async () => {
    await nav.getByRole("button", { name: /^Not ready to publish/ }).click();
    await page.getByRole("link", { name: "Axle ratio" }).click();
    await expect(page.getByRole("heading", { name: "Axle ratio" })).toBeVisible();
    await nav.getByRole("button", { name: /^Not ready to publish/ }).click();
    await page.getByRole("button", { name: /^Publish with/ }).click();
    await page.getByRole("button", { name: "Publish all the same" }).click();
    await expect(nav.getByRole("button", { name: /^Not ready to publish/ })).toContainText(
      `by RT, with ${all - 1} conflicts open and 5 other matters not dealt with`,
    );
  });

  await test.step("the ruling stands in the index and at the Call desk at once", async () => {
    await page.getByRole("link", { name: "Call", exact: true }).click();
    await page.getByRole("combobox", { name: "Ask the library" }).fill("drum brakes");
    const misheard = page.getByRole("option", { name: /overruled/ });
    await expect(misheard.first()).toBeVisible();
    await misheard.first().click();
    await expect(page.getByRole("region", { name: "Answer" })).toContainText("Misheard; said: “front discs”");
    await expect(page.getByRole("button", { name: "Copy the answer" })).toHaveCount(0);
  });
});
