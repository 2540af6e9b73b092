import { Clock } from "./clock.ts";

/** A clock for a recording without a video: it can be moved, and it runs. */
export class PlainClock extends Clock {
  private frame = 0;
  private before = 0;

  protected startPlaying(): void {
    if (this.read().playing) return;
    const { time, duration } = this.read();
    this.before = performance.now();
    this.note({ playing: true, time: duration > 0 && time >= duration ? 0 : time });
    this.frame = requestAnimationFrame(this.tick);
  }
  protected stopPlaying(): void {
    cancelAnimationFrame(this.frame);
    if (this.read().playing) this.note({ playing: false });
  }
  protected moveTo(seconds: number): void {
    this.note({ time: seconds });
  }
  protected applyRate(): void {}
  /** The transcript's end can move when the recording is analysed again. */
  setDuration(seconds: number): void {
    if (seconds !== this.read().duration) this.note({ duration: seconds });
  }
  dispose(): void {
    cancelAnimationFrame(this.frame);
  }

  private readonly tick = (now: number): void => {
    const { time, rate, duration, playing } = this.read();
    if (!playing) return;
    const next = time + ((now - this.before) / 1000) * rate;
    this.before = now;
    if (duration > 0 && next >= duration) {
      this.note({ time: duration, playing: false });
      return;
    }
    this.note({ time: next });
    if (this.read().playing) this.frame = requestAnimationFrame(this.tick);
  };
}
