/** "zone | what is said | component@position.attribute=value unit; …": what a walk says under the bonnet and of what feeds, cools and fires it. */
export const saidInTheEngineRoom = `
rear | Badge here says 2.2 and I polish it daily. | engine.displacement=2.2 L
rear | The badge on the back says three point oh. | engine.displacement=3 L
front | It says three fifty on the fender badge and that's what's in it. | engine.displacement=350 cu in
front | Says four forty right there on the side of the scoop. | engine.displacement=440 cu in
rear | Boot lid says 1.8 so it's not telling fibs. | engine.displacement=1.8 L
engine-bay | Air cleaner's got 390 on it. | engine.displacement=390 cu in
engine-bay | Two point two, 2 1 double 8 cc to be pedantic. | engine.displacement=2.2 L; engine.displacement=2188 cc
engine-bay | She's a three oh two, all stock. | engine.displacement=302 cu in
engine-bay | The engine's a sixteen hundred. | engine.displacement=1600 cc
engine-bay | She sets four hundred and forty cubes. | engine.displacement=440 cu in
engine-bay | Nineteen ninety eight cc on the log book, so it's a two litre. | engine.displacement=1998 cc; engine.displacement=2 L
engine-bay | And in there's your engine, four in a row, iron block. | engine.count=4
engine-bay | Six in a line under that rocker cover, it's the original engine. | engine.count=6
engine-bay | The engine fires on all eight. | engine.count=8
engine-bay | We put a gauge to all eight and the engine's even as you like. | engine.count=8
engine-bay | It's got six pots and they all pull. | engine.count=6
engine-bay | Four banger, nothing to it. | engine.count=4
engine-bay | Twelve cylinders and two of everything. | engine.count=12
engine-bay | The engine is a straight eight. | engine.count=8
engine-bay | Sixteen valves, one belt. | engine.count=16
engine-bay | Five main bearings in the bottom end. | engine.count=5
engine-bay | Three hundred and seventy five horse at forty six hundred and four eighty on the foot pounds. | engine.power=375 hp; engine.torque=480 lb-ft
engine-bay | A hundred and five brake horse at five thousand. | engine.power=105 hp
engine-bay | Makes two ten at the wheels. | engine.power=210 hp
engine-bay | The book gives it as ninety two kilowatts. | engine.power=92 kW
engine-bay | Engine's rated one seventy horsepower. | engine.power=170 hp
engine-bay | Good for a hundred and fifty bhp. | engine.power=150 hp
engine-bay | Two hundred and forty foot pounds of twist. | engine.torque=240 lb-ft
engine-bay | Torque figure is three hundred and ten newton metres. | engine.torque=310 N·m
engine-bay | And it'll pull, three forty on the torque. | engine.torque=340 lb-ft
engine-bay | That's ten and a quarter to one on the squeeze. | engine.ratio=10.25
engine-bay | Compression ratio's nine to one. | engine.ratio=9
engine-bay | Pistons are eight and a half to one. | engine.ratio=8.5
drive | Sixty pounds on the oil gauge cold, it'll settle at forty five or so. | engine.pressure=60 psi; engine.pressure=45 psi
drive | I got sixty pounds on the oil cold and it'll lay down at twenty five when it's hot. | engine.pressure=60 psi; engine.pressure=25 psi
drive | Oil's showing fifty and it sits there. | engine.pressure=50 psi
drive | Oil pressure's three and a half bar warm. | engine.pressure=3.5 bar
drive | Needle's on forty for the oil. | engine.pressure=40 psi
drive | It's making fifty five pounds of oil pressure. | engine.pressure=55 psi
drive | Twenty pounds at a hot idle on the oil. | engine.pressure=20 psi
engine-bay | Compression, the low hole was one fifty two and the best one was a hundred and sixty. | engine.pressure=152 psi; engine.pressure=160 psi
engine-bay | We compression tested it, lowest one forty five, highest one fifty. | engine.pressure=145 psi; engine.pressure=150 psi
engine-bay | Compressions are all within five of one seventy. | engine.pressure=170 psi
engine-bay | Number three's at one forty eight on the compression gauge. | engine.pressure=148 psi
engine-bay | The turbo pushes twelve pounds. | engine.pressure=12 psi
engine-bay | There's your casting date, eleven five sixty nine, so november the fifth of 69. | engine.date=1969-11-05; engine.date=1969-11-05
engine-bay | Engine was rebuilt in 2014. | engine.date=2014
engine-bay | 1996, engine out, crank ground, new shells. | engine.date=1996
engine-bay | Cambelt was done in June 2021. | engine.date=2021-06
engine-bay | Timing belt and pump in 2019. | engine.date=2019
engine-bay | Head gasket, that was 2008. | engine.date=2008
engine-bay | Bored oh thirty and honed. | engine.size=0.03 in
engine-bay | It's been bored thirty over. | engine.size=0.03 in
engine-bay | Engine's out sixty thou. | engine.size=0.06 in
engine-bay | Takes five quarts of oil. | engine.size=5 qt
engine-bay | Sump holds four and a half litres. | engine.size=4.5 L
engine-bay | The engine rebuild was four thousand six hundred and twelve dollars. | engine.price=4612 USD
engine-bay | Cambelt and water pump, two hundred and eighty pounds. | engine.price=280 GBP
engine-bay | A crate motor like that runs you six grand. | engine.price=6000 USD
engine-bay | He's put nine hundred miles on that motor since he built it. | engine.mileage=900 mi
engine-bay | Engine's got eleven thousand on it since the rebuild. | engine.mileage=11000 mi
engine-bay | Cambelt done at ninety six thousand. | engine.mileage=96000 mi
engine-bay | The engine's out of a 1969 wagon. | engine.year=1969
engine-bay | Motor's a 72. | engine.year=1972
engine-bay | Four inch bore and a three and a half stroke on this engine. | engine.diameter=4 in; engine.size=3.5 in
engine-bay | It's a seven fifty, seven hundred fifty cfm, that carb. | fuel-system.flow=750 cfm
engine-bay | Single four barrel on the top of it. | fuel-system.count=1
engine-bay | Carburetor's a six hundred. | fuel-system.flow=600 cfm
engine-bay | Two carbs and they're balanced. | fuel-system.count=2
engine-bay | Pair of inch and a half carburettors. | fuel-system.count=2; fuel-system.diameter=1.5 in
engine-bay | Carb throat's forty millimetres. | fuel-system.diameter=40 mm
engine-bay | The carb was rebuilt in 2020. | fuel-system.date=2020
engine-bay | Fuel pump, new last year, sixty five dollars. | fuel-system.price=65 USD
engine-bay | Injectors went in at a hundred and ten thousand. | fuel-system.mileage=110000 mi
engine-bay | Fuel pump's putting out six pounds. | fuel-system.pressure=6 psi
engine-bay | The carb's off a 1967. | fuel-system.year=1967
engine-bay | Eight plugs, eight leads, all new. | ignition.count=8
engine-bay | Plugs are gapped at thirty five thou. | ignition.size=0.035 in
engine-bay | Distributor was rebuilt in 2017. | ignition.date=2017
engine-bay | Electronic ignition under the cap, a hundred and twenty quid that was. | ignition.price=120 GBP
engine-bay | Spark plugs were changed at sixty thousand. | ignition.mileage=60000 mi
engine-bay | Radiator's a twenty six inch with three rows to it. | cooling.width=26 in; cooling.count=3
engine-bay | Seven blade fan. | cooling.count=7
engine-bay | Fan's sixteen inches across. | cooling.diameter=16 in
engine-bay | Rad was recored in 2015. | cooling.date=2015
engine-bay | New radiator, three hundred and forty dollars. | cooling.price=340 USD
engine-bay | Cooling system takes eleven pints. | cooling.size=11 pt
engine-bay | Water pump went on at seventy one thousand. | cooling.mileage=71000 mi
engine-bay | Radiator holds sixteen quarts. | cooling.size=16 qt
engine-bay | It's a fifteen pound cap on the radiator. | cooling.pressure=15 psi
engine-bay | Twin electric fans on that radiator. | cooling.count=2
rear | There's a pair of pipes out the back with the chrome tips, two and a half inch. | exhaust@rear.count=2; exhaust.diameter=2.5 in
rear | Two exhaust pipes but it's one silencer up the middle. | exhaust@rear.count=2; exhaust.count=1
rear | Single exhaust, tucked up on the left. | exhaust.count=1
rear | Four tailpipes out the back. | exhaust@rear.count=4
underside | All of it in stainless, the exhaust, fitted in 2016. | exhaust.date=2016
underside | Exhaust went on at sixty two thousand miles. | exhaust.mileage=62000 mi
underside | The exhaust was six hundred and fifty quid. | exhaust.price=650 GBP
underside | Two and a quarter inch pipe all the way. | exhaust.diameter=2.25 in
underside | Three inch downpipe. | exhaust.diameter=3 in
underside | It's got two mufflers and a crossover. | exhaust.count=2
engine-bay | Headers with inch and three quarter tubes. | exhaust.diameter=1.75 in
engine-bay | Battery's a group 27 and it's twelve point seven. | electrical.size=group 27; electrical.voltage=12.7 V
drive | Fourteen two on the volts so it's charging. | electrical.voltage=14.2 V
engine-bay | It's still a six volt system. | electrical.voltage=6 V
engine-bay | Battery reads twelve point four standing. | electrical.voltage=12.4 V
engine-bay | Battery's dated four of twenty three. | electrical.date=2023-04
engine-bay | Battery was new in 2022. | electrical.date=2022
engine-bay | Battery was ninety five quid. | electrical.price=95 GBP
engine-bay | Alternator, two hundred and ten dollars, done last spring. | electrical.price=210 USD
engine-bay | Alternator was changed at eighty eight thousand. | electrical.mileage=88000 mi
engine-bay | Two batteries in series, one each side. | electrical.count=2
engine-bay | Seventy amp hour battery. | electrical.size=70 Ah
front | There's two holes in here where you plug it in. | electrical.count=2
front | It'll take fifty kilowatts on a rapid. | electrical.power=50 kW
cargo | The charging lead's maybe fifteen feet long. | electrical.size=15 ft
cargo | Cable is five metres. | electrical.size=5000 mm
opening | It's the forty kilowatt hour battery. | electrical.size=40 kWh
opening | Sixty two kilowatt hours, fifty eight of them usable. | electrical.size=62 kWh; electrical.size=58 kWh
opening | Full charge is showing a hundred and forty miles. | vehicle.mileage=140 mi
`;
