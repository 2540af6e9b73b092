import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const cooling = signTable("cooling", "type", [
  {
    value: "electric fan",
    part: "fan",
    never: "heater/cabin/seat/vent/ceiling/desk/computer/no electric | belt driven | viscous/clutch fan/tail",
    signs: `
      electric/thermo fan/fans
      fan/fans + relay/toggle/switch/stat/kick/kicks/cut/cuts/whirr/whirring/motor/wires/pusher/pushers/puller/pullers/plug/traffic/key/sensor/twin/running - belt/clutch/pump pulley/heater/battery/speed
      pushers/pusher + rad/radiator/front
      whirlygigs
      still running + key/hand/fan/stat
      key out + fan/fingers/come on
      kicks/cuts in + needle/gauge/temperature/temp/hot/right - turbo/engine/clutch
      kicks/cuts in ..4 drags it
    `,
    says: "The electric fan cuts in on its relay, right when it should.",
    quiet: ["The heater fan's noisy."],
  },
  {
    value: "belt fan",
    part: "fan",
    signs: `
      fan + bolted/fixed/driven/spinning/turns/blades/pump/crank + water/pump/nose/pulley/always/motor/solid/straight - electric/relay/clutch/heater
      four/six/seven/eight blade/blades - wiper
      flex fan
      engine driven fan
    `,
    says: "The fan's bolted straight to the water pump.",
    quiet: ["The electric fan."],
  },
  {
    value: "viscous fan",
    part: "fan",
    signs: `
      viscous fan/hub/coupling/clutch + fan/hub/rad/cold
      fan clutch
      clutch fan
      thermal clutch
      silicone oil + hub/fan/hot/drags
      roars cold/when + cold/minute/lets go
    `,
    says: "It roars cold for a minute and then it lets go.",
    quiet: ["The clutch is new."],
  },
]);

const coolingMaterial = signTable("cooling", "material", [
  {
    value: "aluminum",
    part: "radiator",
    never: "copper/brass",
    signs: `
      radiator/rad + aluminum/alloy/ally/tig/welds/welded - cap/copper/solder/soldered
      tig + radiator/rad/pass/job/tank/fish/crossflow/cross
      ca n't solder
      cross flow alloy
      fish scales + weld/welds
      dull gray + corrodes/green/radiator
    `,
    says: "An alloy radiator, tig welded.",
    quiet: ["Alloy wheels."],
  },
  {
    value: "copper",
    part: "radiator",
    never: "aluminum/alloy/ally/ca n't solder",
    signs: `
      radiator/rad/core/tank/tanks + copper/brass/solder/soldered/solders/recored/honeycomb - fuel/pipe
      solder/soldered/flux + core/seam/radiator/tank/fin/tube/old/puddles/bright - wiring/wire/joint/loom
      verdigris
      green crust/stain/tear + tank/seam/brass/core/radiator - battery/terminal/connector
      scratch ..8 yellow + tank
      scrap + steal + copper/radiator/car
    `,
    says: "The radiator's the old core you can solder.",
    quiet: ["Copper pipes."],
  },
]);

/** Fan and radiator. Common practice of the trade. */
export const coolingSigns: readonly QualityRule[] = [...cooling, ...coolingMaterial];
