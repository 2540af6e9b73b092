import { type ReactNode, useState } from "react";
import type { Problem, RecordingSummary, WantedVideo } from "../../../shared-types/index.ts";
import { problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { Button } from "../../shared/button.tsx";
import { counted } from "../../shared/count.ts";
import { FindVideoDialog, type VideoPurpose } from "./find-video-dialog.tsx";

export interface VideoDialog {
  readonly open: (recording: RecordingSummary, purpose: VideoPurpose) => void;
  /** That videos are missing, and what was found last; null where there is nothing to tell. */
  readonly note: ReactNode;
  readonly dialog: ReactNode;
}

/** Finding, adding and replacing videos. */
export function useVideoDialog(recordings: readonly RecordingSummary[], onProblem: (problem: Problem) => void): VideoDialog {
  const client = useClient();
  const [asked, setAsked] = useState<{ readonly purpose: VideoPurpose; readonly targets: readonly WantedVideo[] } | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const missing = recordings.filter(({ hasVideo, videoFound }) => hasVideo && !videoFound);

  /** What the host knows of missing videos. @param recordingId one alone, or all. */
  const findMissing = async (recordingId: string | null) => {
    setDone(null);
    try {
      const wanted = await client.call("video.wanted", {});
      const targets = wanted.filter((one) => recordingId === null || one.recordingId === recordingId);
      if (targets.length > 0) setAsked({ purpose: "find", targets });
      else setDone("The video is back where it was.");
    } catch (thrown) {
      onProblem(problemOf(thrown));
    }
  };
  const openFor = async ({ id, title, stockNumber }: RecordingSummary, purpose: VideoPurpose) => {
    if (purpose === "find") return findMissing(id);
    setDone(null);
    try {
      const { videoFile } = await client.call("recording.get", { id });
      setAsked({ purpose, targets: [{ recordingId: id, title, stockNumber, videoName: videoFile ?? "", known: null }] });
    } catch (thrown) {
      onProblem(problemOf(thrown));
    }
  };
  const note =
    missing.length > 1 || done !== null ? (
      <div className="missing-videos" data-done={missing.length <= 1 || undefined}>
        <p role="status">
          {done}
          {missing.length > 1
            ? ` ${counted(missing.length, "video is", "videos are")} gone from where they were. They are known by their content and found under any name.`
            : ""}
        </p>
        {missing.length > 1 ? <Button onClick={() => void findMissing(null)}>Find missing videos…</Button> : null}
        {done !== null ? (
          <Button weight="quiet" onClick={() => setDone(null)}>
            Dismiss
          </Button>
        ) : null}
      </div>
    ) : null;
  return {
    open: (recording, purpose) => void openFor(recording, purpose),
    note,
    dialog: asked ? (
      <FindVideoDialog purpose={asked.purpose} targets={asked.targets} onClose={() => setAsked(null)} onDone={setDone} />
    ) : null,
  };
}
