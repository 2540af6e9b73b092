/** One end of a wire between two processes: Node's own channel between parent and child. */
export interface Wire {
  readonly send: (message: unknown) => void;
  readonly listen: (listener: (message: unknown) => void) => void;
  /** Called when nobody is at the other end any longer; questions that wait are then refused. */
  readonly ended?: (listener: (why: string) => void) => void;
}

// biome-ignore lint/suspicious/noExplicitAny: both ends are the stand-in's own, and each names what it asks.
export type Answers = Readonly<Record<string, (asked: any) => unknown>>;
// biome-ignore lint/suspicious/noExplicitAny: as above.
export type Ask = (what: string, asked?: unknown) => Promise<any>;

interface Message {
  readonly kind: "ask" | "answer" | "failure";
  readonly number: number;
  readonly what: string;
  readonly value: unknown;
}

/** Questions and answers over a wire, both ways. */
export function createRpc(wire: Wire, answers: Answers): Ask {
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (failure: Error) => void }>();
  let last = 0;
  wire.listen((received) => {
    const { kind, number, what, value } = received as Message;
    if (kind === "ask") {
      Promise.resolve()
        .then(() => {
          const answer = answers[what];
          if (!answer) throw new Error(`The stand-in has no answer to "${what}".`);
          return answer(value);
        })
        .then(
          (answer) => wire.send({ kind: "answer", number, what, value: answer }),
          (failure) => wire.send({ kind: "failure", number, what, value: String(failure instanceof Error ? failure.message : failure) }),
        );
      return;
    }
    const asker = waiting.get(number);
    waiting.delete(number);
    if (kind === "answer") asker?.resolve(value);
    else asker?.reject(new Error(String(value)));
  });
  let ended: string | null = null;
  wire.ended?.((why) => {
    ended = why;
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  });
  return (what, asked) =>
    new Promise((resolve, reject) => {
      if (ended !== null) {
        reject(new Error(ended));
        return;
      }
      last += 1;
      waiting.set(last, { resolve, reject });
      wire.send({ kind: "ask", number: last, what, value: asked });
    });
}
