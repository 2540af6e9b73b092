import { useEffect, useState } from "react";
import type { EventPayload, ExportFormat, Input, Output, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { showsPictures, useIndexPictures } from "./index-pictures.ts";

export type WritingAsked = Omit<Input<"export.write">, "recordingId" | "overwrite">;

/** Writing the files of one recording: its pictures first where the page has to take them, then the files. */
export function useWriting(recordingId: string, title: string) {
  const client = useClient();
  const pictures = useIndexPictures();
  const [written, setWritten] = useState<Output<"export.write"> | null>(null);
  const [inTheWay, setInTheWay] = useState<Problem | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [working, setWorking] = useState(false);
  const [said, setSaid] = useState("");
  const [progress, setProgress] = useState<EventPayload<"export.progress"> | null>(null);
  useEffect(
    () =>
      client.on("export.progress", (made) => {
        if (made.recordingId === recordingId) setProgress(made);
      }),
    [client, recordingId],
  );

  const writeFiles = async (asked: WritingAsked, overwrite: boolean): Promise<void> => {
    if (asked.formats.some((format: ExportFormat) => showsPictures(format))) {
      const lacking = await pictures.take([{ recordingId, title }]);
      if (lacking === null) {
        setSaid("Cancelled. No file was written; the pictures taken so far are kept.");
        return;
      }
      setSaid(lacking.map(({ why }) => why).join(" "));
    }
    setWritten(await client.call("export.write", { recordingId, ...asked, overwrite }));
  };
  const write = (asked: WritingAsked, overwrite: boolean) => {
    setInTheWay(null);
    setProblem(null);
    setSaid("");
    setProgress(null);
    setWorking(true);
    writeFiles(asked, overwrite)
      .catch((thrown: unknown) => {
        const met = problemOf(thrown);
        if (met.code === "file-exists") setInTheWay(met);
        else if (met.code === "export-cancelled") setSaid("Cancelled. Nothing was written.");
        else setProblem(met);
      })
      .finally(() => setWorking(false));
  };
  const cancel = () => {
    if (pictures.underWay) pictures.cancel();
    else void client.call("export.cancel", { recordingId }).catch(() => {});
  };
  return { working, pictures: pictures.underWay, progress, said, written, inTheWay, problem, write, cancel, setInTheWay, setProblem };
}
