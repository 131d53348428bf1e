package org.moultwright.compute.forecast;

/** How many animals, with its uncertainty: the number lies between the outer two with 80 % probability. */
public record CountInterval(double p10, double p50, double p90) {}
