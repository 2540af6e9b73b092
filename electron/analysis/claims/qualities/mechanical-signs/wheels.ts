import type { QualityRule } from "../quality-rule.ts";
import { signTable } from "./sign-table.ts";

const wheelKinds = signTable("wheel", "type", [
  {
    value: "wire",
    never:
      "steering/brush/brushes/loom/speaker/electrical/birdcage/trailer | no/not wire | were thirty/extra ..3 list | false/fake/only covers | bicycle/bike/cart | wooden/wood/timber/hickory/ash/artillery | steering wheel",
    signs: `
      wire wheel/wheels/wires - brush
      wires + chrome/painted/wheels/knock/spinners/splines/spokes/tubes/trued
      spokes/spoke + loose/tight/ping/true/trued/laced/each/every/polished/chrome/chromed/painted/broken/rim/splines/hub/tubes/sixty/seventy/nickel/flaking/count - alloy/five/three/steering/cast
      spoked ones/wheels - five/alloy/ten/multi
      splines + hub/hubs/wheels/spinner/hammer/copper/greased/pull - shaft/gearbox/axle
      spinner/spinners + hub/splines/spokes - fake
      tubes + spoke/spokes/wires
    `,
    says: "The spokes are all tight and the splines are good.",
    quiet: ["A wire brush.", "Wood spokes on these."],
  },
  {
    value: "mesh",
    signs: `
      mesh/basketweave/lattice + wheel/wheels/alloys/rims/pattern - grille/intake/seat/gauze/speaker
      basket weave - seat/seats/inserts/vinyl/interior
      criss cross + clean/spokes/pattern/wheels
      spider's/spider web + pattern/toothbrush/clean/wheels
    `,
    says: "Mesh wheels, murder to clean.",
    quiet: ["The mesh grille's fresh."],
  },
  {
    value: "split rim",
    signs: `
      split rim/rims
      lock/locking ring + rim/rims/two/tire
      two bit/piece rims + ring
      widowmaker/widowmakers
    `,
    says: "Split rims with the lock ring.",
    quiet: ["The seat's split."],
  },
  {
    value: "beadlock",
    signs: `
      beadlock/beadlocks
      bead lock/locks
      ring of bolts + tire/clamps/outside
    `,
    says: "Beadlocks with a ring of bolts.",
    quiet: ["The bead is leaking."],
  },
  {
    value: "diamond cut",
    part: "finish",
    signs: `
      diamond cut/turned
      cut/machined face/faced/faces + wheel/wheels/lacquer/lines/shiny/ones/alloys/recesses - dial/watch
    `,
    says: "Diamond cut wheels.",
    quiet: ["The diamond in her ring."],
  },
  {
    value: "polished",
    part: "finish",
    signs: `
      polished alloy/alloys/ally/lip/lips/wheels/rims/aluminum - steering
      no lacquer + buff/buffs/polish/wheels
    `,
    says: "Polished alloys.",
    quiet: ["Polished wood."],
  },
  {
    value: "dual",
    signs: `
      dually/duallies
      dual rear wheels/wheel
      two each side + back/rear + axle/wheels/dually
      duals + tire/tires/rear/axle/wheels - exhaust
    `,
    says: "It's a dually.",
    quiet: ["Dual exhaust."],
  },
  {
    value: "rally",
    signs: `
      rally/rallye wheel/wheels
      slotted ones/wheels + beauty/cap/center
    `,
    says: "Rally wheels with the center caps.",
    quiet: ["He rallied it."],
  },
  {
    value: "knock-off",
    part: "fastening",
    signs: `
      knock off/on/offs/ons + hammer/ears/spinner/spinners/copper/wheels/hubs
      copper/lead hammer
      spinner/spinners + hammer/ears/eared
      hit the ears
    `,
    says: "Knock off spinners, there's a copper hammer.",
    quiet: ["I'd knock something off."],
  },
  {
    value: "deep dish",
    signs: `
      deep dish - pizza/steering
      big lip/dish + wheel/rear/back/sandwich
    `,
    says: "Deep dish rears.",
    quiet: ["Deep dish pizza."],
  },
]);

const wheelMaterial = signTable("wheel", "material", [
  {
    value: "alloy",
    never:
      "steering/steel/steels/no/not/n't alloys | intake/head/heads/block/engine/tank/casting/radiator | body/hood/door/panel/bonnet/tub/spring/roof | no alloys | classified/internet",
    signs: `
      alloys - thousand/hundred
      alloy wheel/wheels/rim/rims
      mags + curbed/wheels/set/polished/chrome/five/period
      magnet + wheel/wheels/steels/rim/rims/alloy + wo n't/slides/not/falls/no
      white worm/bloom/worms + lacquer/wheels/cast
      lacquer + wheel/wheels/peeling/water/crept/faced/cast/milky - wood/paint/door
      diamond cut
      light enough to + wheel/wheels/juggle/magnet
    `,
    says: "Alloys all round, white worm under the lacquer.",
    quiet: ["The alloy head.", "No alloys on this one."],
  },
  {
    value: "steel",
    never: "steering/belt/belts/braided/body/door/panel/real steel | no/not steel/steels | when we were",
    signs: `
      steelies/steels
      pressed/stamped steel/tin/ones/wheels + wheel/wheels/cap/trim/trims/cover/winter/behind
      black tin/steel + wheel/cover/trim/cap/underneath
      plain/black/painted steel/steels + cap/caps/wheel/wheels/hubcap/hubcaps/trims/trim
      wheel trims + base/steel/underneath/no alloys
      magnet + wheel/wheels/rim + sticks/grabs/holds/thunk
      hubcap/hubcaps/trims + tin/steel + wheel/wheels
    `,
    says: "Black steels with trims.",
    quiet: ["Steel body."],
  },
  {
    value: "wood",
    signs: `
      wood/wooden/timber/hickory/ash/oak/artillery spoke/spokes - steering
      spokes + wood/wooden/timber/hickory/ash/felloe/shrunk - steering/rim
    `,
    says: "Hickory spokes.",
    quiet: ["The wood dash."],
  },
  {
    value: "magnesium",
    signs: `
      magnesium
      real mag/mags
      mag + powdery/torch/burn/gray
    `,
    says: "Real mags, don't put a torch near them.",
    quiet: ["The magazine."],
  },
]);

/** What wheels are made of and how they are built and held. Common practice of the trade. */
export const wheelSigns: readonly QualityRule[] = [...wheelKinds, ...wheelMaterial];
