import type { Slot } from "../slot.ts";
import { allOfThemSlots } from "./all-of-them-slots.ts";
import { batteryPaperSlots } from "./battery-paper-slots.ts";
import { bodySlots } from "./body-slots.ts";
import { brakeTalkSlots } from "./brake-talk-slots.ts";
import { chassisSlots } from "./chassis-slots.ts";
import { countSlots } from "./count-slots.ts";
import { countedTalkSlots } from "./counted-talk-slots.ts";
import { dateSlots } from "./date-slots.ts";
import { deckAndTankSlots } from "./deck-and-tank-slots.ts";
import { drivelineFigureSlots } from "./driveline-figure-slots.ts";
import { drivelineSlots } from "./driveline-slots.ts";
import { electricDriveSlots } from "./electric-drive-slots.ts";
import { electricalSlots } from "./electrical-slots.ts";
import { engineFigureSlots } from "./engine-figure-slots.ts";
import { engineOutputSlots } from "./engine-output-slots.ts";
import { engineShortSlots } from "./engine-short-slots.ts";
import { engineSlots } from "./engine-slots.ts";
import { engineTalkSlots } from "./engine-talk-slots.ts";
import { feedCountSlots } from "./feed-count-slots.ts";
import { fittingSlots } from "./fitting-slots.ts";
import { fuelSlots } from "./fuel-slots.ts";
import { furtherToldSlots } from "./further-told-slots.ts";
import { gaugeSlots } from "./gauge-slots.ts";
import { livingQuartersSlots } from "./living-quarters-slots.ts";
import { mechanicalSizeSlots } from "./mechanical-size-slots.ts";
import { mileageReadSlots } from "./mileage-read-slots.ts";
import { moneyAndMilesShortSlots } from "./money-and-miles-short-slots.ts";
import { moneyOfPartsSlots } from "./money-of-parts-slots.ts";
import { odometerSlots } from "./odometer-slots.ts";
import { outsideSlots } from "./outside-slots.ts";
import { paperSlots } from "./paper-slots.ts";
import { papersCountSlots } from "./papers-count-slots.ts";
import { papersTalkSlots } from "./papers-talk-slots.ts";
import { partDateSlots } from "./part-date-slots.ts";
import { partMileageSlots } from "./part-mileage-slots.ts";
import { partSizeSlots } from "./part-size-slots.ts";
import { passingSlots } from "./passing-slots.ts";
import { priceShorthandSlots } from "./price-shorthand-slots.ts";
import { priceSlots } from "./price-slots.ts";
import { quartersAndDeckSlots } from "./quarters-and-deck-slots.ts";
import { rollingTalkSlots } from "./rolling-talk-slots.ts";
import { roomTalkSlots } from "./room-talk-slots.ts";
import { serviceSlots } from "./service-slots.ts";
import { setCountSlots } from "./set-count-slots.ts";
import { shapedBodySlots } from "./shaped-body-slots.ts";
import { sidewallSlots } from "./sidewall-slots.ts";
import { tireSlots } from "./tire-slots.ts";
import { tireTalkSlots } from "./tire-talk-slots.ts";
import { underneathShortSlots } from "./underneath-short-slots.ts";
import { vehicleSizeSlots } from "./vehicle-size-slots.ts";
import { wheelSlots } from "./wheel-slots.ts";
import { workDateSlots } from "./work-date-slots.ts";

/** Every place a spoken number can fill. Of two equally likely ones the earlier wins. */
export const slots: readonly Slot[] = [
  ...tireSlots,
  ...tireTalkSlots,
  ...wheelSlots,
  ...chassisSlots,
  ...brakeTalkSlots,
  ...engineSlots,
  ...engineOutputSlots,
  ...fuelSlots,
  ...drivelineSlots,
  ...electricalSlots,
  ...bodySlots,
  ...outsideSlots,
  ...passingSlots,
  ...mileageReadSlots,
  ...odometerSlots,
  ...priceShorthandSlots,
  ...priceSlots,
  ...paperSlots,
  ...papersCountSlots,
  ...vehicleSizeSlots,
  ...dateSlots,
  ...workDateSlots,
  ...countSlots,
  ...allOfThemSlots,
  ...gaugeSlots,
  ...partSizeSlots,
  ...mechanicalSizeSlots,
  ...fittingSlots,
  ...feedCountSlots,
  ...serviceSlots,
  ...electricDriveSlots,
  ...drivelineFigureSlots,
  ...engineFigureSlots,
  ...batteryPaperSlots,
  ...sidewallSlots,
  ...shapedBodySlots,
  ...livingQuartersSlots,
  ...furtherToldSlots,
  ...moneyOfPartsSlots,
  ...partDateSlots,
  ...partMileageSlots,
  ...roomTalkSlots,
  ...papersTalkSlots,
  ...countedTalkSlots,
  ...rollingTalkSlots,
  ...engineTalkSlots,
  ...engineShortSlots,
  ...moneyAndMilesShortSlots,
  ...setCountSlots,
  ...quartersAndDeckSlots,
  ...deckAndTankSlots,
  ...underneathShortSlots,
];
