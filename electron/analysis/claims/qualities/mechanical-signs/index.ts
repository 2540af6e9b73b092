import type { QualityRule } from "../quality-rule.ts";
import { axleSigns } from "./axles.ts";
import { brakeKindSigns } from "./brakes.ts";
import { coolingSigns } from "./cooling.ts";
import { currentSigns } from "./current.ts";
import { cylinderSigns } from "./cylinders.ts";
import { drivenWheelSigns } from "./driven-wheels.ts";
import { engineHealthSigns } from "./engine-health.ts";
import { exhaustSigns } from "./exhaust.ts";
import { fuelAndSparkSigns } from "./fuel-and-spark.ts";
import { gearboxKindSigns } from "./gearbox.ts";
import { inductionSigns } from "./induction.ts";
import { linkageSigns } from "./linkage.ts";
import { powerSourceSigns } from "./power-source.ts";
import { runningGearHealthSigns } from "./running-gear-health.ts";
import { shifterSigns } from "./shifters.ts";
import { spareSigns } from "./spare.ts";
import { springSigns } from "./springs.ts";
import { steeringSigns } from "./steering.ts";
import { tireSigns } from "./tires.ts";
import { valveGearSigns } from "./valve-gear.ts";
import { wheelSigns } from "./wheels.ts";

/** Engine, driveline and running gear, told by words that only one kind has. */
export const mechanicalSigns: readonly QualityRule[] = [
  ...axleSigns,
  ...brakeKindSigns,
  ...coolingSigns,
  ...currentSigns,
  ...cylinderSigns,
  ...drivenWheelSigns,
  ...engineHealthSigns,
  ...exhaustSigns,
  ...fuelAndSparkSigns,
  ...gearboxKindSigns,
  ...inductionSigns,
  ...linkageSigns,
  ...powerSourceSigns,
  ...runningGearHealthSigns,
  ...shifterSigns,
  ...spareSigns,
  ...springSigns,
  ...steeringSigns,
  ...tireSigns,
  ...valveGearSigns,
  ...wheelSigns,
];
