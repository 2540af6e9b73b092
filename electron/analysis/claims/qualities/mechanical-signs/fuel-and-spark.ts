import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const fuelKinds = signTable("fuel-system", "type", [
  {
    value: "carburetor",
    never:
      "no/n't/not/where ..3 carb/carbs/bowl/float/choke | used to | looks like a carb | doctor | carb cleaner | lawn/mower | glass bowl on the side | there 's a computer",
    signs: `
      float/floats + bowl/level/needle/heavy/set/gasket/carb - shaft/floater/coolant
      bowl/bowls + dry/dries/gas/float/drip/drips/vent/fill - lights/toilet/water/separator/rail
      dashpot/dashpots
      jet/jets/jetted/rejetted + main/idle/pilot/needle/size/rich/lean/carb - ski/wash/washer/black/private
      venturi/venturis
      accelerator pump/pumps
      pump shot
      mixture/idle/air screw/screws
      butterflies + throat/throats/barrel/barrels/side
      throat/throats + squirt/linkage/look/fuel/butterflies/carb/gauze
      twin choke/chokes - no
      balance/balanced/sync/synced/synchronize them/carbs + ear/hose/flow/carbs
      tickle/tickler + dribbles/kick/carb
      flood/floods/flooded + pump/choke/pedal/carb/starts/start/easy - river/water/title
      pump/pumps/dab/dabs/stab/stabs ..3 pedal/gas/throttle/twice + start/crank/hit/catch/cold/morning/fires - brake
      pump it + start/cold/fire
      leaned/richen/richened ..3 turn
      percolates/percolation/vapor lock/locks
      one big mixer
      carburate/carbureted/carburetted
      velocity stacks/stack
      side/down/up draft/drafts/draught/draughts
      sidedraft/downdraft/updraft/sidedraught
      secondaries
      needle and seat
      chokes + barrels/throat/carb
    `,
    says: "The bowl dries out when it sits, and the accelerator pump's good.",
    quiet: ["There's no carb on it."],
  },
  {
    value: "injection",
    never: "oil/glow | used to be injection | foam/wax | molding/mould/plastic",
    signs: `
      injector/injectors + rail/pulse/tick/ticks/ticking/click/new/cleaned/port/row/seals/o - diesel/coolant
      fuel rail/regulator
      rail + schrader/regulator/feed/return/pounds/pressure/sensor - frame/bed/roof/seat/grab
      mass air/airflow
      maf
      air/flow meter/sensor + trim/trims/inject/computer/mass
      oxygen/lambda/o2 sensor/sensors + trims/trim/fuel/mixture/computer/mass
      fuel/long/short ..1 trim/trims
      throttle body - carb/looks
      n't/no choke/pumping + just/runs/computer/starts/inject - milled/tower
      where 's the choke
      ecu + fuel/map/inject/mixture - fob
      fuel distributor
      squirters + factory/throttle/plates/lid/port
      efi/e f i
      multi port
      port injection
      high pressure pump + return/rail/tank
      computer + choke/fuel/mixture/idle
    `,
    says: "There's a Schrader on the rail and the fuel trims are two percent.",
    quiet: ["The roof rail."],
  },
  {
    value: "four-barrel",
    part: "carburetor",
    never: "two barrel/throat | was/used to/instead of | flat/heads",
    signs: `
      four barrel/barrels/hole/holer/throat !no
      secondaries/secondary + vacuum/primaries/open/opens/linkage/mechanical/second/rear/back/spread/pair/kick/big/saucers - wiring/school/battery
      primaries + secondaries/saucers/back
      double pumper
      spread/square bore
      second/other/rear/back pair/two + open/opens/opening/come/comes in + throttle/linkage/spring/air/foot/carb - brake/doors
    `,
    says: "Small primaries and great big secondaries.",
    quiet: ["The secondary battery."],
  },
  {
    value: "two-barrel",
    part: "carburetor",
    signs: `
      two barrel/barrels/hole/holer/throat
      pair/two/couple ..1 throats/butterflies/bores/venturis
    `,
    says: "A pair of throats, the two barrel.",
    quiet: ["It goes down the road."],
  },
  {
    value: "one-barrel",
    part: "carburetor",
    signs: `
      one/single barrel/throat/venturi
      one jet
    `,
    says: "A single barrel, one venturi.",
    quiet: ["A single exhaust."],
  },
  {
    value: "manual choke",
    part: "choke",
    never: "light/lights/heater/vent/wiper/hood | electric/automatic/auto",
    signs: `
      choke + knob/cable/pull/pulled/lever/out/push/half - heat/wired/cap/hot
      knob + cold/flood/foul/warm/enrich + pull/out/push/twist/half/ease - heater
      manual choke
    `,
    says: "Pull the choke knob half out when it's cold.",
    quiet: ["The electric choke's fine."],
  },
  {
    value: "automatic choke",
    part: "choke",
    signs: `
      automatic/auto choke
      bimetal/bimetallic + choke/coil/fast/idle/spring - never
      press/foot to the floor + fast/idle/sets/set/choke
      fast idle + itself/press/kick/pops/kick down
    `,
    says: "The automatic choke sets with one press to the floor.",
    quiet: ["A manual choke."],
  },
  {
    value: "electric choke",
    part: "choke",
    signs: `
      electric choke
      choke + wire/wired/lead/heats/cap - pull/pulled/knob
    `,
    says: "It's an electric choke, a wire to the choke cap.",
    quiet: ["A cable choke."],
  },
  {
    value: "mechanical fuel pump",
    part: "fuel pump",
    signs: `
      mechanical fuel pump
      pump + arm/eccentric/cam/lever/block/side + engine/rides/fuel/works/carb/glass/bolts - water/oil/steering/brake/injection
    `,
    says: "It's a mechanical fuel pump, the arm rides on the cam.",
    quiet: ["The oil pump's new."],
  },
  {
    value: "electric fuel pump",
    part: "fuel pump",
    signs: `
      electric fuel pump
      in tank pump
      pump 's/is in the tank
      pump + hum/hums/tick/ticks/ticking/ticker/buzz/prime/primes/whirr + key/tank/fuel/switch - brake/steering/water/boost
      inertia switch
      ticker + tank/back
      clicker/ticking ..4 tank
    `,
    says: "The pump's in the tank, you hear it hum with the key.",
    quiet: ["The steering pump hums."],
  },
]);

