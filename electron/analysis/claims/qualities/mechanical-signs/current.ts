import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const kinds = signTable("electrical", "type", [
  {
    value: "alternator",
    part: "charging",
    never: "no/not/n't/never/instead/approve alternator | bearing whine | all down the alternator | sold by",
    signs: `
      alternator + now/fitted/conversion/belt/amp/amps/new/charging/charge/puts/putting/swapped/regulator/upgrade/volts/case/finned/internal/diode
      internal regulator
      diode/diodes + pack/stator/alternator/charging/idle - led
      one wire + regulator/alternator/done
      finned fella/unit/one + volts/putting/fourteen/amps/ammeter
      a l t
      fourteen volts/and/four + idle/charging/lights/putting/puts/finned/running/revs - miles/grand
      stator + windings/diodes
    `,
    says: "One wire with an internal regulator, it puts out fourteen volts at idle.",
    quiet: ["It has no alternator."],
  },
  {
    value: "generator",
    part: "charging",
    never:
      "food truck/jobsite/site/camping/honda/starter/petrol | no/not/n't a? generator/dynamo | range/battery/drives the wheels/side locker/genny",
    signs: `
      generator/dynamo + charging/brushes/light/lamp/regulator/still/original/belt/amps/commutator/polarize/polarise/old/idle/voltage/tube/band
      commutator
      brushes + charging/charge/commutator/armature/bedded/skimmed - paint/hair/tooth/wiper
      gen light/lamp
      cutout/cut out + regulator/charging/box
      control box + charging/voltage/regulator/dynamo
      third brush
      only makes juice/charges when
      charging/gen/red light/lamp + idle/crossroads/tickover/lights + revs/rev/normal/goes out - oil
    `,
    says: "It's brushes and a commutator, the charge light comes on at idle and goes out when you rev.",
    quiet: ["The generator for the food truck."],
  },
  {
    value: "6 volt",
    never: "not/n't/was/used to be/converted/doubled/no longer 6/six/it | says six but",
    signs: `
      six/6 volt/volts !battery/batteries in/x/golf/cart
      three caps/cells
      half the voltage/of that
      candles/candle + headlights/lights/lamps
      thick cables/cable + six/volt/starter/low
      bulbs + low ones/mail order/special/order/hard to get - led
      dim lights/headlights
      6v
    `,
    says: "It's a six volt car, headlights like candles.",
    quiet: ["It was six volt and he doubled it."],
  },
  {
    value: "12 volt",
    never: "not/n't twelve/12 | outlet/outlets/socket/sockets/plug/coil/fridge/point/points/pump/compressor/choke/small battery/traction",
    signs: `
      converted/changed/gone/went/stepped/doubled/swapped/upped ..3 twelve/12/volts/volt/voltage
      doubled ..2 voltage/system
      stepped it/them up
      twelve/12 volt conversion/system/car/electrics/now
      it 's/is ..1 twelve/12 volt
      six caps
      ordinary/modern/normal/standard ..2 battery/bulb/bulbs/voltage + fits/fit/store/supermarket/modern - radio
      dropper/reducer/reducers/resistors + gauge/gauges/twelve/doubled/stepped
      same as everyone else's + bulbs/volts/battery
    `,
    says: "It's been converted to twelve volt so modern bulbs fit.",
    quiet: ["A twelve volt outlet."],
  },
  {
    value: "24 volt",
    signs: `
      twenty four/24 volt/volts
      two/pair ..4 in series + battery/batteries/volt/seat/big
      nato plug/socket
      slave lead/socket/plug
    `,
    says: "It's twenty four volt, a NATO plug.",
    quiet: ["Twenty four valves."],
  },
  {
    value: "48 volt",
    signs: `
      forty eight/48 volt/volts
      system ..3 forty eight
    `,
    says: "There's a forty eight volt system.",
    quiet: ["Forty eight miles."],
  },
  {
    value: "positive earth",
    part: "polarity",
    never: "minus/negative ..3 chassis/frame/body/earth/ground | changed/converted/negative now | pizza",
    signs: `
      positive earth/ground/grounded
      plus/positive to the? body/chassis/frame/earth/ground/block
      plus/positive/red + body/chassis/frame/strap + goes/runs/lead/post/strap - jump/cable/paint/rust/minus/pounds/dollars/hundred
      minus is the hot
      minus/negative + hot/live/feed + one/wire/fuse
      wrong way round/up + earth/battery/polarity/radio
      red tape + body/lead/earth
    `,
    says: "The red one goes to the body on this, plus to the frame.",
    quiet: ["The negative goes to the frame."],
  },
  {
    value: "negative earth",
    part: "polarity",
    never: "plus/positive ..3 chassis/frame/body/earth/ground | camber/feedback",
    signs: `
      negative earth/ground/grounded
      minus/negative/black + body/chassis/frame/earth/ground/block/tin + to/on/goes/strap/anything/modern - paint/rust/hot/plus/red
      earth 's/is on the minus
      tin 's/is minus
      polarity + swapped/changed/switched/reversed/converted
    `,
    says: "Black to the chassis like anything modern.",
    quiet: ["Positive ground."],
  },
  {
    value: "agm battery",
    part: "battery",
    signs: `
      a g m
      agm
      glass mat
      spiral wound/cell/cells
      sealed battery
      lay it on its side + battery/spill
      six humps + sealed/battery
    `,
    says: "It's an AGM, a sealed glass mat battery.",
    quiet: ["It goes down the road."],
  },
  {
    value: "lithium battery",
    part: "battery",
    signs: `
      lithium + battery/starter/charger/pounds/weighs - pack/traction/cells/kilowatt
    `,
    says: "A lithium starter battery.",
    quiet: ["It goes down the road."],
  },
  {
    value: "lead acid battery",
    part: "battery",
    signs: `
      lead acid
      distilled + caps/top/topping/battery/fill
      wet cell/cells
      caps and acid
    `,
    says: "A wet one, top it up with distilled.",
    quiet: ["The battery's new."],
  },
  {
    value: "ccs",
    part: "charging connector",
    signs: `
      pair/two ..1 fat/big/thick pins/ones/holes + round/seven/underneath/below/bottom/under/rapid/top
      c c s
      combo plug/socket
    `,
    says: "Seven holes on top and two fat ones underneath.",
    quiet: ["Two fat tires."],
  },
  {
    value: "type 2",
    part: "charging connector",
    signs: `
      type two/2 + plug/socket/lead/charge/cable/connector/port - diabetes
      seven pin + charge/charger/flap/post/petrol - trailer/tow/caravan/ball
      seven holes + flat/round - two fat/wheel
    `,
    says: "It's a type two socket.",
    quiet: ["A seven pin trailer socket."],
  },
  {
    value: "type 1",
    part: "charging connector",
    signs: `
      type one/1 + plug/socket/lead/charge/cable/connector
      five pin/pins/round + latch/plug/charge/thumb
      j plug
      thumb latch/trigger
    `,
    says: "The older five pin plug with the thumb latch.",
    quiet: ["A five pin relay."],
  },
]);

