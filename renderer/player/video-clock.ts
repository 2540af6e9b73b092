import "./no-dynamic-style.ts";
import videojs from "video.js/core.es.js";
import { Clock } from "./clock.ts";

type Player = ReturnType<typeof videojs>;

const faults: Record<number, string> = {
  2: "The video stopped coming while it was read. Play again to go on.",
  3: "The video is damaged, or uses a coding this window cannot play. Marking goes on without the picture.",
  4: "This window cannot play the video: its file is gone from where it was, or its coding is not one it knows. Marking goes on without the picture.",
};

/** A clock moved by a video. The player's element lives inside `host` and goes with `dispose`. */
export class VideoClock extends Clock {
  private readonly player: Player;
  private frame = 0;
  /** What was asked before the video's metadata was in, when the player forgets it. */
  private waiting = { seek: null as number | null, play: false };
  private lastMediaTime = 0;
  private shortestFrame = Number.POSITIVE_INFINITY;

  constructor(host: HTMLElement, source: string, name: string, measured: (seconds: number) => void) {
    super(0);
    const element = document.createElement("video-js");
    host.append(element);
    this.player = videojs(element, {
      controls: false,
      preload: "auto",
      // The page draws its own controls and says its own faults.
      children: ["mediaLoader"],
      // The element goes by the file's content; the type only tells the player not to look for a streaming format.
      sources: [{ src: source, type: "video/mp4" }],
    });
    // The player calls its frame a landmark; the screen around it is one already.
    for (const name of ["role", "aria-label", "tabindex"]) this.player.el()?.removeAttribute(name);
    const video = this.video();
    video?.setAttribute("aria-label", name);
    // Shortcuts belong to the page; the picture is no tab stop.
    video?.setAttribute("tabindex", "-1");
    this.player.on("loadedmetadata", () => {
      const seconds = this.player.duration() ?? 0;
      if (Number.isFinite(seconds) && seconds > 0) {
        this.note({ duration: seconds });
        measured(seconds);
      }
      // A source that comes in takes its own rate.
      this.applyRate(this.read().rate);
      const { seek, play } = this.waiting;
      this.waiting = { seek: null, play: false };
      if (seek !== null) this.moveTo(this.within(seek));
      if (play) this.startPlaying();
    });
    this.player.on("play", () => {
      this.note({ playing: true });
      cancelAnimationFrame(this.frame);
      this.frame = requestAnimationFrame(this.tick);
    });
    this.player.on("pause", () => {
      cancelAnimationFrame(this.frame);
      this.note({ playing: false, time: this.now() });
    });
    this.player.on("seeked", () => {
      // On the way back the shuttle itself knows where it is.
      if (this.read().backward === 0) this.note({ time: this.now() });
    });
    this.player.on("timeupdate", () => {
      // During a seek the element still reports where it was.
      if (!this.player.seeking() && this.waiting.seek === null && this.read().backward === 0) this.note({ time: this.now() });
    });
    this.player.on("error", () => {
      const code = this.player.error()?.code ?? 4;
      this.note({ playing: false, fault: faults[code] ?? faults[4] ?? null });
    });
    this.watchFrames();
  }

  protected startPlaying(): void {
    if (!this.hasMetadata()) {
      this.waiting.play = true;
      return;
    }
    if (this.read().duration > 0 && this.now() >= this.read().duration - 0.05 && !this.player.seeking()) this.moveTo(0);
    // A play that a later pause overtakes is refused; that is no fault.
    this.player.play()?.catch(() => {});
  }
  protected stopPlaying(): void {
    this.waiting.play = false;
    this.player.pause();
  }
  protected moveTo(seconds: number): void {
    if (!this.hasMetadata()) this.waiting.seek = seconds;
    else this.player.currentTime(seconds);
    this.note({ time: seconds });
  }
  protected applyRate(rate: number): void {
    this.player.playbackRate(rate);
  }
  protected override applyVolume(volume: number, muted: boolean): void {
    this.player.volume(volume);
    this.player.muted(muted);
  }
  protected override arrived(): boolean {
    return !this.player.seeking();
  }
  dispose(): void {
    // Its own loop would go on asking a player that is gone.
    this.pause();
    cancelAnimationFrame(this.frame);
    this.player.dispose();
  }

  private hasMetadata(): boolean {
    // Before its mechanism is ready the player answers undefined, whatever its types say.
    return (this.player.readyState() ?? 0) >= 1;
  }
  private now(): number {
    return this.player.currentTime() ?? 0;
  }
  private video(): HTMLVideoElement | null {
    return this.player.el()?.querySelector("video") ?? null;
  }
  private readonly tick = (): void => {
    if (this.player.isDisposed()) return;
    if (!this.player.seeking()) this.note({ time: this.now() });
    if (!this.player.paused()) this.frame = requestAnimationFrame(this.tick);
  };
  /** Learns the length of a frame from the moments of neighbouring frames while the video plays. */
  private watchFrames(): void {
    const video = this.video();
    if (!video?.requestVideoFrameCallback) return;
    const seen = (_now: number, shown: VideoFrameCallbackMetadata) => {
      const apart = shown.mediaTime - this.lastMediaTime;
      // Between 200 and 4 frames in a second: anything else is a seek. Skipped frames look long, so the shortest counts.
      if (apart > 0.005 && apart < 0.26 && apart < this.shortestFrame) {
        this.shortestFrame = apart;
        this.frameSeconds = apart;
      }
      this.lastMediaTime = shown.mediaTime;
      if (!this.player.isDisposed()) video.requestVideoFrameCallback(seen);
    };
    video.requestVideoFrameCallback(seen);
  }
}
