import { createContext, useContext, useEffect, useEffectEvent, useState } from "react";
import type { EventName, EventPayload } from "../../shared-types/index.ts";
import { bridgeClient } from "./bridge-client.ts";
import type { Client } from "./client.ts";
import { httpClient } from "./http-client.ts";

/** The desktop's bridge where there is one, else HTTP to where the page came from. */
export function chooseClient(): Client {
  return window.roundwalk ? bridgeClient(window.roundwalk) : httpClient();
}

export const ClientContext = createContext<Client | null>(null);

export function useClient(): Client {
  const client = useContext(ClientContext);
  if (!client) throw new Error("useClient needs a ClientContext above it.");
  return client;
}

export function useHostEvent<Name extends EventName>(name: Name, listener: (payload: EventPayload<Name>) => void): void {
  const client = useClient();
  const hear = useEffectEvent(listener);
  useEffect(() => client.on(name, (payload) => hear(payload)), [client, name]);
}

/** Whether the host is away now. */
export function useHostAway(): boolean {
  const client = useClient();
  const [away, setAway] = useState(false);
  useEffect(() => client.onAway(setAway), [client]);
  return away;
}
