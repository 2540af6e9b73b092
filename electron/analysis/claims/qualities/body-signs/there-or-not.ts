import type { ComponentName, ZoneName } from "../../../../../shared-types/index.ts";
import { type WordedRow, wordedSigns } from "./worded-signs.ts";

/** Equipment by what it does and by the place where it would be. Common practice of the trade, American and British. */
interface Fitting {
  readonly component: ComponentName;
  readonly part?: string;
  /** One sign a line, see `WordedRow.signs`. */
  readonly there?: string;
  readonly lacking?: string;
  /** Words that silence both. */
  readonly never?: string;
  readonly zones?: readonly ZoneName[];
  readonly says?: string;
  readonly lacks?: string;
}

const inside = ["cabin", "drive", "driver-side", "passenger-side", "opening", "closing", "documents"] as const;
const gone = "gone/missing/blank/blanks/blanked/plug/plugs/plugged/hole/holes/plate/socket/nothing/empty/bare";

const fittings: readonly Fitting[] = [
  {
    component: "air-conditioning",
    zones: [...inside, "engine-bay", "front"],
    there: `
      compressor/condenser/evaporator + cold/clutch/vents/hang/bracket/belt/hoses/drier/click/kick/cycling/cycles/factory/dash - no/air ride/horn/suspension/shop/tire/tires/bags/tank
      vents/air + teeth/shiver/goosebumps/jacket/jackets/penguin/arctic/snow/frost/icicle/icicles/freeze/meat - heater/glass
      snowflake/snowflakes + button/press/light/little/lit - not/no/roof/white
      round/center/dash vents + air/ac/came/cars/cold
      needs/wants gas/gassing/regas/recharge | re gas | gassed + cold/spring/blowing/air/system
    `,
    lacking: `
      short belt + alternator/nothing
      no/not/never/without compressor/pump/condenser/evaporator/drier + front/engine/motor/belt/hanging/bracket/dash/air
      no/not a? snowflake
      windows/window/vent/vents/wing + only/all + air/cooling/conditioning + down/open
      two sixty/seventy air | four eighty air | two forty air
      delete plate + firewall/box/air
      heat/hot and outside
      roll/wind/windows ..3 down + your/that 's + air/conditioning/ac
    `,
    says: "Those round vents at either end, air comes out like snow.",
    lacks: "There's no compressor on the front of the motor.",
  },
  {
    component: "seats",
    part: "heated seats",
    zones: inside,
    there: `
      bun/buns/backside/bum/bottom/behind/rear/seat/seats/cushion/chair + warm/warms/warmer/warmers/toasty/toast/roast/cook/cooks/hot/heats/heated/heater/heaters/heating/sauna/oven/element/elements + button/switch/minute/press/winter/lights/front/both/two/package/morning/on/pack - engine/rear window/rear screen/glass/oil/blower/vents/no
      water bottle + hot/seat/sit
      bun warmers
    `,
    lacking: `
      ${gone} + heated/warmer/heaters/warmers + seat/seats/switch/switches/buttons
      no/not/n't + warm/heated/heat/toasty + seat/seats/cushion/bun/buns/backside/bum
    `,
    says: "Press that switch and in a minute the seat warms your backside.",
    lacks: "There's a blank where the heated seat switches go.",
  },
  {
    component: "seats",
    part: "power seats",
    zones: inside,
    there: `
      seat/seats/chair/squab/me + motor/motors/electric/power/switch/switches/buttons/toggle/toggles/six/eight/ten/twelve + up/down/back/forward/way/tilt/recline/adjust/memory/moves/slide/hear/going - window/windows/heated/no/manual/mirror/mirrors/lumbar
      six/eight/ten/twelve way + seat/seats/switch/build/sticker/invoice/toggle/adjuster
    `,
    lacking: `
      bar/lever/handle + under/underneath/lift/pull/slide/shove/backside + seat/feet/move/forward/back/slide - brake/gear/tow/tail/bench/fold/folds/roll
      no/not/without ..2 motor/motors/switches/electric/power + seat/seats - window/windows
      seat/seats + muscle/manual/hand - handbrake
    `,
    says: "Hear that little motor, the seat's going up on its switch.",
    lacks: "There's a bar under the seat you lift and shove with your feet.",
  },
  {
    component: "seats",
    part: "third row",
    zones: [...inside, "rear", "cargo"],
    there:
      "way/very/right back/back + seats/two/row/kids/seat + more/fold/up/pop/face/faces/backwards/flat - no/not/ca n't | third row + fold/folds/up/kids/flat/button/power | two and three and two | two three and two/three",
    lacking: "no/not/without third row/seat | no way back/seats | two ..2 front + three + that 's your lot/it/all | no seats ..2 back here",
    says: "Third row folds up for the kids.",
    lacks: "Two in front and three behind and that's your lot.",
  },
  {
    component: "seats",
    part: "rear seat",
    zones: [...inside, "rear", "cargo"],
    lacking:
      "back/rear bench/seat/seats + took/taken/pulled/removed/gone/out/deleted/weight/bare/bar - cover/covers/row/belt/stain/worn/springs/dye | no back/rear seat/seats | where ..6 back/rear seat/bench",
    there: "yes/even/proper/real back/rear seat - no | back/rear seat 's there",
    says: "Yes there's a proper back seat.",
    lacks: "He took the back bench out to save weight.",
  },
  {
    component: "electrical",
    part: "cruise control",
    zones: inside,
    there:
      "foot/feet + off/floor/flat + set/sixty/seventy/fifty/stalk/holds/speed/holding/itself/resume - brake/clutch/stuck/engine | set/resume/coast + stalk/button/wheel/speed + cruise/holds/hold/foot/miles - radio/fire",
    lacking: "right foot + cruise/speed + only/is/your/own | no/not/without cruise",
    says: "Set it at sixty on the stalk, take your foot off and it holds the speed.",
    lacks: "Your right foot is the cruise, there is no cruise.",
  },
  {
    component: "electrical",
    part: "reversing camera",
    zones: [...inside, "rear"],
    there:
      "reverse/backing + camera/picture + screen/lines/comes/shows/see/dash/mirror - no/radio/phone/filming/snow/wrong | lines + reverse + show/shows/screen - radio | little eye + plate/reverse/back",
    lacking: "no/not/without/n't + camera + reverse/backup/back/rear/parking - shy/work/man",
    says: "Put it in reverse and the picture comes up on the screen with lines.",
    lacks: "There's no camera, you back up over your shoulder.",
  },
  {
    component: "bumper",
    part: "parking sensors",
    zones: [...inside, "front", "rear"],
    there:
      "beep/beeps/bleep/bleeps/bleats/bleating/ding/dings/pips + reverse/wall/behind/nose/back/parking/post/closer/bumper/near/kerb/curb - seat/belt/no/nothing/horn/alarm | dots/buttons/discs/eyes + bumper + four/six/little/wall/beep/sensor/park - button/license | sensors + bumper/parking/park + work/beep/front/rear/four/six/both - no",
    lacking: "no/never ..1 beep/beeps/sensors/beeping | by ..2 ear + park/parking | no/not/without parking sensors",
    says: "It bleeps when you reverse near the wall.",
    lacks: "Base model, no beep, no sensors.",
  },
  {
    component: "electrical",
    part: "central locking",
    zones: inside,
    there:
      "lock/locks/locking/buttons/knobs + all/every/four/doors/both + once/together/down/fob/press/blip/click/button/clunk/central/remote/one - no/window/windows/hand/yourself/round/differential/wheel/nuts/wheels/hubs",
    lacking:
      "lock/locks/locking/knob/knobs + each/every/yourself/round/around/hand/separately/stab + door/push/down/walk/key - central/once/press/fob | no/not/without central/remote locking",
    says: "Blip the fob and all the locks go down at once.",
    lacks: "You go round and push every door knob down to lock it yourself.",
  },
  {
    component: "audio",
    part: "radio",
    zones: inside,
    there:
      "dial/stations/station/preset/presets/tuner/fm + radio/push/buttons/tune/tunes/knob/twist/thumbwheels/chrome/set - no/hole/nothing/gauge/gas/filling/police/fire",
    lacking:
      "hole/blank/plate/cubby/slot/wires/block + radio/stereo/set/head + should/would/expect/was/went/goes/went/hanging/dash/where/out/delete - no holes | no/not/without/never ..2 radio/stereo/wireless | radio deleet/delete",
    never: "speaker/door/cut that/fiddled",
    says: "You twist the knob and the radio tunes the station on the dial.",
    lacks: "There's just a hole with the wires hanging where the set was.",
  },
  {
    component: "audio",
    part: "navigation",
    zones: inside,
    there:
      "postcode/lady/gps/maps + screen/tells/turn/dash/type/disc/where/route/streets/built/arrow - glove/pocket/pockets/light/no/wallet/phone's/reading/phone/paper/folder",
    lacking: "no/not/without nav/navigation/satnav/maps/sat | use/off your phone + map/maps/nav/navigation",
    says: "Type in the postcode and the lady tells you where to turn.",
    lacks: "There's no navigation, use your phone for maps.",
  },
  {
    component: "top",
    part: "sunroof",
    zones: [...inside, "roof"],
    there:
      "roof/overhead/ceiling/panel/glass/lid + tilt/tilts/slide/slides/crank/wind/shade/stars/daylight/sky/hole/opens + back/up/button/handle/knob/switch/push/head/over/open/press - rear window/no/solid/soft/lining/headliner/convertible/hood/truck/rack/vent/hail/dent/door/windshield/tonneau/camper/bed | slide ..3 shade + stars/sky/glass/back | sunshade/sunroof + slides/tilts/opens/button",
    lacking:
      "solid/plain/unbroken ..1 steel/tin/metal/roof ..2 over/overhead/above/roof | no hole/glass/panel/window ..1 in/over the/my/your/our roof/lid/head | no/not/without sunroof/moonroof | blank + roof/overhead + switch",
    says: "Slide the shade back, the roof glass tilts at the button.",
    lacks: "Solid steel roof over my head, no hole cut in it.",
  },
  {
    component: "top",
    part: "roof rack",
    zones: ["roof", "front", "rear", "driver-side", "passenger-side", "opening", "closing"],
    there:
      "rails/bars/rack/crossbars + roof/up/top/ladder/ladders/kayak/skis/canoe/surfboard/tie/bolted/luggage - no/light/never/bull/sway/frame/roll/spice/gone/off/marks/lift/dishwasher/steering/anti/nerf/crash",
    lacking:
      "clean/slick/bare roof | no/not/never/without ..2 rails/rack/racks/bars/rail + roof/lid/top/holes/feet - roll/anti | rack/racks/bars/rails 's/are/is gone | rails + without",
    says: "Bars and rails up on the roof for the ladders.",
    lacks: "Clean roof, no rails, no bars.",
  },
  {
    component: "bumper",
    part: "hitch",
    zones: ["rear", "driver-side", "passenger-side", "opening", "closing", "underside", "cargo"],
    there:
      "ball/swan/receiver/socket/pin/plug/drawbar/hitch/towbar/coupling/detachable + tow/towed/caravan/trailer/horsebox/horse/boat/camper/plate/wiring/seven/thirteen/neck/hitch/bumper/electrics - no/never/bearing/joint/spark/parking/park/not/snow/deck/power/hail/drain/fan",
    lacking:
      "nothing + under/back/bumper + pull/pulled/towed/exhaust/hitch | never ..2 pulled/towed + back/under/hitch/bumper | no/not/without/never ..3 hitch/towbar/receiver/ball + pull/back/tow/towed/trailer/on/bumper | tow bar/hitch ..2 gone/removed/cut | plated over + tow/towbar/hitch",
    says: "Swan neck and a seven pin socket so he had a caravan.",
    lacks: "Nothing under the back but exhaust, nothing was ever pulled.",
  },
  {
    component: "lights",
    part: "fog light",
    zones: ["front", "rear", "driver-side", "passenger-side", "opening", "closing"],
    there:
      "fog/fogs/spots/driving lights/lamps/lamp/light + bumper/front/yellow/pair/low/two/chin/grille/round/switch/rally/both - no/head/blank/gone/tail/hole/rust/soft/foggy/bald",
    lacking:
      "blank/blanks/plug/plugs/plastic/grilles/holes + fog/fogs/spots + would/go/should/where/lights/lamps | no/not/without fogs/fog/spots/driving lights/lamps",
    says: "A pair of fog lamps low down in the bumper.",
    lacks: "Blanks where the fogs would go.",
  },
  {
    component: "body",
    part: "bed liner",
    zones: ["rear", "cargo", "driver-side", "passenger-side", "opening", "closing"],
    there:
      "spray/sprayed/plastic/rubber/rubbery + tub/liner/box/bed/coating + slide/rough/grippy/in/box/bed/scratch/gravel/rolled/line/lined - no/cap/cover/tonneau/paint/rocker/inner/wheel/bare/color/underneath/radiator/trunk",
    lacking:
      "bare/plain/naked metal/steel/paint/box/bed + box/bed + liner/mat/no/lined | no/not/without/never ..2 liner/lined + box/bed/tub - head/head liner",
    says: "There's a plastic tub in the bed, rough sprayed liner.",
    lacks: "Bare metal in the box, no liner in the bed.",
  },
  {
    component: "paint",
    part: "stripe",
    zones: ["front", "rear", "driver-side", "passenger-side", "roof", "opening", "closing"],
    there:
      "stripe/stripes/bands/coachline/coachlines/pinstripe/pinstripes/pinstriping + nose/tail/bonnet/hood/side/sides/flank/painted/tape/hand/freehand/racing/brush/down/tips/over - no/seat/seats/rust/brake/fuel/body/water/heater/vacuum/gap/gone/off/ghost/grid/rubber/power/lifting/cracking/shut/straight/cooler/wood/zebra/tan/light/belt",
    lacking:
      "no/without ..2 stripe/stripes/pinstripe/bands/decals | ghost/ghosts + stripe/stripes/ran/decal/lettering/letters | stripes/decals ..2 off/gone/peeled/heat",
    says: "Racing stripes over the bonnet, nose to tail.",
    lacks: "You can see a ghost of the stripes but they've gone.",
  },
  {
    component: "dash",
    part: "tachometer",
    zones: inside,
    there:
      "tach/tacho/tachometer/rev/revs + counter/needle/redline/dial/column/gauge/dash/eight/seven/six/left/right/clocks/reads/hose - no/clock where/not/limiter/match",
    lacking: "no/not/without rev/tach/tacho/tachometer | clock/blank/gauge + where ..4 tach/rev/tachometer",
    says: "The rev counter's there on the dash with a redline.",
    lacks: "There's no tach, you change by ear.",
  },
  {
    component: "belts",
    zones: inside,
    lacking:
      "no/never/without/not ..2 belts/belt + seat/back/rear/front/old/day/law/hold/needed/anchors/mounts - fan/timing/drive/conveyor | before belts/seatbelts | belts + law/legal + too old/before/needed/exempt",
    lacks: "It's from before belts.",
  },
  {
    component: "spare",
    part: "jack",
    zones: ["cargo", "rear", "opening", "closing", "engine-bay", "cabin"],
    there:
      "jack + handle/wrench/brace/tools/roll/clipped/bolted/kit/strapped/bag/instructions/wheel/here/there/clip - no/point/points/gone/missing/stand/stands/floor/trolley/rusted/up/under/my/plug/headphone/black/jack of",
    lacking:
      "no/without/missing ..2 jack + brace/wheel/tools/handle/wrench/empty/clip/clips/boot/trunk/spare | clip/clips/bracket/strap + empty + jack | jack 's/is gone/missing",
    says: "The jack's clipped in with its handle and brace.",
    lacks: "The jack is gone, the clip's empty.",
  },
  {
    component: "vehicle",
    part: "service book",
    zones: ["documents", "cabin", "opening", "closing"],
    there:
      "stamps/stamp/stamped + book/service/page/pages/dealer/box/every/history - no/missing/gaps/rubber/nothing/vin/block/head/body/only/two/date/engine/steel/panel | handbook/manual/manuals + glove/wallet/original/here/pack/bag/drawer/all - no/missing/gearbox/box/trans/transmission/five/six/shop/clutch/window/windows/gone",
    lacking:
      "no/not/without/missing ..2 book/stamps/history/paperwork/manual/handbook/records + service/history/stamps/owner/owner's/glove/came/dealer/lost/stamp/burned/gone | book/manual/handbook + lost/missing/gone/blank/burned",
    says: "There's a stamp on every page of the service book.",
    lacks: "There's no service book, it's lost.",
  },
];

const rows: readonly WordedRow[] = fittings.flatMap(({ component, part, there, lacking, never, zones, says, lacks }) => {
  const shared = {
    attribute: "presence" as const,
    component,
    ...(part ? { part } : {}),
    ...(never ? { never } : {}),
    ...(zones ? { zones, zone: zones[0]! } : {}),
  };
  return [
    ...(there && says ? [{ ...shared, value: "present", signs: there, says }] : []),
    ...(lacking && lacks ? [{ ...shared, value: "absent", signs: lacking, says: lacks }] : []),
  ];
});

export const fittingSigns = wordedSigns(rows);
