import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from "react";
import type { Problem } from "../../shared-types/index.ts";
import { problemOf } from "../client/client.ts";
import { useClient } from "../client/use-client.ts";
import { Button } from "./button.tsx";
import { Modal } from "./dialog.tsx";
import { ProblemNote } from "./problem-note.tsx";

interface InitialsKeeper {
  readonly initials: string;
  /** The initials, asked for when there are none yet. Null when the person would not say; nothing is then changed. */
  readonly requireInitials: () => Promise<string | null>;
  readonly askInitials: () => void;
}

const InitialsContext = createContext<InitialsKeeper>({ initials: "", requireInitials: async () => null, askInitials: () => {} });

export function useInitials(): InitialsKeeper {
  return useContext(InitialsContext);
}

export function InitialsProvider({ children }: { readonly children: ReactNode }) {
  const client = useClient();
  const [initials, setInitials] = useState("");
  const [asking, setAsking] = useState(false);
  const known = useRef("");
  const waiting = useRef<((answer: string | null) => void)[]>([]);

  useEffect(() => {
    // Without an answer the first edit asks; a host that does not answer shows itself elsewhere.
    client.call("settings.get", {}).then(
      (settings) => {
        known.current = settings.initials;
        setInitials(settings.initials);
      },
      () => {},
    );
  }, [client]);

  const settle = useCallback((answer: string | null) => {
    setAsking(false);
    for (const resolve of waiting.current.splice(0)) resolve(answer);
  }, []);
  const requireInitials = useCallback(() => {
    if (known.current) return Promise.resolve<string | null>(known.current);
    setAsking(true);
    return new Promise<string | null>((resolve) => waiting.current.push(resolve));
  }, []);
  const askInitials = useCallback(() => setAsking(true), []);
  const keeper = useMemo(() => ({ initials, requireInitials, askInitials }), [initials, requireInitials, askInitials]);

  return (
    <InitialsContext value={keeper}>
      {children}
      <Modal title="Who is working here?" open={asking} onClose={() => settle(null)}>
        <InitialsForm
          before={initials}
          onGiven={(given) => {
            known.current = given;
            setInitials(given);
            settle(given);
          }}
        />
      </Modal>
    </InitialsContext>
  );
}

function InitialsForm({ before, onGiven }: { readonly before: string; readonly onGiven: (initials: string) => void }) {
  const client = useClient();
  const [typed, setTyped] = useState(before);
  const [problem, setProblem] = useState<Problem | null>(null);
  const save = () => {
    client.call("settings.set", { initials: typed.trim() }).then(
      (settings) => onGiven(settings.initials),
      (thrown: unknown) => setProblem(problemOf(thrown)),
    );
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <p>
        Every edit and ruling is signed with them. They leave this machine only in what you hand on: bundles, indexes and review records
        carry them.
      </p>
      <div className="field">
        <label htmlFor="initials">Initials</label>
        <input
          id="initials"
          className="text-field"
          value={typed}
          maxLength={8}
          required
          autoComplete="off"
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      {problem ? <ProblemNote problem={problem} /> : null}
      <div>
        <Button type="submit" weight="main" disabled={typed.trim() === ""}>
          Use these initials
        </Button>
      </div>
    </form>
  );
}
