"""A filled strip-down sheet: an invented door closer with springs, shims and oil. It was stripped on paper only."""

CLOSER = """\
no,part,on,under,held by,called,to,screw,torque,count,tool,works,size,hazard,picture,note
0,Body,,,nothing,,,,,,,,60x40,,,
1,Cover,,,clips,Cover clips,,,,2,,,70x12,,1,snaps off by hand
2,Arm,,Cover,screw,,,M6x16 cylinder hex 5,14 N·m,1,,,50x8,,2,
3,Drain plug,,Cover,screw,Drain plug,,M8x10 cylinder hex 6,12 N·m,1,,,12x10,,3,
4,End cap,,Arm,oil,Damping oil,Drain plug,,,1,,,30x10,\
caution: The oil makes the floor slippery. / You can fall and hurt yourself. / Put a tray under the drain first.,3,40 ml
,,,,spring,Spring load,,,,1,,,,\
warning: The spring pushes with 300 N. / The cap can hit your face. / Turn the speed valve out until it is slack.,,
,,,,screws,,,M5x16 cylinder hex 4,6 N·m,4,,,,,,
,,,,o-ring,Cap O-ring,,,,1,,Closing,,,,
5,Spring,,End cap,nothing,,,,,,,,12x40,,4,
6,Shims,,Spring,setting,Closing speed,End cap,,,,,,12x2,,5,
7,Piston,,Shims,nothing,,,,,,,,14x20,,6,
8,Shaft seal,,Piston,press,,,,,1,Seal puller,,10x4,,7,
"""

LAMP = """\
part;on;under;held by;called;to;screw;torque;count;works;hazard
Lamp base;;;charge;Charge of the board;;;;;;danger: The board holds 300 V. / Contact kills. / Wait for 60 s.
Mains lead;;;mains plug;Mains plug;;;;;;danger: The lead carries 230 V. / Contact kills. / Pull the plug first.
Upper glass hood;;;screws;;;M3x6 pan PH1;0,5 N·m;2;;
Tube;;Upper glass hood;plug;Tube plug;Ballast;;;;Light;caution: The tube is thin glass. / Splinters cut. / Wear gloves.
Ballast;;Upper glass hood+Tube;screws;;;M4x8 pan PH2;by hand;2;;
"""
