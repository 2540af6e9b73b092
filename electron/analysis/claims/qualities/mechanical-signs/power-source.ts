import { signTable } from "./sign-table.ts";

const notThis = "lawn/mower/tractor/heater/stove/generator/station/stations/can/cans/pump price/prices | chainsaw/strimmer";

/** What the engine burns, or what drives instead of it; what forces its air and takes its heat. Common practice of the trade, American and British. */
export const powerSourceSigns = signTable("engine", "type", [
  {
    value: "diesel",
    part: "fuel",
    never: `${notThis} | fella/guy/man wanted | not a diesel | instead of diesel | rather than diesel | used to be | gasoline/petrol engine | where the diesel`,
    signs: `
      derv - wanted/want/wants
      oil burner/burners - behind the
      glow plug/plugs/light/lamp/relay/coil - no/n't
      compression ignition
      compression kind/sort/motor
      no/n't spark/any plugs/plug - leak
      no plugs + no/n't leads/wires/coil/coils/light/distributor
      no coil + no cap/leads/plugs/distributor/points
      clatter/clatters/clattery/clattered/clattering/clatterbox/clatterer/clackety - valve/tappets/lifter/lifters/cam
      rattle/rattles + marbles/nails/bolts/diesel/cold/taxi + warm/does/do/can/bucket
      anti gel
      gelled/gel/gels up/in/that/one
      water in fuel
      water separator
      fuel/water separator/trap
      injection/injector pump
      black smoke + foot/pull/load/lug/floor/pulls/puff/accelerate/accelerator/chip/tune/truck
      red/dyed/farm fuel/dye/diesel/tank
      off road fuel/diesel
      green/yellow handle/nozzle/pump
      stop lever/knob/cable/solenoid + pump/engine/pull/shut/quit/key/off
      pull/pulls ..3 to stop ..1 it/her/engine
      ad blue
      adblue/urea
      blue additive/fluid/juice/cap + tank/gallons/top/fill/fluid/next/fuel/box/service
      def tank/fluid/cap/light
      soot trap/filter - gutted/new/replaced/deleted
      particulate filter
      dpf/d p f
      common rail
      wait/waiting/waits/count/counting + glow/coil/orange/squiggle/squiggly/curly/amber/pigtail/light + start/starts/go/crank/cold/go/out/turn/key/before - red
      light + pigtail/squiggle/squiggly/curly
      bleed/prime/priming/primer + injector/injectors/lift/filter
      lift pump
      twenty/nineteen/eighteen/twenty ..1 two/one/to to one + compression/crank/cranking/ratio/no/squeeze/batteries
      two batteries + crank/cranking/spin/compression/start/starting
      batteries on both + crank/spin/compression
      turbo diesel/derv
      diesel engine/motor/lump/one/truck/van/pickup/v8/six/four/estate/saloon
      heavy oil
      runs on heating/vegetable/veg/chip/fryer oil
      veggie/vegetable/chip/fryer oil
      smells/smell of diesel
      rudolf
      black pump
    `,
    says: "It's the oil burner, you wait for the coil light and it clatters.",
    quiet: ["There was a diesel stove in the shed.", "The valve clatter's gone."],
  },
  {
    value: "gasoline",
    part: "fuel",
    never: `${notThis} | hybrid/phev/charge/charges/electric/battery/generator/hours | corner's out of | diesel's dearer`,
    signs: `
      plugs and leads/coils/coil/wires
      leads and plugs
      plugs + coils + fill/fuel/pump/unleaded/smoky
      unleaded/octane
      regular/premium/super/supreme !shock/unleaded/service/car + gas/fuel/runs/unleaded/octane/happy/burns/fill/tank/needs/takes
      ninety one/three/five/seven/eight octane/ron/fuel/unleaded/premium
      high test
      e ten/five sticker/fuel/fine/label/petrol
      e10/e5
      ethanol
      lead free/additive/substitute
      hardened seats/valve + lead/unleaded
      smells/smell/smelling/stinks of petrol/gas/gasoline - leak/leaks/leaking
      no waiting ..3 glow/light
      petrol/gas/gasoline engine/motor/lump/one/v8/six/four/version/job
      burns/drinks/runs on/takes petrol/gas/gasoline
      seven/eight/nine/ten to one + gas/motor/petrol/burn/regular
      it 's/is a petrol
      petrol not ..1 diesel
      gas not ..1 diesel
      not/n't the/a diesel/smoky/derv/oil + one/burner/plugs/petrol/gas
      gas motor/engine
      spark plug/plugs + new/gap/gapped/tan/brown/clean/four/six/eight/each/hole
    `,
    says: "It runs on regular unleaded.",
    quiet: ["The petrol station's over there.", "It's a hybrid and takes unleaded too."],
  },
  {
    value: "electric",
    part: "fuel",
    never:
      "hybrid/phev/petrol/gas/gasoline/diesel/unleaded/engine comes/kicks/cuts/starts | range extender/generator | engine and/between | windows/seats/mirrors/fan/guitar/drill/brake/steering/mower/golf | starter | engine runs | wheelchair/scooter/bike | forty eight",
    signs: `
      frunk/froot/frunks
      no engine/motor + under/hood/bonnet/in/really/batteries/battery/electric/at all
      nothing to hear
      all/fully/pure/completely electric !windows/seats/roof/hood
      battery electric
      zero emission/emissions
      one pedal
      kilowatt hour/hours pack/battery/unit
      kwh
      orange cables/leads/wires
      no exhaust/tailpipe/oil/dipstick + battery/batteries/charge/motor/electric - filler
      no oil + filter/change/changes/plugs/dipstick - leak/leaks/drips/smoke
      never needs/need/had/wants/want an/any? oil
      miles on a/one/full ..1 charge
      miles/range + charge/charges/battery/charger/full + summer/winter/motorway/hundred/shows/showing/percent/cold
      charges/charge/charged/charging + overnight/driveway/night/supermarket/wallbox/rapid/fast - phone/trickle/tickle/ac/jump/plug/sign/lead/cable
      motor on each/every/both axle/end/wheel
      motor + between/at the? back/rear/front wheels + battery/boot/trunk/silent/hum/electric
      green stripe/flash + plate/plates
      battery/cells/pack + miles + range/percent/health/charge - lead/starter
      state of health
      plug/plugs/plugged it/her in + night/home/overnight/wall/car/drive
      flap ..6 socket
      socket + fuel/filler cap/flap + where
      silent/silence/silently/whirr/whirrs/whir/whirs/hum + pulls/motor/electric/battery/speaker/pedal - vent/wiper/fan/window/switch/handbrake/parking/back/seat
      is it on/running + hear/silent/ears/off/exactly
      ca n't hear anything/it/a
      is n't an? engine/motor
      spaceship noise
      pedestrian/speaker noise/sound + hear/front/spaceship/coming
      regen/regenerative + watts/pedal/motor/slows/brake
      bin/frunk/trunk/boot + front + where + motor/engine
      where the/an/your/you'd engine/motor used/would/should/be/ought
      ev !charger/charging/point/points/spaces/only
      electric car/van/truck/hatch/hatchback/vehicle/job - assisted/steering
      it 's/is ..1 electric $
      milk float
    `,
    says: "No engine, there's a frunk, and it does two hundred miles on a charge.",
    quiet: ["Electric windows all round.", "It's a hybrid with the engine.", "The electric fan cuts in."],
  },
  {
    value: "plug-in hybrid",
    part: "fuel",
    never: "not/n't/never/no ..2 plug",
    signs: `
      plug in hybrid
      phev
      p h e v
      two/both flaps + petrol/fuel/socket/gas/charge
      plug/plugs/socket/cable/charge/charged/charges/charging/lead + petrol/gas/unleaded/engine/gasoline/tank + both/either/other/when/runs/flat/kicks/after/side/then/miles/flap/cuts/gauge
      used to do ..3 on the plug/charge
      off the house/mains + petrol/tank/holiday/normal
      at home + in the tank
      best of both
      thirty/twenty/forty miles ..1 on the? electric/battery/plug + then/engine/petrol/before/gas
    `,
    says: "Two flaps, petrol this side and a socket the other.",
    quiet: ["It's a hybrid, not the plug in kind.", "A plug in the hole."],
  },
  {
    value: "hybrid",
    part: "fuel",
    never:
      "phev/plug in hybrid/mild | two flaps | hybrid tire/tires/bike/turbo/of | hybrid/half ..2 labrador/poodle/dog | a hybrid and/we/they | traded ..3 hybrid | next/other/pair with a",
    signs: `
      hybrid - plug ..1 in hybrid - pack/cvt/planetary
      self charging
      never/no/n't ..2 plug/plugging/plugged ..3 it/in + makes/charges/own/battery/brake/hybrid/motor
      charges/recharges itself/it 's own
      engine/petrol/gas + battery/electric/motor + together/switches/argue/helping/helps/both/half/sleep/silent/deciding/decides/shuts/cuts - starter/charger/flat/jump
      half petrol/gas half
      petrol ..8 pair of motors
      engine keeps going to sleep
      silent/quiet then + engine/brrm/kicks/starts/wakes
      motor + between/sandwiched + engine/eight/six/four + gearbox/box/transmission - inner/fender/plate/adapter
      runs/creeps/pulls ..1 on battery/electric + up to/until/engine/thirty/petrol
      better in town/city than ..4 motorway/highway
      in the city and worse on the highway
      having both means
      traction battery fan/filter/vent
      transaxle + engine + motor
      taxi drivers love
      battery under the/that back/rear seat/seats
    `,
    says: "It's half petrol half battery and charges itself when you brake.",
    quiet: ["A hybrid bike in the trunk.", "It's a plug in hybrid."],
  },
  {
    value: "mild hybrid",
    part: "fuel",
    signs: `
      mild hybrid
      belt starter generator
      starter generator
      forty eight volt/volts + hybrid/engine/belt/generator/helps/pulls/coast/starter/start
      integrated starter
      light kind/sort of hybrid
      n't/never drive/drives ..3 on ..1 own/electric/battery + generator/belt/helps/volt/starter
    `,
    says: "There's a belt starter generator, a mild hybrid.",
    quiet: ["The starter's mild."],
  },
  {
    value: "range extender",
    part: "fuel",
    signs: `
      range extender
      never/n't drives/drive/touches/turns/connected the/to wheels + engine/motor/cylinder/generator/battery/petrol
      engine/lump/motor/twin/generator + tops/keeps/charges/charge/calls/feeds + battery + wheels/only/hours/never/boot
    `,
    says: "The little two cylinder never drives the wheels, it keeps the battery topped up.",
    quiet: ["The alternator charges the battery."],
  },
  {
    value: "gas conversion",
    part: "fuel",
    signs: `
      l p g
      lpg/autogas
      vaporizer/vaporiser/vapouriser
      doughnut/donut gas tank
      propane/cng + runs/converted/tank/conversion/engine
      starts on petrol + flips/switches/changes
    `,
    says: "It's on LPG, the tank's in the wheel well.",
    quiet: ["The gas tank's new."],
  },
  {
    value: "two stroke",
    signs: `
      two stroke
      mix/premix + oil + fuel/petrol/gas
      ring ding
    `,
    says: "It's a two stroke, you mix the oil in the fuel.",
    quiet: ["Mix of oil and water."],
  },
  {
    value: "dry sump",
    part: "oil system",
    signs: `
      dry sump
      scavenge pump
      no oil in the pan/sump
    `,
    says: "It's a dry sump with the tank in the back.",
    quiet: ["The sump's dry."],
  },
]);
