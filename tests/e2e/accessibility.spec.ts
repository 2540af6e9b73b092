import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { crowding } from "./support/crowding.ts";
import { expect, test } from "./support/host.ts";
import { callScenes, checkScenes, emptyScenes, libraryScenes, markScenes, type Scene, type Stage, stageOf } from "./support/scenes.ts";
import { walkByTab } from "./support/tab-walk.ts";
import { removeFolders } from "./support/walk-folders.ts";

/** Every screen, dialog and menu: axe in light and dark, nothing overlapping or cut, every control reached by Tab, no motion where none is wanted. */

test.afterEach(removeFolders);

/** 200 % zoom of a window of 1440 by 900 leaves half as many CSS pixels each way (WCAG 2.2, 1.4.4). */
const sizes = [
  { name: "1440×900", width: 1440, height: 900 },
  { name: "1100×700", width: 1100, height: 700 },
  { name: "1440×900 at 200 %", width: 720, height: 450 },
] as const;

async function axe(page: Page): Promise<string[]> {
  // The library of menus and dialogs puts a stop before and after an open one, which hands the focus back into it at once: it is hidden from
  // screen readers and yet takes the focus, on purpose. axe forgives it where it can tell that something modal is open, and nowhere else.
  const { violations } = await new AxeBuilder({ page }).exclude("[data-base-ui-focus-guard]").analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html, any }) => `${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ""}`));
}

async function faultsOf(stage: Stage, { name, reach }: Scene): Promise<string[]> {
  const { page } = stage;
  const faults: string[] = [];
  await page.setViewportSize(sizes[0]);
  await reach(stage);
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    faults.push(...(await axe(page)).map((fault) => `${name}, ${colorScheme}: ${fault}`));
  }
  for (const { name: size, ...viewport } of sizes) {
    await page.setViewportSize(viewport);
    // Lists that draw only what is seen, and places of popups, come a frame after the new size.
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 60))));
    faults.push(...(await crowding(page)).map((fault) => `${name}, ${size}: ${fault}`));
  }
  return faults;
}

async function walk(stage: Stage, scenes: readonly Scene[]): Promise<void> {
  const faults: string[] = [];
  for (const scene of scenes) await test.step(scene.name, async () => void faults.push(...(await faultsOf(stage, scene))));
  expect(faults).toEqual([]);
}

test("the look for what overlaps or is cut finds it", async ({ page }) => {
  const box = "position:absolute;width:120px;height:30px";
  await page.setContent(`
    <button style="${box};left:10px;top:10px">First</button>
    <button style="${box};left:100px;top:20px">Second</button>
    <div style="${box};left:300px;top:10px;overflow:hidden"><button style="margin-left:80px;width:90px">Third</button></div>
    <p style="${box};left:10px;top:90px;overflow:hidden;white-space:nowrap">words that have no room where they stand</p>
    <p style="${box};left:10px;top:130px;overflow:hidden;height:12px">one line<br>and another below</p>
    <div style="${box};left:10px;top:170px;overflow:auto"><p style="width:400px">words of a pane that scrolls are not cut</p></div>
    <button style="${box};left:10px;top:240px">Fourth</button><button style="${box};left:140px;top:240px">beside it</button>`);
  const found = await crowding(page);
  expect(found).toEqual([
    expect.stringMatching(/Third.*is cut by/),
    expect.stringMatching(/First.*Second.*overlap by 30×20/),
    expect.stringMatching(/words of button.*Third.*are cut/),
    expect.stringMatching(/words that have no room.*are cut/),
    expect.stringMatching(/one line.*are cut/),
  ]);
  await page.setContent("<div style='width:200vw;height:10px'></div>");
  expect(await crowding(page)).toEqual([expect.stringMatching(/^the page is \d+ wide in a window of/)]);
});

test("the walk by Tab finds what it cannot reach, and what does not show that it has the keyboard", async ({ page }) => {
  await page.setContent(`
    <button>First</button><button style="all:unset">Bare</button><button disabled>Off</button>
    <div style="position:relative"><button>Under</button><p style="position:absolute;inset:0;margin:0;background:#fff">a sheet over it</p></div>
    <button onfocus="this.blur(); document.querySelector('button').focus()">Thrown back</button><button>Never</button>`);
  const { missed, unseen } = await walkByTab(page);
  expect(missed).toEqual([expect.stringContaining("Thrown back"), expect.stringContaining("Never")]);
  expect(unseen).toEqual([expect.stringMatching(/Bare.*nothing shows/), expect.stringMatching(/Under.*under something else/)]);
});

test.describe("without a recording", () => {
  test.use({ withDemo: false });
  test("axe finds nothing, and nothing is cut", async ({ desk: page, host }) => {
    test.setTimeout(240_000);
    await walk({ page, origin: new URL(host.address).origin, demo: "" }, emptyScenes);
  });
});

const groups = { library: libraryScenes, Mark: markScenes, Check: checkScenes, Call: callScenes };
for (const [desk, scenes] of Object.entries(groups)) {
  test(`${desk}: axe finds nothing on any screen, dialog or menu, and nothing is cut`, async ({ desk: page, host }) => {
    test.setTimeout(900_000);
    await walk(await stageOf(page, host.address), scenes);
  });
}

/** The screens themselves, for what takes long: one or two of each desk. */
const screens = [...libraryScenes, ...markScenes, ...checkScenes, ...callScenes].filter(({ name }) =>
  ["library", "import", "mark", "mark-finding-form", "mark-zones", "check", "check-publish", "export", "call-hits"].includes(name),
);

test("every control is reached by Tab, and shows that it has the keyboard", async ({ desk: page, host }) => {
  test.setTimeout(600_000);
  const stage = await stageOf(page, host.address);
  const faults: string[] = [];
  for (const scene of screens)
    await test.step(scene.name, async () => {
      await scene.reach(stage);
      const { missed, unseen, stops } = await walkByTab(page);
      expect(stops, `${scene.name} has stops`).toBeGreaterThan(3);
      faults.push(...missed.map((one) => `${scene.name}: Tab never comes to ${one}`), ...unseen.map((one) => `${scene.name}: ${one}`));
    });
  expect(faults).toEqual([]);
});

test("where less motion is wanted nothing moves but the film", async ({ desk: page, host }) => {
  test.setTimeout(240_000);
  await page.emulateMedia({ reducedMotion: "reduce" });
  const stage = await stageOf(page, host.address);
  const faults: string[] = [];
  for (const scene of screens)
    await test.step(scene.name, async () => {
      await scene.reach(stage);
      faults.push(...(await movements(page)).map((one) => `${scene.name}: ${one}`));
    });
  expect(faults).toEqual([]);
});

/** What moves, or would move once its state changes. */
function movements(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const lasts = (durations: string): boolean => durations.split(",").some((duration) => Number.parseFloat(duration) > 0.01);
    const found = document
      .getAnimations()
      .map((animation) => `an animation runs: ${(animation as CSSAnimation).animationName ?? animation.id}`);
    for (const element of document.querySelectorAll("*")) {
      const style = getComputedStyle(element);
      const name = `${element.tagName.toLowerCase()}.${element.getAttribute("class") ?? ""}`;
      if (lasts(style.transitionDuration)) found.push(`${name} takes ${style.transitionDuration} to change ${style.transitionProperty}`);
      if (style.animationName !== "none" && lasts(style.animationDuration)) found.push(`${name} is animated: ${style.animationName}`);
      if (style.scrollBehavior === "smooth") found.push(`${name} scrolls smoothly`);
    }
    return [...new Set(found)];
  });
}
