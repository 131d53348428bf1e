package org.moultwright.compute.climate;

/** One straight piece of the lived temperature, with its source and standard uncertainty in K. */
record LivedPiece(Ramp ramp, TemperatureSource source, double sdCelsius) {}
