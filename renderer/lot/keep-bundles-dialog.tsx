import { useEffect, useState } from "react";
import type { Output, Problem, RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { sizeLabel } from "../library/run/line-words.ts";
import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { counted } from "../shared/count.ts";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { Tick } from "../shared/tick.tsx";
import { FolderField } from "./folder-field.tsx";
import { useWork } from "./use-work.ts";
import { WorkBar } from "./work-bar.tsx";
import "./lot.css";

export interface KeepBundlesDialogProps {
  /** Null for many at once. */
  readonly recording: RecordingSummary | null;
  readonly recordings: readonly RecordingSummary[];
  readonly onClose: () => void;
}

/** Whole recordings as files: one to carry, or a folder of them to keep in step. */
export function KeepBundlesDialog({ recording, recordings, onClose }: KeepBundlesDialogProps) {
  const client = useClient();
  const work = useWork();
  const [folder, setFolder] = useState("");
  const [which, setWhich] = useState<"ready" | "all">("ready");
  const [withVideo, setWithVideo] = useState(true);
  const [kept, setKept] = useState<Output<"bundle.keep"> | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  useEffect(() => {
    client.call("bundle.place", {}).then(
      (place) => setFolder((before) => before || place.folder),
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  }, [client]);

  const keep = (only: readonly string[] | null, overwrite: boolean) => {
    setProblem(null);
    setKept(null);
    const recordingIds = only ? [...only] : recording ? [recording.id] : which === "all" ? recordings.map(({ id }) => id) : null;
    work
      .run((ticket) => client.call("bundle.keep", { ticket, recordingIds, withVideo, folder: folder.trim() || null, overwrite }))
      .then(setKept, (thrown: unknown) => setProblem(problemOf(thrown)));
  };
  const anyVideo = recording ? recording.hasVideo : recordings.some(({ hasVideo }) => hasVideo);

  return (
    <Modal
      title={recording ? `Bundle “${recording.title}”` : "Keep bundles in a folder"}
      open
      onClose={onClose}
      foot={
        work.working ? (
          <WorkBar name="Writing bundles" progress={work.progress} onCancel={work.cancel} />
        ) : (
          <Button weight="main" onClick={() => keep(null, false)} disabled={folder.trim() === ""}>
            {recording ? "Write the bundle" : "Write what has changed"}
          </Button>
        )
      }
    >
      <p className="small soft">
        {recording
          ? "One file with everything: words, work, rulings, history, stills and video. Another Roundwalk brings it in with nothing lost."
          : "One file for each recording, written anew only where something has changed. Any file sync can carry the folder; on the other machine, bring the bundles in from there."}
      </p>
      <FolderField
        label="Folder"
        value={folder}
        onChange={setFolder}
        onProblem={setProblem}
        hint="In full, as this system writes it. It is made where it is missing."
      />
      {recording ? null : (
        <Choice
          label="Which recordings"
          value={which}
          options={[
            { value: "ready", label: "those that are ready: no conflict open" },
            { value: "all", label: `all ${recordings.length}` },
          ]}
          onChange={setWhich}
        />
      )}
      {anyVideo ? (
        <Tick on={withVideo} onChange={setWithVideo} disabled={work.working}>
          With {recording ? "its video" : "their videos"}
        </Tick>
      ) : null}
      {anyVideo && !withVideo ? (
        <p className="small soft">A video that stays behind is known by its content, and can be found again on the other machine.</p>
      ) : null}
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {kept ? <KeptList kept={kept} onReplace={(ids) => keep(ids, true)} /> : null}
    </Modal>
  );
}

function KeptList({ kept, onReplace }: { readonly kept: Output<"bundle.keep">; readonly onReplace: (ids: readonly string[]) => void }) {
  const unseen = kept.failed.filter(({ code }) => code === "bundle-unseen");
  const none = kept.written.length + kept.unchanged.length + kept.failed.length === 0;
  return (
    <section className="stack" aria-label="What was written">
      <p role="status">
        {kept.cancelled ? "Cancelled. " : ""}
        {none && !kept.cancelled
          ? "No recording is ready: every one has an open conflict, or is not read yet. Choose all of them, or settle the conflicts."
          : `${counted(kept.written.length, "bundle", "bundles")} written, ${kept.unchanged.length} unchanged${kept.failed.length > 0 ? `, ${kept.failed.length} not written` : ""}.`}
      </p>
      {kept.written.length > 0 ? (
        <ul className="lot-lines" aria-label="Written">
          {kept.written.map(({ recordingId, fileName, bytes }) => (
            <li key={recordingId}>
              <span className="lot-path">{fileName}</span> <span className="small soft">{sizeLabel(bytes)}</span>
            </li>
          ))}
        </ul>
      ) : null}
      {kept.written.length > 0 ? (
        <p className="small soft">
          In <span className="lot-path">{kept.folder}</span>
        </p>
      ) : null}
      {kept.failed.map(({ recordingId, title, why }) => (
        <ProblemNote key={recordingId} problem={{ code: "not-written", message: `“${title}”: ${why}` }} />
      ))}
      {unseen.length > 0 ? (
        <div>
          <Button weight="grave" onClick={() => onReplace(unseen.map(({ recordingId }) => recordingId))}>
            Replace {counted(unseen.length, "bundle", "bundles")} all the same
          </Button>
        </div>
      ) : null}
    </section>
  );
}
