# Modbus RTU, floating-point numbers in two registers each: temperature, then humidity.
code: modbus-float32
title: Modbus RTU, floating-point numbers
port: 9600 8N1
framing: modbus
decode: hex

setting: address = 1 in 1..247
setting: function = 4 | 3
setting: register = 0 in 0..65535
setting: count = 4 | 2
# The order the four bytes of a number come in, A being the one with the sign.
setting: order = ABCD | CDAB | BADC | DCBA
setting: every = 10 in 1..3600
poll: modbus {address} {function} {register} {count} every {every} s

channel: temperature C, as f32 {order}
channel: humidity %, as f32 {order}
checksum: crc16-modbus hex frame
stuck-after: 24 h

let: float = [0-9A-F]{8}
record: ^(?<frame>(?<address>{#address})0{function}08(?<temperature>{float})(?<humidity>{float})[0-9A-F]{4})$
record: ^(?<frame>(?<address>{#address})0{function}04(?<temperature>{float})[0-9A-F]{4})$
fault: ^(?<address>{#address})8{function}

# 25.7 and 74.2 as IEEE 754 binary32, frames and checks computed.
test: "01040841CD999A4294666646F6" -> 25.7 74.2 from 01
test: "010408999A41CD666642943A5B" -> 25.7 74.2 with order=CDAB
test: "010408CD419A99944266669E88" -> 25.7 74.2 with order=BADC
test: "0104089A99CD41666694429863" -> 25.7 74.2 with order=DCBA
test: "01030841CD999A42946666F72C" -> 25.7 74.2 with function=3
test: "11040441CD999A85BD" -> 25.7 from 11 with address=17 count=2
test: "01040841CD999A4294666646F6" -> fault instrument with order=CDAB
test: "0104087FC00000429466665D7B" -> fault instrument
test: "01040841CD999A4294666646F7" -> fault checksum
test: "018402C2C1" -> fault instrument
test: "018302C0F1" -> fault instrument with function=3
test: "02040841CD999A4294666646F6" -> unreadable