const ignition = signTable("ignition", "type", [
  {
    value: "points",
    never: "binned/conversion/threw/used to/no points/electronic/module/no/jacking/jack/driving/license/lashing",
    signs: `
      contact breaker/breakers
      breaker points/arm/plate - old/bag
      dwell
      points + gap/condenser/file/filed/set/feeler/thou/dizzy/distributor/cap/matchbook/ignition/emery/arcing/pitted/rotor/coil - trigger
      condenser + points/pigtail/can/cap/rotor/coil/dizzy/spark - ac/con/air
      matchbook + set/gap/thou/points
      feeler gauge/gauges + thou/set/points/cap/distributor - valves/tappets/never
      window in the cap
      emery + points/contact/breaker
      cap + rotor + open/lobes/points
      sixteen/fifteen/fourteen thou
    `,
    says: "You set the points with a matchbook and there's a condenser.",
    quiet: ["The jacking points."],
  },
  {
    value: "electronic",
    never: "old school/not electronic/points still",
    signs: `
      hall effect
      electronic/pointless/breakerless ignition/distributor/conversion/module
      module + distributor/dizzy/cap/ignition/points/quits/spark/breaker/coil - abs/body/control/battery/cell/cells/glow
      pickup/pick up coil/reluctor/magnet + distributor/dizzy/cap/spark
      two wires + dizzy/distributor
      no points
      no/nothing + arm bouncing/gap/file + distributor/cap/dizzy/in there
      threw/binned/binned ..2 points
      amplifier/igniter + ignition/coil/spark
      big fat/red cap + coil/distributor
      h e i
    `,
    says: "There's a module in the distributor now, no points.",
    quiet: ["The points are fine."],
  },
  {
    value: "coil per plug",
    signs: `
      coil on/per every? each? plug
      coil on every/each
      stick/pencil/pen coil/coils
      coil packs/pack + each/every/plug/per/individual/six/four
      no leads/wires + coil/stick/unclip/plug - diesel
      individual coils
    `,
    says: "A coil on every plug, no leads.",
    quiet: ["The coil spring's new."],
  },
  {
    value: "distributorless",
    signs: `
      wasted spark
      crank trigger/sensor + cap/rotor/coil/spark
      coil block/pack + posts/four/three
      no distributor/dizzy
      no cap ..2 rotor
      distributorless
    `,
    says: "Wasted spark, no distributor.",
    quiet: ["The distributor's new."],
  },
  {
    value: "magneto",
    never: "traded/at the show/wheels",
    signs: `
      magneto/magnetos/maggie
      mag on it
      impulse coupling/starter
      makes its own spark
      no battery in the circuit
      kill button/switch + stop/battery/only
    `,
    says: "It fires off a mag, hear the impulse coupling snap.",
    quiet: ["Mag wheels."],
  },
]);

const tank = signTable("fuel-tank", "material", [
  {
    value: "plastic",
    never: "brake/washer/header/expansion/cover/main/aux/auxiliary/second",
    signs: `
      tank + plastic/poly/molded/polyethylene - washer
      tank + bonk/blow
    `,
    says: "The fuel tank's molded plastic.",
    quiet: ["The washer bottle's plastic."],
  },
  {
    value: "steel",
    never: "stainless/plastic/battery/washer/main/aux/auxiliary/second | band/strap/straps",
    signs: `
      tank + steel/tin/galvanized/terne/painted/pressed/rings/rusted/magnet - cap/exhaust
    `,
    says: "It's a galvanized tank.",
    quiet: ["A stainless tank."],
  },
  {
    value: "aluminum",
    signs: `
      tank + aluminum/alloy/ally - cap/radiator/header
    `,
    says: "An alloy tank in the back.",
    quiet: ["Alloy wheels."],
  },
  {
    value: "stainless steel",
    signs: `
      tank + stainless/brushed - strap/straps/radiator/header
    `,
    says: "The fuel tank is brushed, see the grain.",
    quiet: ["A steel tank."],
  },
]);

export const fuelAndSparkSigns: readonly QualityRule[] = [...fuelKinds, ...ignition, ...tank];
