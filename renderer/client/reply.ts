import { z } from "zod";
import { type EventName, type EventPayload, events, Problem } from "../../shared-types/index.ts";
import { ProblemError } from "./client.ts";

const AnyReply = z.discriminatedUnion("ok", [
  z.object({ ok: z.literal(true), value: z.unknown() }),
  z.object({ ok: z.literal(false), problem: Problem }),
]);

/**
 * The value of a reply. Only the envelope is parsed here: the host has parsed the value against the same contract just before sending it,
 * and a long recording's detail is too large to parse twice for each edit.
 */
export function valueOfReply(reply: unknown, from: string): unknown {
  const parsed = AnyReply.safeParse(reply);
  if (!parsed.success) throw new ProblemError({ code: "reply-unreadable", message: `${from} answered in a form this page does not know.` });
  if (!parsed.data.ok) throw new ProblemError(parsed.data.problem);
  return parsed.data.value;
}

/** An event's payload, or null when it is not one this page knows. */
export function payloadOfEvent<Name extends EventName>(name: Name, payload: unknown): EventPayload<Name> | null {
  const parsed = events[name].safeParse(payload);
  return parsed.success ? (parsed.data as EventPayload<Name>) : null;
}
