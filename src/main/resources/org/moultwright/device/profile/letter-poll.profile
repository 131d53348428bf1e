# An instrument that answers a letter with its temperature: +22.2500C
code: letter-poll
title: Answers a letter with its temperature
port: 9600 8N1
setting: letter = T | C | F | R
setting: every = 10 in 1..3600
poll: "{letter}\r" every {every} s
channel: temperature C

disconnected: -127
power-on: 85

record: ^[?>\s]*(?<temperature>{number})\s*°?\s*(?<unit>[CF])\s*$
ignore: ^[?>\s]*[A-Z]?\s*$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail))
restart: \b(?:{banner})\b

# Forms met in makers' manuals; which letter asks is common practice, no source.
test: "+22.2500C" -> 22.25
test: "+72.0000F" -> 22.2222
test: ">+22.2500C" -> 22.25
test: "T" -> ignored
test: "-E-" -> fault instrument
test: "OL" -> fault instrument
test: "+185.0000C" -> fault out-of-range
test: "-127.0000C" -> fault disconnected
test: "38%" -> unreadable
test: "+22.2500" -> unreadable
