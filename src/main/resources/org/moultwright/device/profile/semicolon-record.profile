# Semicolon records with address, value, unit, serial number and a check value: A01;25.7;C;004711;1E
code: semicolon-record
title: Semicolon records with an address and a check value
port: 9600 8N1

# How the two last digits are made of all that stands before them.
setting: check = xor8 | sum8 | lrc8

channel: temperature C
channel: humidity %
checksum: {check} text body in check

disconnected: -127
power-on: 85

let: value = (?:{number}|{nothing})
record: ^(?<body>(?<address>\w{1,12});(?<temperature>{value});(?<unit>[CF]);(?:(?<humidity>{value});%(?:RH)?;)?(?<serial>\w{1,24});)(?<check>[0-9A-F]{2})$
ignore: ^#
restart: \b(?:{banner})\b

# The form as makers' manuals describe it; the check values are computed.
test: "A01;25.7;C;004711;1E" -> 25.7 from 004711
test: "A01;25.7;C;74.2;%RH;004711;3E" -> 25.7 74.2 from 004711
test: "A01;78.1;F;004711;15" -> 25.6111 from 004711
test: "A01;25.7;C;004711;CA" -> 25.7 with check=sum8
test: "A01;25.7;C;004711;36" -> 25.7 with check=lrc8
test: "A01;25.7;C;004711;CA" -> fault checksum
test: "A01;25.1;C;004711;1E" -> fault checksum
test: "A02;25.7;C;004711;1E" -> fault checksum
test: "A01;-H-;C;004711;48" -> fault instrument from 004711
test: "A01;-127.0;C;004711;07" -> fault disconnected
test: "A01;25.7;C;004711;" -> unreadable
test: "25.7;C;004711;1E" -> unreadable
test: "# address;value;unit;serial;check" -> ignored
