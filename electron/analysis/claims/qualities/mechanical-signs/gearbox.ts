import { signTable } from "./sign-table.ts";

const noGearbox =
  "magnet/airport/stereo/radio/roof/top/hood/door/window/windows/seat/seats/ac/air/choke/lights | washing/coffee machine | music | truck ..1 stick shift class";

/** What changes the gears, and how it is worked: told by pedals, levers, fluids, feel and papers. Common practice of the trade, American and British. */
export const gearboxKindSigns = signTable("transmission", "type", [
  {
    value: "automatic",
    never: `${noGearbox} | not/n't/no ..2 automatic/auto | clutch pedal is | third pedal | used to be | manual/stick now | hybrid | electric | single speed | cvt/dual clutch`,
    signs: `
      torque converter - no/not/n't
      converter + stall/lockup/lock/built/shudder/flexplate/loose - catalytic/cat/exhaust
      flexplate | flex plate
      a t f
      atf
      transmission/trans/tranny/gearbox fluid/pan/filter/cooler/dipstick
      cooler + transmission/trans/tranny/gearbox
      cooler lines + trans/box
      fluid + red/cherry/pink/burnt/brown/strawberry + trans/box/gears/dipstick/pan/filter/gasket - steering/rack/coolant/leak/puddle
      kickdown | kick down
      kicks/kick/kicked down + foot/floor/gear/pedal/cable
      modulator + vacuum/trans/shift/fluid
      valve body
      bands + adjusted/trans/box/slip/shift/tightened
      quadrant + drive/reverse/park/p/column/pointer/needle/gear - preselect/pick
      prndl/prnd/prndls
      p r n d
      selector + d/drive/park/p/reverse/r/n/gate/lever + ..0 pull/press/button/move/slides/pop/says/t/into - wiper
      into/in drive + off/goes/brake/creep/creeps/slips/pull/pulls/engages/clunk/clunks - keys/wheel
      two pedals/pedal - electric
      just/only two pedals
      no/n't ..3 third/clutch pedal - electric/ev/manual
      no clutch !slip/noise/judder/wear/trouble/problem/issues/leak/drag/cable/pack/fan - electric/battery/ev/seized/gone/torque
      nothing/rest/lazy/lost/asleep/retired/holiday/bad + left foot/leg
      left leg/foot + use/nothing/rest/one/bad/without/idle/retire
      one leg + clutch/suits
      tow haul
      slushbox | slush box
      slush o matic
      self shifter/shifting/changing/changer + box/gearbox/one/auto/the
      shift/shifts/shifted/change/changes ..3 itself/himself/herself + gear/gears/box/it/you/third/second/top/up - hubs/lock
      shifts ..1 so smooth/smoothly
      creep/creeps/creeping + brake/foot/drive/idle
      park + pawl/button/lever + out/hold/holds/roll/rolls/clicks - car/parking/assist/sensor
      out of p/park
      gran/grandmother/nan/granny + drive/go + stop
      line pressure + shift/firm/trans/up
      inhibitor/neutral safety switch
      you 'll feel it go one two
      three/four/six/eight/nine/ten speed auto/automatic
      lazy box
      automatic gearbox/box/transmission/trans
      shift/shifts/change/changes are/is ..1 firm/seamless
      sport mode + shift/shifts/gears/holds
      hold/holds/hangs on to + gears/gear + box/auto/hill/grade
      deep pan
      window by the lever + d
      dexron/mercon
    `,
    says: "Two pedals, pull the selector to D and it creeps.",
    quiet: ["The brake and clutch pedals are worn.", "There's no clutch slip.", "Put the keys in the drive."],
  },
  {
    value: "manual",
    never: `${noGearbox} | not/n't/no ..2 stick/manual/clutch | clutch fan/pack/packs/disc | manual choke/windows/seats/brakes/steering/locks/hubs/says/calls/in/for/is/and | clutch/torque converter | two/both/twin/dual ..1 clutch/clutches | cvt | owner's/owners/workshop/service/shop manual | used to be | clutch pedal hole | automatic | compressor`,
    signs: `
      stick shift
      three pedals
      left/third/clutch pedal - hole/parking/brake
      clutch + pedal/foot/bite/bites/biting/slip/slips/light/heavy/smooth/takes/high/low/judder/kit/cable/fork/linkage/slave/master/release/new/change/lets/let/third/second/gear/gears/left/leg - diff/lsd/viscous/fan/pto/winch/posi
      gear stick/lever/knob/change - automatic
      gearstick/gearlever/gearknob/gearchange
      h pattern
      regular/usual h/pattern
      dog leg
      pattern + knob/stick/top + worn/lever/shift/one/gear
      row/rows/rowing + own/gears/gear/through/yourself/box
      slave cylinder - brake
      throwout | throw out bearing
      release/thrust bearing - steering
      double clutch/declutch/declutching/clutching
      heel and? toe
      rev match/matching/matched
      stall/stalled/stalling + it/twice/lights/trailer/hill/learner/me/clutch/embarrassing - stalls at idle/carb/converter/market
      synchro/synchros/synchromesh
      granny gear/low/first
      neutral + wiggle/waggle/make/check + sure/lever/stick
      short shift/shifts/shifted/shifter
      gate + third/second/reverse/stick/lever/spring/slack/slop/slick - tow/latch/tail/field
      snick/snicks/snickety/snicky
      dog leg
      crash box
      two/three/four/five/six on the floor
      three/four/five/six speed stick/manual/floor/gearbox/box - automatic/auto/air
      bite/bites/biting + point/halfway/clutch/high/low/foot - dog
      hill start/starts
      up + over + reverse/third/r + lever/gear/stick/down/across
      second to third/first
      third to/into fourth/second
      down into second/third
      shift light
      you change/pick/choose/select/shift ..2 yourself/gear/own
      changes/changing/changed down/up + with/hand/left/bend/hill/second/third/myself/I'm - speed/auto/automatically
      i 'm changing
      do it yourself box
      five/six and r/reverse + stamped/knob/top/gate/stick/lever
      one two three four ..1 five? + r/reverse + stick/knob/stamped/lever
      palm + across + third/second
      lever + third/second/fourth + go/for/into/across/slot/slots/mind - automatic
      flywheel + clutch/lightened/skimmed/faced/pressure/kit/dual
      learner/taught/learned ..6 stick/clutch/drive/gears
      driven/friction/pressure plate + clutch/new/done/flywheel/lined
      gear oil + box/gearbox/dipstick - diff/axle/rear
      standard shift/transmission/trans
      bell housing + slave/fork
      top loader
      toploader
      manual box/gearbox/trans/transmission/stick/shift
      save ..2 manuals
      no charge ..3 five
      wanted/wants the lever
      wo n't crank/start + clutch/left + pedal/foot/in
      stick and
      and a stick
      's/is a stick !on/in/of/up/out
      with the/a gear stick/lever
    `,
    says: "Three pedals, the clutch bites halfway and you row your own gears.",
    quiet: ["The fan clutch is new.", "It's a dual clutch.", "A magnet will stick to it."],
  },
  {
    value: "cvt",
    never: "cut/planetary ..2 diff | cone filter | fan belt | traffic cone",
    signs: `
      cvt
      c v t
      stepless/gearless
      no steps
      no ratios
      continuously variable/something
      continuously
      belt/chain + pulleys/cones/cone + box/gears/recall/ratio/steps/trans/in/done - alternator/timing/cam/blower
      belt box
      drone/drones/droning/whine/moans + rev/revs/floor/hairdryer/elastic/rubber/moped/scooter + gear/gears/gearless/boot/foot/sit/sits/there - tire/tires/axle/diff/bearing
      revs + go up/rise/climb/sit/sits/stay/hang + gear/gears/steps/there/elastic/sit
      rubber/elastic band + revs/gear/gears/speed/pulls
      n't feel/hear it/a/any change/shift/changes/gear + does n't/never/because/smooth - clutch
      never feel/feels/hear a/any/it change/shift/gear/gears
      steps + software/paddles/fake/pretend/made
      no gears + smooth/elevator/belt - single/speed
      planetary power
    `,
    says: "There's no steps in it, it's a belt between two pulleys.",
    quiet: ["The fan belt pulleys are new.", "Steps up to the cab."],
  },
  {
    value: "dual clutch",
    signs: `
      dual/twin/double clutch !third/it/second/down/going/into + box/gearbox/trans/transmission/auto/is/automatic/shift/it/one/paddle/paddles
      two clutches
      both clutch packs
      mechatronic/mechatronics
      next gear + waiting/ready/loaded/lined/preselected/already/snap
      other shaft + loaded/ready/already/gear
      d c t
      dct
      blinking + gear + up/goes
      wet/dry clutch box/pack + auto/gears/box
      odd gears + even
    `,
    says: "It's already got the next gear waiting, two clutches.",
    quiet: ["You have to double clutch third."],
  },
  {
    value: "single speed",
    signs: `
      one/single ..1 reduction gear
      single speed
      only/just one gear/ratio/speed
      one gear !lever/stick/knob + clutch/battery/electric/motor/silent/reverse/shift
      never shifts + one/electric/battery/ratio
      no shift/gears/gear/gearbox + silent/electric/battery/motor/pull - stepless
      fixed ratio
    `,
    says: "Just the one reduction gear, it never shifts.",
    quiet: ["One gear lever."],
  },
  {
    value: "automated manual",
    signs: `
      automated manual
      robotized/robotised/robot box/gearbox
      single clutch + pump/actuator/lift/nods/auto/jerky
      semi automatic/auto
      clutchless manual
    `,
    says: "It's an automated manual, a single clutch and a pump.",
    quiet: ["The manual's in the glovebox."],
  },
]);
