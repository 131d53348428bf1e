# A humidity sensor's two words as they are, each with its check, in hexadecimal digits: 666693 8000A2
code: hex-words
title: Humidity sensor's two words in hexadecimal digits
port: 9600 8N1

# Humidity is span * word / 65535 - base: 100 and 0 for one generation of sensors, 125 and 6 for the next.
setting: span = 100 in 100..125
setting: base = 0 in 0..6

channel: temperature C, as u16 AB, scale 175/65535, offset -45
channel: humidity %, as u16 AB, scale {span}/65535, offset -{base}, clip
checksum: crc8-31-ff hex warmth
checksum: crc8-31-ff hex moisture
stuck-after: 12 h

let: byte = (?:[0-9A-F]{2} ?)
reject: empty ^\s*(?:00 ?){6}\s*$
record: ^\s*(?<warmth>(?<temperature>{byte}{2})[0-9A-F]{2})[\s,;]*(?<moisture>(?<humidity>{byte}{2})[0-9A-F]{2})\s*$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail|no\b))
restart: \b(?:{banner})\b

# Formulas and the check of BEEF: data sheet of the sensor, version 5, with table 20; values computed from them.
test: "666693 666693" -> 25 40
test: "666693 666693" -> 25 44 with span=125 base=6
test: "66 66 93 80 00 A2" -> 25 50.0008
test: "8000A2,BEEF92" -> 42.5013 74.5846
test: "666693 0000 81" -> 25 0 with span=125 base=6
test: "666693 FFFFAC" -> 25 100 with span=125 base=6
test: "FFFFAC FFFFAC" -> fault out-of-range
test: "666694 666693" -> fault checksum
test: "666693 666683" -> fault checksum
test: "000000 000000" -> fault empty
test: "BEEF92" -> unreadable
