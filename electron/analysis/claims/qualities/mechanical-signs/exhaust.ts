import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const exhaust = signTable("exhaust", "type", [
  {
    value: "dual",
    never: "single/one pipe/exhaust | used to be | headlight/clutch/tires/wheels/tanks/tank/zone/climate | no/not dual/duals",
    signs: `
      dual exhaust/exhausts/pipes/mufflers/system/tailpipes
      duals + pipes/exhaust/mufflers/out/each/h/x/true - axle/wheels/tires
      twin/two/pair/both ..1 tailpipes/exhausts/mufflers/silencers/pipes + bank/side/each/rear/back/sound/rumble/own/way/out/corner/bumper/separate/left/right - rail/brake/fuel/feed
      twin tips
      pipe/muffler/tip off/each/this side/bank/corner + pipe/other/own/that/all
      h/x pipe
      crossover + pipes/pots/exhaust/mufflers/tubes/headers - suv/van
      pipe/exhaust + each/either side/corner/bank - single
      out of each corner/side + burble/exhaust/pipe
      pipes never meet
      one pipe ..1 each side
    `,
    says: "True duals, a pipe off each bank with an H pipe.",
    quiet: ["Dual tanks.", "Dual climate."],
  },
  {
    value: "single",
    never: "turbo/speed/cam/barrel/owner/cab/tank/dual/duals/two/pair/twin | exhaust valve/manifold/port",
    signs: `
      single exhaust/pipe/tailpipe/muffler/outlet/tip
      one muffler/tailpipe/exhaust/silencer - off
      just one/won pipe/exhaust/tailpipe/run
      two in + one out
      two into one + pipe/muffler/tail/exhaust
      down one side + exhaust/pipe/tunnel/out
      y pipe + single/one
      hanger ..6 nothing on it
      only on one side + valance/cut/tailpipe/pipe
    `,
    says: "One muffler, one tailpipe out the left.",
    quiet: ["A single owner."],
  },
  {
    value: "side exit",
    signs: `
      side pipe/pipes/exit
      dumps/exits/comes/turns/finishes + ahead/before/front of the rear/back wheel/wheels/tire
      lake pipes
      exhaust/pipe/pipes/it + out/under the rocker/sill/running - heat/cat
      by your ankles + pipe/into/out/exhaust
      under each running board
    `,
    says: "Side pipes, it dumps out ahead of the rear wheel.",
    quiet: ["Water pipes at the side of the house."],
  },
  {
    value: "center exit",
    signs: `
      center exit/exits/pipe/tips
      middle + bumper/plate + tips/pipe/pipes/exhaust/twin/out
    `,
    says: "Twin tips out of the middle of the bumper.",
    quiet: ["A dent in the middle of the bumper."],
  },
  {
    value: "headers",
    never: "manifold/manifolds back/not headers | cheap set | he had headers | header tank/bottle/panel/rail",
    signs: `
      headers - leak on
      header/tube/tubes/tubular + four into/ceramic/coated/primaries/collector/equal/bends/thin/heads - header tank/steering/panel/rail
      long/mid tube/tubes/length header/headers? - radio
      shorty/shorties
      collector/collectors + pipe/tubes/four/flange - car/art/stamp
      four into one/two
      bunch of bananas
      banana bunch
      fenderwell
    `,
    says: "Long tube headers, four into one each side.",
    quiet: ["The header tank.", "A car collector."],
  },
  {
    value: "manifolds",
    never: "intake/inlet/vacuum/headers on",
    signs: `
      cast/iron/log/factory/stock exhaust? manifold/manifolds/logs - intake
      logs + iron/cast/exhaust/quiet/heat - fire/service
      one big log
      iron ones went back
    `,
    says: "Cast iron logs, quiet and they don't leak.",
    quiet: ["The intake manifold."],
  },
  {
    value: "stack",
    signs: `
      stack/stacks + cab/behind/flapper/smoke/up/exhaust/chrome - velocity/speakers/tires/books/four
      smoke goes out up
      flapper + tink/pipe/stack/rain
    `,
    says: "A stack up behind the cab.",
    quiet: ["A stack of books."],
  },
  {
    value: "glasspack",
    signs: `
      glasspack/glasspacks
      glass packs/pack
      cherry bomb/bombs
      bullets + floor/baffles/pipe/exhaust/muffler
    `,
    says: "Cherry bombs under there.",
    quiet: ["It goes down the road."],
  },
  {
    value: "straight pipe",
    signs: `
      straight pipe/pipes/piped
      no muffler/mufflers/silencer/silencers - leak
      daylight from one end
    `,
    says: "No mufflers on it.",
    quiet: ["The pipe's bent."],
  },
  {
    value: "dump",
    signs: `
      dumps/turndown + axle/pipe/pipes/tailpipe/tail/muffler | just behind - truck/bed/bags/body/wheel
      turn down + axle/tail/muffler
    `,
    says: "There's a turndown just behind the axle.",
    quiet: ["A dump truck."],
  },
]);

