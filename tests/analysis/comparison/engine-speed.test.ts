import { expect, test } from "vitest";
import { engineSpeedAgainstGearing } from "../../../electron/analysis/comparison/standards/engine-speed.ts";
import { claimIndex } from "../../../electron/analysis/comparison/standards/rule.ts";
import { claimsFrom } from "./support/claims.ts";

/** Worked examples as published; the sum shown is in direct gear, the source's in the gear named. Sources allow each other 0.1 %. */
const published = [
  {
    mph: 70,
    ratio: 3.55,
    gear: 1,
    tire: "26.0x8.50R14",
    rpm: 3211,
    source: "https://www.calchorsepower.com/drag-racing/gear-ratio-rpm-mph",
  },
  { mph: 70, ratio: 3.73, gear: 1, tire: "28.0x8.50R14", rpm: 3133, source: "https://interconverter.com/auto/rpm-calculator" },
  { mph: 50, ratio: 6.66, gear: 1, tire: "37.5x12.50R15", rpm: 2983, source: "http://sagebrushstudebaker.com/fixlst20.html" },
  { mph: 70, ratio: 3.42, gear: 0.7, tire: "28.0x8.50R14", rpm: 2011, source: "https://axletally-v2.pages.dev/gear-ratio-calculator/" },
  { mph: 70, ratio: 3.08, gear: 0.7, tire: "28.0x8.50R14", rpm: 1811, source: "https://calculatorlib.com/rpm-from-speed-calculator" },
] as const;

test.for([...published])("$mph mph, $ratio, $gear, $tire: $rpm rpm ($source)", ({ mph, ratio, gear, tire, rpm }) => {
  const claims = claimsFrom([
    { component: "final-drive", attribute: "ratio", value: ratio },
    { component: "tire", attribute: "size", value: tire },
    // Far too slow for any top gear, so that the sum is shown.
    { component: "engine", attribute: "type", part: "engine speed", value: `1000 rpm at ${mph} mph` },
  ]);
  const { remarks } = engineSpeedAgainstGearing.find(claimIndex(claims, null));
  const [, worked] = /make (\d+) rpm in direct gear/.exec(remarks[0]?.why ?? "") ?? [];
  expect(Math.abs(Number(worked) * gear - rpm) / rpm).toBeLessThanOrEqual(0.001);
});
