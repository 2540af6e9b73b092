import type { NumberRule } from "../rule.ts";
import { amountRules } from "./amount-rules.ts";
import { countedKindRules } from "./counted-kind-rules.ts";
import { dateRules } from "./date-rules.ts";
import { designationRules } from "./designation-rules.ts";
import { fractionRules } from "./fraction-rules.ts";
import { partRules } from "./part-rules.ts";
import { quantityRules } from "./quantity-rules.ts";
import { ratioRules } from "./ratio-rules.ts";
import { runTogetherRules } from "./run-together-rules.ts";
import { shorthandRules } from "./shorthand-rules.ts";
import { thousandsRules } from "./thousands-rules.ts";
import { tireRules } from "./tire-rules.ts";
import { truckTireRules } from "./truck-tire-rules.ts";
import { yearRules } from "./year-rules.ts";

/** Every way a number is spoken. Order carries no meaning: readings are ranked by likelihood. */
export const numberRules: readonly NumberRule[] = [
  ...tireRules,
  ...truckTireRules,
  ...fractionRules,
  ...dateRules,
  ...designationRules,
  ...yearRules,
  ...amountRules,
  ...countedKindRules,
  ...partRules,
  ...ratioRules,
  ...shorthandRules,
  ...runTogetherRules,
  ...thousandsRules,
  ...quantityRules,
];
