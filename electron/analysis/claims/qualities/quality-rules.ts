import { bodySigns } from "./body-signs/index.ts";
import { conditionRules } from "./condition-rules.ts";
import { equipmentAtWorkRules } from "./equipment-at-work.ts";
import { materialRules } from "./material-rules.ts";
import { materialRulesBySign } from "./material-rules-by-sign.ts";
import { mechanicalSigns } from "./mechanical-signs/index.ts";
import { mileageTrustRules } from "./mileage-trust.ts";
import { originalityByPapersRules } from "./originality-by-papers.ts";
import { originalityRules } from "./originality-rules.ts";
import { plainSayings } from "./plain-sayings.ts";
import { presenceRules } from "./presence-rules.ts";
import type { QualityRule } from "./quality-rule.ts";
import { insideSignRules } from "./signs-inside.ts";
import { conditionSignRules } from "./signs-of-condition.ts";
import { drivelineSignRules } from "./signs-of-driveline.ts";
import { firstPaintSignRules } from "./signs-of-first-paint.ts";
import { glassSignRules } from "./signs-of-glass.ts";
import { outsideSignRules } from "./signs-outside.ts";
import { bodyTypeRules } from "./type-rules-body.ts";
import { typeRulesByUse } from "./type-rules-by-use.ts";
import { engineTypeRules } from "./type-rules-engine.ts";
import { outsideTypeRules } from "./type-rules-outside.ts";
import { runningGearTypeRules } from "./type-rules-running-gear.ts";
import { suspensionTypeRules } from "./type-rules-suspension.ts";

export const qualityRules: readonly QualityRule[] = [
  ...runningGearTypeRules,
  ...engineTypeRules,
  ...suspensionTypeRules,
  ...outsideTypeRules,
  ...bodyTypeRules,
  ...typeRulesByUse,
  ...materialRules,
  ...materialRulesBySign,
  ...presenceRules,
  ...equipmentAtWorkRules,
  ...originalityRules,
  ...originalityByPapersRules,
  ...mileageTrustRules,
  ...conditionRules,
  ...outsideSignRules,
  ...firstPaintSignRules,
  ...conditionSignRules,
  ...glassSignRules,
  ...insideSignRules,
  ...drivelineSignRules,
  ...plainSayings,
  ...mechanicalSigns,
  ...bodySigns,
];
