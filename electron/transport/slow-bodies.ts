/** A sender that stopped half way and keeps the line. */
export class SlowSender extends Error {
  constructor(milliseconds: number) {
    super(`Nothing arrived for ${milliseconds} ms.`);
    this.name = "SlowSender";
  }
}

/**
 * A body that fails once its sender pauses too long. Only the time in which more is wanted counts: while a disk is busy, a sender waits
 * for it and is not slow.
 */
export function boundPauses(content: ReadableStream<Uint8Array>, milliseconds: number): ReadableStream<Uint8Array> {
  const reader = content.getReader();
  return new ReadableStream<Uint8Array>(
    {
      async pull(controller) {
        const { promise: late, reject } = Promise.withResolvers<never>();
        const timer = setTimeout(() => reject(new SlowSender(milliseconds)), milliseconds);
        try {
          const { done, value } = await Promise.race([reader.read(), late]);
          if (done) controller.close();
          else controller.enqueue(value);
        } catch (failure) {
          controller.error(failure);
          reader.cancel(failure).catch(() => {});
        } finally {
          clearTimeout(timer);
        }
      },
      cancel: (reason) => reader.cancel(reason),
    },
    { highWaterMark: 0 },
  );
}
