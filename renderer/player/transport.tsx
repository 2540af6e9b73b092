import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { keepFocus } from "../shared/keep-focus.ts";
import { tenthsLabel } from "../shared/time.ts";
import { type Clock, rates } from "./clock.ts";
import "./transport.css";
import { useClockValue, useReading } from "./use-clock.ts";
import { useKeptPlaying } from "./use-kept-playing.ts";

/** Play, steps, rate and the time. */
export function Transport({ clock, children }: { readonly clock: Clock; readonly children?: React.ReactNode }) {
  useKeptPlaying(clock);
  const playing = useClockValue(clock, (reading) => reading.playing);
  const rate = useClockValue(clock, (reading) => reading.rate);
  const backward = useClockValue(clock, (reading) => reading.backward);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar has no element of its own
    <div className="transport" role="group" aria-label="Playing">
      <Button onClick={() => clock.toggle()} shortcut="Space" className="transport-play">
        {playing || backward > 0 ? "Pause" : "Play"}
      </Button>
      <Button weight="quiet" onClick={() => clock.step(-1)} aria-label="One frame back" tip="One frame back" shortcut=",">
        ‹
      </Button>
      <Button weight="quiet" onClick={() => clock.step(1)} aria-label="One frame on" tip="One frame on" shortcut=".">
        ›
      </Button>
      <TimeNow clock={clock} />
      <div className="transport-rate">
        <Choice
          label="Rate"
          labelHidden
          value={String(rate)}
          options={rates.map((one) => ({ value: String(one), label: `${one}×` }))}
          onChange={(value) => clock.setRate(Number(value))}
        />
      </div>
      {backward > 0 ? (
        <output className="transport-backward" aria-label="Shuttle">
          back {backward}×
        </output>
      ) : null}
      <Loudness clock={clock} />
      {children}
    </div>
  );
}

/** Sound off and on, and how loud. */
function Loudness({ clock }: { readonly clock: Clock }) {
  const volume = useClockValue(clock, (reading) => reading.volume);
  const muted = useClockValue(clock, (reading) => reading.muted);
  return (
    <span className="transport-volume">
      <Button
        weight="quiet"
        {...keepFocus}
        aria-pressed={muted}
        onClick={() => clock.toggleMuted()}
        tip={muted ? "The sound is off" : "Takes the sound away"}
      >
        Mute
      </Button>
      <input
        type="range"
        aria-label="Volume"
        min="0"
        max="100"
        step="5"
        value={muted ? 0 : Math.round(volume * 100)}
        aria-valuetext={muted ? "muted" : `${Math.round(volume * 100)} percent`}
        onChange={(event) => clock.setVolume(Number(event.target.value) / 100)}
      />
    </span>
  );
}

function TimeNow({ clock }: { readonly clock: Clock }) {
  const { time, duration } = useReading(clock);
  return (
    <span className="transport-time">
      {tenthsLabel(time)} <span className="soft small">of {tenthsLabel(duration)}</span>
    </span>
  );
}
