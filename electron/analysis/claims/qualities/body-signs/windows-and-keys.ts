import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const cabin = ["cabin", "drive", "driver-side", "passenger-side", "rear", "opening", "closing", "documents", "front"] as const;
const window = "window/windows/glass/glasses/pane/panes";

/** How windows, mirrors, locks and the key work, told by what a hand does. Common practice of the trade, American and British. */
const rows: readonly WordedRow[] = [
  {
    attribute: "type",
    value: "manual",
    component: "glass",
    part: "side window",
    zones: cabin,
    never:
      "curtain/curtains/zipper/backs/rears | no glass | sunroof/roof/engine/pulley/tailgate/winch/jack/mirror/mirrors/ceiling/lid/hole/backrest/backrests/post/oil/bed/awning/canopy/camera/tape | 'll wind/roll/drop/put | wind everything | no winder/winders/crank/cranks/handle | power/electric | crankshaft | starting handle | wind noise/deflector/deflectors/screen/up merchant | the wind",
    topic: window,
    signs: `
      winder/winders
      wind/winds/wound/winding + ${window}/turns/handle/handles/toll/elbow/arm/exercise - blows/whistle/whistles/whistling/noise/rush/catch/let/summer/hair
      crank/cranks/cranking/cranked + ${window}/turns/arm/door/doors/knobs/regulator/down - engine/fires/starts/start/key/over
      roll/rolls/rolled/rolling + ${window}/down/up + hand/arm/elbow/muscle/christian/like/yourself - blind/cage/cover/shutter
      & handle/handles/lever + turn/turns/round/wind/arm/hand/fingers - outside/door opens/lift/tailgate
      arm/elbow/shoulder/wrist + turns/exercise/workout/windows/strong/muscle/gear + ${window}/door/doors/handle/motor/crank/wind/turns
      arm strong | armstrong | exercise ..3 arm/elbow/wrist | keep fit windows | keepfit
      round and round + window/windows/door/down/air/glass/handle
      no/not/without motor/motors/switch/switches/button/buttons/electric/electrics/electrical + door/doors/${window} - seat/seats/lock/locks/antenna/remote
      nothing electric/electrical + door/doors/${window}/in here
    `,
    says: "Wind the handle, five turns and the window's down.",
    zone: "cabin",
    quiet: ["The wind noise at seventy is low.", "Crank the engine, it fires."],
  },
  {
    attribute: "type",
    value: "power",
    component: "glass",
    part: "side window",
    zones: cabin,
    topic: window,
    never:
      "heater/fan/blower/seat/seats/mirror/mirrors/trunk/boot/sunroof/roof/top/hood/aerial/antenna/wiper/wipers/horn/tailgate/heated/demist | crank/winder/winders | no/not/n't electric/power/motor | no switch/switches/button/buttons",
    signs: `
      & switch/switches/button/buttons/toggle/rocker/motor/motors/electric/powered/auto/automatic - manual/light/lights/no
      one touch + down/drop/drops/up/driver's/driver - start/turn/signal/indicator
      touch/press/push/pinch/dab/hold/prod/flick + drops/drop/zip/whirr/zoom/glides + up/down/back/window/glass/it/pane - brake/pedal/clutch/spoiler/needle/revs
      switches + armrest/console/doors/door/four/kids/lockout - row/toaster/tilt/forth/seat/seats/light/lights/blank/blanks
      lockout + kids/windows/switch/rear - diff/differential/hub/hubs
      key on/first + window/windows/glass + down/up/drop
      all four + up/down + button/switch/hear/windows/buttons/press/go - tires/wheels/corners/spring/springs/jack/hub/lug/caps
      regulator + motor/electric/switch/window - voltage/fuel/pressure/crank/handle
    `,
    says: "Four switches in the armrest for the windows.",
    zone: "cabin",
    quiet: ["The radio has buttons."],
  },
  {
    attribute: "type",
    value: "sliding",
    component: "glass",
    part: "rear glass",
    zones: [...cabin, "cargo"],
    never: "door/doors rolls/slides back on | roof/sunroof/seat/headliner",
    signs: `
      ${window}/screen/slider + slide/slides/sliding/slider/slid + back/rear/behind/cab/dog/latch/finger/half/pinch/catch/open - door rolls/side door/seat
      back/rear/behind + pinch/squeeze/latch/catch + slide/slides/pull/push/over + dog/breeze/head/window/glass/open
    `,
    says: "The back window of the cab slides, pinch that latch.",
    zone: "rear",
    quiet: [],
  },
  {
    attribute: "type",
    value: "pop-out",
    component: "glass",
    part: "side window",
    zones: cabin,
    signs: `
      ${window}/quarter/quarters + hinge/hinges/hinged/pop/pops + out/inch/catch/latch - door/trunk/boot/lid
    `,
    says: "Back there the quarters pop out an inch on a catch.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "fixed",
    component: "glass",
    zones: cabin,
    signs: "do/does n't open/wind/move + back/rear/window/windows - tailgate/trunk/hood/door/handle/motor/stuck/key",
    says: "The back windows don't open, they never did.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "heated",
    component: "glass",
    zones: [...cabin, "rear"],
    never: "seat/seats/cushion/steering | garage/door wires | half stay/not working/burnt/dead | no heated",
    signs: `
      fine/tiny/thin/little/hair wires/wire/lines/elements/element/filaments + ${window}/screen/back/frost/windshield/windscreen/sun/clears/demist/defrost/defrosts/demists/clear/melt/melts
      frost/ice/misted/fogged/demist/demists/defrost/defrosts/defroster/demister/defogger + button/switch/press/minute/minutes/clears/melts/gone/lines/element/wires/symbol + ${window}/screen/back/mirror/mirrors/rear/front/gate/light/press - blower/vent/vents/heater/scraper/fan
      wavy/wiggly/squiggly + arrows/lines/symbol + ${window}/screen/mirrors/mirror/frost/clears - seat
      heated screen/windshield/windscreen/glass/rear
    `,
    says: "Fine wires right through the screen and it clears the frost.",
    zone: "front",
    quiet: ["The heater clears the frost."],
  },
  {
    attribute: "type",
    value: "laminated",
    component: "glass",
    zones: cabin,
    never: "no sandwich/layer | not/n't laminated",
    signs:
      "laminated/acoustic/sandwich/layer/layers + screen/glass/windshield/windscreen/jam/quiet/star/stars/pane - lunch/paint/clear/lunchtime/toughened",
    says: "That screen's got a layer in it, a sandwich.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "tempered",
    component: "glass",
    zones: cabin,
    signs:
      "toughened/tempered/cubes/shatter/shatters/white all at once + screen/glass/windshield/windscreen/old/zone/stone - not/laminated/carpet/cubes in",
    says: "Old toughened screen, it'll go white all at once.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "split",
    component: "glass",
    zones: cabin,
    signs:
      "two/pair + flat/little + panes/windows/pieces/screens + bar/middle/spine/center/divider | split screen/windscreen/windshield/window - no split",
    says: "Two flat panes with a bar up the middle.",
    zone: "front",
    quiet: [],
  },
  {
    attribute: "type",
    value: "keyless",
    component: "ignition",
    part: "start",
    zones: cabin,
    never: "no keyless | radio/garage/gate | not keyless",
    signs: `
      pocket + fob/key/card/thing/start/push/press/button/off + start/starts/push/press/button/go/goes/fire/open/walk/walks/handle/unlock/unlocks
      no/without keyhole/slot/barrel + key/push/start/pocket/button
      foot/brake + thumb/press/push/button + start/off/go/fires/lights
      key not detected | keyless go/start/entry | proximity key
      nobody/never/nothing/no ..2 put/puts/stick/sticks ..3 hole/slot/barrel
    `,
    says: "Keep the fob in your pocket and push start.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "key",
    component: "ignition",
    part: "start",
    zones: cabin,
    never: "keyless | no key/keys | key fob | key pad/keypad | scratch/scratched",
    signs: `
      proper/real/plain/old/flat/metal/steel/actual ..1 key + turn/lock/column/start/barrel/blade/fashioned/bootlace/cut/dash/hole
      turn ..2 key + crank/starts/start/catches/fires/coil/wait/starter/wakes/lights/click/barrel/column - power/lock/needles/window/windows
      key ..3 left/right/column/dash/barrel + like they do/turn/lock/start/ignition - driver/side door/scratch
    `,
    says: "It's a proper key in a proper lock on the column.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "push button",
    component: "ignition",
    part: "start",
    zones: cabin,
    never: "radio/trunk/boot/pocket/window/windows/pto/choke/transmission/gear",
    signs: "button/push + starter/start + dash/key/then/floor/red/press/thumb/hit - stop start/foot starter/remote/jump/kick",
    says: "Turn on the key then there's a button on the dash for the starter.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "power",
    component: "trim",
    part: "mirror",
    zones: cabin,
    never: "manual/by hand/no motor | camera",
    signs:
      "mirror/mirrors + joystick/electric/power/motor/motors/fold/folds/switch/button/knob + door/adjust/aim/points/in/move/fold/tuck/dash/both/knee/every - rearview/dipping/vanity/visor/broken/shirt",
    says: "A little joystick on the door points the mirrors.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "type",
    value: "manual",
    component: "trim",
    part: "mirror",
    zones: cabin,
    signs:
      "mirror/mirrors/glass + push/wiggle/stalk/lean/cable/finger/thumb/hand + adjust/move/aim/remote/motor - electric/joystick/fold/window/wax",
    says: "You move the mirror with your thumb, it's not the powered one.",
    zone: "cabin",
    quiet: [],
  },
];

export const windowAndKeySigns = wordedSigns(rows);
