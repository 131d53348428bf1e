# An instrument that answers one letter with its temperature and another with its humidity: +22.2500C, 38%
code: letter-poll-humidity
title: Answers one letter with its temperature, another with its humidity
port: 9600 8N1
framing: lines 2
setting: letter = T | C | F
setting: humidity-letter = H | R
setting: every = 10 in 1..3600
poll: "{letter}\r{humidity-letter}\r" every {every} s
channel: temperature C
channel: humidity %

disconnected: -127
power-on: 85

record: ^[?>\s]*(?<temperature>{number})\s*°?\s*(?<unit>[CF])\s*\n[?>\s]*(?<humidity>{number}|{nothing})\s*(?:%\s*(?:RH)?)?\s*$
fault: ^\s*{nothing}\s*\n
restart: \b(?:{banner})\b

# Forms met in makers' manuals; which letter asks is common practice, no source.
test: "+22.2500C\n38%" -> 22.25 38
test: "+72.0000F\n38 %RH" -> 22.2222 38
test: "+22.2500C\n-E-" -> 22.25 none
test: "-E-\n38%" -> fault instrument
test: "-127.0000C\n38%" -> fault disconnected
test: "38%\n+22.2500C" -> unreadable
test: "+22.2500C" -> unreadable
