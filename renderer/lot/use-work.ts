import { useEffect, useRef, useState } from "react";
import type { EventPayload } from "../../shared-types/index.ts";
import { useClient, useHostEvent } from "../client/use-client.ts";

/** Long work of the host's that goes by a ticket: followed while it runs, cancelled when the person says so or leaves. */
export function useWork() {
  const client = useClient();
  const ticket = useRef<string | null>(null);
  const [working, setWorking] = useState(false);
  const [progress, setProgress] = useState<EventPayload<"work.progress"> | null>(null);
  useHostEvent("work.progress", (told) => {
    if (told.ticket === ticket.current) setProgress(told);
  });
  const cancel = () => {
    if (ticket.current) client.call("work.cancel", { ticket: ticket.current }).catch(() => undefined);
  };
  // Whoever closes the window wants no more of it.
  useEffect(
    () => () => {
      if (ticket.current) client.call("work.cancel", { ticket: ticket.current }).catch(() => undefined);
    },
    [client],
  );
  const run = async <Result>(work: (ticket: string) => Promise<Result>): Promise<Result> => {
    const mine = crypto.randomUUID();
    ticket.current = mine;
    setWorking(true);
    setProgress(null);
    try {
      return await work(mine);
    } finally {
      if (ticket.current === mine) {
        ticket.current = null;
        setWorking(false);
        setProgress(null);
      }
    }
  };
  return { working, progress, run, cancel };
}
