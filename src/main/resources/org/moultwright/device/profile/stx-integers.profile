# Framed records of whole numbers, ten to the degree: STX S -0123,-0456 CR LF
code: stx-integers
title: Framed records of whole numbers, ten to the degree
port: 9600 8N1
framing: from 02 to 0D

# Which of the values is this probe's: how many stand before it.
setting: skip = 0 in 0..7

channel: temperature C, scale 0.1

let: value = (?:[+-]?\d{1,6}|-[HLE]-)
record: ^\s*S\s*(?:{value},){{skip}}(?<temperature>{value})(?:,{value})*\s*$

# A form met in makers' manuals: S -0123,-0456, with -H- above the range, -L- below, -E- for a fault.
test: "S -0123,-0456" -> -12.3
test: "S +0257,+0248" -> 25.7
test: "S 0257,0248" -> 24.8 with skip=1
test: " S 0257" -> 25.7
test: "S -H-,0248" -> fault instrument
test: "S -L-,0248" -> fault instrument
test: "S -E-,0248" -> fault instrument
test: "S -E-,0248" -> 24.8 with skip=1
test: "S -0123,-0456" -> fault out-of-range with skip=1
test: "S 1211,0248" -> fault out-of-range
test: "S 0257,02" -> 0.2 with skip=1
test: "S 0257" -> unreadable with skip=1
test: "S 025.7" -> unreadable
test: "0257,0248" -> unreadable
