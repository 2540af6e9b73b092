import { signTable } from "./sign-table.ts";

/** What forces the engine's air and what takes its heat. Common practice of the trade, American and British. */
export const inductionSigns = signTable("engine", "type", [
  {
    value: "turbocharged",
    part: "induction",
    never:
      "no/without/non/not/n't turbo/boost/turbos | two turbos | style/look/badge only/sticker on | muffler/mufflers/wheels/type/trim/nutter/hood/bonnet/scoop/blower/supercharger/supercharged | turbo ..3 model's | jump/cables/leads/pack/starter | his/twin/triple/both turbo | confidence/ego",
    signs: `
      turbo/turbocharger/turbocharged/turbos/turboed + whistle/whistles/whistling/spool/spools/shaft/play/bearing/boost/oil/puff/pulls/it/new/healthy/rebuilt/hear/factory/actuator/lag/engine/motor/kick/kicks/diesel/petrol/litre/liter/down/manifold
      snail + exhaust/hot/shield/hanging/hang/whistle/side/boost/there/manifold/turbine/under
      wastegate
      waste gate
      boost + gauge/comes/pounds/psi/bar/builds/on/kicks/whistle/leak/hose/pressure/pipe/turn
      hairdryer/hairdryers + bigger/engine/boost/manifold/exhaust/big/under/lag - drones/noise/gear/gearless/electric/two/pair
      puffer + engine/pots/size/little/little
      spool/spools/spooling
      charge/boost pipe/pipes/hose/hoses
      intercooler/intercooled
      dump/blow valve/off + turbo/lift/whoosh/chirp/boost/psh
      lag + then/boost/nothing/once/old/two/revs/foot - jet
      nothing + nothing + then all/bang/whoosh/kick - turn/catches/crank/key
      blown + exhaust/own/derv/litre/liter/diesel - head/gasket/fuse/bulb/hole/seal/tire/speaker/blowing
      let it idle/tick/sit/run + before/minute + shut/switch/off/shutdown/kill/stop - warm/choke/cold
      cool/cools down + bearing/shut/before/minute + idle/turbo/off
      gets up and goes like + kicked
      variable vanes/geometry
      vnt
    `,
    says: "See the snail on the exhaust side, the wastegate rod moves free.",
    quiet: ["Turbo style wheels.", "No turbo on it.", "The snail mail came."],
  },
  {
    value: "twin turbocharged",
    part: "induction",
    signs: `
      twin/two/dual/pair/double/both/bi ..1 turbo/turbos/turbochargers/snails/hairdryers/puffers
      biturbo
      turbo/turbos/snail + one each/either/per/a side/bank
      first/little/small + second/big/other + wakes/boost/spool/spools/takes over + hundred/rpm/revs/over | down low
      sequential + boost/little/turbo/second
    `,
    says: "Pair of turbos, one each side.",
    quiet: ["Two pairs of headlights."],
  },
  {
    value: "supercharged",
    part: "induction",
    never:
      "leaf/snow/heater/hot air/cold air/cabin/interior/vent/vents/no/not/resistor/used to | whiner about | took ..2 off | roots blues/music | compressor clutch | ac/air/paint/spray/tire",
    signs: `
      supercharger/supercharged
      super charger/charged
      blower + whine/belt/pulley/hood/boost/throttle/revs/top/screams/drive/motor/hat/scoop/tick/carb/carbs/intake
      whine/whines/whiner + blower/pulley/charger/vee/valley/vee/boost/rises + vee/belt/it/throttle
      six seventy one
      671/471/871
      roots + blower/type/charger
      kompressor
      pulley + boost/pounds/compressor/blower + smaller/tighter/bigger/two
      drive/drives/driven belt + compressor/blower/charger + ribs/wide/idlers/boost/teeth
      hat + injector/bug/scoop + blower
      belt ..6 big ..2 pump on ..1 top
    `,
    says: "That whine's the blower, there's a belt up to it.",
    quiet: ["The heater blower works.", "It used to have a blower on it."],
  },
  {
    value: "naturally aspirated",
    part: "induction",
    never: "no turbo lag",
    signs: `
      no/without turbo/turbos/blower/boost/snail/supercharger/turbocharger !lag/leak/leaks/whistle/noise/play/damage/trouble/problems/issues
      no turbo/turbos + fail/break/worry/go/replace/breathes/just/simple/plain
      n't/never ..4 turbo/turbocharged/boosted/supercharged/blown
      naturally/normally aspirated
      nothing forcing/blowing/huffing/pushing/strapped/hanging/cramming
      atmospheric/atmo
      no puff/puffer
      no boost + wait/linear/needed
      breathes for/by itself
      scoop + blank/dummy/fake + cooler/turbo/feed/nothing
      honest way + cam/compression
      non turbo
      no plumbing + cooler/back/airbox
    `,
    says: "No turbo, no blower, it just breathes.",
    quiet: ["No turbo lag at all.", "There's no turbo noise."],
  },
  {
    value: "air cooled",
    part: "cooling medium",
    never: "no/not/n't air cooled | later | seats/battery/pack/brakes/drums | charge air | water in the oil | clutch fan",
    signs: `
      air cooled
      no radiator !leak/leaks/fan/hose/drips/problem/cap + fan/fins/air/engine/back/rear/water/leak/freeze/need/because
      no coolant/antifreeze/water + hoses/boil/freeze/radiator/fins/engine/anywhere/hose/put - electric/battery/dry/oil/drained/leak/leaks
      n't/never need/put/have/want ..2 water/antifreeze/coolant ..1 in
      fins/finned + barrels/barrel/cylinders/jugs/pots/tinging/cools/cooling/fan/shroud/air - drum/drums/brake/cover/diff/alternator
      tinware/shrouding + fan/cool/cooling/engine/seal/air/barrels
      cooling tin
      fan belt/belt/fan + cooling/cools/cooled/cool + all/only/stop/light/alive/engine - radiator/water/hose
      heater boxes - covers/pushrod
      heat exchangers + heater/exhaust/engine/oil/fan
      exhaust boxes
      only/just thing ..2 cools + breeze/air/fan
    `,
    says: "No radiator, just fins on the barrels and a big fan.",
    quiet: ["The radiator fan's new.", "No coolant leaks."],
  },
  {
    value: "water cooled",
    part: "cooling medium",
    signs: `
      water/liquid cooled
      water jacket/jackets + barrels/quieter/round/engine/block/heater
      the/this later/newer one with water
      with water in it
      n't/not/no ..2 air cooled
      older/early ones ..3 fins + hoses/water/radiator
    `,
    says: "This is the later one with water in it.",
    quiet: ["There's water in the trunk."],
  },
]);
