# A one-wire sensor's nine bytes as they are, in hexadecimal digits, with or without its ROM code before them:
# 28DC6674050000B9 91014B467FFF0F1025
code: one-wire-scratchpad
title: One-wire sensor's bytes in hexadecimal digits
port: 9600 8N1

# Sixteenths of a degree, the low byte first: data sheet of the sensor, table of temperature and data.
channel: temperature C, as s16 BA, scale 0.0625
checksum: crc8-1wire hex pad
checksum: crc8-1wire hex serial
power-on: 85

# Such a sensor's last digit moves in any room; common practice, no source.
stuck-after: 12 h

let: byte = (?:[0-9A-F]{2} ?)
let: rom = ^\s*(?:(?:rom)?[\s=:]*(?<serial>{byte}{7}[0-9A-F]{2})[\s=:,;]{1,3})?(?:(?:data|pad)[\s=:]*)?
let: rest = \s*(?::.*)?$

# A bus that nobody answers on reads as all zeros or all ones; all zeros pass the check.
reject: empty {rom}(?:00 ?){9}{rest}
reject: empty {rom}(?:FF ?){9}{rest}
reject: empty ^\s*(?:FF ?FF|00 ?00)\s*$

# Before it first measures the sensor holds 85 °C with 0C in its seventh byte; one that measured 85 °C has 10.
reject: power-on {rom}50 ?05 ?{byte}{4}0C ?{byte}{2}{rest}

record: {rom}(?<pad>(?<temperature>{byte}{2}){byte}{6}[0-9A-F]{2}){rest}
ignore: ^\s*(?:#.*|[0-9A-F ]+\s*t=.*)$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail|no\b))
restart: \b(?:{banner})\b

# Scratchpads and a ROM code in public logs of such sensors; the rest computed.
test: "72014B467FFF0E1057" -> 23.125
test: "50 01 4b 46 7f ff 10 10 49 : crc=49 YES" -> 21
test: "4D014B467FFF0310D8" -> 20.8125
test: "A0014B461FFF1F10E6" -> 26
test: "28DC6674050000B9 91014B467FFF0F1025" -> 25.0625 from 28DC6674050000B9
test: "ROM=28DC6674050000B9 data=5EFF4B467FFF0210B6" -> -10.125 from 28DC6674050000B9
test: "50054B467FFF0C101C" -> fault power-on
test: "28DC6674050000B9 50054B467FFF0C101C" -> fault power-on from 28DC6674050000B9
test: "50054B467FFF1010BD" -> 85
test: "7D014B467FFF0C1057" -> fault checksum
test: "7D014B467FFF0C103C" -> 23.8125
test: "72014B467FFF0E1056" -> fault checksum
test: "28DC6674050000B8 91014B467FFF0F1025" -> fault checksum
test: "000000000000000000" -> fault empty
test: "FF FF FF FF FF FF FF FF FF" -> fault empty
test: "FFFF" -> fault empty
test: "72014B467FFF0E" -> unreadable
test: "23.125" -> unreadable
test: "no devices" -> fault instrument
