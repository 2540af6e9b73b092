const band = { from: -9, to: 9 };
const names = { from: band.to + 1, to: band.to + 16 };
const ticks = { from: names.to, to: names.to + 13 };
const doubtful = { from: band.from - 5, to: band.from - 1 };
const findings = { from: doubtful.from - 15, to: doubtful.from - 1 };
const feet = { from: findings.from - 8, to: findings.from };

/**
 * The strip's lanes across its way, in CSS pixels from the middle of the band: positive is outwards, negative towards the plan.
 * Names have a lane of their own, so that no word stands on a pattern.
 */
export const lanes = { ticks, names, band, doubtful, findings, feet };

/** From the box's edge to the middle of the band, and from there to where the plan may begin. CSS pixels. */
export const outerReach = ticks.to + 1;
export const innerReach = -feet.from + 2;
/** Of a corner, in the middle of the band; more than the inner reach, so that no lane turns on the spot. */
export const cornerRadius = innerReach + 8;
