import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const outside = [
  "front",
  "rear",
  "driver-side",
  "passenger-side",
  "roof",
  "cargo",
  "opening",
  "closing",
  "underside",
  "documents",
] as const;
const panel =
  "hood/bonnet/fender/fenders/wing/wings/door/doors/panel/panels/body/shell/roof/quarter/quarters/tailgate/hatch/lid/deck/nose/clip/snout/tub/bed/box/arch/arches/skin/skins/sill/rocker/scuttle/cowl/spoiler/bodywork/tail/gate";
const among = ["body", "top"] as const;
const never =
  "my old truck | my brother/cousin | used to be | made of in | does anybody | look it up | let me get | always tell | bring a magnet | engine/block/head/heads/wheel/wheels/dash/seat/seats/carpet/manifold/exhaust/bumper/bumpers/grille/trim/moldings/intake/radiator/insulation";

/** What panels are made of, told by magnet, weight, sound, smell and how they are mended. Common practice of the trade, American and British. */
const rows: readonly WordedRow[] = [
  {
    attribute: "material",
    value: "steel",
    component: "body",
    among,
    topic: panel,
    zones: outside,
    never: `${never} | fiberglass/glass/plastic/aluminum/alloy/ally/composite/carbon | no magnet | n't/not/never/nothing ..5 stick/grab/hold/take`,
    signs: `
      magnet/magnets + stick/sticks/stuck/grab/grabs/grabbed/hold/holds/held/clack/clunk/click/clicks/snap/snaps/pry/pull/jumps/bites/clings/everywhere/all - falls/drops/fell/sign went/buying
      magnet ..8 all the way/round/around/over - falls/drops/drop/fell/fall
      magnet's/magnet 's happy/in love | magnet fell in love | fridge magnet/magnets + up/hold/sticks/kid
      & rings/bong/clang/clangs/booms/tinny
      & tin/iron/metal + tap/rap/knock/listen/weighs/gauge/hammer/dolly/leaded - bloom/soft
      gauge + steel/plate/sheet/tin/metal - fuel/oil/temp/paint/needle
      & heavy/weighs/weight + lift/hold/two/both/springs - light
      need/needs/want/wants ..2 both/two + springs/props/hinges + hood/bonnet/lid/deck
      pressed steel/metal | sheet metal + lot/proper/real/heavy/bed/box - sheet metal screw
      two grown men/fellas + sit/stand
      hammer and dolly | panel beaten
    `,
    says: "The magnet sticks all over this fender.",
    quiet: ["The magnet won't stick to the fender.", "I always tell people bring a magnet."],
  },
  {
    attribute: "material",
    value: "fiberglass",
    component: "body",
    among,
    topic: panel,
    zones: outside,
    never: `${never} | patch/patched/repair with | no gel | black weave/cloth/stuff | real/genuine weave | carbon | hand you a`,
    signs: `
      gel/gelcoat + crack/cracks/cracked/crazed/crazing/spider/star/stars/letting/starred/coat/chip/shell/spidering/spidered/all/across - battery/hair
      spider/spiders/spidered/spidering/cobweb/cobwebs/starred + gel/badge/nose/fender/wing/panel/hood/bonnet - windshield/windscreen/screen/glass/wheel/wheels/lens
      star + shaped + crack - windshield/windscreen/screen/glass/lens
      matting/strand/strands/resin/roving + underneath/inside/raw/under/showing/laid/arch/lamp/panel/fender/hood/door/nose/body/hard - repair/patch/carbon
      laid up | hand laid | lay up/layup | chopper gun | chopped strand
      boat + resin/hull/gelcoat/sanded/built/cloth - trailer/tow/towing/haul/ramp/launch/flake
      model aeroplane/airplane | resin/styrene smell | smell/smells ..6 resin/styrene/boat
      itch/itches/itchy/itching + sand/sanded/sanding - scratch
      light + through/behind + newspaper/torch - glass roof/floor
      two/one fingers/finger + hood/bonnet/clip/nose/snout - aluminum/alloy/strut/struts/gap
      under one arm + hood/bonnet/clip/nose/snout/front - aluminum/alloy
      glass body/fender/fenders/hood/nose/clip/front/tub/shell/bonnet/panels/bodied - window/windows
      grp/fibreglass/frp
      magnet + does n't/wo n't/nothing/falls/slides/drops/road/sign went + moulded/mould/glass/kit/nose/weave/laid
    `,
    says: "See the little spider cracks round the badge on the nose, that's the gel coat letting go.",
    quiet: ["My old truck had a fiberglass hood.", "There's a star in the windshield."],
  },
  {
    attribute: "material",
    value: "aluminum",
    component: "body",
    among,
    topic: panel,
    zones: outside,
    never: `${never} | steel doors/hood/body | ally wheels | did these`,
    signs: `
      alloy/ally/alley/aluminium/aluminum/duralumin/birmabright + ${panel}/skin/skinned/skins/riveted/ash/booth/lift/white/sides/bloom/camper/frame - polish/hinge/wheels/hitch/ladder/ramp/radiator/tank/rack/bar/running/case/box/boxes/battery/tray/tool/toolbox/cap/caps/gallon/gallons
      powder/powdery/dust/bloom/fur/furry/fuzz/crust/bubbles + bubble/bubbles/paint/metal/never/rust/lip/edge/brown/${panel}/pin/bolts/not/rots - battery/terminal/terminals/wheel/tank
      never/wo n't/does n't ..3 go/goes brown/rust + bubbles/bubble/white/foil/light/skin/skinned/no iron/feather
      no iron/steel in it
      aluminum/aluminium/alloy ..2 booth/welder/bodyshop | series + alloy/skins/sheet
      magnet + no good/useless/falls/slides/laughs/nothing/wo n't/does n't + riveted/alloy/light/skin/white/bloom/dents/soft
      riveted/rivets + skin/skinned/alloy/light/airplane/aircraft/aeroplane/bonded/glued - bra/cable/patch/pop/plate/floor/hole
      airplane/aircraft/aeroplane + skin/panels/rivets/riveted/alloy/sheet
      one hand/handed + tailgate/gate + light/damper/drop - prop
      drop sides ..3 light/ally/alloy/hand
    `,
    says: "It's got an alloy skin, riveted, white bloom at the bolts of the door.",
    quiet: ["Does anybody know if these had aluminum doors."],
  },
  {
    attribute: "material",
    value: "plastic",
    component: "body",
    among,
    topic: panel,
    zones: outside,
    never: `${never} | bag/sheet/sheeting/trash/cover/wrap/liner/fiberglass/gel/lens/lenses/window | not plastic`,
    signs: `
      & plastic/moulded/molded/polymer/thermoplastic + rust/clip/clips/clipped/flex/flexes/pop/pops/push/bumper/bumpers/magnet/light/dent/bin/bins/unclip/same/snap/snapped/stuff/skin
      push/pushed/lean/thump/punch/kick/knee/shove/press + pops/popped/springs/comes/came/bounces + out/back + ${panel} - cap/catch/latch/button/tray/prop/strut
      clip/clips/clipped/snapped/unclip/screwed + skirt/panel/skin/on/off + plastic/moulded/molded/sill/unclip - grille/battery
      wheelie/bins/crate/lego/lunchbox/dustbin + ${panel}/made
      dent resistant/proof
      beach ball
    `,
    says: "Front wings are moulded plastic so they can't rust, same stuff as the bumper.",
    quiet: ["There's a plastic bag on the seat."],
  },
  {
    attribute: "material",
    value: "carbon fiber",
    component: "body",
    among,
    zones: outside,
    never: `${never} | carbon buildup/build/deposits/monoxide/copy/dating/footprint/canister`,
    signs: `
      carbon + ${panel}/roof/wing/splitter/weave/real/genuine/dry/under/lacquer/pack - steel/wrap/mirror
      weave/woven + ${panel} + black/real/genuine/sticker/pattern/clear/light/lightweight/sun/film/resin - gel/matting/glass/seat/cloth
      black weave/twill
      woven + black/roof/hood/pattern/pack - seat/seats/cloth
      autoclave/prepreg | baked in an oven
    `,
    says: "The hood is the black weave with resin over it.",
    quiet: [],
  },
  {
    attribute: "material",
    value: "wood",
    component: "body",
    among,
    zones: outside,
    never: `${never} | wood grain/woodgrain/effect/fake/sticker/vinyl | paneled wagon sticker`,
    signs: `
      ash/oak/timber/timbers/wood/wooden/board/boards/plank/planks/maple/joinery/joints/dovetailed/dovetail + frame/framed/framing/framework/frames/doors/splinter/splinters/varnish/varnished/oiled/worm/numbered/behind - ply/soft/oak/chip/dash/running/wheel/tray/skirting
      woody/woodie/shooting brake
      splinter/splinters + bed/box/boards/knees/loading/kit/hand
      worm/dry rot/woodworm + frame/ash/timber/doors/body/pillars/posts
      coachbuilt/coach built + ash/timber/frame
    `,
    says: "Behind these doors it's varnished framing, ash with the joints still dovetailed.",
    quiet: ["There's ash in the ash tray."],
  },
  {
    attribute: "material",
    value: "composite",
    component: "body",
    among,
    zones: outside,
    never: `${never} | composite headlight/headlights/lamp/photo`,
    signs: `
      composite + body/panel/panels/bed/box/shell
      bonded/glued + panel/panels/quarter/skin/roof/welded/glue - ash/brake/seal/paper/gum/windshield/alloy/aluminum/screen/trim/strip/molding/moldings
      one piece moulding/molding/molded/moulded + bed/box/hood/bonnet/roof
      big moulding/molding + ${panel}
    `,
    says: "The big quarter's bonded on, glue not welds, it's composite.",
    quiet: [],
  },
];

export const panelSigns = wordedSigns(rows);