const exhaustPresence = signTable("exhaust", "presence", [
  {
    value: "absent",
    part: "catalytic converter",
    never: "still got/there | cage | has/'s got its",
    signs: `
      cat/cats/converter/catalytic/catalyst + gone/missing/deleted/removed/sawed/sawn/sawed/stolen/hollow/hollowed/gutted/cut/none/before - torque/dog/food/flap/another/etched
      thieves/thief/sawed/sawn/stole/nicked/pinched + pipe/saw/out/underneath/roar/roars/racket/converter/middle - etched/cage/key/radio/puts
      test pipe
      decat/decatted/de cat/decatted
      no cat/cats/catalyst/converter !flap
      sensor + fooled/spacer/eliminator
      piece of tube/pipe + clamps/middle/between + clean/cat/dirty
    `,
    says: "Thieves sawed the cat out in the night.",
    quiet: ["The cat sat there."],
  },
  {
    value: "present",
    part: "catalytic converter",
    never: "no/gone/stolen/sawed/missing/hollow/gutted ..2 cat/cats/catalyst/converter",
    signs: `
      catalyst - efficiency
      cat/cats/catalytic + etched/cage/clamp/downpipe/still/sensor/shield/both/original/exhaust - flap/dog/food
      etched + cat/converter/number/registration + saw/pipe/underneath/orange
      can ahead of + muffler + sensor/shield
      clamp alarm
    `,
    says: "The catalyst's still in the downpipe with our number etched on it.",
    quiet: ["No cat on it."],
  },
]);

const exhaustMaterial = signTable("exhaust", "material", [
  {
    value: "stainless",
    never: "tank/hoses/hose/brake/trim/watch/molding/mild/not stainless | exhaust bolts | duller than",
    signs: `
      stainless + exhaust/pipe/pipes/muffler/mufflers/system/tips/cat/back/silencer/tailpipe/downpipe
      three oh four/sixteen
      straw/gold color/colour/blue + weld/welds/pipe/hot/mild/heat/exhaust - paint
      bright as a + pipe/metal/exhaust/back
    `,
    says: "Stainless system all the way back.",
    quiet: ["Stainless trim."],
  },
  {
    value: "mild steel",
    never: "stainless/brake/body/not mild",
    signs: `
      mild steel + exhaust/pipe/pipes/system/muffler
      ordinary/plain/cheapest/cheap/basic/regular/black/blacksmith pipe/exhaust/one/steel + rust/rusty/brown/fur/orange/years/exhaust/wax/paint - brake
      pipe/pipes/exhaust + brown fur/orange already
    `,
    says: "It's just ordinary pipe and it's rusty already.",
    quiet: ["The mild winter."],
  },
  {
    value: "aluminized steel",
    signs: `
      aluminized/aluminised
      dipped pipe/exhaust/steel
      dipped + pipe/years/stainless
      coated kind/pipe + stainless/pipe/black/exhaust - ceramic
    `,
    says: "It's the dipped pipe so it'll go eight or nine years.",
    quiet: ["Aluminum wheels."],
  },
]);

/** The exhaust by its run, its sound, its parts and its metal. Common practice of the trade. */
export const exhaustSigns: readonly QualityRule[] = [...exhaust, ...exhaustPresence, ...exhaustMaterial];
