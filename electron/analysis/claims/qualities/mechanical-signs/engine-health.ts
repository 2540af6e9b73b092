import { signTable } from "./sign-table.ts";

/** How the engine runs, sounds, smells and stays dry, in sayings that are said of engines alone. Common practice of the trade, American and British. */
export const engineHealthSigns = signTable("engine", "condition", [
  {
    value: "flawed",
    circumstance: "noise",
    denial: "turns",
    never: "fixed the | gearbox/transmission/suspension/steering/brakes/door/window/dash",
    signs: `
      knock/knocks/knocking + bottom end | rod/rods/mains | when it 's hot/warm/cold | under load
      tick/ticks/ticking/tappy/tappety + lifter/lifters/tappet/tappets/rocker | manifold | warms up | goes away - solid/normal
      big ends
      rod/rods/main/mains knock/knocking/rumble
      piston slap
      slap/slaps + piston/pistons/skirts/bores
      spun bearing
      chain/tensioner rattle/rattles/slap
      rattle/rattles/rattling + start up/startup | chain | tensioner | skeleton
      pinks/pinking/pinging + hill/load/pulls/nails
      worn cam/lobe/lobes/rings/bores/guides/lifters
      wiped/flat lobe/lobes/cam
      lobe/lobes + wiped/gone/flat/round
    `,
    says: "There's a rod knocking under load.",
    quiet: ["Knock on wood.", "The clock's ticking."],
  },
  {
    value: "flawed",
    circumstance: "leaks",
    denial: "turns",
    never: "gearbox/transmission/steering/axle/diff/brake/video/videos | pinky/red/pink",
    signs: `
      rear main + leak/leaks/weep/weeps/seep/seeps/drip/drips/gone
      seal/seals + crank + leak/leaks/weep/weeps/drip/drips/dribble/gone/hanging
      rocker/valve/cam cover/covers + leak/leaks/weep/weeps/weeping/sweat/sweats/sweating/seep/seeps/dribbles/dribbling
      covers sweating/weeping/dribbling
      leave/leaves ..2 mark/spot/puddle + wherever/parks/parked
      marks its/the/her spot/territory/driveway
      oiling the road
      core/freeze/frost plug/plugs + leak/leaks/weep/weeping/rusty/rust/trail/going
      nose/front seal + had it/leak/leaks/throwing/weep
    `,
    says: "She marks her spot, oiling the road wherever she goes.",
    quiet: ["The oil filter's new.", "A video on rear main seals."],
  },
  {
    value: "flawed",
    circumstance: "smoke",
    denial: "turns",
    never: "cigarette/cigarettes/brakes/tire/tires/burnout/sleeves/black smoke | everyone tells",
    signs: `
      blue smoke/haze/cloud
      puff/puffs/cloud of ..1 smoke
      smoke/smokes/smoked/smoky + startup | start up | overrun | when it 's cold/hot | bit/little | stood/standing - black
      blows like a chimney
    `,
    says: "There's a puff of blue smoke at start up.",
    quiet: ["Smells of cigarette smoke."],
  },
  {
    value: "flawed",
    circumstance: "fault",
    denial: "turns",
    never:
      "heater/radio/clock/window/door/lights/transmission/gearbox/clutch/computer | without the ..4 key/fob/chip | another/last one/engine/motor | used to",
    signs: `
      misfire/misfires/misfiring
      running/runs/firing on seven/five/three
      dead cylinder
      down on one/compression
      low compression
      compression 's/is low/down/uneven
      head gasket 's/is/has gone/blown/leaking/going/weeping/failing/let
      blown/blowing head gasket
      mayonnaise/mayo - no/sandwich
      milky oil
      oil 's/is milky
      water in the oil - what you do n't want
      block test + yellow
      glitter/flakes + oil/plug/filter/sump - paint/no
      burns/uses/drinks/eats a/some/any/its oil
      burns/uses/drinks/wants/eats a? quart/pint/litre/liter
      quart/pint/litre every hundred/thousand/few/tank/week/five/couple
      engine/motor/lump 's/is seized/stuck/locked/knackered/shot/tired/finished
      seized engine/motor
      non runner
      ran when parked
      wo n't start/fire/run/idle - unless/itself
      does n't run
      hard/reluctant/slow/bad to start/starting/starter
      takes ..1 coaxing
      rough/lumpy idle/tickover
      idles/idling rough/lumpy
      hunts/hunting ..2 idle
      flat spot off/in/at idle/throttle/two/three
      hesitates/stumbles/bogs ..3 throttle/pull/off/gas/acceleration
      limp mode
      check engine light/lamp ..1 on/came/comes
      engine management light
      overheats/overheating - clutch/brakes
      needs/wants ..2 rebuild/rebuilding/rings - brakes/gearbox/carb/trans/alternator
      oil pressure 's/is low/poor/down
      cracked ..1 block/head - dash/tail
      on its/it 's last legs
      pops/spits back ..2 carb/throat/intake
      cough and a spit
    `,
    says: "It misfires and there's low compression on four.",
    quiet: ["The seat's missing a clip.", "It never missed a beat."],
  },
  {
    value: "good",
    circumstance: "praise",
    never: "transmission/gearbox/radio/heater/rough/rattle/tired | wo/does/did/ca n't start/run/fire | would n't",
    signs: `
      starts/fires/catches/lights/started/fired/caught/springs ..3 first time/turn/kick/pull/go/push/crank/flick/touch/try
      starts/fires/catches/fired/lights right/straight up/off/away
      starts ..1 every time
      starts on the button/key
      a flick/dab/touch ..1 and it 's/is away/running/lit
      one flick
      springs/bursts into life
      purr/purrs/purring - cat/kitten's
      sewing machine - runs the/wife's/upholstery
      sweet as a nut
      runs/idles/pulls/running ..1 sweet/sweetly/beautiful/beautifully/lovely/perfect/perfectly/smooth/smoothly/strong/strongly/great/cleanly/superb - deep
      ticks over ..3 sweet/sweetly/clock/lovely/smooth/quiet/nicely
      pulls like a train
      strong runner
      good/sweet/great/healthy runner
      nickel/coin/penny/quarter + stand/stands/balance/edge/walk/idle/fall - tread/tires
      does n't/never/not ..2 use/burn/drink/smoke/knock/leak a? drop/oil/any/bit
      does n't smoke/knock/leak/rattle/tick - or
      no smoke/knocks/knock/rattles/tick ..4 no
      not a wisp
      compression 's/is good/even/strong/up/within/great/spot/all
      compression + within/even across/within/of each other - low
      all ..3 within ..2 pounds/percent of
      never missed a beat
      nothing wrong with the engine/motor
      mechanically ..2 sound/perfect/right/spot/lovely/strong/excellent/sorted/fine
      oil pressure 's/is good/strong/lovely/solid/great/excellent/healthy/perfect
      no mayo/mayonnaise/sludge
      crosshatch
      dry as a bone/toast - diff/pinion/boot/trunk/floors/carpet/carpets/gearbox
      runs and drives
      you 'd never know it 's/was running
      no codes - radio
    `,
    says: "Starts first turn every time and runs sweetly.",
    quiet: ["It won't start.", "The lights come on first time."],
  },
]);
