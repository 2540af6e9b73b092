import { useState } from "react";
import { hashOfPlace, recordingPlace } from "../shared/place.ts";
import { type DeskText, demoQuestion, deskTexts } from "./help-texts.ts";

export interface DeskCardsProps {
  /** The demo's recording; without it the desks are only told of. */
  readonly demoId: string | null;
  /** Before a desk is opened. */
  readonly onFollow?: () => void;
}

/** The three desks: whose each is, what happens there, and the way there on the demo. */
export function DeskCards({ demoId, onFollow }: DeskCardsProps) {
  const [seen, setSeen] = useState(seenDesks);
  return (
    <ol className="desk-cards">
      {deskTexts.map((text) => (
        <li key={text.desk} className="desk-card">
          <h3>
            {text.name} <span className="soft">{text.who}</span>
          </h3>
          <p>{text.what}</p>
          {demoId === null ? null : (
            <p className="desk-try">
              <a
                href={placeOf(text, demoId)}
                onClick={() => {
                  rememberSeen(text.desk);
                  setSeen(seenDesks());
                  onFollow?.();
                }}
              >
                {`Open the demo at ${text.name}`}
              </a>
              <span className="soft">{text.tryIt}</span>
              {seen.includes(text.desk) ? (
                <span className="chip" data-kind="settled">
                  seen
                </span>
              ) : null}
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}

function placeOf({ desk }: DeskText, demoId: string): string {
  return desk === "call" ? hashOfPlace({ screen: "call", query: demoQuestion, compared: null }) : recordingPlace(demoId, desk);
}

const seenSetting = "roundwalk.desks-seen";

function seenDesks(): string[] {
  return (localStorage.getItem(seenSetting) ?? "").split(" ").filter(Boolean);
}
function rememberSeen(desk: string): void {
  localStorage.setItem(seenSetting, [...new Set([...seenDesks(), desk])].join(" "));
}
