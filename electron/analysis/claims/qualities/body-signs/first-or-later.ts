import type { ComponentName } from "../../../../../shared-types/index.ts";
import { type WordedRow, wordedSigns } from "./worded-signs.ts";

const outside: readonly ComponentName[] = ["body", "glass", "bumper", "trim", "lights", "top", "cargo-floor"];
const inside: readonly ComponentName[] = ["seats", "dash", "carpet", "headliner", "belts", "audio"];
const supposed =
  "would/could/might/going/wanted/if/used to | was going | tell ..2 from | whether | cost/costs you | you can get/buy | they still make | for sale";

/** Whether a part is the maker's own, by marks of the works, by dates and by what a trimmer or a breaker leaves behind. Common practice of the trade. */
const rows: readonly WordedRow[] = [
  {
    attribute: "originality",
    value: "original",
    component: "body",
    among: outside,
    mustName: true,
    never: `${supposed} | no/not/n't date/stamp/sticker/tag/label/bug | wrong/mismatch/blank/missing/new/aftermarket/repro/later | does n't match`,
    signs: `
      date/dates/dated/stamp/stamped/stamps/bug/bugs/code/etched + month/week/weeks/within/build/built/match/matches/same/right/maker's/factory/correct/all - vin/service/tire/tires/engine
      crayon/chalk/pencil/stencil/inspection + factory/line/works/assembly/underside/still/mark/marks/inside/back - line up
      sticker/stickers/label/labels/decal/tag/tags + still/factory/maker/maker's/order/underneath/matching + hood/bonnet/fender/door/doors/lid/tailgate/glass/bumper/panel/wing - parking/window/vin replaced
      spot weld/welds + factory/evenly/even/all/original/robot/spaced
      bolt/bolts/screws/hinges + never/n't + turned/off/touched/spanner/wrench/disturbed/socket/undone/out/moved
      bolts/heads + paint + undisturbed/unbroken/still/original/factory
      never been off/apart/unbolted/out/opened | left the line/factory/works with | born with ..1 it | since day one
      sealer/seam/lead/leading/solder + factory/works/original + panel/hood/door/roof/seams/quarter/lid/still - new/white
    `,
    says: "The door still has its factory spot welds, evenly spaced.",
    zone: "driver-side",
    quiet: ["It's hard to tell a repro fender from an original one."],
  },
  {
    attribute: "originality",
    value: "replaced",
    component: "body",
    among: outside,
    mustName: true,
    never: `${supposed} | never been/had | battery/tire/tires/brake/wiper/wipers/bulb/bulbs/key/engine/fuse | no aftermarket/repro/reproduction | not/n't a? repro/replacement/aftermarket`,
    signs: `
      aftermarket/repro/reproduction/remade/replica + hood/bonnet/fender/fenders/wing/wings/door/doors/panel/panels/skin/bumper/grille/glass/lens/lights/mirror/badge/trim/bed/floor/patch/sill/sills/lid/shell - radio
      came/come/off/from + another/junkyard/scrapyard/breakers/breaker's/wrecker/wreckers/donor/salvage/later + one/car/truck/door/fender/hood/wing/lid/tailgate/bumper/grille/yard
      junkyard/scrapyard/breakers/donor/takeoff + door/fender/hood/tailgate/bed/lid/glass/lights/wing
      bill/invoice/receipt/estimate/insurance + windshield/windscreen/screen/fender/wing/door/hood/bonnet/panel/panels/bumper/quarter/skin/tailgate/headlight/top/bed
      shipping primer | primer + back/inside/behind + wing/fender/panel/door - gray primer
      wrong + slots/font/holes/color/date/script/brand/year/maker + grille/glass/door/hood/lid/badge/fender/lens/tailgate/windshield
      different/other + date/dates/brand/maker/make/color/blue + glass/door/jamb/fender/hood/lens/windshield/window
      butt/lap/hand/mig weld/welds/joint | weld bead + quarter/panel/sill/rocker/roof
      urethane/bead/adhesive + new/fresh/black/blue + windshield/windscreen/screen/glass
      bolt/bolts/screws + socket/wrench/spanner/turned/chewed/disturbed/broke/new/shiny/rounded + fender/wing/hood/door/hinge/bonnet/lid - never/not
    `,
    says: "The door came off a junkyard car, there's blue inside.",
    zone: "driver-side",
    quiet: [],
  },
  {
    attribute: "originality",
    value: "original",
    component: "seats",
    among: inside,
    mustName: true,
    never: `${supposed} | staples/wrong/missing/new/aftermarket/repro/later/kit | not/n't original`,
    signs: `
      hog rings/ring | burlap/horsehair/hessian + still/springs/original/old/stuffing/under
      date/dated/stamp/stamped/inked/chalk/tag/label + underneath/underside/month/same/still/back/car/build/factory/sewn - battery/tire
      never been recovered/redone/out/apart/retrimmed/opened/touched/replaced/disturbed/cut | nobody 's/has ever had/been ..3 out/apart/in
      it was built/born with | built in with | left the factory/line with | came with it new
      tack/tacks strip/strips + disturbed/never/original | factory grain/stitching/stitches/glue/tacks
    `,
    says: "The seat's still got the old hog rings underneath and the burlap.",
    zone: "cabin",
    quiet: [],
  },
  {
    attribute: "originality",
    value: "replaced",
    component: "seats",
    among: inside,
    mustName: true,
    never: `${supposed} | never been recovered/redone/replaced/apart/out | no staples | cost/costs/optioned/option/extra/mentioned`,
    signs: `
      trimmer/trimmer's/upholsterer/kit + bill/invoice/receipt/new/recovered/covers/hours/catalog/catalogue/done/made/both
      bill/invoice/receipt + seat/seats/carpet/carpets/headliner/headlining/dash/covers/radio/belts/foam/trim - missing
      recovered/retrimmed/reupholstered/recolored/redyed/rewebbed/refoamed | re covered/trimmed/webbed/foamed
      new/fresh + foam/covers/cover/carpet/carpets/headlining/headliner/webbing/belts/set + trimmer/smell/smells/kit/lining/everything/put/bill/shade/brighter/in/molded/catalog - brand new old
      staples + seat/hog/should/ought/headliner
      aftermarket/repro/reproduction/catalog/catalogue/later + seat/seats/covers/carpet/dash/radio/stereo/wheel/belts/headliner/face/grain/vinyl/set - nothing
      came/come/out/off + another/different/later/donor/scrapyard + seat/seats/chairs/dash/car/coupe
      single/double din | detachable face | supermarket/modern radio/stereo
    `,
    says: "The trimmer's bill says the seats were recovered.",
    zone: "cabin",
    quiet: [],
  },
];

export const firstOrLaterSigns = wordedSigns(rows);
