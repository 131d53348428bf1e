# Named values on a line, in any order, with or without units: T=25.7C H=74.2%
code: key-value
title: Named values on a line
port: 9600 8N1
channel: temperature C
channel: humidity %

# Digital one-wire sensors: what they say when the wire is broken, and before they first measure.
disconnected: -127
power-on: 85

let: before = (?:.*?[\s,;|])?
let: after = (?=$|[\s,;|])
let: is = \s*[=:]\s*
let: warmth = (?:t|temp|temperature){is}
let: moisture = (?:h|rh|hum|humidity){is}
let: name = (?:id|address|addr|sensor|probe)

let: who = (?:(?={before}(?:rom|serial){is}(?<serial>[\w:-]{1,24}){after})|)(?:(?={before}{name}{is}(?<address>[\w:-]{1,24}){after})|)
let: when = (?:(?={before}seq{is}(?<sequence>\d{1,12}){after})|)

record: ^(?={before}{warmth}(?<temperature>{number})\s*(?:°|deg)?\s*(?<unit>[CF])?{after})(?:(?={before}{moisture}(?<humidity>{number}|{nothing})\s*(?:%\s*(?:rh)?)?{after})|){who}{when}
fault: ^(?={before}{warmth}{nothing}){who}
fault: ^\s*(?:err\b|error|fail)
restart: \b(?:{banner})\b

test: "T=25.7C H=74.2%" -> 25.7 74.2
test: "H=74.2% T=25.7C" -> 25.7 74.2
test: "t: 25.745 C 03-01-1999 15:49:15" -> 25.745
test: "temperature=78.1 F" -> 25.6111
test: "temperature=78.1F;humidity=70" -> 25.6111 70
test: "Temp: 25.7 \xC2\xB0C, Humidity: 74.2 %RH" -> 25.7 74.2
test: "T=25.7\xB0C, RH=74,2 %" -> 25.7 74.2
test: "T=25,7\xF8C|H=74" -> 25.7 74
test: "T=\xE2\x88\x923.5 C" -> -3.5
test: "n=17 T=25.7 H=74.2 bat=3.1V" -> 25.7 74.2
test: "T=25,H=74" -> 25 74

test: "T=nan H=nan" -> fault
test: "T=Err" -> fault
test: "T=OL H=74.2%" -> fault
test: "Error 3" -> fault
test: "T=-127.00C H=0%" -> fault disconnected
test: "T=-196.6F" -> fault
test: "T=9.9E37" -> fault
test: "T=121.1C" -> fault
test: "T=85.0C" -> 85

test: "H=74.2%" -> unreadable
test: "25.7" -> unreadable
test: "set=27.0" -> unreadable
test: "T=299.5K" -> unreadable
test: "T=" -> unreadable
test: "T=25.7.1" -> unreadable

test: "T=25.7C H=nan" -> 25.7 none
test: "rom=28DC667405000098 T=25.7C" -> 25.7 from 28DC667405000098
test: "id=3 T=25.7C H=74.2%" -> 25.7 74.2 from 3
test: "id=3 T=nan" -> fault instrument from 3
test: "seq=17 T=25.7C" -> 25.7
test: "rst cause: power on" -> fault restart
