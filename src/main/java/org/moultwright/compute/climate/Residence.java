package org.moultwright.compute.climate;

/** A span in one place; instants in epoch milliseconds, the end excluded. */
record Residence(long fromMillis, long toMillis, Place place) {}
