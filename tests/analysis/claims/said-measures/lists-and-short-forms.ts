/** "zone | what is said | component@position.attribute=value unit; …": lists by end, figures run together or cut short, and things counted by what each is for. */
export const saidInListsAndShortForms = `
driver-side | Tyre pressures, thirty two and thirty four. | tire@front.pressure=32 psi; tire@rear.pressure=34 psi
driver-side | Pressures are thirty two and thirty six, it says on the door. | tire@front.pressure=32 psi; tire@rear.pressure=36 psi
driver-side | Sixty psi in front and seventy behind, in bar that's four point one and four point eight. | tire@front.pressure=60 psi; tire@rear.pressure=70 psi; tire@front.pressure=4.1 bar; tire@rear.pressure=4.8 bar
driver-side | Tires take fifty five in front and seventy behind. In bar that is three point eight and four point eight. | tire@front.pressure=55 psi; tire@rear.pressure=70 psi; tire@front.pressure=3.8 bar; tire@rear.pressure=4.8 bar
driver-side | Tires, it's sixteen inch front, eighteen inch rear, staggered wheels. | wheel@front.diameter=16 in; wheel@rear.diameter=18 in
driver-side | Staggered wheels, nineteens on the front and twenties on the back. | wheel@front.diameter=19 in; wheel@rear.diameter=20 in
driver-side | Wheels are fifteens in front and sixteens behind. | wheel@front.diameter=15 in; wheel@rear.diameter=16 in
driver-side | These outsides are aluminum, it come that way, seventeen by six. | wheel.diameter=17 in; wheel.width=6 in
driver-side | Five lug, sixteen by seven. | wheel.count=5; wheel.diameter=16 in; wheel.width=7 in
driver-side | They're eight lug, I stand corrected. | wheel.count=8
driver-side | Spare is a fifteen. | spare.diameter=15 in
rear | The spare's hung up under here, it's a steel seventeen same as the rest. | spare.diameter=17 in
cargo | Spare's a sixteen, on a steel rim. | spare.diameter=16 in
passenger-side | Tires are the same over here, thirty one ten and a half fifteen. | tire.size=31x10.50R15
driver-side | Thirty three twelve and a half fifteens, all terrains. | tire.size=33x12.50R15
driver-side | Tires are thirty five twelve fifty twenties. | tire.size=35x12.50R20
cargo | Spare is the thin kind, a T one 15 70 R 15. | spare.size=T115/70R15
cargo | It's a space saver, a T one two five eighty sixteen. | spare.size=T125/80R16
cabin | Belts. Two in the cab and two on the bench, four, all three point. | belts@front.count=2; belts@rear.count=2; belts.count=4
cabin | Belts, three up here and one on each of those, that's five. | belts@front.count=3; belts.count=5
cabin | Seats, it's seven all told. | seats.count=7
cabin | Two more seats fold up out of the floor here. | seats.count=2
cabin | Five facing the way you're going, and two that don't. | seats.count=5
cabin | Seats five, there's nothing folds up behind them. | seats.count=5
documents | Keys, one with a button and one without. | vehicle.count=1; vehicle.count=1
documents | Here's the key, it's the only one. | vehicle.count=1
cabin | Key here. This is the only one I was handed. | vehicle.count=1
documents | It's just the one key, there isn't a spare. | vehicle.count=1
documents | There's a pair of keys, that's the lot. | vehicle.count=2
documents | Keys, two for the ignition and one for the trunk. | vehicle.count=2; vehicle.count=1
documents | Owners, I count four, two over in Germany, then two here. | vehicle.count=4; vehicle.count=2; vehicle.count=2
documents | How many owners before you? Three before him. | vehicle.count=3
documents | So two owners like I said. | vehicle.count=2
documents | Owners? Four, counting the deacon. | vehicle.count=4
opening | It's a hundred and nine thousand miles and it's nine nine ninety five. | odometer.mileage=109000 mi; price.price=9995
closing | We're at nine nine ninety five. | price.price=9995
closing | Asking eleven nine ninety five for it. | price.price=11995
closing | You can have it for seven four ninety five. | price.price=7495
closing | Price is fourteen nine fifty. | price.price=14950
opening | Forty one five is what he's asking. | price.price=41500
opening | Eighteen nine is what we want for it. | price.price=18900
opening | Twenty two five, that's the ask. | price.price=22500
opening | Thirty eight five is the number on it. | price.price=38500
opening | He's got forty three nine on it. | price.price=43900
opening | They've got twenty six five on it. | price.price=26500
opening | I've got nineteen nine on the price of that. | price.price=19900
closing | I've got twelve four on it and I'll listen. | price.price=12400
closing | Fella offered me thirty four in the parking lot. | price.price=34000
closing | A guy offered me twenty eight and I said no. | price.price=28000
documents | I added it up once and it was forty four thousand and I quit adding. | price.price=44000
documents | Receipts are forty one hundred dollars, and the tires, that's another fourteen sixty on top of that. | price.price=4100 USD; price.price=1460
closing | A hundred and thirty one thousand on it, and we're asking fourteen thousand nine hundred dollars. | odometer.mileage=131000 mi; price.price=14900 USD
opening | It's got a hundred and twelve thousand odd on it and it's three thousand pounds. | odometer.mileage=112000 mi; price.price=3000 GBP
opening | And a hundred thirty one thousand six hundred and forty on the speedometer. | odometer.mileage=131640 mi
opening | One hundred eighty seven thousand four hundred and four miles, and every one of those is real. | odometer.mileage=187404 mi
cabin | The odometer has six wheels on it plus the tenths. | odometer.count=6
opening | She's got a 331 in her. | engine.displacement=331 cu in
opening | Thirty two three window, it's got a 331 in it. | engine.displacement=331 cu in
opening | He's got a 302 in him. | engine.displacement=302 cu in
opening | There's a three fifty in there. | engine.displacement=350 cu in
opening | With a four oh nine under the hood. | engine.displacement=409 cu in
engine-bay | That's four hundred and nine inches. | engine.displacement=409 cu in
engine-bay | All three hundred and ninety inches of it. | engine.displacement=390 cu in
engine-bay | Air cleaner decal, it's got three fifty four on it. | engine.displacement=354 cu in
engine-bay | The tuner guy said it'd make four hundred, I took it off, so three twenty five again. | engine.power=400 hp; engine.power=325 hp
engine-bay | Stock it made three ten and with the tune it makes three seventy. | engine.power=310 hp; engine.power=370 hp
engine-bay | Oil is five and a half litres. | engine.size=5.5 L
engine-bay | Engine oil, twelve pints with the filter. | engine.size=12 pt
engine-bay | Cooling system holds near enough five gallons of the green. | cooling.size=5 gal
engine-bay | Battery, there's the one. | electrical.count=1
engine-bay | Serpentine belt, just the one of those. | engine.count=1
engine-bay | Fuel filter's a two micron. | fuel-system.size=2 µm
engine-bay | Points gap is fifteen thousandths. | ignition.size=0.015 in
engine-bay | Plug gap's thirty five thou. | ignition.size=0.035 in
engine-bay | I did plugs and wires and a cap back in June. | ignition.date=june
engine-bay | The water pump I did myself in the yard in March. | cooling.date=march
driver-side | Hydraulic clutch, eleven inch. | transmission.diameter=11 in
drive | The clutch is hydraulic, it's the eleven. | transmission.diameter=11 in
underside | Transfer case is dry, and that's two seventy two to one in low. | transmission.ratio=2.72
underside | Transfer case low range is two point six two. | transmission.ratio=2.62
underside | Tag says 4 10, so four ten gears. | final-drive.ratio=4.1
underside | Driveshaft, one piece, three inch. | transmission.diameter=3 in
underside | New joints in the driveline, one on each end, so two. | transmission.count=2
underside | Six speed manual, it's got six and you use five. | transmission.count=6; transmission.count=5
drive | It's got four forward gears, that's the four. | transmission.count=4
underside | Rear end's an eight point eight out of a cop car. | final-drive.diameter=8.8 in
underside | It's a nine inch rear end. | final-drive.diameter=9 in
underside | Diff is a seven and a half. | final-drive.diameter=7.5 in
underside | I took two inches a side off the axle housing. | final-drive.width=2 in
underside | Front rotors are fourteen inch and the rears are a hair bigger, fourteen and a quarter. | brakes@front.diameter=14 in; brakes@rear.diameter=14.25 in
underside | Front discs are three hundred millimeters. The rear discs are slightly smaller, two ninety six. | brakes@front.diameter=300 mm; brakes@rear.diameter=296 mm
underside | Fronts are fourteen and a half inch rotors. Rears are fourteen point two. | brakes@front.diameter=14.5 in; brakes@rear.diameter=14.2 in
underside | Brake booster, eight inch. | brakes.diameter=8 in
underside | Master's a dual with an eight inch booster on it. | brakes.diameter=8 in
underside | Leaf springs, seven leaves each side. | suspension.count=7
underside | Shocks, eighty nine dollars at the parts store. | suspension.price=89 USD
underside | A new pair of ball joints each side, so four of em. | suspension.count=4
underside | Two by four tube frame, three sixteenths wall. | frame.size=2x4 in; frame.thickness=0.1875 in
underside | Ten body mounts, rubber. | body.count=10
underside | Floors are sixteen gauge, one point six millimetres. | floors.thickness=16 ga; floors.thickness=1.6 mm
underside | Fuel line's three eighths. | fuel-system.diameter=0.375 in
documents | Gearbox was out at ninety six thousand. | transmission.mileage=96000 mi
documents | MOT runs to the fourteenth of May, two advisories. | title.date=--05-14; title.count=2
documents | DOT inspection was in May. | title.date=may
documents | It had one owner from 2008 until 2015. | title.date=2008; title.date=2015
documents | Empty it scaled eighty four twenty. | vehicle.size=8420 lb
documents | It weighed thirty two hundred and ten pounds at the elevator. | vehicle.size=3210 lb
rear | There's a fifty gallon transfer tank in the bed with a pump on it. | fuel-tank.size=50 gal
rear | Gas goes in here, tank holds eleven. | fuel-tank.size=11 gal
cargo | Tank is aluminum, eighth inch sheet, with two baffles in it. | fuel-tank.thickness=0.125 in; fuel-tank.count=2
cargo | A nine foot six steel deck. | cargo-floor.size=9.5 ft
cargo | It is forty six inches wide between the boxes and thirty one high. | cargo-floor.width=46 in; cargo-floor.size=31 in
cabin | The refrigerator is three cubic feet, eighty five liters. | vehicle.size=3 cu ft; vehicle.size=85 L
cabin | Fridge holds sixty litres. | vehicle.size=60 L
rear | The fresh one is twenty gallons, which is seventy six liters, and the gray one is eighteen gallons, which is sixty eight. | vehicle.size=20 gal; vehicle.size=76 L; vehicle.size=18 gal; vehicle.size=68 L
cabin | A two burner stove. | vehicle.count=2
cabin | There are three outlets on that, and five of the twelve volt kind. | electrical.count=3; electrical.count=5
roof | There are two solar panels and one fan. | electrical.count=2; top.count=1
passenger-side | The awning is ten feet. | trim.size=10 ft
passenger-side | Step bars, six inch oval. | trim.size=6 in
passenger-side | Mirror on this side too, it came with one, I added the other, so two. | trim.count=1; trim.count=2
rear | And a receiver, two inch, with your seven pin. | bumper.size=2 in
rear | Hitch receiver, and it is the two inch size. | bumper.size=2 in
rear | Two and a half inch receiver. | bumper.size=2.5 in
front | Hood was three pieces, I made it one piece. | body.count=3; body.count=1
front | Four little amber markers up top. | lights.count=4
driver-side | Toolboxes underneath two a side, so four boxes. | body.count=2; body.count=4
driver-side | Stake pockets, there's three to a side, six all told. | body.count=3; body.count=6
driver-side | The lowest was a hundred and twelve microns on the door and the highest a hundred and twenty three. | paint.thickness=112 µm; paint.thickness=123 µm
driver-side | Four coats of color and six of clear. | paint.count=4; paint.count=6
drive | Charging fourteen three. | electrical.voltage=14.3 V
drive | It's charging at fourteen point one. | electrical.voltage=14.1 V
opening | Forty one five is what he's askin. | price.price=41500
engine-bay | It wants five and a half litres of ten 40. | engine.size=5.5 L
engine-bay | Takes eleven quarts of fifteen forty. | engine.size=11 qt
engine-bay | And the filter's a two micron. | fuel-system.size=2 µm
engine-bay | That's a straight six, four hundred and nine inches, iron block. | engine.displacement=409 cu in
engine-bay | That's a tag, wipe it for me, it's got three fifty four on it. | engine.displacement=354 cu in
cargo | Spare is a fifteen on a painted steel rim. | spare.diameter=15 in
driver-side | Door card says thirty one pounds all round. | tire@all.pressure=31 psi
documents | 2011, wheels, wire, quantity four, painted. | wheel.count=4
documents | Shocks at a hundred and twelve. And a belt. | suspension.mileage=112000 mi
documents | Empty it scaled 84 twenty at the elevator. | vehicle.size=8420 lb
drive | Gauge says fourteen three. | electrical.voltage=14.3 V
underside | Clutch has been done, last one at one fifty. | transmission.mileage=150000 mi
`;
