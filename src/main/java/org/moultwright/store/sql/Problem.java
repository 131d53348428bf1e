package org.moultwright.store.sql;

/**
 * One thing wrong in a store.
 *
 * @param table the table it was found in
 * @param row what names the row, or the brood or probe whose rows it is
 * @param expected what was expected, and what was found instead
 */
public record Problem(String table, String row, String expected) {}
