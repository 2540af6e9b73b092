export * from "./analysis.ts";
export * from "./condition-index.ts";
export * from "./contract.ts";
export * from "./problem.ts";
export * from "./recording.ts";
export * from "./vocabulary.ts";
