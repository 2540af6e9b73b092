/** "zone | what is said | component@position.attribute=value unit; …": panels, paint, glass, lamps, bumpers, trim and tops. */
export const saidOutside = `
front | Bumper's a single blade with two over riders. | bumper@front.count=1; bumper@front.count=2
rear | Bumper back here is two quarter pieces, not one blade. | bumper@rear.count=2
rear | Three piece bumper on this end. | bumper@rear.count=3
front | Bumper was re plated in 2014, four hundred and sixty pounds. | bumper@front.date=2014; bumper@front.price=460 GBP
rear | This bumper was nine hundred dollars to chrome. | bumper@rear.price=900 USD
rear | Four parking sensors in it. | bumper@rear.count=4
rear | Bumper was resprayed in 2019. | bumper@rear.date=2019
rear | There's two cracks in the bumper, low down. | bumper@rear.count=2
rear | Crack in the bumper about four inches. | bumper@rear.size=4 in
rear | Tow bar with a fifty millimetre ball. | bumper@rear.diameter=50 mm
rear | It's a two inch receiver. | bumper@rear.size=2 in
rear | Hitch is rated at five thousand pounds. | bumper@rear.size=5000 lb
front | The bumper's off a 1936. | bumper@front.year=1936
front | Bumper bolts on with six bolts. | bumper@front.count=6
front | There are 24 louvres if you're the counting sort, twelve a side. | body.count=24; body.count=12
front | Hood's the flat one with them two dummy scoops. | body@front.count=2
opening | Two door hardtop. | body.count=2
driver-side | Four doors and they all shut right. | body.count=4
driver-side | One small chip on the door edge. | body.count=1
driver-side | I count five dings down this side. | body.count=5
driver-side | Couple of parking dents in the back door. | body.count=2
passenger-side | Nearside wing's a replacement, 2009, genuine panel. | body@passenger-front.date=2009
passenger-side | The quarter panel on the far side is a new skin in 2009. | body@driver-rear.date=2009
driver-side | That fender was changed in 1983. | body@driver-front.date=1983
driver-side | Sills were done in 2018. | body.date=2018
driver-side | The door came off a 1976. | body.year=1976
driver-side | New quarter was nine hundred and fifty dollars. | body.price=950 USD
driver-side | Wing, supply and fit, a hundred and forty pounds. | body@driver-front.price=140 GBP
driver-side | Gaps are three sixteenths at the front edge of the door and three sixteenths at the rear edge. | body.size=0.1875 in; body.size=0.1875 in
driver-side | Door gap this side's four millimetres. | body.size=4 mm
driver-side | There's a scratch on the door, six inches long. | body.size=6 in
driver-side | Dent in the rocker about the size of my hand, five inches. | body.size=5 in
driver-side | Sheet metal's nineteen gauge. | body.thickness=19 ga
driver-side | A hole in the sill an inch across. | body.size=1 in
roof | Roof skin's got one dent from a ladder. | body.count=1
driver-side | One antenna, and it goes up and down. | body.count=1
front | Paint on the nose is 1 60 microns, and one fifty five on the wing top. | paint@front.thickness=160 µm; paint@front.thickness=155 µm
front | Six and a quarter thou in old money, that paint. | paint.thickness=6.25 mil
driver-side | I've had the gauge on the paint of both wings, a hundred and ten over there, one ninety on this, in microns. | paint.thickness=110 µm; paint.thickness=190 µm
driver-side | I've got six mils of paint on the fender and seven on the hood. | paint@driver-front.thickness=6 mil; paint@front.thickness=7 mil
driver-side | Gauge says four point two on the door, mils. | paint@driver.thickness=4.2 mil
driver-side | Paint meter's reading about a hundred and twenty all down this side. | paint.thickness=120 µm
front | Paint was shot in 2009, base and clear. | paint.date=2009
front | It's had one respray, 2011. | paint.date=2011
front | She was painted in ninety four. | paint.date=1994
front | Resprayed back in the summer of 2016. | paint.date=2016
front | The paint job was six thousand two hundred. | paint.price=6200
front | He paid eight grand for the paint. | paint.price=8000
front | Five coats of clear on this paint. | paint.count=5
front | Three chips in the paint on the nose. | paint.count=3
front | A run in the paint about an inch long. | paint.size=1 in
front | Windscreen was new in 2021. | glass@front.date=2021
front | Windshield was three hundred dollars installed. | glass@front.price=300 USD
front | Windscreen, sixty quid excess. | glass@front.price=60 GBP
front | Two chips in the windshield. | glass@front.count=2
front | Crack in the windshield about eight inches. | glass@front.size=8 in
front | Two wipers, both park. | glass@front.count=2
passenger-side | Side screens live in an envelope behind the seat, two of them. | glass.count=2
driver-side | Four electric windows. | glass.count=4
front | The glass is dated 1964. | glass.date=1964
rear | Back glass is out of a 1959. | glass@rear.year=1959
rear | The rear window has got eleven heater lines. | glass@rear.count=11
front | It's a two piece windshield. | glass@front.count=2
front | Two headlamps with the little stone guards. | lights@front.count=2
front | Four headlamps and every one of them's burning. | lights@front.count=4
rear | Six lamps at the tail end, three to a side. | lights@rear.count=6; lights@rear.count=3
rear | Single reversing lamp. | lights@rear.count=1
rear | One reversing light, on the left. | lights@rear.count=1
rear | Tail lights are 1950 ones. | lights@rear.year=1950
front | Seven inch headlamps. | lights@front.diameter=7 in
front | Headlight was ninety four dollars. | lights@front.price=94 USD
front | New headlamps in 2018, both. | lights@front.date=2018
front | Two spots and two fogs across the front. | lights@front.count=2; lights@front.count=2
roof | Five cab lights up there. | lights.count=5
driver-side | Mirror on this side, it's just the one over here. | trim.count=1
driver-side | Two door mirrors, both heated. | trim.count=2
front | Grille is nine vertical bars. | trim@front.count=9
front | Grille's from a 1940. | trim@front.year=1940
front | Grille was six hundred and ninety. | trim@front.price=690
passenger-side | It's a black stripe two inches wide. | trim.width=2 in
driver-side | Pinstripe's a quarter inch. | trim.width=0.25 in
driver-side | Two stripes down the side. | trim.count=2
driver-side | Chrome strip along here has two clips missing. | trim.count=2
roof | Rails on the roof, two of them, steel. | trim.count=2
roof | Roof bars, two. | trim.count=2
rear | Three badges on the boot lid. | trim.count=3
front | The mascot was forty quid. | trim.price=40 GBP
driver-side | Moldings were rechromed in 2012. | trim.date=2012
roof | Hood goes up with three clips along the screen rail. | top.count=3
roof | Top was replaced in 2019. | top.date=2019
roof | The soft top has two latches. | top.count=2
roof | Four bows hold the top up. | top.count=4
roof | The convertible top was fourteen hundred dollars. | top.price=1400 USD
`;
