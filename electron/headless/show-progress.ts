import type { WriteStream } from "node:tty";

export interface ProgressLine {
  readonly say: (what: string) => void;
  readonly step: (what: string, done: number, of: number) => void;
  /** Leaves the line for what is printed next; more than once does nothing. */
  readonly end: () => void;
}

/** One line that is written over as the work goes on; nothing at all where no person is watching. */
export function showProgress(stream: WriteStream): ProgressLine {
  let open = false;
  const write = (text: string) => {
    if (!stream.isTTY) return;
    stream.write(`\r\u001b[K${text}`);
    open = true;
  };
  return {
    say: (what) => write(`${what} …`),
    step: (what, done, of) => write(`analyzing: ${what} ${done}/${of}`),
    end: () => {
      if (open) stream.write("\r\u001b[K");
      open = false;
    },
  };
}
