import { useEffect, useState } from "react";
import type { Output, Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "../shared/button.tsx";
import { ProblemNote } from "../shared/problem-note.tsx";
import { updateText } from "./help-texts.ts";
import { updateWords } from "./update-words.ts";

/** The look for a newer version: off until an address stands here. */
export function UpdatePart() {
  const client = useClient();
  const [kept, setKept] = useState<string | null>(null);
  const [typed, setTyped] = useState("");
  const [answer, setAnswer] = useState<Output<"update.look">>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [state, setState] = useState("");
  const show = (thrown: unknown) => setProblem(problemOf(thrown));
  useEffect(() => {
    client.call("update.setting", {}).then(
      ({ address }) => {
        setKept(address);
        setTyped(address ?? "");
      },
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  }, [client]);
  const keep = (address: string | null) => {
    setProblem(null);
    setAnswer(null);
    client.call("update.set", { address }).then((setting) => {
      setKept(setting.address);
      setTyped(setting.address ?? "");
      setState(setting.address === null ? "Nobody is asked." : "Kept.");
    }, show);
  };
  const look = () => {
    setProblem(null);
    setAnswer(null);
    setState("Asking…");
    client
      .call("update.look", { now: true })
      .then(setAnswer, show)
      .finally(() => setState(""));
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        keep(typed.trim() || null);
      }}
    >
      <p>{updateText}</p>
      <div className="field">
        <label htmlFor="update-address">Address that tells of versions (https)</label>
        <input
          id="update-address"
          className="text-field"
          value={typed}
          maxLength={500}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      {problem ? <ProblemNote problem={problem} /> : null}
      <div className="row">
        <Button type="submit" weight="main">
          Keep this address
        </Button>
        {kept === null ? null : (
          <>
            <Button onClick={look}>Ask now</Button>
            <Button onClick={() => keep(null)}>Ask nobody</Button>
          </>
        )}
        <span className="soft" role="status">
          {answer ? updateWords(answer) : kept === null && state === "" ? "Off: nobody is asked." : state}
        </span>
      </div>
    </form>
  );
}
