import { type Answers, type Ask, createRpc } from "./rpc.ts";

/** What the test on the other end of the wire may ask of the stand-in; filled by the parts that can answer. */
const answers: Record<string, (asked: never) => unknown> = {};

export function answer(what: string, give: (asked: never) => unknown): void {
  answers[what] = give;
}

const alone = process.send === undefined;
const wire = {
  send: (message: unknown) => {
    if (!alone && process.connected) process.send?.(message);
  },
  listen: (listener: (message: unknown) => void) => {
    process.on("message", listener);
  },
};
// The wire must not keep an application from ending whose windows are gone.
const ask: Ask = alone ? async () => undefined : createRpc(wire, answers as Answers);

/** Asks the test: it plays the person and the page. */
export function askTest<Answer>(what: string, asked: unknown): Promise<Answer> {
  return ask(what, asked) as Promise<Answer>;
}

/** Tells the test something that has no answer. */
export function tell(what: string, told: unknown): void {
  ask(what, told).catch(() => {});
}
