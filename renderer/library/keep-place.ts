/** How often, in milliseconds, it is looked whether the focus is lost, and how often in all: a removal takes as long as the host does. */
const lookMilliseconds = 40;
const mostLooks = 75;

/**
 * After an act that takes the focused control away (a row that is removed, a button that is disabled meanwhile): once the focus has fallen
 * to the page, gives it to the nearest place that is left. Whoever has meanwhile gone on elsewhere is left alone.
 * @param place where the focus goes; asked when it is lost, null where there is none yet.
 */
export function keepPlace(place: () => HTMLElement | null): void {
  let looks = 0;
  const look = () => {
    looks += 1;
    const lost = document.activeElement === null || document.activeElement === document.body;
    const next = lost ? place() : null;
    next?.focus({ preventScroll: true });
    // A control may refuse the focus while it is disabled: then once more.
    if (looks < mostLooks && (next === null || document.activeElement !== next)) setTimeout(look, lookMilliseconds);
  };
  setTimeout(look, lookMilliseconds);
}

/** The list of imports, and where that is gone the screen's main part. */
export function placeOfImports(): HTMLElement | null {
  return document.getElementById("imports") ?? placeOfLibrary();
}

export function placeOfLibrary(): HTMLElement | null {
  return document.querySelector<HTMLElement>("main.library");
}
