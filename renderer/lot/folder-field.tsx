import { useEffect, useState } from "react";
import type { Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { TextField } from "../shared/text-field.tsx";
import "./lot.css";

export interface FolderFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (folder: string) => void;
  readonly onProblem: (problem: Problem) => void;
  readonly hint?: string;
}

/** A folder of this machine: written in full, or chosen in the system's own window where the host has one. */
export function FolderField({ label, value, onChange, onProblem, hint }: FolderFieldProps) {
  const client = useClient();
  const [hostChooses, setHostChooses] = useState(false);
  const [choosing, setChoosing] = useState(false);
  useEffect(() => {
    // Without an answer the field alone is there.
    client.call("host.abilities", {}).then(
      (abilities) => setHostChooses(abilities.chooseFolder),
      () => undefined,
    );
  }, [client]);
  const choose = () => {
    setChoosing(true);
    client
      .call("folder.place", {})
      .then(
        ({ folder }) => (folder === null ? undefined : onChange(folder)),
        (thrown: unknown) => onProblem(problemOf(thrown)),
      )
      .finally(() => setChoosing(false));
  };
  return (
    <div className="folder-field">
      <TextField label={label} value={value} onChange={onChange} {...(hint === undefined ? {} : { hint })} />
      {hostChooses ? (
        <Button onClick={choose} disabled={choosing}>
          Choose the folder…
        </Button>
      ) : null}
    </div>
  );
}
