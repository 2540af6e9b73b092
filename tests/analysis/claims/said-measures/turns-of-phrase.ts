/** "zone | what is said | component@position.attribute=value unit; …": ways of leaving out what was said before, and of placing it. */
export const saidByTurnsOfPhrase = `
driver-side | Front tyre's a two oh five fifty five sixteen. Same again out back. | tire@front.size=205/55R16
driver-side | Tires. Fronts are two twenty five sixty fifteen, rears two fifty five sixty fifteen. | tire@front.size=225/60R15; tire@rear.size=255/60R15
driver-side | How many on the clock? Sixty two thousand. | odometer.mileage=62000 mi
opening | How many owners? Two. | vehicle.count=2
opening | Keys? Three. | vehicle.count=3
opening | And the price? Nine thousand four hundred and ninety five. | price.price=9495
cabin | How many seats? Seven of them. | seats.count=7
engine-bay | What size engine? Two litres. | engine.displacement=2 L
engine-bay | Cylinders? Six. | engine.count=6
engine-bay | Power? A hundred and twelve horse. | engine.power=112 hp
driver-side | Tread this side, six on the front one and four on the one behind. | tire@driver-front.depth=6; tire@driver-rear.depth=4
passenger-side | Pads, five millimetres up front, the other end's four. | brakes@front.thickness=5 mm; brakes@rear.thickness=4 mm
driver-side | Discs up front are two eighty millimetres, drums behind nine inch. | brakes@front.diameter=280 mm; brakes@rear.diameter=9 in
driver-side | The pair ahead have seven thirty seconds, the pair behind have four. | tire@front.depth=7 32nds; tire@rear.depth=4 32nds
driver-side | Thirty two pounds in the front tyres, thirty six in the backs. | tire@front.pressure=32 psi; tire@rear.pressure=36 psi
cabin | Belts, three in the back, two up front. | belts@rear.count=3; belts@front.count=2
driver-side | Paint, the door's a hundred and ten, the quarter's one twenty five, microns. | paint@driver.thickness=110 µm; paint@driver-rear.thickness=125 µm
passenger-side | Gap at the front of the door's four mil, at the back it's five. | body.size=4 mm; body.size=5 mm
front | Lamps, you have four of those. | lights@front.count=4
front | You've got your two headlights and your two spots. | lights@front.count=2; lights@front.count=2
rear | There's the one pipe. | exhaust.count=1
rear | Just the one exhaust, on the left. | exhaust.count=1
rear | Only the one key with it. | vehicle.count=1
cabin | No fewer than nine gauges. | dash.count=9
cabin | Seats for eight. | seats.count=8
engine-bay | A three litre six. | engine.displacement=3 L; engine.count=6
engine-bay | It's the three litre V six. | engine.displacement=3 L; engine.count=6
engine-bay | Two and a half litres, four cylinders. | engine.displacement=2.5 L; engine.count=4
engine-bay | Five litres of V eight. | engine.displacement=5 L; engine.count=8
engine-bay | Four fifty four cubic inches. | engine.displacement=454 cu in
engine-bay | The two hundred and eighty three is still in it. | engine.displacement=283 cu in
engine-bay | Engine size is one thousand eight hundred cc. | engine.displacement=1800 cc
driver-side | Seventeen inch rims. | wheel.diameter=17 in
driver-side | Rims, seventeen inch. | wheel.diameter=17 in
driver-side | The rims measure seventeen inches. | wheel.diameter=17 in
driver-side | It's on seventeens. | wheel.diameter=17 in
driver-side | Seventeens at all four corners. | wheel@all.diameter=17 in
driver-side | Wheel size is seventeen. | wheel.diameter=17 in
opening | On the clock, eighty eight thousand and six. | odometer.mileage=88006 mi
opening | Mileage wise it's at fifty four thousand. | odometer.mileage=54000 mi
opening | Fifty four thousand on the odo. | odometer.mileage=54000 mi
opening | Odo's at fifty four two. | odometer.mileage=54200 mi
opening | Fifty four thousand two hundred indicated. | odometer.mileage=54200 mi
opening | It shows ninety one thousand. | odometer.mileage=91000 mi
opening | We want ten nine for it. | price.price=10900
opening | It's up at ten nine ninety five. | price.price=10995
opening | Priced at ten thousand nine hundred. | price.price=10900
opening | Ten nine buys it. | price.price=10900
opening | The ask is eighteen five. | price.price=18500
opening | I need eighteen thousand out of it. | price.price=18000
opening | No reserve, and the estimate's nine to eleven thousand. | price.price=9000; price.price=11000
driver-side | The new fender went on in 2015. | body@driver-front.date=2015
driver-side | A 2015 fender repair. | body@driver-front.date=2015
front | Bumper, 2015. | bumper@front.date=2015
front | Rechromed, 2015, that bumper. | bumper@front.date=2015
engine-bay | Since 2015 it's had that radiator. | cooling.date=2015
engine-bay | That alternator's from 2015. | electrical.date=2015
cabin | Had the seats done in 2015. | seats.date=2015
cabin | The carpet went in in 2015. | carpet.date=2015
roof | The top dates from 2015. | top.date=2015
driver-side | Tires were put on new in 2015. | tire.date=2015
underside | The exhaust was changed back in 2015. | exhaust.date=2015
engine-bay | Water pump done at sixty thousand. | cooling.mileage=60000 mi
engine-bay | At sixty thousand they did the water pump. | cooling.mileage=60000 mi
engine-bay | The clutch had been changed by sixty thousand. | transmission.mileage=60000 mi
engine-bay | Sixty thousand on the clock when the head gasket was done. | engine.mileage=60000 mi
engine-bay | Head gasket at sixty. | engine.mileage=60000 mi
front | Four hundred for the bumper. | bumper@front.price=400
front | The bumper set him back four hundred. | bumper@front.price=400
front | He gave four hundred for that bumper. | bumper@front.price=400
front | That bumper's four hundred to buy. | bumper@front.price=400
front | That bumper cost four hundred dollars. | bumper@front.price=400 USD
front | Four hundred dollars' worth of bumper. | bumper@front.price=400 USD
front | It took four hundred quid to have the bumper done. | bumper@front.price=400 GBP
front | The bill for the bumper was four hundred. | bumper@front.price=400
roof | The top come to nine hundred dollars. | top.price=900 USD
cabin | They charged me nine hundred for the seats. | seats.price=900
cabin | I've got nine hundred in those seats. | seats.price=900
cabin | Nine hundred on the seats alone. | seats.price=900
`;
