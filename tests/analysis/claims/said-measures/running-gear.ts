/** "zone | what is said | component@position.attribute=value unit; …": what a walk says of what it rolls, stops and rides on. */
export const saidOfRunningGear = `
driver-side | Front one says two oh five fifty five R sixteen and the one behind it's the same. | tire@driver-front.size=205/55R16
driver-side | Tyres. Two twenty five forty five seventeen on this one, and the same again on the back. | tire.size=225/45R17
passenger-side | Tires same business as the other side, two twenty five seventy fourteen. | tire.size=225/70R14
driver-side | These are two fifteen seventy fives on a fifteen. | tire.size=215/75R15
driver-side | It's wearing two sixty five seventy seventeens all round. | tire@all.size=265/70R17
driver-side | Five ninety fifteen crossplies, as it left the works. | tire.size=5.90-15
driver-side | Tread's ten thirty seconds up front and maybe six in the rear. | tire@front.depth=10 32nds; tire@rear.depth=6 32nds
driver-side | Six mil on the front tyres, a shade over four on the back. | tire@front.depth=6 mm; tire@rear.depth=4 mm
passenger-side | The tires have got plenty of meat, call it eight thirty seconds, and the rear's down to five. | tire.depth=8 32nds; tire@passenger-rear.depth=5 32nds
driver-side | Tyres have five and a half millimetres left on the pair at the front. | tire@front.depth=5.5 mm
driver-side | Tyre's legal but only just, two and a half mil. | tire.depth=2.5 mm
driver-side | Tires are dated week thirty one of nineteen. | tire.date=2019-W31
driver-side | The code on the tire is three one one nine. | tire.date=3119
driver-side | Born on date on these tires is the fourteenth week of twenty twenty two. | tire.date=2022-W14
rear | The back pair of tyres were made in twenty seventeen. | tire@rear.date=2017
driver-side | Pressures on the door sticker, thirty two at the front, and for the back it says thirty four. | tire@front.pressure=32 psi; tire@rear.pressure=34 psi
driver-side | Tyre pressures are thirty two, or forty if you've the whole family in. | tire.pressure=32 psi; tire.pressure=40 psi
driver-side | Tires want thirty five cold. | tire.pressure=35 psi
driver-side | Tyres are blown up to two point four bar. | tire.pressure=2.4 bar
driver-side | Set of four tires was six hundred and twenty dollars. | tire.price=620 USD
driver-side | The tyres went on in 2021. | tire.date=2021
driver-side | Tires have eleven thousand miles on them. | tire.mileage=11000 mi
driver-side | Whitewalls are two and a half inches wide. | tire.width=2.5 in
driver-side | It stands on thirty threes. | tire.diameter=33 in
driver-side | Wheels are fifteen inch, four and a half J wide. | wheel.diameter=15 in; wheel.width=4.5 in
driver-side | Seventeen inch alloys, seven and a half wide. | wheel.diameter=17 in; wheel.width=7.5 in
driver-side | They're eighteen by eight and a half, these wheels. | wheel.diameter=18 in; wheel.width=8.5 in
driver-side | Wire wheels with seventy two spokes in each. | wheel.count=72
driver-side | It's a five spoke wheel. | wheel.count=5
driver-side | Wheels are five stud. | wheel.count=5
driver-side | Six lug wheels, steel. | wheel.count=6
driver-side | Held on with four nuts. | wheel.count=4
driver-side | Wheels were refurbished in 2019. | wheel.date=2019
driver-side | Had the wheels powder coated, eighty quid a corner. | wheel.price=80 GBP
driver-side | Set of wheels like that is twelve hundred bucks. | wheel.price=1200 USD
driver-side | The wheels are off a 1987 Tolland. | wheel.year=1987
driver-side | Offset is plus forty on these wheels. | wheel.size=40
driver-side | The hubcaps, there's three of them, one's gone. | wheel.count=3
driver-side | A kerb mark on the alloy about two inches long. | wheel.size=2 in
driver-side | Disc brakes at the front, they're eleven inch, and it's ten inch drums at the other end. | brakes@front.diameter=11 in; brakes@rear.diameter=10 in
driver-side | Front discs are three hundred millimetres. | brakes@front.diameter=300 mm
driver-side | Nine inch drums all round on these brakes. | brakes@all.diameter=9 in
driver-side | Rotors measure twenty two millimeters. | brakes.thickness=22 mm
driver-side | Brake pads have eight mil on the fronts and five on the rears. | brakes@front.thickness=8 mm; brakes@rear.thickness=5 mm
driver-side | Plenty on the pads, I'd say seven millimetres. | brakes.thickness=7 mm
driver-side | What's left on the pads? Six millimetres. | brakes.thickness=6 mm
driver-side | Shoes have got about an eighth left on them. | brakes.thickness=0.125 in
driver-side | Behind that spoke you got your disc brake with a four piston caliper. | brakes.count=4
driver-side | Calipers are six pot at the front and four at the back. | brakes@front.count=6; brakes@rear.count=4
driver-side | Front brakes were done in 2022. | brakes@front.date=2022
driver-side | Discs and pads all round in March 2021. | brakes.date=2021-03
driver-side | The disc brakes were seventy one dollars extra. | brakes.price=71 USD
driver-side | Pads and discs came to two hundred and ten pounds. | brakes.price=210 GBP
driver-side | Brakes were done nine thousand miles ago. | brakes.mileage=9000 mi
underside | Brake shoes are two inches wide. | brakes.width=2 in
underside | The brakes came off a 1978 wagon. | brakes.year=1978
drive | Air brakes build to a hundred and twenty pounds. | brakes.pressure=120 psi
underside | Torsion bars up front eighty eight hundredths. | suspension@front.diameter=0.88 in
underside | Sway bar's fifteen sixteenths. | suspension.diameter=0.9375 in
underside | The anti roll bar is twenty two mil. | suspension.diameter=22 mm
underside | Front sway bar's an inch and an eighth. | suspension@front.diameter=1.125 in
underside | Leaf springs, seven leaves each side. | suspension@rear.count=7
underside | Springs are a five leaf pack with one overload. | suspension.count=5; suspension.count=1
underside | Lever arm dampers, all four corners have them. | suspension@all.count=4
underside | Four new shocks on it. | suspension.count=4
underside | Shocks went on in 2020. | suspension.date=2020
underside | Front shocks are new, the backs were put in in 2015. | suspension@rear.date=2015
underside | Shocks were forty five dollars apiece. | suspension.price=45 USD
underside | Springs and dampers, four hundred and eighty quid the lot. | suspension.price=480 GBP
underside | It's been let down two inches at the front. | suspension@front.size=2 in
underside | It's lifted three inches. | suspension.size=3 in
underside | Ball joints were done at eighty thousand. | suspension.mileage=80000 mi
underside | The struts were changed at sixty one thousand miles. | suspension.mileage=61000 mi
underside | Front axle's out of a 1952 pickup. | suspension@front.year=1952
cabin | Steering wheel is sixteen inch, wood rimmed, three spokes in drilled alloy. | steering.diameter=16 in; steering.count=3
cabin | The wheel in my hands is a fifteen inch three spoke. | steering.diameter=15 in; steering.count=3
cabin | Big old steering wheel, eighteen inches across. | steering.diameter=18 in
drive | Steering has about an inch of play. | steering.size=1 in
drive | There's a inch of slop in the steering. | steering.size=1 in
drive | Three and a half turns lock to lock. | steering.count=3.5
drive | It's two and three quarters lock to lock, this rack. | steering.count=2.75
underside | Steering rack was replaced in 2018. | steering.date=2018
underside | Power steering pump, new, a hundred and sixty dollars. | steering.price=160 USD
underside | The steering box is from a 1974 wagon. | steering.year=1974
underside | Rack went in at ninety two thousand miles. | steering.mileage=92000 mi
cargo | Spare's a one sixty five eighty thirteen, never been on the ground. | spare.size=165/80R13
cargo | Full size spare in there, a sixteen inch steel. | spare.diameter=16 in
cargo | The spare has seven millimetres on it. | spare.depth=7 mm
cargo | Spare's got sixty pounds in it. | spare.pressure=60 psi
cargo | Date on the spare is forty four oh eight. | spare.date=4408
cargo | The spare was made in 1998. | spare.date=1998
cargo | Space saver, says sixty psi on the side of the spare. | spare.pressure=60 psi
`;
