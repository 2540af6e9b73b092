import { signTable } from "./sign-table.ts";

/** Where the gear lever is and how clutch and transfer case are worked. Common practice of the trade, American and British. */
export const shifterSigns = signTable("transmission", "type", [
  {
    value: "column shift",
    part: "shifter",
    never: "used to be on the column | wiper/indicator/signal/turn/tilt column | steering column's",
    signs: `
      column shift/shifter/change/selector/auto
      lever/stalk/selector/shifter/stick/gear + on/up/off/out the ..1 column - tilt/wiper/indicator/lights/parking/brake/overdrive
      on the tree
      stalk + n/drive/d/neutral/pointer/gear/selector/reverse/park - overdrive
      three across/abreast + column/lever/stalk/floor/front
      nothing/no lever/shifter on the floor
      bigger/other stalk ..4 gear/selector
      pointer in the dash
    `,
    says: "The lever's up on the steering column so three can sit across.",
    quiet: ["The overdrive switch is on the column.", "The parking brake's by the column."],
  },
  {
    value: "floor shift",
    part: "shifter",
    never: "used to be on the floor | floor jack/mat/mats | transfer/overdrive",
    signs: `
      floor shift/shifter/change/mounted
      three/four/five/six on the floor
      shifter/lever/stick/selector + tunnel/hump/console/floor + coming/comes/stands/bolted/sits/up/out/between/in/through/on - nothing/no/column ..3 floor | handbrake lever/lever's/brake/handbrake/transfer/parking/four
      console shift/shifter
      between the seats/buckets + shifter/lever/stick/selector/gear - brake/handbrake/parking
      ratchet shifter
      stick + long/bent/wand/cane + floor/box/hump/tunnel/up
      shift/shifter/lever + cut ..2 hole/tunnel
    `,
    says: "The shifter comes up through the tunnel.",
    quiet: ["There's a floor jack in the back.", "The handbrake lever's on the floor."],
  },
  {
    value: "dash shift",
    part: "shifter",
    signs: `
      dash shift/shifter/change
      lever/stick/shifter/handle + out of the dash/fascia + gear/gears/push/reverse/umbrella/twist/turn - brake/release
      umbrella + handle/gear/gears + dash - brake
    `,
    says: "The gear lever comes out of the dash.",
    quiet: ["The brake handle is under the dash."],
  },
  {
    value: "push-button",
    part: "shifter",
    never: "start/starter/button start | four wheel/by | brake/radio",
    signs: `
      push button + gears/drive/reverse/shift/trans/transmission/automatic/selector
      press/push the button/buttons for drive/reverse/d/r/park
      buttons for drive/reverse/gears/park - stick
      no lever + button/buttons + drive/gear
      d/drive + r/reverse/n + buttons + press/row/dash
    `,
    says: "There's no lever, you press the button for drive.",
    quiet: ["Press the button to start it and drive.", "Push the four by four button."],
  },
  {
    value: "rotary dial",
    part: "shifter",
    never: "four/transfer/volume/heater/seat/mirror/light/lights/climate/temperature | low range",
    signs: `
      dial/knob + twist/turn/rotate/rises/washing/click + reverse/drive/r/d/gear/park
      rotary selector/shifter/gear/dial/knob + gear/gears/drive/reverse/park/box/selector
    `,
    says: "You twist this little dial for reverse.",
    quiet: ["Twist the dial for four wheel drive.", "Turn the volume knob."],
  },
  {
    value: "paddle",
    part: "shifter",
    signs: `
      paddle/paddles + wheel/gear/gears/shift/change/down/up/left/right - canoe/boat/board
      behind the wheel + click/pull + up/down + gear/left/right/plus
      plus + minus + back of the wheel/behind
    `,
    says: "Click the left paddle behind the wheel to go down.",
    quiet: ["A canoe paddle in the back."],
  },
  {
    value: "preselector",
    signs: `
      preselector/preselect/pre selector
      pick/picks/select your/the gear first
    `,
    says: "It's a preselector, you pick your gear first.",
    quiet: ["Pick your seat first."],
  },
  {
    value: "short-throw",
    part: "shifter",
    signs: `
      short throw/throws/shift kit/shifter
      quick shift/shifter
      an inch between gears
    `,
    says: "There's a short throw shifter in it.",
    quiet: ["It's a short drive."],
  },
  {
    value: "hydraulic",
    part: "clutch",
    never: "brake slave | power steering/jack/ram/lifter",
    signs: `
      clutch + slave/master/hydraulic/hydraulics/bled/bleed/reservoir/fluid/pipe/line/hose - fan/no hydraulics
      slave cylinder
      pedal ..6 carpet/floor + topped/pot/master/slave/reservoir - brake/brakes
    `,
    says: "There's a clutch slave cylinder, it's hydraulic.",
    quiet: ["The power steering hose is new."],
  },
  {
    value: "cable",
    part: "clutch",
    never: "brake/handbrake/speedo/choke/throttle/hood/bonnet/overdrive | not/no cable",
    signs: `
      clutch cable
      cable + clutch/fork/pedal - accelerator/gas
      bowden + firewall/fork/clutch/pedal
      snapped ..2 cable + lights/spare/clutch
    `,
    says: "There's the bowden coming through the firewall to the fork.",
    quiet: ["The handbrake cable and the clutch pedal."],
  },
  {
    value: "rod",
    part: "clutch",
    never: "radius/tie/push ..1 overhead",
    signs: `
      bellcrank | bell crank + pedal/clutch/fork/rods/rod
      z bar
      cross shaft + clutch/pivots/block/hydraulics
      rods/rod/linkage + fork/clutch pedal
    `,
    says: "There's a bellcrank and rods from the pedal to the fork.",
    quiet: ["The tie rods are new."],
  },
  {
    value: "electric",
    part: "transfer case control",
    never: "window/seat/mirror | not/n't/no button",
    signs: `
      button/switch/dial/knob + four by four/wheel
      button/switch/dial/knob + two wheel/high + four/auto/low
      button/switch/dial/knob + 4x4/4wd/4h/4l/4lo/transfer/range
      dial/knob/switch + high and low
      dial/knob + little pictures
      shift on the fly
    `,
    says: "Push the four by four button and the light blinks.",
    quiet: ["The window switch is new."],
  },
  {
    value: "lever",
    part: "transfer case control",
    never: "not/n't/no second/little/other | overdrive/brake/handbrake",
    signs: `
      second/two lever/levers/stick/sticks + low/four/range/transfer/axle/axles/driven/diff/beside/next/high - hydraulic/bed/plow
      little/short/small/other lever/stick + beside/next/range/low/four/high/transfer/big - seat/mirror/tilt/wheel
      lever/stick + transfer | low range + pull/yank/hand/neutral - speed
      yank/pull/shove ..2 stick/lever + low/four - speed
    `,
    says: "The little lever next to the big lever is your low range.",
    quiet: ["The little lever by the indicator tilts the wheel."],
  },
]);
