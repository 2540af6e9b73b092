import type { ZoneName } from "../../../../../shared-types/index.ts";
import { type SignTableRow, signTable } from "./sign-table.ts";

const cylinders =
  "cylinder/cylinders/pot/pots/jug/jugs/hole/holes/piston/pistons/barrels/plug/plugs/lead/leads/wires/port/ports/runners/trumpets/throws/injectors/coils/motor/engine/lump";
const rowWords =
  "in a row/line/file | in line | in a straight line | lined up | one behind the/another/other | one after the/another/other | behind each other | next to each other | end to end | nose to tail | side by side | standing/stood in | all upright/stood/standing | stood up";
const noCylinders =
  "volt/volts/battery/batteries/amps/seat/seats/seater/door/doors/caliper/calipers/foot/owners/speed/speeds/gauges/lights/switches/car/cars/bolts/studs/months/grand/hundred/dollars/quid/years/months/miles/cruiser/quart/quarts | wheel/wheels | my brother's/dad's | on the lot | of us";

const rows: readonly SignTableRow[] = [
  {
    value: "v8",
    part: "layout",
    never: `${noCylinders} | straight/inline/flat eight | eight in a row/line | in line`,
    signs: `
      bent eight
      v of eight
      eight banger/cylinder/cylinders/pots/pot/jugs/holes/pistons/barrels - row/line/straight/behind
      the/big/great/old/large/lazy/small/little/an eight !hundred/foot/inch/of/or/track/ball/to/and + motor/engine/hood/bonnet/gas/thirsty/drinks/burble/rumble/tow/towing/torque/gearbox/box/mileage/juice/cylinders
      with the/an eight $
      with the/an eight in/because/cause/and/under
      eight + bank/banks/vee/valley/burble/rumble/lope
      four a/per/each/either/every side/bank/head/cover + ${cylinders} | exhaust | valley/vee/rumble/burble/eight
      four + each/either/both side/bank/head/sides/banks/heads + ${cylinders} - flat/boxer/opposed/lying
      four this/left/one/near side + four ..2 side/other/right
      four and four + ${cylinders}
      eight + one lot/half/four + side/other/each/bank
      one eight four three six/two
      head either/each side + four
      crossplane/cross plane
    `,
    says: "There's four jugs either side of the valley, listen to it rumble.",
    quiet: ["There are four seats each side.", "The eight cars over there.", "It has four bolts each side."],
  },
  {
    value: "v6",
    part: "layout",
    never: `${noCylinders} | flat/boxer/opposed/horizontally/lying/row/line/straight/inline/barrel`,
    signs: `
      bent six
      v of six
      vee of six
      three ..1 at/on/up/toward/towards/facing the? front/radiator/nose/grille + three ..1 at/on/in/against/by the? back/rear/bulkhead/firewall/dash
      front/near/forward three + plugs/bulkhead/coils/leads/cylinders
      back/rear three + ${cylinders}/manifold/bulkhead/intake
      six + two/both/each/either bank/banks/head/heads/side
      six + bank forward/back/front/rear
      three a/per/each/either/every side/bank/head + ${cylinders} | vee/valley/v
      three + each/either/both side/bank/head/sides/banks/heads/apiece + ${cylinders}
      banks of three
      three + three + vee/bank/banks/v/intake/plenum/sideways
    `,
    says: "Three plugs at the front and three at the back by the bulkhead.",
    quiet: ["Three seats at the front and three at the back.", "Three a side lying flat, it's a boxer."],
  },
  {
    value: "v10",
    part: "layout",
    never: noCylinders,
    signs: `
      ten cylinder/cylinders/pot/pots/trumpets/plugs/pistons/jugs
      five a/per/each/either/every side/bank/head/cover + ${cylinders} | vee/valley/v | howls/howl/scream/screams
      five and five + ${cylinders}
    `,
    says: "Ten trumpets, five a bank.",
    quiet: ["Five and five makes ten."],
  },
  {
    value: "v12",
    part: "layout",
    never: noCylinders,
    signs: `
      twelve cylinder/cylinders/pot/pots/plugs/pistons/trumpets/leads/pipes
      six a/per/each/either/every side/bank/head/cover + ${cylinders} | vee/valley/v | turbine/silk/bonnet/hood
      six down/on each/either/both bank/side/banks/sides
      two/pair of straight/inline sixes
      v twelve
    `,
    says: "Twelve pots in two rows.",
    quiet: ["Twelve bolts a side."],
  },
  {
    value: "inline six",
    part: "layout",
    never: `${noCylinders} | v six | v6 | flat/boxer/opposed`,
    signs: `
      six + ${rowWords}
      sixes + ${rowWords} | straight/strait
      six/sixes all straight/strait
      long/tall/skinny/smooth/silky/stovebolt six
      straight/strait six/sixes
      seven mains
      seven main bearings
      half a dozen + ${cylinders} - row/line/bank/v
      half a dozen + row/line - caps/them/knob
      six tall/upright/vertical
      six + one/single/just the one manifold + side
      six + leaning/leans/canted/slanted | laid over
    `,
    says: "There's six of them all in a row under that cover.",
    quiet: ["Six seats in a row.", "Six of them on the lot."],
  },
  {
    value: "inline four",
    part: "layout",
    never: `${noCylinders} | flat/boxer/opposed/v/vee/apiece | each/either/per side/bank | a side | wheel/barrel`,
    signs: `
      four ..2 plug/plugs/leads/pots/cylinders/them/injectors/coils + ${rowWords}
      four in a? row/line + hood/bonnet/cover/engine/motor/deck/under
      four + in a row/line + hood/bonnet/cover/engine/motor/deck/under/plugs/injectors
      four banger/bangers
      plain/simple/little/clattery/honest/old/base/basic/ordinary/small/humble/willing four + engine/motor/hood/bonnet/cylinder/cylinders/one/cover/gallon/pot/mpg/lump/under/revs
      the four in line
      half an/a eight
      two up and? two down
      two + up + two down + pistons/crank/shake/shakes/vibration/cylinders
      four pot/popper/holer !caliper/calipers/brake/brakes/disc
      four branch/into one + manifold/header/side
      four legs + flange/manifold/casting
      all four plugs/leads/injectors - spare/wheels/row
      two cylinders fewer
      twin balancer/balance shafts
    `,
    says: "Four pot, plugs all in a row along the top.",
    quiet: ["Four pot calipers up front.", "Four of them on the lot.", "Four cars in a row."],
  },
  {
    value: "inline three",
    part: "layout",
    never: `${noCylinders} | row/rows of three | radiator | three row | manifold | apiece/each/either/per | some of the`,
    signs: `
      three cylinder/cylinders/pot/pots/popper/banger/holer/lunger
      three little/small/tiny ${cylinders}
      three + coils/plugs/pots/cylinders/leads/injectors/trumpets + ${rowWords} | thrum/warble
      triple + idle/idles/tick/ticks/thrum/warble/engine/motor/shake/cylinder/beat/growl - white/check/checked/square/seal
      off beat warble/thrum + three/triple
      half a straight/inline six
    `,
    says: "It's a triple so it thrums a bit at idle.",
    quiet: ["Three little dings in a row."],
  },
  {
    value: "inline five",
    part: "layout",
    never: `${noCylinders} | each/either/per side/bank | a side | and five | five seven`,
    signs: `
      five cylinder/cylinders/pot/pots/popper/banger/holer !each/a/per
      five + ${cylinders} + ${rowWords} | row | warble/odd/off
      odd + middle + two + side/either + manifold/ports/cylinders/plugs
      five injectors/plugs/leads/coils/ports - good/burnt/cooked
      not/n't four and? not/n't six + five
    `,
    says: "Five pots all in line, hear that warble.",
    quiet: ["Five cars in a row."],
  },
  {
    value: "inline eight",
    part: "layout",
    never: `${noCylinders} | bank/banks/vee/valley/v`,
    signs: `
      straight eight/eights
      eight + ${rowWords}
      eight + crank/throws + longer/long/end
    `,
    says: "Eight pots one behind the other, that's why the hood's so long.",
    quiet: ["Eight cars in a row."],
  },
  {
    value: "flat six",
    part: "layout",
    never: noCylinders,
    signs: `
      three/six + horizontally/boxer/opposed
      three/six + side/barrels/heads/cylinders/pots + lying/laid flat/down
      three a/per/each side + boxer/flat/flats/opposed/barrels/rear/back/stud/studs
      three barrels per/each/either/a side
      flat six/sixes
    `,
    says: "Three a side, horizontally opposed, that's the howl.",
    quiet: ["Three a side on the team."],
  },
  {
    value: "flat four",
    part: "layout",
    never: `${noCylinders} | three/six/twin | shorts/dog/dogs/glove/gloves/shirt | boxer's | pancake ..1 tire/spare`,
    signs: `
      boxer + four/two/pair/engine/motor/lump/low/down/sound/burble/hear/headers/cylinders/thrum
      boxers + engine/motor
      four + boxing/opposed/punching/sideways + ${cylinders}/sides/fan
      two and two + flat/lying/laid/down/fan/opposed
      pair/two + sticking/each/either/left + out/right/way/side/sideways + flat/low/cylinders/pancake/knee/barrels
      horizontally opposed
      laid/lying/lies flat/down + cylinders/four/engine/motor/pots/barrels/heads
      two cylinders under/in/each each/either/a? head/cover/side
      pancake engine/motor/four
    `,
    says: "It's the boxer, four of them punching out sideways.",
    quiet: ["All four tires are flat.", "My boxer dog."],
  },
  {
    value: "flat twin",
    part: "layout",
    signs: `
      flat twin
      two cylinders + one ..3 each/either side
      pair of cylinders + each/either side
      two pots/cylinders + sticking/poking out
    `,
    says: "Two cylinders, one poking out each side.",
    quiet: ["Two flat tires."],
  },
  {
    value: "single cylinder",
    part: "layout",
    signs: `
      one/single cylinder/piston/lung/lunger !head/caliper - low/down/bad/dead/misfire/only/weak/plug/bank
      one cylinder $
      thumper + engine/motor/piston/cylinder/pot
      bang ..1 pause ..1 bang
    `,
    says: "It's got one cylinder and a big flywheel.",
    quiet: ["One cylinder head has been off.", "One cylinder is low on compression."],
  },
  {
    value: "straight twin",
    part: "layout",
    signs: `
      parallel/straight/vertical twin/twins
      pair of plugs + coil/next
      two pot/cylinder/pots/cylinders + side by side/next/together/air/little/tiny/upright - extender/generator/never drives
    `,
    says: "Just a pair of plugs, one next to the other.",
    quiet: ["Twin tanks side by side."],
  },
  {
    value: "rotary",
    signs: `
      apex seal/seals
      rotor housing/housings
      two/both/twin/second/front/rear/pair of rotors + engine/housing/housings/compression/faces/start/starts/oil/idle/piston/pistons - brake/disc/pads
      no pistons
      rotary - mower/phase/dial/phone/phones/knob/switch/club/sander/selector/control/cutter/shifter/fella/man
      brap/braps/brapping - exhaust ..1 brap
      trailing plug/plugs
      triangle/triangles/trianglish/triangular/dorito/doritos + spin/spins/spinning/turn/turning/housing/box/eight/inside/engine - warning/reflector/red/window
      epitrochoid
      no valves + no pistons/cams
    `,
    says: "No pistons in it, two rotors going round and the apex seals are fresh.",
    quiet: ["New rotors at the front.", "The rotary dial shifter.", "Warning triangle's in the trunk."],
  },
];

/** Where an engine is seen, heard or summed up: elsewhere "three a side" are lamps or bolts. */
const engineInView: readonly ZoneName[] = ["engine-bay", "opening", "closing", "drive", "documents", "front"];

/** How the cylinders stand, told by what one sees, counts and hears. Common practice of the trade, American and British. */
export const cylinderSigns = signTable(
  "engine",
  "type",
  rows.map((row) => ({ zones: engineInView, ...row })),
);
