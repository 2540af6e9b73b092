export { findQualityClaims, type QualityInput, qualityRules } from "./find-quality-claims.ts";
