import type { Page } from "@playwright/test";

/**
 * Controls that overlap, and controls and words that are cut off, as the browser laid them out.
 * What scrolls is not cut; what an ancestor hides for good is. Of an open window or list, only that is looked at: the rest lies under it.
 */
export function crowding(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    /** Rounding of two boxes that touch, pixels. */
    const tolerance = 1.5;
    const controls =
      'button, a[href], input, textarea, select, summary, [role="button"], [role="link"], [role="checkbox"], [role="switch"], ' +
      '[role="combobox"], [role="slider"], [role="tab"], [role="option"], [role="menuitem"], [role="menuitemradio"]';
    // The lap strip and the plan draw things where they are in time and in place; there, one may lie on another.
    const drawn = ".lap-drawing, .plan-pick, svg";
    const popups = [...document.querySelectorAll('[role="menu"], .choice-list, [role="dialog"], [role="alertdialog"]')].filter((element) =>
      element.checkVisibility(),
    );
    // A list in the page itself, such as the moments of the Call desk, is no popup.
    const root: Element = popups.at(-1) ?? document.body;

    /** For screen readers alone: of one pixel, by a class of ours or a style of a library's. */
    const unseen = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect();
      return width <= 1 && height <= 1 && getComputedStyle(element).overflow === "hidden";
    };
    const hidesFrom = (element: Element): boolean => element.closest(".visually-hidden, [inert], [hidden]") !== null || unseen(element);
    const said = (element: Element): string =>
      `${element.tagName.toLowerCase()}${[...element.classList].map((name) => `.${name}`).join("")} “${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 50)}”`;
    /** The part of a pane that stands while the pane scrolls, if the element is in one. */
    const stands = (element: Element): Element | null => {
      for (let around: Element | null = element; around; around = around.parentElement)
        if (getComputedStyle(around).position === "sticky") return around;
      return null;
    };
    interface Box {
      left: number;
      top: number;
      right: number;
      bottom: number;
    }
    const scrolls = (value: string): boolean => value === "auto" || value === "scroll";
    /** The part of a box that can be seen, and whether an ancestor that does not scroll cut some of it away. */
    const seen = (element: Element, box: Box): { visible: Box; cut: Element | null } => {
      // Taken one by one: what a rectangle of the browser's holds is not its own, and would not be spread.
      const visible: Box = { left: box.left, top: box.top, right: box.right, bottom: box.bottom };
      let cut: Element | null = null;
      let fixed = getComputedStyle(element).position === "fixed";
      let free = { across: false, down: false };
      for (let around = element.parentElement; around && !fixed; around = around.parentElement) {
        const style = getComputedStyle(around);
        if (style.overflowX !== "visible" || style.overflowY !== "visible") {
          const { left, top, right, bottom } = around.getBoundingClientRect();
          const across = style.overflowX !== "visible";
          const down = style.overflowY !== "visible";
          if (across && scrolls(style.overflowX)) free = { ...free, across: true };
          if (down && scrolls(style.overflowY)) free = { ...free, down: true };
          const cutsAcross = across && !free.across && (visible.left < left - tolerance || visible.right > right + tolerance);
          const cutsDown = down && !free.down && (visible.top < top - tolerance || visible.bottom > bottom + tolerance);
          if ((cutsAcross || cutsDown) && cut === null) cut = around;
          if (across) {
            visible.left = Math.max(visible.left, left);
            visible.right = Math.min(visible.right, right);
          }
          if (down) {
            visible.top = Math.max(visible.top, top);
            visible.bottom = Math.min(visible.bottom, bottom);
          }
        }
        fixed = style.position === "fixed";
      }
      return { visible, cut };
    };

    const faults = new Set<string>();
    const page = document.scrollingElement;
    if (page && page.scrollWidth > page.clientWidth + tolerance)
      faults.add(`the page is ${page.scrollWidth} wide in a window of ${page.clientWidth}`);

    const boxes = [...root.querySelectorAll(controls)]
      .filter(
        (element) => element.checkVisibility() && !hidesFrom(element) && !element.closest(drawn) && !element.classList.contains("cover"),
      )
      .map((element) => ({ element, ...seen(element, element.getBoundingClientRect()) }))
      .filter(({ element }) => element.getBoundingClientRect().width > 2);
    for (const { element, cut } of boxes) if (cut) faults.add(`${said(element)} is cut by ${said(cut).slice(0, 60)}`);
    for (const [at, { element: one, visible: a }] of boxes.entries()) {
      for (const { element: other, visible: b } of boxes.slice(at + 1)) {
        if (one.contains(other) || other.contains(one)) continue;
        // What stands still at the edge of a pane lies over what scrolls beneath it, which comes out again; focus-walks see to the rest.
        if (stands(one) !== stands(other)) continue;
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (across > tolerance && down > tolerance)
          faults.add(`${said(one)} and ${said(other)} overlap by ${Math.round(across)}×${Math.round(down)}`);
      }
    }

    const words = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      const element = node.parentElement;
      if (!element || !node.textContent?.trim() || !element.checkVisibility() || hidesFrom(element) || element.closest(drawn)) continue;
      if (element.closest("textarea, option, script, style, [aria-hidden='true']")) continue;
      // Words that end in “…” for want of room are whole in the title that the pointer and the screen reader get.
      const ends = element.closest("[title]");
      if (ends && getComputedStyle(element).textOverflow === "ellipsis") continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) {
        const style = getComputedStyle(element);
        const own = element.getBoundingClientRect();
        const clips = style.overflowX === "hidden" || style.overflowX === "clip";
        const clipsDown = style.overflowY === "hidden" || style.overflowY === "clip";
        if (clipsDown && (box.bottom > own.bottom + tolerance || box.top < own.top - tolerance)) {
          faults.add(`words of ${said(element)} are cut below or above`);
          break;
        }
        if (clips && (box.right > own.right + tolerance || box.left < own.left - tolerance)) {
          faults.add(`words of ${said(element)} are cut at their end`);
          break;
        }
        const { cut } = seen(element, box);
        if (cut && !cut.closest("video-js, .video-js")) {
          faults.add(`words of ${said(element)} are cut by ${said(cut).slice(0, 60)}`);
          break;
        }
      }
    }
    return [...faults];
  });
}
