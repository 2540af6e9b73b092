import { signTable } from "./sign-table.ts";

const notBrakes =
  "clutch/player/changer/drive/golf/horse/feet/bike/herniated/slipped/band/kit/washing/sander/saw | oil drum | ear/kettle/bongo drum | grinding/cutting disc | moon";

/** What stops it, how it is worked and what helps: told by its little parts, its feel and its noises. Common practice of the trade, American and British. */
export const brakeKindSigns = signTable("brakes", "type", [
  {
    value: "disc",
    never: `${notBrakes} | knee/shoulder/saddle/steering/dash/pedal/seat/floor pad/pads | pad has a crack | pedal pad/rubber | distributor/dizzy/cap rotor | compression/apex/housing/housings/faces | no/n't/never ..3 discs/disc/calipers/caliper/pads/rotors | unticked | not ticked | swapped the discs | if you measure | other/that one's ..3 caliper`,
    signs: `
      pad/pads + brake/front/rear/back/fronts/rears/meat/mil/squeak/squeal/indicator/percent/slides/piston/caliper - pedal/rubber/seat/clutch/stamp/stamped/block/note/vin/touch/keypad/engine/mouse/airbag/horn/hoof/landing/paw/helipad/partial/matching
      piston/pistons + wind/caliper/pads/seized/sticky/pushed/pot/pots + pads/front/rear/fronts/rears/brake/brakes/disc/caliper - engine/bore/rings/stroke/motor/cylinder/head/crank/coffee
      four/six/two/twin pot/piston caliper/calipers/fronts/front/brakes/clamps
      shiny/bright/clamped plate/plates/ring/rings/platter + wheel/wheels/spokes/brake/brakes/clamp/pads - piston/ring/number/license/compression/beauty/trim
      clamps/squeezer/squeezers + spokes/rotor/plate/brake/shiny - battery/hose/cargo/exhaust/bar/wheel clamp
      clamp over/on/round it/the + shiny/plate
      slide/slider/guide pins/pin + pad/brake/seized/greased/stuck
      sliders + stuck/seized/pad/pads/inside/caliper - cleat
      brake dust + front/fronts/wheels/rear/all - shoes/only
      wear indicator/indicators/sensor
      anti squeal shims
      caliper/calipers/rotor/rotors + front/rear/back/both/new/through/spokes/behind/seized/lip/rust/rusty/painted/red/corner/done/look/see/squeal/turned/miked/skimmed/minimum/warped/hub/axle/bracket/ridge/groove/grooves - distributor/engine
      through the spokes + caliper/rotor/disc/clamp/plate/shiny
    `,
    says: "Pads all have plenty of meat, and you can see the piston's not seized in the caliper.",
    quiet: ["The brake pedal pad's worn.", "New pistons and rings.", "It never had discs."],
  },
  {
    value: "drum",
    never: `${notBrakes} | transfer/propshaft/prop/gearbox ..3 drum | swapped the drums | no ..1 drums/shoes/drum | my/his/her/wet/good/dress/running/new shoes on/are | feet | mud/muddy/tread/coffee/ coat | sneakers/boots | handbrake shoes | gas/steel drum | were drums | oil's/oil/waiting/council ..3 drum | in that drum | barn find | wet streak | either side of the gearbox`,
    signs: `
      shoes/shoe + lining/linings/relined/spring/springs/adjust/adjusted/adjuster/adjusters/cylinder/cylinders/axle/hub/rear/back/backs/backing/wheel/rotors/discs/pads/glazed/leading/bonded/drum/drums/set/self/receipt/grinding/wheels/corner - on my/polish/horse
      all eight/four shoes
      linings/lining + rear/back/riveted/bonded/front/axle/soaked/oil/thick/brake/brakes/arched/thou/left - tank/bed/fender/head/roof/clutch/jacket/door
      wheel cylinder/cylinders
      rear/back/front cylinders + shoes/brake/brakes/weep/weeping/new/leaking/leak/wet/boot
      boot on that cylinder
      star/adjuster/adjusters + wheel/spoon/slot/screwdriver/brake/click/backing/shoe/shoes - headlight/seat/coil/mirror/suspension
      spoon + slot/adjust/adjuster
      adjust/adjusts/adjusted + themselves/self + reverse/back/brake/brakes/backing/shoes - tappets/lifters/clutch
      self adjuster/adjusters/adjusting + brake/brakes/rear/back/reverse/shoes
      twin/two/double leading
      leading shoe/trailing
      finned + brake/brakes/drum/drums/bonnets/front - diff/cover/alternator/engine/fan
      pots at every/each/all corner/corners/wheel
      round pot/pots/can/cover/covers + shoes/brake/brakes/wheel/back/adjust
      four pots + cables/brakes/rods/wheels
      back plate/plates - license/number/clutch/rusted/seal/disc/discs
      backing plate/plates - disc/discs/rotor/rotors/rusted off
      drums/drum + front/rear/back/fins/finned/turned/miked/skimmed/iron/hub/hubs/axle/ridge/lip/corner/shiny/belled/over/off/pulled/puller/round/wheel/wheels/nut - transfer/dodgy
      hub puller/pullers + brake/drum/drums
      brake dust ..12 shoes
      fade/fades/faded + drum/drums/hill/shoes
      hold down springs/spring
      still the old kind + brakes/four/calipers
    `,
    says: "Rear shoes, springs and two wheel cylinders, that's the parts bill.",
    quiet: ["I have new shoes on my feet.", "The oil's in that drum.", "The horse needs shoes."],
  },
  {
    value: "vented disc",
    part: "rotor",
    never: "no vanes/slots | not/n't vented | drum vents/seat/seats/scoop/window",
    signs: `
      vented/ventilated + disc/discs/rotor/rotors/front/fronts/brake/brakes
      vanes + rotor/rotors/disc/discs/edge/brake/peer/daylight - window/turbo/fan/variable
      daylight + edge/vanes + rotor/disc/brake
      edge of the rotor/disc + finger/gap/slots/daylight/between/fins/vanes/hollow
      two faces + rotor/disc/gap/edge/vanes
      fronts/discs/rotors breathe
    `,
    says: "You can see the vanes in the edge of the rotor.",
    quiet: ["The vents blow cold.", "A vented cap."],
  },
  {
    value: "solid disc",
    part: "rotor",
    signs: `
      solid disc/discs/rotor/rotors
      rotor/rotors/disc/discs/backs/rears + single/plain/solid/flat ..1 plate/slab - drum
      no vanes
      plain slab + disc/discs/rotor/brake/backs/fronts
    `,
    says: "The rear rotor's a plain slab, no vanes.",
    quiet: ["The frame's solid.", "Plain back plate."],
  },
  {
    value: "drilled",
    part: "rotor",
    signs: `
      drilled + disc/discs/rotor/rotors - drilled out
      holes + disc/discs/rotors + through/face/whistle
      cross drilled
    `,
    says: "Cross drilled rotors up front.",
    quiet: ["I drilled the rivets out."],
  },
  {
    value: "slotted",
    part: "rotor",
    signs: `
      slotted/grooved + disc/discs/rotor/rotors
      grooves/slots + cut/machined/curve/curved + face/disc/discs/rotor/rotors/edge - head/tire
    `,
    says: "Slotted rotors all round.",
    quiet: ["Slotted wheels."],
  },
  {
    value: "carbon ceramic",
    part: "rotor",
    signs: `
      carbon ceramic/ceramics
      ceramic disc/discs/rotor/rotors/brakes - pads
      n't/no/never dust/rust + discs/rotors + option/yellow/gold/grand/thousand
    `,
    says: "Carbon ceramic discs, eight thousand dollars.",
    quiet: ["Ceramic coating on the paint."],
  },
  {
    value: "inboard",
    part: "mounting",
    signs: `
      inboard brakes/discs/drums/brake
      discs/drums/brakes + against/beside/next | either side + diff/gearbox/axle + not/n't/instead/out/wheel/wheels
    `,
    says: "The brakes are right up against the diff and not out at the wheel.",
    quiet: ["The inboard bearing."],
  },
  {
    value: "power",
    part: "booster",
    never:
      "no/not/n't/without/never servo/booster/assist/power/vacuum | there is n't | just the master | took the ..6 off | bare | motor/gate | may have been | steering/clutch/tired servo | jump | he took | any car | twenty two pounds | signal/amp",
    signs: `
      servo + brake/brakes/hose/hiss/bulkhead/manifold/assisted/pedal/vacuum/master - tape
      brake booster/servo
      booster + hiss/pedal/firewall/vacuum/master/diaphragm/brake/brakes/drum/black/gold/dual/inch - jump/seat/cable/wifi/signal
      power/assisted brakes/brake/stopping
      vacuum can/hose/diaphragm/tank/line + brake/brakes/firewall/pedal/master/manifold/stop - wiper/wipers/distributor/advance/door
      fat vacuum
      pedal + drops/drop/sinks/dips/falls + engine/fire/fires/start/starts/catches - clutch/gas
      hiss/hissing/hisses + press/pedal/brake/foot
      stop/stops/stopped it/her/this + toe/finger/slipper/grandmother/gran
      wide pad + power/letters
      light pedal + brake/brakes
    `,
    says: "There's a fat vacuum hose to the booster on the firewall and you hear it hiss when you press the pedal.",
    quiet: ["No servo on it.", "The servo on the gate.", "A jump booster for the battery."],
  },
  {
    value: "manual",
    part: "booster",
    never: "steering/transmission/gearbox/book/owner's/clutch/handbrake | no servo leak",
    signs: `
      no/not/n't/without/never ..2 servo/booster/vacuum/assist/assistance + brake/brakes/pedal/push/leg/master/firewall/foot/stop/calf - steering/seats/clutch
      no servo/booster
      manual/unassisted/unservoed brakes/brake/disc/discs/drums
      n't ..2 booster/servo/power brakes
      took ..4 booster/servo/can + off/out + master/cam/vacuum/brake
      firewall/bulkhead + bare/straight + master - booster is
      leg/calf + brake/brakes/pedal/stop + all/push/strong/day/firm/press/work - clutch
      nothing sucking + brake/brakes/manifold
    `,
    says: "There's no servo, it's just your leg on the brakes.",
    quiet: ["There's no servo leak.", "The manual's here, brake page."],
  },
  {
    value: "hydroboost",
    part: "booster",
    signs: `
      hydroboost | hydro boost
      pressure hoses/lines + master/firewall + booster/casting/skinny/brake/steering
    `,
    says: "Skinny casting at the firewall with the pressure hoses on the booster there.",
    quiet: ["The pressure hose to the rack."],
  },
  {
    value: "mechanical",
    part: "actuation",
    never: "push rods | handbrake/parking/clutch/choke/fan/lifter/fuel/pump | mechanically | instead of/not rods",
    signs: `
      mechanical brakes
      rod/rods/cable/cables + brake/brakes/stop/pots/drums/clevises + no fluid/hydraulics/hydraulic | operated | four/every | pre war | not hydraulic - hand/accelerator/seats
      rod/cable operated + brake/brakes/drum/drums
      no fluid in/to + brakes/brake/system/clevises/rods - steering/clutch
    `,
    says: "Rods and clevises on the brakes, no fluid in the system.",
    quiet: ["The handbrake cable's new.", "Mechanically perfect brakes."],
  },
  {
    value: "air",
    part: "actuation",
    signs: `
      air brakes/brake
      pssht/psst/pshh/tsss + brake/brakes
      maxi/spring brake pots/chamber/chambers
      slack adjuster/adjusters
      brake + air + tank/tanks/compressor/pressure/build/builds
    `,
    says: "Air brakes, let the tanks build pressure.",
    quiet: ["The brakes get air from the scoop."],
  },
  {
    value: "dual",
    part: "master cylinder",
    signs: `
      tandem/dual/split/twin/double master/circuit/circuits/reservoir/cylinder - clutch/quad
      two circuits/reservoirs/chambers + brake/brakes/master/front/rear
      master + one for front/rear + rear/front
    `,
    says: "Tandem master, one for the front one for the rear.",
    quiet: ["Dual clutch."],
  },
  {
    value: "single",
    part: "master cylinder",
    signs: `
      single circuit/master/reservoir/pot master
      fruit jar master/cylinder
      one + cap/chamber/reservoir/pot + pipe/master/circuit/brakes/brake - oil/radiator/fuel
    `,
    says: "Single circuit, the fruit jar master under the floor.",
    quiet: ["A single exhaust."],
  },
  {
    value: "electric",
    part: "parking brake",
    never: "windows/window/line lock",
    signs: `
      electric/electronic parking/hand/handbrake/park brake?
      electronic handbrake
      button/switch/toggle + handbrake | parking/park/hand brake
      switch/button + pull/press/lift + whir/whirs/whirrs/releases | lets go | drive off - window/seat/mirror/tailgate/hatch/fuel/vent
      drive off + lets/let itself/it go
      lets itself go/off
      green/red p + switch/screen/button - foot
      auto hold
      button whirs
    `,
    says: "There's a button for the handbrake.",
    quiet: ["The window switch whirs.", "A pull up handbrake."],
  },
  {
    value: "foot pedal",
    part: "parking brake",
    signs: `
      foot operated/parking brake/handbrake/park
      pedal/foot/stamp/stomp + click/clicks/release/p + left/handbrake/parking/brake/release/roll/park/far - clutch/abs/chatter
      brake release + pull/handle/dash/foot/lever
      fourth pedal
    `,
    says: "Far left there's a parking brake pedal, click click.",
    quiet: ["The abs pedal clicks."],
  },
  {
    value: "hand lever",
    part: "parking brake",
    signs: `
      handbrake/parking/brake lever/handle + between/floor/seats/seat/tunnel/side/door - switch/electric/dash
      handle/lever + between the seats/seat/door + roll/slope/handbrake/hill/hold/holds/clicks/camper
      fly off + handbrake/lever/brake
      pull/yank + handbrake/lever + turn/turns/clicks/up - dash/switch/electric/release
    `,
    says: "The handbrake lever's between the seats.",
    quiet: ["The handbrake's a switch.", "The gear lever is on the floor."],
  },
  {
    value: "pull handle",
    part: "parking brake",
    signs: `
      umbrella/walking/cane handle/stick ..0 handle? + brake/handbrake/parking/under - gear/gears/shift
      t handle + brake/dash/twist/parking/handbrake - overdrive/shift/shifter/dipstick/lock
      twist/pull/pulls + handle + dash + handbrake/brake/twist/inches/parking - overdrive/vent/hood/bonnet/choke/gear/release
    `,
    says: "The handbrake's a T handle under the dash, pull and twist.",
    quiet: ["The hood release handle is under the dash."],
  },
  {
    value: "transmission brake",
    part: "parking brake",
    signs: `
      transmission/driveline/driveshaft/propshaft/prop brake
      handbrake/parking/hand + prop/propshaft/driveshaft/transfer/box/driveline - cable's
    `,
    says: "The handbrake's on the back of the transfer case.",
    quiet: ["The prop shaft and the diff."],
  },
]);
