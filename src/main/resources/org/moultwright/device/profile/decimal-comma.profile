# Columns parted by semicolons or tabs, numbers with a comma: 26,4;70,1
code: decimal-comma
title: Columns, numbers with a comma
port: 9600 8N1

# How many columns stand before the temperature; humidity follows it.
setting: skip = 0 in 0..8
channel: temperature C
channel: humidity %

disconnected: -127
power-on: 85

let: columns-before = ^(?:[^;\t]*[;\t]){{skip}}\s*
record: {columns-before}(?<temperature>{comma-number})\s*(?:°?\s*(?<unit>[CF]))?\s*[;\t]\s*(?<humidity>{comma-number}|{nothing})\s*(?:%\s*(?:rF|RH)?)?\s*(?:[;\t].*)?$
record: {columns-before}(?<temperature>{comma-number})\s*(?:°?\s*(?<unit>[CF]))?\s*(?:[;\t]\D*)?$
ignore: ^\s*#
ignore: ^(?=.*[;\t])[^\d]*\b(?:temp|temperatur|temperature|feuchte|humidity|zeit|time|datum|date)\b[^\d]*$
fault: {columns-before}{nothing}\s*(?:[;\t]|$)
restart: \b(?:{banner})\b

test: "26,4;70,1" -> 26.4 70.1
test: "26,4\xB0C;70,1%" -> 26.4 70.1
test: "12:00:05;26,4;70,1;3,1" -> 26.4 70.1 with skip=1
test: "01.03.2026;12:00:05;-2,5" -> -2.5 with skip=2
test: "\xE2\x88\x922,5;70" -> -2.5 70
test: "26,4;---" -> 26.4 none
test: "Zeit;Temperatur;Feuchte" -> ignored
test: "OL;70,1" -> fault instrument
test: "-127,0;0,0" -> fault disconnected
test: "121,1;70,1" -> fault out-of-range
test: "26.4;70.1" -> unreadable
test: "26,4,70,1" -> unreadable
