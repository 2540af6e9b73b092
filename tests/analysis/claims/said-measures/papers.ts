/** "zone | what is said | component@position.attribute=value unit; …": papers, mileages, prices, keys, owners and production. */
export const saidOfPapersAndMoney = `
documents | V5, three keepers I make it. | vehicle.count=3
documents | Two owners from new. | vehicle.count=2
documents | Been through four hands. | vehicle.count=4
documents | It's a one family car. | vehicle.count=1
documents | There's five names in the log book. | vehicle.count=5
documents | Keys, a pair of them, ignition and boot. | vehicle.count=2
documents | Two keys, square head and round head, and the spare of each one, so four on the ring. | vehicle.count=2; vehicle.count=4
documents | One key, and that's all there is. | vehicle.count=1
documents | You get three keys and the code card. | vehicle.count=3
documents | Registered the ninth of March 1961. | title.date=1961-03-09
documents | First registered June 2003. | title.date=2003-06
documents | MOT till June. | title.date=june
documents | MOT runs to the fourteenth of May. | title.date=--05-14
documents | Ticket till November 2025. | title.date=2025-11
documents | Title's a 1968, clear and open. | title.year=1968
documents | Stamped in the book nine times. | title.count=9
documents | Eleven stamps in the service book. | title.count=11
documents | Last MOT in 2019 says 41,870. | odometer.mileage=41870 mi
documents | Last stamp was at eighty four thousand. | title.mileage=84000 mi
documents | Tax is a hundred and ninety five a year. | title.price=195
documents | Door tag says march of 68 is when they built it. | vehicle.date=1968-03
documents | She was built in February 1961. | vehicle.date=1961-02
documents | It came home in 1987. | vehicle.date=1987
documents | I bought it in 2012. | title.date=2012
documents | He's owned it since 1994. | vehicle.date=1994
documents | They built two hundred and twelve of em with this motor in this body. | vehicle.count=212
opening | It's one of two twelve. | vehicle.count=212
documents | A hundred and eighty eight cars total. | vehicle.count=188
documents | One of only fifty made in this colour. | vehicle.count=50
documents | The banker paid three thousand eight hundred and four for it new. | price.price=3804
documents | It was sold one time before on a block out west in 2011 for forty eight five. | price.price=48500
documents | List price was twenty one nine fifty. | price.price=21950
documents | Sticker on it new was four thousand two hundred and six dollars. | price.price=4206 USD
opening | Estimate on the card is sixty five to seventy five thousand. | price.price=65000; price.price=75000
closing | The book's at twelve to fourteen thousand. | price.price=12000; price.price=14000
closing | Guide price is eight to ten thousand pounds. | price.price=8000 GBP; price.price=10000 GBP
opening | The price on the windscreen is three four fifty, which was three nine ninety five. | price.price=3450; price.price=3995
closing | It's thirteen nine fifty on the sticker. | price.price=13950
closing | We're asking twelve five. | price.price=12500
closing | I'd take eleven for cash. | price.price=11000
closing | Yours for four and a half grand. | price.price=4500
closing | Money's eight two fifty. | price.price=8250
opening | A hundred and four thousand two hundred miles. | odometer.mileage=104200 mi
opening | Thirty one thousand miles and change. | odometer.mileage=31000 mi
cabin | Forty one thousand eight hundred and six on the clock, forty one eight oh six. | odometer.mileage=41806 mi; odometer.mileage=41806 mi
cabin | Mileage, there it is, 104,217, and the trip, four hundred and six. | odometer.mileage=104217 mi; odometer.mileage=406 mi
cabin | It's five wheels on that odometer. | odometer.count=5
cabin | Trip meter's showing two hundred and eleven. | odometer.mileage=211 mi
cabin | Clock's reading six two one one four. | odometer.mileage=62114 mi
cabin | It's turned sixty two thousand. | odometer.mileage=62000 mi
documents | The speedo head was changed in 2001. | odometer.date=2001
documents | So the hundred and four thousand is my best belief. | odometer.mileage=104000 mi
documents | The odometer was swapped at sixty one thousand. | odometer.mileage=61000 mi
opening | Mileage is fifty two one. | odometer.mileage=52100 mi
opening | She's only done nineteen thousand. | odometer.mileage=19000 mi
opening | Eighty eight K on it. | odometer.mileage=88000 mi
opening | What I'm selling is a 1968 Cattrell. | vehicle.year=1968
driver-side | The marker lamps are the round ones for 68. | vehicle.year=1968
opening | It's a twenty eighteen. | vehicle.year=2018
opening | An 09 plate. | title.year=2009
documents | The V5 weight is eleven hundred and forty kilos. | vehicle.size=1140 kg
documents | She's fourteen foot three long. | vehicle.size=14.25 ft
documents | It'll tow two thousand pounds. | vehicle.size=2000 lb
documents | VIN plate's held with two rivets. | vin.count=2
documents | Last four of the chassis number are the same as the block. | vin.count=4
documents | The history file's got forty three receipts. | title.count=43
documents | Bills, a whole lever arch. 1996, engine out, two thousand eight hundred and fifty pounds. | engine.date=1996; engine.price=2850 GBP
documents | Receipt here for the gearbox, March 2014, six hundred and forty five plus VAT. | transmission.date=2014-03; transmission.price=645
documents | Respray with the floors, six thousand two hundred. | paint.price=6200
documents | 2016, exhaust. 2018, tyres all round. | exhaust.date=2016; tire.date=2018
documents | Clutch in 2012, eight hundred and ten dollars. | transmission.date=2012; transmission.price=810 USD
documents | Tires, 2021, seven hundred and forty. | tire.date=2021; tire.price=740
documents | Brakes in 2020 at seventy three thousand. | brakes.date=2020; brakes.mileage=73000 mi
documents | A radiator in 2015 and a water pump in 2017. | cooling.date=2015; cooling.date=2017
`;
