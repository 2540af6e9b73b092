import { type ReactNode, useEffect, useRef, useState } from "react";
import type { Problem } from "../../../shared-types/index.ts";
import { problemOf } from "../../client/client.ts";
import { useClient } from "../../client/use-client.ts";
import { type FoundFile, filesOfInput, filesOfOfferedFolder } from "./found-file.ts";

export interface FileChoice {
  /** Opens the window for a folder: the host's own where it has one, else the browser's. */
  readonly chooseFolder: () => void;
  readonly chooseFiles: () => void;
  /** Must stand somewhere in the page; nothing of it is seen. */
  readonly inputs: ReactNode;
}

export interface FileChoiceOptions {
  /** Endings that the file window offers first. */
  readonly accept: string;
  readonly several: boolean;
  /** @param folder name of the chosen folder; null for files chosen one by one. */
  readonly onFiles: (files: readonly FoundFile[], folder: string | null) => void;
  readonly onProblem: (problem: Problem) => void;
}

/** Choosing files or a folder, on both hosts alike. */
export function useFileChoice({ accept, several, onFiles, onProblem }: FileChoiceOptions): FileChoice {
  const client = useClient();
  const [hostChooses, setHostChooses] = useState(false);
  const folderInput = useRef<HTMLInputElement>(null);
  const fileInput = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // A host that does not answer has no window either; the browser's is there in any case.
    client.call("host.abilities", {}).then(
      (abilities) => setHostChooses(abilities.chooseFolder),
      () => setHostChooses(false),
    );
  }, [client]);
  const askHost = () => {
    client.call("folder.choose", {}).then(
      (chosen) => {
        if (chosen.folder !== null) onFiles(filesOfOfferedFolder(chosen), chosen.folder);
      },
      (thrown: unknown) => onProblem(problemOf(thrown)),
    );
  };
  const inputs = (
    <>
      <input
        ref={(input) => {
          folderInput.current = input;
          // React's types do not know the attribute.
          if (input) input.webkitdirectory = true;
        }}
        type="file"
        className="visually-hidden"
        tabIndex={-1}
        aria-label="A folder"
        data-choice="folder"
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          const folder = files[0]?.webkitRelativePath.split("/")[0] ?? "";
          onFiles(filesOfInput(files), folder);
          event.target.value = "";
        }}
      />
      <input
        ref={fileInput}
        type="file"
        accept={accept}
        multiple={several}
        className="visually-hidden"
        tabIndex={-1}
        aria-label="Files"
        data-choice="files"
        onChange={(event) => {
          const files = filesOfInput([...(event.target.files ?? [])]);
          if (files.length > 0) onFiles(files, null);
          event.target.value = "";
        }}
      />
    </>
  );
  return {
    chooseFolder: () => (hostChooses ? askHost() : folderInput.current?.click()),
    chooseFiles: () => fileInput.current?.click(),
    inputs,
  };
}
