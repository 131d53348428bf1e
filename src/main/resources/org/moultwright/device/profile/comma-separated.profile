# Columns parted by commas, semicolons or tabs, numbers with a point: 12:00:05,25.7,74.2
code: comma-separated
title: Columns, numbers with a point
port: 9600 8N1

# How many columns stand before the temperature; humidity follows it.
setting: skip = 0 in 0..8
setting: unit = C | F
channel: temperature {unit}
channel: humidity %

disconnected: -127
power-on: 85

# A line with two sorts of separators has decimal commas.
let: one-separator = (?:(?=[^;\t]*$)|(?=[^,\t]*$)|(?=[^,;]*$))
let: columns-before = ^{one-separator}(?:[^,;\t]*[,;\t]){{skip}}\s*"?
record: {columns-before}(?<temperature>{point-number})"?\s*[,;\t]\s*"?(?<humidity>{point-number}|{nothing})\s*%?"?\s*(?:[,;\t].*)?$
record: {columns-before}(?<temperature>{point-number})"?\s*(?:[,;\t]\D*)?$
ignore: ^\s*#
ignore: ^(?=.*[,;\t])[^\d]*\b(?:temp|temperature|humidity|time|date)\b[^\d]*$
fault: {columns-before}{nothing}"?\s*(?:[,;\t]|$)
restart: \b(?:{banner})\b

test: "25.7,74.2" -> 25.7 74.2
test: "25.7;74.2;3.1" -> 25.7 74.2
test: "12:00:05,25.7,74.2" -> 25.7 74.2 with skip=1
test: "2026-03-01,12:00:05,25.7" -> 25.7 with skip=2
test: "\"a\",\"25.7\",\"74.2\"" -> 25.7 74.2 with skip=1
test: "78.1,74.2" -> 25.6111 74.2 with unit=F
test: "25.7,nan" -> 25.7 none
test: "time,temperature,humidity" -> ignored
test: "# started" -> ignored
test: "nan,74.2" -> fault instrument
test: "12:00:05,-127.0,0" -> fault disconnected with skip=1
test: "121.1,74.2" -> fault out-of-range
test: "12:00:05,25.7,74.2" -> unreadable
test: "26,4;70,1" -> unreadable
test: "25.7,74.2" -> unreadable with skip=2
