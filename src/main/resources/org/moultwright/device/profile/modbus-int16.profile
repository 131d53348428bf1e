# Modbus RTU, whole numbers in registers: asked for two registers, it answers with temperature and humidity.
code: modbus-int16
title: Modbus RTU, whole numbers
port: 9600 8N1
framing: modbus
decode: hex

setting: address = 1 in 1..247
setting: function = 4 | 3
setting: register = 0 in 0..65535
setting: count = 2 | 1
# How many of the number make one degree or one percent.
setting: per = 10 | 100 | 1
setting: every = 10 in 1..3600
poll: modbus {address} {function} {register} {count} every {every} s

channel: temperature C, as s16 AB, scale 1/{per}, none -32768 32767
channel: humidity %, as s16 AB, scale 1/{per}, none -32768 32767
checksum: crc16-modbus hex frame

let: word = [0-9A-F]{4}
record: ^(?<frame>(?<address>{#address})0{function}04(?<temperature>{word})(?<humidity>{word}){word})$
record: ^(?<frame>(?<address>{#address})0{function}02(?<temperature>{word}){word})$
fault: ^(?<address>{#address})8{function}

# Frames after the examples of the Modbus specification in public test suites; the rest computed.
test: "01 04 04 0131 0222 2ACE" -> 30.5 54.6 from 01
test: "01030401310222 2B79" -> 30.5 54.6 with function=3
test: "11040401310222 3B0F" -> 30.5 54.6 from 11 with address=17
test: "010402FF33 B8D5" -> -20.5 with count=1
test: "01040409C41388 B4B3" -> 25 50 with per=100
test: "0104048000 0222 533D" -> fault instrument
test: "0104047FFF 0222 5319" -> fault instrument
test: "018402C2C1" -> fault instrument from 01
test: "018302C0F1" -> fault instrument with function=3
test: "01040401310222 2ACF" -> fault checksum
test: "01040401320222 2ACE" -> fault checksum
test: "02040401310222 2ACE" -> unreadable
test: "010404013102" -> unreadable
