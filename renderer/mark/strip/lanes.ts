const arcs = { top: 2, height: 52 };
const names = { top: arcs.top + arcs.height + 4, height: 17 };
const band = { top: names.top + names.height, height: 22 };
const doubtful = { top: band.top + band.height + 1, height: 4 };
const findings = { top: doubtful.top + doubtful.height + 2, height: 14 };
const ticks = { top: findings.top + findings.height + 1, height: 15 };

/** The strip from top to bottom, in CSS pixels. Names have a lane of their own, so that no word stands on a pattern. */
export const lanes = { arcs, names, band, doubtful, findings, ticks, height: ticks.top + ticks.height };
