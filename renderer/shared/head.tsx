import { Menu } from "@base-ui/react/menu";
import { type ReactNode, useEffect } from "react";
import { helpKey } from "../help/help-texts.ts";
import { useHelp } from "../help/use-help.ts";
import { Button } from "./button.tsx";
import { type Ground, grounds, useGround } from "./ground.ts";
import "./head.css";
import { useInitials } from "./initials.tsx";
import { useShortcuts } from "./keys.ts";
import "./menu.css";
import { type Desk, hashOfPlace, recordingPlace, rememberedRecording } from "./place.ts";

const groundLabels = { system: "As the system", light: "Light", dark: "Dark" } as const satisfies Record<Ground, string>;

export interface HeadProps {
  readonly desk: Desk | null;
  /** The recording whose desks the links lead to. */
  readonly recordingId?: string;
  readonly subject: ReactNode;
  /** What the window's title says of this screen. */
  readonly title: string;
  readonly children?: ReactNode;
}

/** The top of every screen: home, the three desks, what is open, and what belongs to the person. */
export function Head({ desk, recordingId, subject, title, children }: HeadProps) {
  const { initials, askInitials } = useInitials();
  const [ground, setGround] = useGround();
  const help = useHelp();
  useEffect(() => {
    document.title = `${title}, Roundwalk`;
  }, [title]);
  // The other desks have a sheet of their own under this key.
  useShortcuts((key) => {
    if (key !== "?" || desk === "mark" || desk === "check") return false;
    help.open("keys");
    return true;
  });
  const opened = recordingId ?? (desk === "call" ? rememberedRecording() : null);
  return (
    <header className="head">
      <a className="head-home" href={hashOfPlace({ screen: "library" })}>
        <svg width="24" height="18" viewBox="2 3 28 24" aria-hidden="true">
          <path
            d="M5 21c0-9 5-14 11-14s11 5 11 14M3 25h7M13 25h6M22 25h7"
            fill="none"
            stroke="var(--lead)"
            strokeWidth="3"
            strokeLinecap="round"
          />
          <circle cx="16" cy="7" r="3.2" fill="var(--dispute)" />
        </svg>
        Library
      </a>
      <nav className="desks" aria-label="Desks">
        <DeskLink name="Mark" to={opened ? recordingPlace(opened, "mark") : null} here={desk === "mark"} />
        <DeskLink name="Check" to={opened ? recordingPlace(opened, "check") : null} here={desk === "check"} />
        <DeskLink name="Call" to={hashOfPlace({ screen: "call", query: "", compared: null })} here={desk === "call"} />
      </nav>
      <div className="head-subject">{subject}</div>
      <div className="head-end">
        {children}
        <Button weight="quiet" aria-keyshortcuts={helpKey} onClick={() => help.open()}>
          Help
        </Button>
        <Menu.Root>
          <Menu.Trigger render={<Button weight="quiet" aria-label={`You and this window, initials ${initials || "not given"}`} />}>
            {initials || "You"}
          </Menu.Trigger>
          <Menu.Portal render={<section aria-label="You and this window" />}>
            <Menu.Positioner className="menu-positioner" sideOffset={4} align="end">
              <Menu.Popup className="menu">
                <Menu.Item className="menu-item" onClick={askInitials}>
                  {initials ? "Change initials…" : "Give initials…"}
                </Menu.Item>
                <Menu.Separator className="menu-line" />
                <Menu.RadioGroup value={ground} onValueChange={(next: Ground) => setGround(next)}>
                  {grounds.map((one) => (
                    <Menu.RadioItem key={one} value={one} className="menu-item" closeOnClick>
                      <Menu.RadioItemIndicator className="menu-mark" keepMounted />
                      {groundLabels[one]}
                    </Menu.RadioItem>
                  ))}
                </Menu.RadioGroup>
              </Menu.Popup>
            </Menu.Positioner>
          </Menu.Portal>
        </Menu.Root>
      </div>
    </header>
  );
}

function DeskLink({ name, to, here }: { readonly name: string; readonly to: string | null; readonly here: boolean }) {
  // Without a recording, Mark and Check have nothing to open; a link that leads nowhere would only puzzle.
  if (to === null) return null;
  return (
    <a className="desk" href={to} aria-current={here ? "page" : undefined}>
      {name}
    </a>
  );
}
