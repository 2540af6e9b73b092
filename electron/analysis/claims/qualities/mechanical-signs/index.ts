import type { QualityRule } from "../quality-rule.ts";
import { axleSigns } from "./axles.ts";
import { brakeKindSigns } from "./brakes.ts";
import { cylinderSigns } from "./cylinders.ts";
import { engineHealthSigns } from "./engine-health.ts";
import { gearboxKindSigns } from "./gearbox.ts";
import { powerSourceSigns } from "./power-source.ts";
import { runningGearHealthSigns } from "./running-gear-health.ts";
import { springAndSteeringSigns } from "./springs-and-steering.ts";
import { valveGearSigns } from "./valve-gear.ts";

/** Engine, driveline and running gear, told by words that only one kind has. */
export const mechanicalSigns: readonly QualityRule[] = [
  ...cylinderSigns,
  ...valveGearSigns,
  ...powerSourceSigns,
  ...gearboxKindSigns,
  ...axleSigns,
  ...brakeKindSigns,
  ...springAndSteeringSigns,
  ...engineHealthSigns,
  ...runningGearHealthSigns,
];
