import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const spare = signTable("spare", "presence", [
  {
    value: "present",
    never:
      "no/n't/not/without/never/missing/instead/in lieu/empty/gone/stolen/kept | parts/car/keys/key/room/seat/quart/set/cable/bulb/bulbs/any/time/bay/change | see if",
    signs: `
      fifth one/wheel + under/boot/trunk/there/lurking/same/wears/back/cover/hung/matching/alloy - trailer/hitch/plate/rv
      spare + trunk/boot/bolted/well/cradle/carrier/tire/wheel/inflated/air/flat/bed/floor/underneath/tailgate/door/bracket/full/steel/unused/rubber/tread/under
      wheel under/beneath/behind the boot/trunk/bed/floor/carpet/board
      lift the carpet/board/mat/floor + wheel/spare/bolted/there she
      space saver/savers
      spacesaver
      skinny one/spare + trunk/boot/fifty/yellow/never/used
      doughnut/donut + spare/trunk/boot/fifty/wheel/well - gas/coupling/rubber/tank/fuel
      full size spare
      max fifty
      continental kit
    `,
    says: "There's a fifth one lurking under the boot floor.",
    quiet: ["We have spare keys.", "There's no spare in it."],
  },
  {
    value: "absent",
    never: "spare's there | no spare parts/keys/key/bulbs/set/seat | time",
    signs: `
      no spare $
      no spare wheel/tire/in/at/just/only/with
      well/tray/space/hole + empty/nothing/bare/tools/shaped/gone/missing + wheel/spare/where/tire
      spare 's/is/has gone/missing/been/walked
      empty well
      wheel shaped hole
      somebody/someone 's/has/have kept/had/taken/pinched the? fifth/spare
      can of/and foam/gunk/sealant/goo/slime + instead/lieu/no/only/just/pump/that's
      mobility kit
      breakdown cover instead
      instead of a spare/wheel
      in lieu of
      goo/gunk/sealant/foam + compressor/pump/instead/kit
      inflator/inflation kit
      delete/deleted ..2 spare
    `,
    says: "The well's empty, there's just a can of gunk and a pump.",
    quiet: ["There's no spare key."],
  },
]);

const spareKinds = signTable("spare", "type", [
  {
    value: "space-saver",
    never: "not/n't one of | no space | desk/office",
    signs: `
      space saver/savers
      spacesaver
      skinny + spare/fifty/yellow/trunk/boot - jeans/six/stick/tires/tall/casting/ones up/up front
      doughnut/donut + spare/trunk/boot/fifty/wheel/miles - gas/coupling/rubber/tank/fuel
      fifty tops/limit/max + spare/skinny/wheel/yellow/little
      max fifty
      temporary/temp/emergency use? spare/wheel/only
      half as wide
      t in front of the numbers
      speed limit + spare/wheel/skinny
    `,
    says: "A skinny little yellow thing, fifty tops.",
    quiet: ["A skinny six."],
  },
  {
    value: "full-size",
    never: "bed/doors/truck/van/sedan/seats/no",
    signs: `
      full size/sized + spare/wheel/tire/trunk/boot/one
      proper/real wheel/tire/spare + in/there/trunk/boot/full/not/toys/width
      same + spare/fifth + wheel/alloy/rubber/size/width/tire/spokes
      number five ..4 same
      fifth + matching/same/alloy
      drive all day/anywhere on
      five of them/them/wheels all? match/matching/same
    `,
    says: "It's a proper full size spare.",
    quiet: ["A full size bed."],
  },
  {
    value: "underslung",
    part: "location",
    signs: `
      underslung
      under the tail/bed/back/rear + wind/winch/cradle/cable/spare/wheel/hoist - dog/door
      cradle + spare/wheel/underneath/under/wind
      wind/winch/crank it down + hole/spare/wheel/bumper
    `,
    says: "The spare's in a cradle under the tail.",
    quiet: ["The dog slept under the tail."],
  },
  {
    value: "trunk",
    part: "location",
    signs: `
      spare/wheel + trunk/boot + well/bolted/lies/lying - empty/hole/no/steering/fuel/tank/cover/rust
    `,
    says: "The spare lies flat in the well of the trunk.",
    quiet: ["There's no wheel in the trunk well."],
  },
  {
    value: "tailgate",
    part: "location",
    signs: `
      spare/wheel + hung/mounted/on the + back/rear door/tailgate/gate - steering
      hung on the back
      rear mount/mounted spare/wheel
    `,
    says: "The spare's hung on the back door.",
    quiet: ["The steering wheel."],
  },
]);

/** Whether there is a spare, of what kind and where. Common practice of the trade. */
export const spareSigns: readonly QualityRule[] = [...spare, ...spareKinds];
