import type { Page } from "@playwright/test";

export interface TabWalk {
  /** Controls that Tab never came to. */
  readonly missed: string[];
  /** Stops at which nothing in the picture tells that the keyboard is there, or that something else covers. */
  readonly unseen: string[];
  readonly stops: number;
}

/** Marks each control that Tab must reach, and says how many there are. What the arrow keys reach within a group has tabindex -1. */
function expectStops(page: Page): Promise<number> {
  return page.evaluate(() => {
    const controls = "button, a[href], input, textarea, select, summary, [tabindex]";
    let count = 0;
    // An open window keeps the keyboard to itself.
    const root = [...document.querySelectorAll('[role="dialog"], [role="alertdialog"]')].at(-1) ?? document.body;
    for (const element of root.querySelectorAll<HTMLElement>(controls)) {
      if (!element.checkVisibility() || element.tabIndex < 0 || element.matches(":disabled") || element.closest("[inert]")) continue;
      // Base UI's guards at the two ends of a window send the focus on; they are no stops of a person's.
      if (element.hasAttribute("data-base-ui-focus-guard") || element.getAttribute("aria-hidden") === "true") continue;
      // Of radio buttons the chosen one, or else the first, is the stop.
      if (element instanceof HTMLInputElement && element.type === "radio") {
        const group = [...document.querySelectorAll<HTMLInputElement>(`input[type=radio][name="${element.name}"]`)];
        if ((group.find(({ checked }) => checked) ?? group[0]) !== element) continue;
      }
      element.dataset.tabExpected = String(count++);
    }
    return count;
  });
}

/** Stops that come into being on the way: rows of a list that are on the page only while they are near its view. */
const rowsMore = 400;

/** Waits until the guard at a window's end has sent the focus on, which it does a moment later; where it truly leaves, no longer than this. */
const settleMilliseconds = 400;

async function settled(page: Page): Promise<void> {
  const rests = () => {
    const element = document.activeElement;
    return element !== null && element !== document.body && !element.hasAttribute("data-base-ui-focus-guard");
  };
  await page.waitForFunction(rests, undefined, { timeout: settleMilliseconds, polling: 20 }).catch(() => {});
}

/** Goes through the page with Tab once round, and looks at each stop. */
export async function walkByTab(page: Page): Promise<TabWalk> {
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    window.getSelection()?.removeAllRanges();
  });
  const expected = await expectStops(page);
  const unseen = new Set<string>();
  let stops = 0;
  let outside = 0;
  for (; stops < expected + rowsMore; stops++) {
    await page.keyboard.press("Tab");
    await settled(page);
    const look = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement | null;
      if (!element || element === document.body) return "outside";
      if (element.dataset.tabSeen) return "again";
      element.dataset.tabSeen = "yes";
      if (element.hasAttribute("data-base-ui-focus-guard")) return null;
      const name = `${element.tagName.toLowerCase()}.${element.className} “${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 40)}”`;
      /** All that may tell of the focus: of the element, and of the label or row that is drawn in its place. */
      const drawing = (): string => {
        const told: string[] = [];
        for (let around: Element | null = element, up = 0; around && up < 3; around = around.parentElement, up++) {
          const style = getComputedStyle(around);
          told.push(style.outlineStyle, style.outlineWidth, style.outlineColor, style.boxShadow, style.borderColor, style.backgroundColor);
          for (const child of around.children) {
            const inner = getComputedStyle(child);
            told.push(inner.outlineStyle, inner.outlineWidth, inner.stroke, inner.strokeWidth, inner.boxShadow);
          }
        }
        return told.join("|");
      };
      const own = getComputedStyle(element);
      const outlined = own.outlineStyle !== "none" && Number.parseFloat(own.outlineWidth) >= 2 && Number.parseFloat(own.opacity) > 0;
      if (!outlined) {
        const focused = drawing();
        element.blur();
        const blurred = drawing();
        element.focus({ preventScroll: true });
        if (focused === blurred) return `${name}: nothing shows that it has the keyboard`;
      }
      // WCAG 2.2, 2.4.11: the stop is not wholly hidden by what lies over it.
      const box = element.getBoundingClientRect();
      const points = [0.5, 0.15, 0.85].map((part) => [box.left + box.width * part, box.top + box.height / 2] as const);
      // What the pointer passes through is not found at a point; that it lies in the window must do.
      const passed = own.pointerEvents === "none" && box.left >= 0 && box.top >= 0 && box.right <= innerWidth && box.bottom <= innerHeight;
      const found =
        passed ||
        points.some(([x, y]) => {
          const top = document.elementFromPoint(x, y);
          return top !== null && (element.contains(top) || top.contains(element) || top.closest("label")?.contains(element));
        });
      return found ? null : `${name}: lies outside the window or under something else, at ${Math.round(box.left)},${Math.round(box.top)}`;
    });
    // From the last control the keyboard leaves the page once, and comes in again at the first.
    if (look === "outside") {
      if (outside++ > 0) break;
    } else if (look === "again") break;
    else if (look !== null) unseen.add(look);
  }
  const missed = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("[data-tab-expected]:not([data-tab-seen])")]
      .filter((element) => element.checkVisibility() && element.tabIndex >= 0)
      .map(
        (element) =>
          `${element.tagName.toLowerCase()}.${element.className} “${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 40)}”`,
      ),
  );
  return { missed, unseen: [...unseen], stops };
}
