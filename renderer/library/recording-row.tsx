import { Menu } from "@base-ui/react/menu";
import { matterCountWords, type RecordingSummary } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import "../shared/menu.css";
import { hashOfPlace, recordingPlace } from "../shared/place.ts";
import { lengthLabel } from "../shared/time.ts";
import { bodyStyleLabels } from "./body-styles.ts";
import type { VideoPurpose } from "./videos/find-video-dialog.tsx";

export interface RecordingRowProps {
  readonly recording: RecordingSummary;
  readonly onDescribe: () => void;
  readonly onAnalyse: () => void;
  readonly onRemove: () => void;
  readonly onVideo: (purpose: VideoPurpose) => void;
  readonly onBundle: () => void;
}

/** What stands in a recording's place in the list: what it is, and what waits at each desk. */
export function RecordingRow({ recording, onDescribe, onAnalyse, onRemove, onVideo, onBundle }: RecordingRowProps) {
  const { counts, vehicle } = recording;
  const settled = counts.conflicts - counts.openConflicts;
  const lost = recording.hasVideo && !recording.videoFound;
  const film = recording.hasVideo ? (lost ? "its video is gone from where it was" : "with video") : "transcript only";
  const purpose = lost ? "find" : recording.hasVideo ? "replace" : "add";
  return (
    <>
      <div className="recording-what">
        <h2>
          <a href={recordingPlace(recording.id, "mark")}>{recording.title}</a>
        </h2>
        <p className="soft">
          {[vehicle.year, vehicle.name, bodyStyleLabels[vehicle.bodyStyle], `${vehicle.drive} drive`].filter(Boolean).join(", ")}
        </p>
        <p className="soft small">
          {recording.stockNumber ? `Stock ${recording.stockNumber}. ` : ""}
          {lengthLabel(recording.duration)}, {film}. Imported {recording.importedAt.slice(0, 10)}.
        </p>
        {lost ? (
          <Button className="recording-lost" onClick={() => onVideo("find")} aria-label={`Find the video… of ${recording.title}`}>
            Find the video…
          </Button>
        ) : null}
      </div>
      <DeskState
        name="Mark"
        to={recordingPlace(recording.id, "mark")}
        title={recording.title}
        state={proposalsLine(counts)}
        more={counted(counts.findings, "finding", "findings")}
        done={counts.proposals + counts.proposedZones === 0}
      />
      <DeskState
        name="Check"
        to={recordingPlace(recording.id, "check")}
        title={recording.title}
        state={checkLine(counts)}
        more={`${counts.conflicts === 0 ? "no conflicts found" : `${settled} of ${counts.conflicts} settled`}${publishedWords(recording)}`}
        done={counts.openConflicts + counts.openDenials + counts.openPromises + counts.openQuestions === 0}
      />
      <DeskState
        name="Call"
        to={hashOfPlace({ screen: "call", query: "", compared: null, only: recording.id })}
        title={recording.title}
        state={counted(counts.claims, "claim", "claims")}
        more={counted(counts.captions, "caption", "captions")}
        done
      />
      <Menu.Root>
        <Menu.Trigger render={<Button weight="quiet" aria-label={`More for ${recording.title}`} />}>More</Menu.Trigger>
        <Menu.Portal render={<section aria-label={`More for ${recording.title}`} />}>
          <Menu.Positioner className="menu-positioner" sideOffset={4} align="end">
            <Menu.Popup className="menu">
              <Menu.Item className="menu-item" onClick={onDescribe}>
                Describe…
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={() => onVideo(purpose)}>
                {videoWords[purpose]}
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={onAnalyse}>
                Analyze again
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={onBundle}>
                Bundle for another machine…
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={onRemove}>
                Remove…
              </Menu.Item>
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    </>
  );
}

const videoWords = {
  find: "Find the video…",
  add: "Add a video…",
  replace: "Replace the video…",
} as const satisfies Record<VideoPurpose, string>;

/** That the index went out, and whether anything was open then. */
export function publishedWords({ published }: Pick<RecordingSummary, "published">): string {
  if (!published) return "";
  const left = published.openConflicts + (published.openMatters?.length ?? 0);
  const open = left > 0 ? ` with ${left} open` : "";
  return `, published ${published.at.slice(0, 10)}${open}`;
}

/** What waits at the Mark desk, counted as its tabs count it. */
export function proposalsLine({ proposals, proposedZones }: Pick<RecordingSummary["counts"], "proposals" | "proposedZones">): string {
  const waiting = [
    proposals > 0 ? counted(proposals, "finding", "findings") : "",
    proposedZones > 0 ? counted(proposedZones, "zone", "zones") : "",
  ].filter(Boolean);
  return waiting.length > 0 ? `proposed: ${waiting.join(", ")}` : "no proposals left";
}

/** What waits at the Check desk: conflicts, and denials, promises and questions that nobody has dealt with. */
export function checkLine({
  openConflicts,
  openDenials,
  openPromises,
  openQuestions,
}: Pick<RecordingSummary["counts"], "openConflicts" | "openDenials" | "openPromises" | "openQuestions">): string {
  const waiting = [
    openConflicts > 0 ? counted(openConflicts, "open conflict", "open conflicts") : "",
    matterCountWords({ denial: openDenials, promise: openPromises, question: openQuestions }),
  ].filter(Boolean);
  return waiting.length > 0 ? waiting.join(", ") : "nothing open";
}

interface DeskStateProps {
  readonly name: string;
  readonly to: string;
  readonly title: string;
  readonly state: string;
  readonly more: string;
  readonly done: boolean;
}

function DeskState({ name, to, title, state, more, done }: DeskStateProps) {
  return (
    <a className="desk-state" href={to} data-done={done || undefined}>
      <span className="desk-state-name">{name}</span>
      <span className="desk-state-line">{state}</span>
      <span className="soft small">{more}</span>
      <span className="visually-hidden">, {title}</span>
    </a>
  );
}
