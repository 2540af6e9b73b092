import { Menu } from "@base-ui/react/menu";
import type { RecordingSummary } from "../../shared-types/index.ts";
import { Button } from "../shared/button.tsx";
import { counted } from "../shared/count.ts";
import "../shared/menu.css";
import { recordingPlace } from "../shared/place.ts";
import { lengthLabel } from "../shared/time.ts";
import { bodyStyleLabels } from "./body-styles.ts";

export interface RecordingRowProps {
  readonly recording: RecordingSummary;
  readonly onDescribe: () => void;
  readonly onAnalyse: () => void;
  readonly onRemove: () => void;
}

/** One recording with what waits at each desk. */
export function RecordingRow({ recording, onDescribe, onAnalyse, onRemove }: RecordingRowProps) {
  const { counts, vehicle } = recording;
  const settled = counts.conflicts - counts.openConflicts;
  const film = recording.hasVideo ? (recording.videoFound ? "with video" : "its video is gone from where it was") : "transcript only";
  return (
    <li className="recording">
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
        state={counts.openConflicts > 0 ? counted(counts.openConflicts, "open conflict", "open conflicts") : "no open conflicts"}
        more={`${settled} of ${counts.conflicts} settled`}
        done={counts.openConflicts === 0}
      />
      <DeskState
        name="Call"
        to="#/call"
        title={recording.title}
        state={counted(counts.claims, "claim", "claims")}
        more={counted(counts.captions, "caption", "captions")}
        done
      />
      <Menu.Root>
        <Menu.Trigger render={<Button weight="quiet" aria-label={`More for ${recording.title}`} />}>More</Menu.Trigger>
        <Menu.Portal>
          <Menu.Positioner className="menu-positioner" sideOffset={4} align="end">
            <Menu.Popup className="menu">
              <Menu.Item className="menu-item" onClick={onDescribe}>
                Describe…
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={onAnalyse}>
                Analyse again
              </Menu.Item>
              <Menu.Item className="menu-item" onClick={onRemove}>
                Remove…
              </Menu.Item>
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    </li>
  );
}

/** What waits at the Mark desk, counted as its tabs count it. */
export function proposalsLine({ proposals, proposedZones }: Pick<RecordingSummary["counts"], "proposals" | "proposedZones">): string {
  const waiting = [
    proposals > 0 ? counted(proposals, "finding", "findings") : "",
    proposedZones > 0 ? counted(proposedZones, "zone", "zones") : "",
  ].filter(Boolean);
  return waiting.length > 0 ? `proposed: ${waiting.join(", ")}` : "no proposals left";
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
