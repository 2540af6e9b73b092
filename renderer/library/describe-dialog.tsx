import { useState } from "react";
import type { Problem, RecordingSummary } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { Modal } from "../shared/dialog.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { DescriptionFields } from "./description-fields.tsx";
import { descriptionOfDraft, draftOfRecording, faultsOfDraft } from "./vehicle-form.ts";

export interface DescribeDialogProps {
  readonly recording: RecordingSummary;
  readonly onClose: () => void;
  readonly onSaved: () => void;
}

export function DescribeDialog({ recording, onClose, onSaved }: DescribeDialogProps) {
  const client = useClient();
  const [draft, setDraft] = useState(() => draftOfRecording(recording));
  const [problem, setProblem] = useState<Problem | null>(null);
  const faults = faultsOfDraft(draft);
  const save = () => {
    client.call("recording.describe", { id: recording.id, ...descriptionOfDraft(draft) }).then(
      () => {
        onSaved();
        onClose();
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };
  return (
    <Modal
      title="Describe the recording"
      open
      onClose={onClose}
      foot={
        <Button weight="main" onClick={save} disabled={Object.keys(faults).length > 0}>
          Save
        </Button>
      }
    >
      <DescriptionFields draft={draft} faults={faults} onChange={setDraft} />
      {problem ? <ProblemNote problem={problem} /> : null}
    </Modal>
  );
}
