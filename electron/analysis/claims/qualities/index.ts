export { findQualityClaims, type QualityInput } from "./find-quality-claims.ts";
export { qualityRules } from "./quality-rules.ts";
