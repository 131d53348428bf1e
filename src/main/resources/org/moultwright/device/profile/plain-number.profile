# One temperature a line and nothing else. A line of humidity alone is not for this profile.
code: plain-number
title: One number a line
port: 9600 8N1
channel: temperature C

# Digital one-wire sensors: what they say when the wire is broken, and before they first measure.
disconnected: -127
power-on: 85

record: ^\s*(?<temperature>{number})\s*(?:°|deg)?\s*(?<unit>[CF])?\s*$
fault: ^\s*(?:{nothing}\s*$|(?:err\b|error|fail))
restart: \b(?:{banner})\b

# Forms met in makers' manuals.
test: "  1.5" -> 1.5
test: "-11.2" -> -11.2
test: "+22.2500C" -> 22.25
test: "+72.0000F" -> 22.2222
test: "121.1" -> fault out-of-range
test: "Err.1" -> fault instrument
test: "-H-" -> fault
test: "OL" -> fault instrument
test: "NaN" -> fault
test: "9.9E37" -> fault
test: "9.91E37" -> fault
test: "38%" -> unreadable

# Beyond what such a probe measures, or no measurement at all.
test: "-127.00" -> fault disconnected
test: "-196.6F" -> fault disconnected
test: "-7040" -> fault
test: "85.0" -> 85

# Decimal comma; degree sign in UTF-8, ISO-8859-1 and code page 437; minus sign U+2212.
test: "26,4" -> 26.4
test: "26.4 \xC2\xB0C" -> 26.4
test: "26.4\xB0C" -> 26.4
test: "26.4 \xF8C" -> 26.4
test: "\xE2\x88\x9211.2" -> -11.2
test: "2.64e1 deg C" -> 26.4
test: "212F" -> fault
test: "98.6 F" -> 37

test: "26.4 27.1" -> unreadable
test: "26..4" -> unreadable
test: "299.5K" -> unreadable
test: "T=25.7C" -> unreadable
test: "hello" -> unreadable
test: "climate board 3, firmware 1.4" -> fault restart
test: "ready" -> fault restart
