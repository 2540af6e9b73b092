/** Where the recording stands, as the screens read it. */
export interface ClockReading {
  /** Seconds. */
  readonly time: number;
  /** Seconds; 0 until known. */
  readonly duration: number;
  readonly playing: boolean;
  readonly rate: number;
  /** Seconds of the recording in a second while it runs backwards; 0 while it does not. */
  readonly backward: number;
  /** 0 to 1. */
  readonly volume: number;
  readonly muted: boolean;
  /** Why nothing can be played, in words for the person. */
  readonly fault: string | null;
}

/** A stretch to be heard: played from start to end, then stopped. Seconds. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

export const rates = [0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 3] as const;

/** How fast the shuttle goes back, notch by notch, in seconds of the recording in a second. */
export const backwardSpeeds = [1, 2, 4, 8] as const;

/** Second of lead before a stretch, so that the ear is there when the words come. */
export const leadSeconds = 1;

/**
 * The recording's clock: moved by a video where there is one, by the time of day where there is none.
 * Screens read it through `subscribe` and `read`; only the person, or a stretch they asked to hear, moves it.
 */
export abstract class Clock {
  private listeners = new Set<() => void>();
  private reading: ClockReading;
  private stretches: Stretch[] = [];
  private heardOut: (() => void) | null = null;
  private backFrame = 0;
  /** Length of one step, in seconds: a frame as soon as a playing video has shown how long its frames are, until then a 25th. */
  protected frameSeconds = 1 / 25;

  constructor(duration: number) {
    this.reading = { time: 0, duration, playing: false, rate: 1, backward: 0, volume: 1, muted: false, fault: null };
  }

  /** Of one step, in seconds. */
  frameLength(): number {
    return this.frameSeconds;
  }

  readonly read = (): ClockReading => this.reading;
  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  protected abstract startPlaying(): void;
  protected abstract stopPlaying(): void;
  protected abstract moveTo(seconds: number): void;
  protected abstract applyRate(rate: number): void;
  /** For a clock that can be heard. */
  protected applyVolume(_volume: number, _muted: boolean): void {}
  /** False while the mechanism is still on its way to a moment it was sent to. */
  protected arrived(): boolean {
    return true;
  }
  abstract dispose(): void;

  play(): void {
    this.forgetStretches();
    this.startPlaying();
  }
  pause(): void {
    this.forgetStretches();
    this.stopPlaying();
  }
  toggle(): void {
    if (this.reading.playing || this.reading.backward > 0) this.pause();
    else this.play();
  }
  seek(seconds: number): void {
    this.forgetStretches();
    this.moveTo(this.within(seconds));
  }
  step(frames: number): void {
    this.pause();
    this.moveTo(this.within(this.reading.time + frames * this.frameSeconds));
  }
  setRate(rate: number): void {
    this.applyRate(rate);
    this.note({ rate });
  }
  /** One notch faster or slower along `rates`. */
  shiftRate(notches: 1 | -1): void {
    const at = rates.findIndex((rate) => rate >= this.reading.rate);
    const next = rates[Math.min(rates.length - 1, Math.max(0, (at < 0 ? rates.length - 1 : at) + notches))];
    if (next !== undefined) this.setRate(next);
  }
  /** The shuttle: forwards plays, and plays faster at each further notch; backwards likewise. */
  shuttle(direction: 1 | -1): void {
    const { playing, backward } = this.reading;
    if (direction === 1) {
      if (playing) this.shiftRate(1);
      else this.play();
      return;
    }
    const faster = backwardSpeeds.find((speed) => speed > backward) ?? backward;
    this.pause();
    this.runBackwards(faster);
  }
  /** Lets go of the shuttle: stands still, and plays at its own rate next time. */
  halt(): void {
    this.pause();
    this.setRate(1);
  }
  /** @param volume 0 to 1; sound that was off comes back. */
  setVolume(volume: number): void {
    const held = Math.round(Math.min(1, Math.max(0, volume)) * 100) / 100;
    this.applyVolume(held, false);
    this.note({ volume: held, muted: false });
  }
  /** Volume, mute and rate as they were left, all at once. */
  playAs({ volume, muted, rate }: Pick<ClockReading, "volume" | "muted" | "rate">): void {
    this.applyVolume(volume, muted);
    this.applyRate(rate);
    this.note({ volume, muted, rate });
  }
  toggleMuted(): void {
    const { volume, muted } = this.reading;
    this.applyVolume(volume, !muted);
    this.note({ muted: !muted });
  }
  /**
   * Plays each stretch with a second of lead and stops after the last; anything else the person does ends it.
   * @param heardOut called once the last stretch has been heard to its end, and only then.
   */
  hear(stretches: readonly Stretch[], heardOut: (() => void) | null = null): void {
    const [first, ...rest] = stretches;
    if (!first) return;
    this.forgetStretches();
    this.stretches = [first, ...rest];
    this.heardOut = heardOut;
    this.moveTo(this.within(first.start - leadSeconds));
    this.startPlaying();
  }

  protected within(seconds: number): number {
    const last = this.reading.duration > 0 ? this.reading.duration : Number.POSITIVE_INFINITY;
    return Math.min(last, Math.max(0, seconds));
  }
  /** Takes what the mechanism reports, ends a heard stretch at its end, and tells the listeners. */
  protected note(change: Partial<ClockReading>): void {
    this.reading = { ...this.reading, ...change };
    const [current, next] = this.stretches;
    if (current && this.reading.playing && this.reading.time >= current.end) {
      this.stretches = this.stretches.slice(1);
      if (next) this.moveTo(this.within(next.start - leadSeconds));
      else {
        const { heardOut } = this;
        this.heardOut = null;
        this.stopPlaying();
        heardOut?.();
      }
    }
    for (const listener of this.listeners) listener();
  }
  private runBackwards(speed: number): void {
    let at = this.reading.time;
    let before = performance.now();
    this.note({ backward: speed });
    const back = (now: number): void => {
      at = Math.max(0, at - ((now - before) / 1000) * speed);
      before = now;
      // A video shows nothing while it seeks; it is sent on when it has come where it was sent.
      if (this.arrived()) this.moveTo(at);
      if (at <= 0) {
        this.moveTo(0);
        this.note({ backward: 0 });
      } else this.backFrame = requestAnimationFrame(back);
    };
    this.backFrame = requestAnimationFrame(back);
  }
  private forgetStretches(): void {
    if (this.reading.backward > 0) {
      cancelAnimationFrame(this.backFrame);
      this.note({ backward: 0 });
    }
    this.stretches = [];
    this.heardOut = null;
  }
}
