import { expect, test } from "vitest";
import { engineSpeedAgainstGearing } from "../../../electron/analysis/comparison/standards/engine-speed.ts";
import { claimIndex } from "../../../electron/analysis/comparison/standards/rule.ts";
import { claimsFrom } from "./support/claims.ts";

/** Worked examples as published; the sums are in direct gear. Sources allow each other 0.1 %. */
const published = [
  { mph: 70, ratio: 3.55, tire: "26.0x8.50R14", rpm: 3211, source: "https://www.calchorsepower.com/drag-racing/gear-ratio-rpm-mph" },
  { mph: 70, ratio: 3.73, tire: "28.0x8.50R14", rpm: 3133, source: "https://interconverter.com/auto/rpm-calculator" },
  { mph: 50, ratio: 6.66, tire: "37.5x12.50R15", rpm: 2983, source: "http://sagebrushstudebaker.com/fixlst20.html" },
] as const;

test.for([...published])("$mph mph, $ratio, $tire: $rpm rpm ($source)", ({ mph, ratio, tire, rpm }) => {
  const claims = claimsFrom([
    { component: "final-drive", attribute: "ratio", value: ratio },
    { component: "tire", attribute: "size", value: tire },
    // Far too slow for any top gear, so that the sum is shown.
    { component: "engine", attribute: "type", part: "engine speed", value: `1000 rpm at ${mph} mph` },
  ]);
  const { remarks } = engineSpeedAgainstGearing.find(claimIndex(claims, null));
  const [, worked] = /make (\d+) rpm in direct gear/.exec(remarks[0]?.why ?? "") ?? [];
  expect(Math.abs(Number(worked) - rpm) / rpm).toBeLessThanOrEqual(0.001);
});
