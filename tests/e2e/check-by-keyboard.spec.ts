import { expect, test } from "./support/host.ts";
import { openDemo } from "./support/steps.ts";

/** What the queue shows, from the top. */
const topics = "nav[aria-label='What to check'] ol[aria-label='Conflicts by weight'] .queue-title";

test("the reviewer's whole job on the demo, without the mouse", async ({ desk: page }) => {
  test.setTimeout(240_000);
  await openDemo(page, "Check");
  const queue = page.locator(topics);
  const all = await queue.count();
  expect(all).toBeGreaterThanOrEqual(6);
  // The demo's sheet denies two claims; three promises are heard, and nobody speaks of the VIN.
  const matters = 6;
  const left = page.getByRole("navigation", { name: "What to check" }).getByRole("status");

  await test.step("the queue is narrowed and widened by keys", async () => {
    const kind = page.getByRole("combobox", { name: "Kind of conflict" });
    await page.keyboard.press("k");
    await expect(kind).not.toContainText("Any kind");
    const ofKind = await queue.count();
    expect(ofKind).toBeGreaterThan(0);
    expect(ofKind).toBeLessThan(all);
    await page.keyboard.press("Shift+K");
    await expect(kind).toContainText("Any kind");
    await page.keyboard.press("z");
    await expect(page.getByRole("combobox", { name: "Zone where it was said" })).not.toContainText("Any zone");
    await expect.poll(() => queue.count()).toBeLessThan(all);
    await page.keyboard.press("w");
    await expect(page.getByRole("combobox", { name: "Weight" })).not.toContainText("Any weight");
    await page.keyboard.press("x");
    await expect.poll(() => queue.count()).toBe(all);
    await page.keyboard.press("o");
    await expect(page.getByRole("button", { name: "Settled", exact: true })).toHaveAttribute("aria-pressed", "true");
    await expect(page.getByText("No conflict is settled yet.")).toBeVisible();
    await page.keyboard.press("Shift+O");
    await expect.poll(() => queue.count()).toBe(all);
  });

  await test.step("both moments are heard, one after the other", async () => {
    await page.keyboard.press("a");
    const playing = () => page.locator("video").evaluateAll((films) => films.map((film) => !(film as HTMLVideoElement).paused));
    await expect.poll(playing).toEqual([true, false]);
    await page.keyboard.press("b");
    await expect.poll(playing).toEqual([false, true]);
    await page.keyboard.press("s");
    await expect.poll(playing).toEqual([false, false]);
  });

  await test.step("a misheard side chosen by its digit is corrected by another, and Tab goes on to its words", async () => {
    await page.keyboard.press("4");
    await page.keyboard.press("6");
    await page.keyboard.press("7");
    await expect(page.getByRole("radio", { name: /^B: / })).toBeFocused();
    await expect(page.getByRole("radio", { name: /^B: / })).toBeChecked();
    await expect(page.getByLabel("The right words")).not.toHaveValue(/[67]$/);
    await page.keyboard.press("Tab");
    await page.keyboard.type("as it was said");
    await expect(page.getByLabel("The right words")).toHaveValue("as it was said");
    await page.keyboard.press("Shift+Tab");
  });

  await test.step("a conflict is settled with a reason, signed, undone and settled again", async () => {
    await page.keyboard.press("2");
    await page.keyboard.type("Read on the pad of the block.");
    await page.keyboard.press("Control+Enter");
    await page.getByRole("textbox", { name: "Initials" }).waitFor();
    await page.keyboard.type("RT");
    await page.keyboard.press("Enter");
    await expect(left).toContainText(`${all - 1} left of ${all}`);
    await page.keyboard.press("Control+z");
    await expect(left).toContainText(`${all} left of ${all}`);
    await page.keyboard.press("Control+Shift+Z");
    await expect(left).toContainText(`${all - 1} left of ${all}`);
  });

  await test.step("publishing names what is open, asks once, and keeps it", async () => {
    await page.keyboard.press("p");
    await expect(page.getByRole("heading", { name: "Not ready to publish" })).toBeVisible();
    await expect(page.getByText(`${all - 1} conflicts are open, of ${all}.`)).toBeVisible();
    await expect(page.getByText("Nobody has dealt with 2 denials by the stock sheet, 3 promises and 1 question.")).toBeVisible();
    await page.keyboard.press("Shift+P");
    const asked = page.getByRole("alertdialog", { name: new RegExp(`^Publish with ${all - 1} conflicts, and .* open\\?$`) });
    // Every open conflict by its name, and every denial, promise and question that nobody has dealt with.
    await expect(asked.getByRole("listitem")).toHaveCount(all - 1 + matters);
    await expect(asked).toContainText("Title status: the stock sheet says rebuilt");
    await page.keyboard.press("Escape");
    await expect(page.getByText("Never.")).toBeVisible();
    await page.keyboard.press("Shift+P");
    await expect(asked).toBeVisible();
    await expect(asked.getByRole("button", { name: "Do not publish" })).toBeFocused();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect(page.getByRole("list", { name: "Publications" }).getByRole("listitem")).toHaveText(
      new RegExp(`^Published .* UTC by RT, with ${all - 1} conflicts open and ${matters} other matters not dealt with\\.`),
    );
  });

  await test.step("the rest is settled, one open conflict after the other", async () => {
    for (let open = all - 1; open > 0; open--) {
      await page.keyboard.press("n");
      await expect(page.getByRole("article").getByText("in dispute", { exact: true })).toBeVisible();
      await page.keyboard.press("1");
      await page.getByLabel("Reason").waitFor();
      await page.keyboard.type("Looked at on the lift.");
      await page.keyboard.press("Control+Enter");
      await expect(left).toContainText(`${open - 1} left of ${all}`);
      // The field goes with the ruling; the keys are the desk's again.
      await page.keyboard.press("Escape");
    }
  });

  await test.step("a denial is noted as seen, opened again, undone; a superseded note stays in sight", async () => {
    await page.keyboard.press("p");
    await expect(page.getByRole("heading", { name: "Not ready to publish" })).toBeVisible();
    await expect(page.getByText(`All ${all} were settled by RT`)).toBeVisible();
    await page.keyboard.press("n");
    await expect(page.getByRole("heading", { name: "Title status" })).toBeVisible();
    const chip = page.getByRole("article").locator("header .chip");
    await expect(chip).toHaveText("open");
    await page.keyboard.press("1");
    await page.keyboard.type("The paper was read: the brand is another vehicle's.");
    await page.keyboard.press("Control+Enter");
    await expect(chip).toHaveText("seen by RT");
    await page.keyboard.press("Escape");
    await page.keyboard.press("2");
    await page.keyboard.type("The clerk says rebuilt after all.");
    await page.keyboard.press("Control+Enter");
    await expect(chip).toHaveText("open again");
    const notes = page.getByRole("region", { name: "Notes" }).getByRole("listitem");
    await expect(notes).toHaveCount(2);
    await expect(notes.last()).toContainText("superseded");
    await page.keyboard.press("Control+z");
    await expect(chip).toHaveText("seen by RT");
    await expect(notes).toHaveCount(2);
  });

  await test.step("promises are noted all at once, with one reason, and the question after them", async () => {
    await page.keyboard.press("n");
    await expect(page.getByRole("article")).toContainText("A hint for review, not legal advice.");
    await page.keyboard.press("1");
    await page.keyboard.type("Said in the film's own words; the overlay says what we stand behind.");
    await page.keyboard.press("Tab");
    await expect(page.getByRole("checkbox", { name: /Also the 2 other open promises/ })).toBeFocused();
    await page.keyboard.press("Space");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    const promises = page.getByRole("navigation", { name: "What to check" }).getByRole("region", { name: "Promises" });
    await expect(promises).toContainText("0 left of 3");
    await expect(promises).toContainText("3 dealt with: shown under “All”.");
    await page.keyboard.press("n");
    await expect(page.getByText("Only the words were read, never the picture")).toBeVisible();
    await page.keyboard.press("1");
    await page.keyboard.type("It is in the film at the windshield.");
    await page.keyboard.press("Control+Enter");
    await expect(page.getByRole("article").locator("header .chip")).toHaveText("seen by RT");
    await page.keyboard.press("Escape");
    await expect(page.getByText("No conflict is open.", { exact: true })).toBeVisible();
  });

  await test.step("with nothing open N leads on: it is ready, and is published without a question", async () => {
    await page.keyboard.press("n");
    await expect(page.getByRole("heading", { name: "Ready to publish" })).toBeVisible();
    await expect(page.getByText(`All ${all} were settled by RT`)).toBeVisible();
    await expect(page.getByText(/promises and questions were all dealt with by RT/)).toBeVisible();
    await expect(page.getByText(/Since then \d+ rulings or notes were made/)).toBeVisible();
    await page.keyboard.press("Shift+P");
    await expect(page.getByRole("list", { name: "Publications" }).getByRole("listitem").first()).toContainText("with no conflict open");
    await expect(page.getByRole("list", { name: "Publications" }).getByRole("listitem")).toHaveCount(2);
    await expect(page.getByRole("heading", { name: /^Published .* UTC by RT$/ })).toBeVisible();
    await expect(page.getByRole("button", { name: "Record as published again" })).toHaveAttribute("data-weight", "plain");
    await page.keyboard.press("Control+z");
    await expect(page.getByRole("heading", { name: "Ready to publish" })).toBeVisible();
  });
});

test("an address that names a conflict opens that one; a wrong one says so and goes on", async ({ desk: page }) => {
  await openDemo(page, "Check");
  await expect(page).toHaveURL(/conflict=/);
  const first = page.url();
  await page.keyboard.press("ArrowDown");
  const heading = page.locator("#conflict-topic");
  await expect(page).not.toHaveURL(first);
  const second = page.url();
  const topic = await heading.textContent();
  await page.goto(first);
  await expect(heading).not.toHaveText(topic ?? "");
  await page.goto(second);
  await expect(heading).toHaveText(topic ?? "");
  await page.goto(first.replace(/conflict=[^&]*/, "conflict=measure%2Fnothing"));
  await expect(page.getByRole("heading", { name: "This conflict is no longer found" })).toBeVisible();
  await page.keyboard.press("n");
  await expect(heading).toBeVisible();
  // What cannot be a name at all is none: the desk then opens as without one.
  await page.goto(first.replace(/conflict=[^&]*/, "conflict=%00%01"));
  await expect(heading).toBeVisible();
});
