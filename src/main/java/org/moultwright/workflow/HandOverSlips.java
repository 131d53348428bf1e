package org.moultwright.workflow;

import java.nio.file.Path;

/** Puts hand-over slips on paper. Faults come as a {@link DocumentException}. */
@FunctionalInterface
public interface HandOverSlips {
    /** Writes the slip as a PDF of as many pages as it takes, whole or not at all. */
    void save(HandOverSlip slip, Path pdf);
}
