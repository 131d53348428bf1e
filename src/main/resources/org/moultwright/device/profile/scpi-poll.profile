# An instrument of the SCPI standard: asked READ?, it answers +2.57450000E+01
code: scpi-poll
title: SCPI instrument, asked for a measurement
port: 9600 8N1
setting: command = MEAS:TEMP | READ | FETC
setting: unit = C | F
setting: every = 10 in 1..3600
poll: "{command}?\n" every {every} s

# SCPI 1999, volume 1, 7.2.1: 9.91E37 is not a number, 9.9E37 and -9.9E37 are beyond the range.
channel: temperature {unit}, none 9.91E37 9.9E37 -9.9E37
channel: humidity %, none 9.91E37 9.9E37 -9.9E37
stuck-after: 24 h

record: ^\s*(?<temperature>{point-number})\s*(?:,\s*(?<humidity>{point-number})\s*)?$
ignore: ^\s*[A-Z:]{4,20}\?\s*$
fault: ^\s*[+-]?\d{1,5},\s*".*"\s*$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail))

test: "+2.57450000E+01" -> 25.745
test: "25.745" -> 25.745
test: "-1.12E+01,+7.42E+01" -> -11.2 74.2
test: "+7.81E+01" -> 25.6111 with unit=F
test: "9.91E37" -> fault instrument
test: "+9.90000000E+37" -> fault instrument
test: "-9.9E37" -> fault instrument
test: "+2.57E+01,9.91E37" -> 25.7 none
test: "1.211E+02" -> fault out-of-range
test: "-113,\"Undefined header\"" -> fault instrument
test: "MEAS:TEMP?" -> ignored
test: "25,745" -> 25 none
test: "25.7C" -> unreadable
