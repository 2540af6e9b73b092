import type { EventName, EventPayload, HostEvent } from "../../shared-types/index.ts";

export interface EventHub {
  readonly publish: <Name extends EventName>(name: Name, payload: EventPayload<Name>) => void;
  /** Gives back the function that ends it. */
  readonly subscribe: (listener: (event: HostEvent) => void) => () => void;
}

export function createEventHub(): EventHub {
  const listeners = new Set<(event: HostEvent) => void>();
  return {
    publish: (name, payload) => {
      for (const listener of [...listeners]) listener({ name, payload } as HostEvent);
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
