# A line is an object in JSON: {"id":"a1","temperature":25.7,"humidity":74.2}
code: json
title: Objects in JSON, one a line
port: 115200 8N1
longest: 600
decode: json
channel: temperature C
channel: humidity %

disconnected: -127
power-on: 85

# Patterns see ;name=value;name=value; with the names of the objects around before a point.
let: path = .*;(?:[\w.-]*\.)?
let: warmth = (?:t|temp|temperature)
let: moisture = (?:(?={path}(?:h|rh|hum|humidity)=(?<humidity>{number}|{nothing});)|)
let: who = (?:(?={path}(?:rom|serial)=(?<serial>[\w:-]{1,24});)|)(?:(?={path}(?:id|address|addr|sensor|probe)=(?<address>[\w:-]{1,24});)|)(?:(?={path}seq=(?<sequence>\d{1,12});)|)

record: ^(?={path}{warmth}=(?<temperature>{point-number});)(?={path}units?=°?(?<unit>[CF]);){moisture}{who}
record: ^(?={path}{warmth}(?:_?(?<unit>[CF]))?=(?<temperature>{point-number});){moisture}{who}
fault: ^(?={path}{warmth}(?:_?[CF])?={nothing};){who}
fault: ^{path}(?:err|error|fault)=(?!(?:0|false|null|none|ok|);)
restart: ^{path}(?:event|status|msg|message)=\w*(?:{banner})

test: "{\"id\":\"a1\",\"temperature\":25.7,\"humidity\":74.2}" -> 25.7 74.2 from A1
test: "{ \"rh\" : 74.2 , \"t\" : -2.57e0 }" -> -2.57 74.2
test: "{\"air\":{\"temp_f\":78.1}}" -> 25.6111
test: "{\"temp\":78.1,\"unit\":\"F\"}" -> 25.6111
test: "{\"t\":\"25.7\"}" -> 25.7
test: "{\"rom\":\"28DC667405000098\",\"t\":25.7,\"seq\":17}" -> 25.7 from 28DC667405000098
test: "{\"t\":25.7,\"h\":null}" -> 25.7 none
test: "{\"t\":null,\"h\":74.2}" -> fault instrument
test: "{\"t\":NaN}" -> fault instrument
test: "{\"error\":\"no sensor\"}" -> fault instrument
test: "{\"event\":\"boot\"}" -> fault restart
test: "{\"t\":-127}" -> fault disconnected
test: "{\"t\":121.1}" -> fault out-of-range
test: "{\"note\":\"x;t=25.7;\"}" -> unreadable
test: "{\"t\":25.7" -> unreadable
test: "{\"t\":25.7}{\"t\":25.8}" -> unreadable
test: "{\"t\":25.7,\"t\":26.7}" -> unreadable
test: "[25.7]" -> unreadable
test: "25.7" -> unreadable
test: "{}" -> unreadable
