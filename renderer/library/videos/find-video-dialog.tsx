import { useRef, useState } from "react";
import type { Problem, WantedVideo } from "../../../shared-types/index.ts";
import { bytesInFull } from "../../../shared-types/video-content.ts";
import { problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { Button } from "../../shared/button.tsx";
import { counted } from "../../shared/count.ts";
import { Ask, Modal } from "../../shared/dialog.tsx";
import { ProblemNote } from "../../shared/problem-note.tsx";
import { type FoundFile, placeOfFile } from "../files/found-file.ts";
import { useFileChoice } from "../files/use-file-choice.tsx";
import { keepPlace } from "../keep-place.ts";
import { sizeLabel } from "../run/line-words.ts";
import { acceptOf, partOfKnownEnding } from "../sort-files.ts";
import { findVideos, replaceVideo, type VideoSearch } from "./match-videos.ts";

/** `find`: the file has gone; `add`: the recording never had one; `replace`: it has another. */
export type VideoPurpose = "find" | "add" | "replace";

export interface FindVideoDialogProps {
  readonly purpose: VideoPurpose;
  /** One recording, or for `find` all whose video has gone. */
  readonly targets: readonly WantedVideo[];
  readonly onClose: () => void;
  readonly onDone: (sentence: string) => void;
}

interface Looking {
  readonly file: string;
  readonly sentBytes: number;
  readonly ofBytes: number;
  readonly stop: AbortController;
}

export function FindVideoDialog({ purpose, targets, onClose, onDone }: FindVideoDialogProps) {
  const client = useClient();
  const [open, setOpen] = useState(targets);
  const [looking, setLooking] = useState<Looking | null>(null);
  const [result, setResult] = useState<{ readonly search: VideoSearch; readonly where: string; readonly looked: number } | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [replacement, setReplacement] = useState<FoundFile | null>(null);
  const chooser = useRef<HTMLButtonElement>(null);
  const [only] = open;
  const single = open.length === 1 ? only : undefined;

  const watching = (first: FoundFile) => {
    const stop = new AbortController();
    const show = (file: FoundFile, sentBytes: number) => setLooking({ file: file.name, sentBytes, ofBytes: file.bytes, stop });
    let current = first;
    show(first, 0);
    setProblem(null);
    setResult(null);
    return {
      signal: stop.signal,
      onFile: (file: FoundFile) => {
        current = file;
        show(file, 0);
      },
      onSent: (bytes: number) => show(current, bytes),
    };
  };
  const look = async (files: readonly FoundFile[], folder: string | null) => {
    const videos = files.filter(({ name }) => partOfKnownEnding(name) === "video");
    const where = folder === null ? "among the chosen files" : `in “${folder}”`;
    const [first] = videos;
    if (!first) {
      setProblem({ code: "no-video", message: `There is no video ${where}. Choose the folder or the file where the camera's films lie.` });
      return;
    }
    if (purpose !== "find") {
      setReplacement(first);
      return;
    }
    try {
      const search = await findVideos(client, open, videos, watching(first));
      const left = open.filter((target) => !search.found.includes(target));
      if (left.length === 0) {
        onDone(
          search.found.length === 1 ? `The video of “${search.found[0]?.title}” is found.` : `${search.found.length} videos are found.`,
        );
        onClose();
        return;
      }
      setOpen(left);
      setResult({ search, where, looked: videos.length });
      setReplacement(null);
    } catch (thrown) {
      const met = problemOf(thrown);
      if (met.code !== "file-cancelled") setProblem(met);
    }
    setLooking(null);
    // The button was disabled while the file was handed over, and lost the focus by that.
    keepPlace(() => chooser.current);
  };
  const takeAnyway = async (file: FoundFile) => {
    if (!single) return;
    setReplacement(null);
    try {
      await replaceVideo(client, single.recordingId, file, watching(file));
      onDone(`“${single.title}” has the video ${file.name} now.`);
      onClose();
      return;
    } catch (thrown) {
      const met = problemOf(thrown);
      if (met.code !== "file-cancelled") setProblem(met);
    }
    setLooking(null);
    // The button was disabled while the file was handed over, and lost the focus by that.
    keepPlace(() => chooser.current);
  };
  const choice = useFileChoice({
    accept: acceptOf.video,
    several: purpose === "find" && targets.length > 1,
    onFiles: (files, folder) => void look(files, folder),
    onProblem: setProblem,
  });
  const close = () => {
    looking?.stop.abort();
    onClose();
  };
  const refusedOne = result && result.search.refused.length === 1 ? result.search.refused[0] : undefined;

  return (
    <Modal
      title={titleOf(purpose, targets)}
      open
      onClose={close}
      foot={
        looking ? (
          <>
            <span className="soft import-state" role="status">
              {looking.file}: {sizeLabel(looking.sentBytes)} of {sizeLabel(looking.ofBytes)} handed over
            </span>
            <Button onClick={() => looking.stop.abort()}>Cancel</Button>
          </>
        ) : null
      }
    >
      {open.slice(0, 6).map((target) => (
        <p key={target.recordingId}>
          {open.length > 1 ? <strong>{target.title}: </strong> : null}
          {knownWords(purpose, target)}
        </p>
      ))}
      {open.length > 6 ? <p className="soft">and {open.length - 6} more.</p> : null}
      {choice.inputs}
      <div className="row">
        {purpose === "find" ? (
          <Button weight="main" onClick={choice.chooseFolder} disabled={looking !== null}>
            Look in a folder…
          </Button>
        ) : null}
        <Button ref={chooser} weight={purpose === "find" ? "plain" : "main"} onClick={choice.chooseFiles} disabled={looking !== null}>
          {targets.length > 1 ? "Choose files…" : "Choose a file…"}
        </Button>
      </div>
      {problem ? <ProblemNote problem={problem} onDismiss={() => setProblem(null)} /> : null}
      {result ? (
        <div role="alert" className="problem">
          <div className="problem-words stack">
            {result.search.found.length > 0 ? <p>{counted(result.search.found.length, "video was", "videos were")} found. </p> : null}
            {result.search.refused.length === 0 || result.looked > 1 ? (
              <p>
                None of {counted(result.looked, "video", "videos")} {result.where} has{" "}
                {open.length === 1 ? "this content" : "the content that is still missing"}. Look in another folder.
              </p>
            ) : null}
            {result.search.refused.slice(0, 5).map(({ file, message }) => (
              <p key={file.key}>{message}</p>
            ))}
          </div>
        </div>
      ) : null}
      {single && refusedOne ? (
        <div className="row">
          <Button weight="grave" onClick={() => setReplacement(refusedOne.file)} disabled={looking !== null}>
            Take {refusedOne.file.name} all the same…
          </Button>
        </div>
      ) : null}
      <Ask
        title={
          purpose === "add"
            ? `Take ${replacement?.name ?? ""} for this recording?`
            : `Put ${replacement?.name ?? ""} in the old video's place?`
        }
        open={replacement !== null}
        yes={purpose === "add" ? "Take this video" : "Replace the video"}
        no={purpose === "add" ? "Do not take it" : "Keep it as it is"}
        onYes={() => (replacement ? void takeAnyway(replacement) : undefined)}
        onNo={() => setReplacement(null)}
      >
        <p>{replacement ? `${placeOfFile(replacement)}, ${bytesInFull(replacement.bytes)}.` : ""} </p>
        <p>
          Captions, zones, findings and stills keep their times. Where this film runs otherwise, they no longer show what they say; play a
          few of them afterwards.{purpose === "replace" ? " A copy that the library keeps of the old video is removed." : ""}
        </p>
      </Ask>
    </Modal>
  );
}

function titleOf(purpose: VideoPurpose, targets: readonly WantedVideo[]): string {
  const title = targets[0]?.title ?? "";
  if (purpose === "add") return `Add a video to “${title}”`;
  if (purpose === "replace") return `Replace the video of “${title}”`;
  return targets.length === 1 ? `Find the video of “${title}”` : `Find ${targets.length} missing videos`;
}

function knownWords(purpose: VideoPurpose, { videoName, known }: WantedVideo): string {
  if (purpose === "add") return "It has a transcript only. Choose the film that was recorded with it.";
  if (purpose === "replace") return `It has ${videoName} now. Choose the film that is to take its place.`;
  return known
    ? `${videoName} is no longer where it was. It is known by its content (${bytesInFull(known.bytes)}), so it is found under any name.`
    : `${videoName} is no longer where it was, and its content was never remembered. Choose the file yourself; you are asked before it is taken.`;
}
