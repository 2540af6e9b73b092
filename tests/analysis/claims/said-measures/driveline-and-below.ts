/** "zone | what is said | component@position.attribute=value unit; …": gearbox, axle, frame, floors and tanks. */
export const saidOfDrivelineAndBelow = `
opening | It's got three fifty fives out back. | final-drive.ratio=3.55
underside | Three seventy threes in the rear. | final-drive.ratio=3.73
underside | There's four tens in it. | final-drive.ratio=4.1
underside | Back axle's 4 point 1, that's stamped on the casing. | final-drive.ratio=4.1
underside | Diff is a three oh eight. | final-drive.ratio=3.08
underside | The tag on the axle reads three two three. | final-drive.ratio=3.23
underside | Gears are three ninety one. | final-drive.ratio=3.91
underside | Rear end's a nine inch with thirty one splines. | final-drive.diameter=9 in; final-drive.count=31
underside | It's the twelve bolt rear. | final-drive.count=12
underside | Diff was rebuilt in 2019. | final-drive.date=2019
underside | Axle came out of a 1971 wagon. | final-drive.year=1971
underside | Gears and bearings in the diff, eleven hundred dollars. | final-drive.price=1100 USD
underside | Diff was done at ninety thousand. | final-drive.mileage=90000 mi
underside | Diff takes two pints. | final-drive.size=2 pt
cabin | Gearbox, four speeds, no overdrive on this one. | transmission.count=4
cabin | Five speed manual. | transmission.count=5
cabin | It's a six speed auto. | transmission.count=6
cabin | Three on the tree. | transmission.count=3
cabin | Four on the floor with a white knob. | transmission.count=4
cabin | Five forward and one back. | transmission.count=5
cabin | Ten gears in that gearbox, and it uses them all. | transmission.count=10
cabin | Single speed, it's electric. | transmission.count=1
underside | 2021, a clutch. | transmission.date=2021
underside | Clutch was done in 2021. | transmission.date=2021
underside | The gearbox was rebuilt in March 2014. | transmission.date=2014-03
underside | Gearbox rebuild, six hundred and forty five pounds. | transmission.price=645 GBP
underside | Transmission was eighteen hundred bucks. | transmission.price=1800 USD
underside | The clutch was done at fifty one thousand. | transmission.mileage=51000 mi
underside | The gearbox has done nine thousand since the rebuild. | transmission.mileage=9000 mi
underside | Clutch is a ten and a half inch. | transmission.diameter=10.5 in
underside | Transmission's out of an 88 van. | transmission.year=1988
underside | Gearbox holds three pints. | transmission.size=3 pt
underside | Driveshaft's three inch. | transmission.diameter=3 in
underside | Propshaft has two joints. | transmission.count=2
underside | Chassis is a ladder, two box section rails and four cross members. | frame.count=2; frame.count=4
underside | Five crossmembers and every one of them straight. | frame.count=5
underside | Frame rails are four inches deep. | frame.size=4 in
underside | Chassis is three mil steel. | frame.thickness=3 mm
underside | The frame's boxed in three sixteenths plate. | frame.thickness=0.1875 in
underside | There's a couple of holes in the left rail. | frame.count=2
underside | Frame was blasted and painted in 2013. | frame.date=2013
underside | Frame's off a 1940. | frame.year=1940
underside | The frame work was four thousand eight hundred. | frame.price=4800
underside | Two patches on the chassis, both neat. | frame.count=2
underside | Three welds on this frame rail. | frame.count=3
underside | Floors, these are the 2011 floors, sixteen gauge, one point six millimetres. | floors.date=2011; floors.thickness=16 ga; floors.thickness=1.6 mm
underside | Floors have drain bungs in, four, all present. | floors.count=4
underside | Eighteen gauge floors, welded not riveted. | floors.thickness=18 ga
underside | Floor pans were cut out and replaced in 2009. | floors.date=2009
underside | There's two patches in the floor. | floors.count=2
underside | New floors were nine hundred pounds. | floors.price=900 GBP
underside | A hole in the floor about two inches across. | floors.size=2 in
underside | Jacking points, four of them, all solid. | body.count=4
underside | Lift pads, it should be four and I count three. | body.count=4; body.count=3
underside | The fuel tank's twenty gallons. | fuel-tank.size=20 gal
rear | Tank holds fifty five litres. | fuel-tank.size=55 L
underside | Gas tank's an eighteen. | fuel-tank.size=18 gal
underside | Fuel tank's new, 2015. | fuel-tank.date=2015
underside | Two tanks, one each side. | fuel-tank.count=2
underside | Tank was two hundred and thirty dollars. | fuel-tank.price=230 USD
underside | Twin tanks, twelve gallons each. | fuel-tank.count=2; fuel-tank.size=12 gal
driver-side | Two fillers on this side. | fuel-tank.count=2
underside | The tank is out of a 1966. | fuel-tank.year=1966
`;
