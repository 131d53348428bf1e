# Numbers with their units in brackets, one after the other: 25.74 [C]74.20 [%RH]
code: bracketed-units
title: Numbers with their units in brackets
port: 9600 8N1
channel: temperature C
channel: humidity %

disconnected: -127
power-on: 85

let: of-water = [\s,;]*(?<humidity>{number}|{nothing})\s*\[\s*%\s*(?:RH)?\s*\]
record: ^\s*(?<temperature>{number})\s*\[\s*°?(?<unit>[CF])\s*\](?:{of-water})?\s*$
fault: ^\s*{nothing}\s*\[
fault: ^\s*(?:err\b|error|fail)
restart: \b(?:{banner})\b

# A form met in makers' manuals: xx.xx [C]yy.yy [%RH].
test: "25.74 [C]74.20 [%RH]" -> 25.74 74.2
test: "25.74 [C]" -> 25.74
test: "78.1 [F] 74.2 [%]" -> 25.6111 74.2
test: "25,74 [\xB0C]; 74,20 [%RH]" -> 25.74 74.2
test: "\xE2\x88\x923.50 [\xC2\xB0C]" -> -3.5
test: "25.74 [C]-H- [%RH]" -> 25.74 none
test: "Err [C]74.20 [%RH]" -> fault instrument
test: "121.10 [C]74.20 [%RH]" -> fault out-of-range
test: "-127.00 [C]0.00 [%RH]" -> fault disconnected
test: "74.20 [%RH]" -> unreadable
test: "25.74 [C]74.20 [%R" -> unreadable
test: "25.74" -> unreadable
