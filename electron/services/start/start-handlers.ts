import type { Handlers } from "../../../shared-types/index.ts";
import type { Parts } from "../parts.ts";
import { startState, startTold } from "./first-minutes.ts";
import { createUpdateLook, setUpdateAddress, updateSetting } from "./look-for-update.ts";

/** @param version the one that runs. */
export function startHandlers(parts: Parts, version: string) {
  const look = createUpdateLook(parts, version);
  return {
    "start.state": () => startState(parts, version),
    "start.told": ({ what }) => startTold(parts, version, what),
    "update.setting": () => updateSetting(parts),
    "update.set": ({ address }) => setUpdateAddress(parts, address || null),
    "update.look": ({ now }) => look(now),
  } satisfies Partial<Handlers>;
}
