# One temperature a line in °F, whether or not the line says so.
code: plain-fahrenheit
title: One number a line, in °F
port: 9600 8N1
channel: temperature F

disconnected: -127
power-on: 85

record: ^\s*(?<temperature>{number})\s*(?:°|deg)?\s*F?\s*$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail))
restart: \b(?:{banner})\b

# 98.6 °F is 37 °C, 32 °F is 0 °C: by definition of the scale. A form met in makers' manuals: +72.0000F.
test: "98.6" -> 37
test: "32" -> 0
test: "-40 F" -> -40
test: "+72.0000F" -> 22.2222
test: "78,8 \xB0F" -> 26
test: "212" -> fault out-of-range
test: "-196.6" -> fault disconnected
test: "185.0" -> 85
test: "OL" -> fault instrument
test: "ready" -> fault restart
test: "26.4 C" -> unreadable
test: "98.6 F 40 %" -> unreadable
