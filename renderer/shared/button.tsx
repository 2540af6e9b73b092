import type { ButtonHTMLAttributes, Ref } from "react";
import { keepFocus } from "./keep-focus.ts";
import { ariaShortcut, keyCaps } from "./keys.ts";
import { Tip } from "./tip.tsx";

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly weight?: "plain" | "main" | "quiet" | "grave";
  /** The key that does the same, as `keyName` writes it. Shown on the button. */
  readonly shortcut?: string;
  /** A sentence shown on hover and focus. */
  readonly tip?: string;
  readonly ref?: Ref<HTMLButtonElement>;
}

export function Button({ weight = "plain", shortcut, tip, children, ...rest }: ButtonProps) {
  const button = (
    <button
      type="button"
      {...(shortcut ? keepFocus : {})}
      {...rest}
      className={rest.className ? `button ${rest.className}` : "button"}
      data-weight={weight}
      aria-keyshortcuts={shortcut ? ariaShortcut(shortcut) : rest["aria-keyshortcuts"]}
    >
      {children}
      {shortcut ? (
        // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a key's cap takes no focus; the button tells its key itself
        <kbd aria-hidden="true">{keyCaps(shortcut)}</kbd>
      ) : null}
    </button>
  );
  return tip ? <Tip text={tip}>{button}</Tip> : button;
}
