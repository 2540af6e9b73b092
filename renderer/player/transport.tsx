import { Button } from "../shared/button.tsx";
import { Choice } from "../shared/choice.tsx";
import { tenthsLabel } from "../shared/time.ts";
import { type Clock, rates } from "./clock.ts";
import "./transport.css";
import { useClockValue, useReading } from "./use-clock.ts";

/** Play, steps, rate and the time. */
export function Transport({ clock, children }: { readonly clock: Clock; readonly children?: React.ReactNode }) {
  const playing = useClockValue(clock, (reading) => reading.playing);
  const rate = useClockValue(clock, (reading) => reading.rate);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar has no element of its own
    <div className="transport" role="group" aria-label="Playing">
      <Button onClick={() => clock.toggle()} shortcut="Space" className="transport-play">
        {playing ? "Pause" : "Play"}
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
      {children}
    </div>
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