const presence = signTable("electrical", "presence", [
  {
    value: "present",
    part: "second battery",
    never: "no/n't/not/without/one battery/tray ..3 nothing | the one with | off the starter",
    signs: `
      second/twin/two/dual/another/extra/leisure/auxiliary/aux/both batteries/battery !light/cable - no/key/tender/store/fob/flat
      batteries on both
      twins one each side
      amp hours + leisure/wardrobe/bed/under - sixteenths
      leisure/house/deep battery/batteries/cycle
    `,
    says: "There's another battery under the bench for the fridge.",
    quiet: ["There's no second battery."],
  },
  {
    value: "present",
    part: "block heater",
    never: "no/n't/not/without cord/plug/wire/block | southern | would have",
    signs: `
      block/engine/coolant/sump heater - no
      cord + grille/hook/northern/canadian/plug/prong/truck/bumper/front/winter/pins - no/rip/seat/piping
      three prong + hook/grille/bumper/front/sticking/poking
      element + core/freeze plug/block/wire
    `,
    says: "There's a cord with three prongs poking out of the grille for the block heater.",
    quiet: ["There's no cord in the grille."],
  },
  {
    value: "absent",
    part: "block heater",
    signs: `
      no cord + grille/southern/truck/ordered/front
      no block heater
      southern truck + nothing/no
    `,
    says: "No cord in the grille, it's a southern truck.",
    quiet: ["It has the cord."],
  },
  {
    value: "present",
    part: "charge cable",
    never: "no/n't/not/missing/empty/pinched/gone/stole/buy/drone/phone | hook ..6 bare | jump/extension",
    signs: `
      charge/charging lead/cable/leads/cables - sold
      lead/leads/cable/cables + wall/post/boot/bag/pouch/metres/meters/home/ends/house/granny + comes/come/both/with/there/one/goes/go/in/unrolled/hardly - jump/ignition/plug/plugs/coil/brake/battery lead/clutch
      granny cable/lead/charger
      wall one + post one
    `,
    says: "Both leads come with it, the wall one and the post one.",
    quiet: ["We don't have the lead."],
  },
  {
    value: "absent",
    part: "charge cable",
    never: "the lead's here | plug leads | lead in the",
    signs: `
      no charge/charging lead/cable
      lead/cable/cables + empty/missing/bare/gone/pinch/pinched/stolen/buy/without/hook | n't given + charge/charger/cubby/driveway/lead/hook - choke/brake/clutch/jump
    `,
    says: "They pinched the lead, look, the cubby's empty.",
    quiet: ["The lead's here."],
  },
  {
    value: "present",
    part: "immobilizer",
    never: "no/n't/before/without ..3 chip/chipped/coded/immobilizer/immobiliser | wheel clamp",
    signs: `
      immobilizer/immobiliser
      chipped + key/keys/ignition/box
      coded/chip/transponder key/keys
      chip + key/fob + start/crank/reads/ignition
      fob + crank/start/die/dies/wo n't/coded + without/unless/reads/near - window/boot
      little/red light + blinks/flashes + lock/dash/locked - brake
    `,
    says: "It's a chipped key, without the fob it'll crank and die.",
    quiet: ["There's no chip in the key."],
  },
  {
    value: "absent",
    part: "immobilizer",
    signs: `
      no/before/n't ..3 immobilizer/immobiliser/transponder | chip ..2 key
      no chip + key/start/turn
      any key + start/turn
      start it with a screwdriver
      coded keys + before/no
      hot wire/wired + start/anyone/anybody
    `,
    says: "Any key that turns will start it, no chip.",
    quiet: ["The key has a chip."],
  },
]);

export const currentSigns: readonly QualityRule[] = [...kinds, ...presence];
