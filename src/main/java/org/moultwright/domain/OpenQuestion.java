package org.moultwright.domain;

import java.time.Instant;

/**
 * A whole count that the ledger does not explain.
 *
 * @param tray the tray's code
 * @param at when it was counted
 * @param expected animals in it by the ledger
 * @param counted animals counted
 */
public record OpenQuestion(String tray, Instant at, int expected, int counted) {}
