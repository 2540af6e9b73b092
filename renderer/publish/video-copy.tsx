import { useEffect, useState } from "react";
import type { ChapterGranularity, Output, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { useWork } from "../lot/use-work.ts";
import { WorkBar } from "../lot/work-bar.tsx";
import { Button } from "../shared/button.tsx";
import { Ask } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { Tick } from "../shared/tick.tsx";
import { bytesLabel } from "./export-formats.ts";
import "../lot/lot.css";

export interface VideoCopyProps {
  readonly recordingId: string;
  readonly granularity: ChapterGranularity;
}

/** A copy of the video with the chapters inside, made by FFmpeg where it is installed; where it is not, what to do. */
export function VideoCopy({ recordingId, granularity }: VideoCopyProps) {
  const client = useClient();
  const work = useWork();
  const [whyNot, setWhyNot] = useState<string | null>("");
  const [captions, setCaptions] = useState(false);
  const [made, setMade] = useState<Output<"video.copy"> | null>(null);
  const [inTheWay, setInTheWay] = useState<Problem | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  useEffect(() => {
    client.call("video.copyAbility", { recordingId }).then(
      (ability) => setWhyNot(ability.whyNot),
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  }, [client, recordingId]);

  const copy = (overwrite: boolean) => {
    setInTheWay(null);
    setProblem(null);
    setMade(null);
    work
      .run((ticket) => client.call("video.copy", { ticket, recordingId, granularity, captions, overwrite }))
      .then(setMade, (thrown: unknown) => {
        const met = problemOf(thrown);
        if (met.code === "file-exists") setInTheWay(met);
        // The person ended it; the message says that nothing is left of it.
        else setProblem(met);
      });
  };

  return (
    <section aria-labelledby="video-copy-heading" className="video-copy">
      <h3 id="video-copy-heading">The video with its chapters inside</h3>
      {whyNot ? (
        <p className="small soft">{whyNot}</p>
      ) : (
        <>
          <p className="small soft">A copy beside the other files, as sharp as the original, which is only read.</p>
          {work.working ? (
            <WorkBar name="Copying the video" progress={work.progress} onCancel={work.cancel} />
          ) : (
            <div className="row">
              <Button onClick={() => copy(false)} disabled={whyNot === ""}>
                Make the copy
              </Button>
              <Tick on={captions} onChange={setCaptions} disabled={false}>
                With the captions put right as a track
              </Tick>
            </div>
          )}
        </>
      )}
      {made ? (
        <p className="small" role="status">
          Made, {bytesLabel(made.bytes)}.{" "}
          <a href={made.downloadUrl} download>
            Download the copy
          </a>{" "}
          <code className="export-path">{made.path}</code>
        </p>
      ) : null}
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      <Ask
        title="Overwrite the last copy?"
        open={inTheWay !== null}
        yes="Overwrite"
        no="Keep it"
        onYes={() => copy(true)}
        onNo={() => setInTheWay(null)}
      >
        <p>{inTheWay?.message}</p>
      </Ask>
    </section>
  );
}
