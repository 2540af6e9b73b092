import { type WordedRow, wordedSigns } from "./worded-signs.ts";

/**
 * Colors told by what they are like. Common knowledge of what color things are; kept to things of which nobody would say another color.
 * A word of likeness must stand in the sentence, so that a tomato plant by the fence colors nothing.
 */
const colorOf: Readonly<Record<string, string>> = {
  red: "tomato/tomatoes/ketchup/lipstick/ladybird/ladybug/ladybugs/postbox/pillarbox/santa/strawberry/strawberries/raspberry/rooster/cardinal/chili/chilli/ember/embers/brick/brandywine/firetruck/poppy/poppies/beacon/rouge/arrest/vermilion/holly/rhubarb/blood/ruby/garnet/flamenco/matador/torch/rosso/salsa/valentine/valentines/phonebox",
  burgundy: "beetroot/bordeaux/merlot/port/claret/shiraz/sangria/cabernet/altar",
  maroon: "damson/aubergines/railway/livery",
  orange:
    "pumpkin/pumpkins/tangerine/satsuma/carrot/carrots/marmalade/apricot/cones/basketball/traffic/papaya/mango/hunters/hunter/clementine/halloween/hazard/sunset",
  yellow:
    "lemon/lemons/canary/banana/bananas/mustard/taxi/taxis/cab/daffodil/daffodils/buttercup/sunflower/sunflowers/custard/corn/highlighter/bumblebee/bees/butter/primrose/duckling/mellow/cheese/cheddar/submarine/yolk/sherbet/piss/sulphur/sulfur/schoolbus/mimosa",
  green:
    "avocado/hedge/moss/lawn/grass/ivy/lime/limes/pea/peas/emerald/olive/olives/mint/sage/pond/frog/shamrock/pickle/pistachio/tractor/woods/forest/jungle/army/military/camouflage/cucumber/lettuce/fern/pine/spearmint/snooker/baize/racing/leaf/toad/lizard/asparagus/clover/khaki",
  blue: "sky/dungarees/jeans/denim/cornflower/lagoon/navy/sapphire/ocean/sea/kingfisher/bluebell/bluebells/robin/robin's/cobalt/policeman/policeman's/airforce/periwinkle/ink/bluebird/smurf/caribbean/pool/electric/cadet/iris/butane/flame/wedgwood/delft/powder/baby/midnight/atlantic/pacific/peacock",
  purple: "aubergine/eggplant/grape/plum/amethyst/crocus/lavender/blackcurrant/violet/blackberry/lilac/wisteria/heather/bishop/communion",
  pink: "bubblegum/gum/stomach/flamingo/salmon/candyfloss/blush/cadillac/piglet/barbie/prawn",
  white:
    "snow/fridge/refrigerator/milk/tooth/teeth/chalk/lily/plumber/plumber's/bridal/polar/swan/paper/iceberg/blizzard/whitewash/cotton/ambulance/arctic/alpine/salt",
  cream: "vanilla/ivory/buttermilk/clotted/magnolia/eggshell/ricotta/jersey/parchment",
  black: "coal/liquorice/licorice/midnight/soot/funeral/hearse/ink/jet/ebony/raven/tar/panther/onyx/beetle/piano/treacle/tuxedo/stout",
  silver: "dime/nickel/sixpence/foil/tinfoil/aluminium/mercury/spoon/cutlery/fifty/mirror/quicksilver",
  gray: "battleship/slate/cement/concrete/putty/elephant/pewter/graphite/lead/pigeon/ash/smoke/gunmetal/mouse/shark/destroyer/storm/cloud/nardo/granite/seal/rhino",
  brown: "tobacco/chocolate/conker/chestnut/walnut/cocoa/coffee/toffee/cola/mud/bear/cigar/treacle/parcel/espresso/hickory/mahogany/gravy",
  bronze: "statue/twopence/tuppence/pence",
  gold: "nuggets/ring/champagne/harvest/nugget/pharaoh/pharaoh's/sovereign/wheat/straw/honey/trophy/topaz/doubloon",
  tan: "latte/camel/sand/tea/desert/beach/fawn/biscuit/saddle/caramel/mushroom/digestive/mocha/khaki/butterscotch/peanut",
  beige: "oatmeal/porridge/porridgey/stone/magnolia/computer/mushroom",
  turquoise: "turquoise/swimming/lagoon/poster/duck's/duck",
  copper: "penny/pennies/copper/kettle",
};

/** Words that liken: "the shade of …", "like a …", "you'd lose it in …". */
const likens =
  "color/colour/colored/coloured/shade/hue/paint/painted | match/matches/matching + color/shade/it/that/paint | same as | lose/hide/camouflage it/this/her";

const notPaint =
  "seat/seats/interior/inside/hide/hides/leather/vinyl/carpet/carpets/dash/headliner/cushion/cushions/smoke/light/lights/lens/blinkers/wire/wires/top's/hood's/wheel/wheels/caliper/calipers/stripe/stripes/coachline/pinstripe/roof/bumper/bumpers/box/switch/tint/glass/window/windows/mirror/mirrors/sticker/plate/slip/cone/flag/grass's | not the color";

const outside = ["front", "rear", "driver-side", "passenger-side", "roof", "opening", "closing"] as const;

const rows: readonly WordedRow[] = Object.entries(colorOf).map(([value, things]) => ({
  attribute: "color",
  value,
  component: "paint",
  zones: outside,
  never: `${notPaint} | red/blue/green/black/white/gray/silver/gold/yellow/orange/brown/purple/pink/maroon/burgundy/cream/tan/beige | all four | not/n't/never ..3 ${things}`,
  signs: likens
    .split(" | ")
    .map((likeness) => `${things} + ${likeness}`)
    .join(" | "),
  says: `It is the same shade of paint as a ${things.split("/")[0]}.`,
  quiet: [`There's a ${things.split("/")[0]} in the shop.`],
}));

export const likenessSigns = wordedSigns(rows);
