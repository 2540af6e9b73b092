import { engineYearAgainstOriginal, ratioAgainstTeeth } from "./drivetrain-rules.ts";
import { cellsAgainstVoltage } from "./electrical-rules.ts";
import { displacementAgainstBore, plugsAgainstCylinders } from "./engine-arithmetic.ts";
import { engineSpeedAgainstGearing } from "./engine-speed.ts";
import { modelYearAgainstBuilding } from "./model-year-rules.ts";
import { mileageAgainstTitle } from "./odometer-rules.ts";
import { readingAbovePresent } from "./reading-above-present.ts";
import { rimAgainstWheel } from "./rim-against-wheel.ts";
import type { StandardRule } from "./rule.ts";
import { frontAndRearMakeAll, ownersAgainstSales } from "./sums.ts";
import { tireDateMeaning } from "./tire-date-meaning.ts";
import { tireAge, tireDateAfterRecording, tireDateBeforeModel, tireDateWeek } from "./tire-date-rules.ts";
import { tireFittedBeforeMade } from "./tire-fitted-rule.ts";
import { loadIndexAgainstLoad, speedSymbolAgainstSpeed } from "./tire-rating-rules.ts";
import { treadBelowLimit } from "./tread-depth.ts";
import { vinCheckDigit, vinReadTwice, vinYear } from "./vin-rules.ts";

/** Every rule that holds claims of different slots against each other, or one claim against a standard. */
export const standardRules = [
  rimAgainstWheel,
  tireDateWeek,
  tireDateMeaning,
  tireDateAfterRecording,
  tireDateBeforeModel,
  tireFittedBeforeMade,
  tireAge,
  treadBelowLimit,
  vinCheckDigit,
  vinYear,
  vinReadTwice,
  ratioAgainstTeeth,
  engineYearAgainstOriginal,
  cellsAgainstVoltage,
  displacementAgainstBore,
  plugsAgainstCylinders,
  mileageAgainstTitle,
  modelYearAgainstBuilding,
  readingAbovePresent,
  loadIndexAgainstLoad,
  speedSymbolAgainstSpeed,
  engineSpeedAgainstGearing,
  frontAndRearMakeAll,
  ownersAgainstSales,
] as const satisfies readonly StandardRule[];
