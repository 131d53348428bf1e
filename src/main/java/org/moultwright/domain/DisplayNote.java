package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;

/**
 * What an incubator's display showed, as the keeper read it off.
 *
 * @param id names it for ever
 * @param at when
 * @param container the container whose display it is
 * @param celsius what it showed
 * @param stepCelsius by how much its last digit counts, above 0
 * @param note further words, possibly empty
 */
public record DisplayNote(UUID id, Instant at, String container, double celsius, double stepCelsius, String note) {
    private static final double COARSEST_CELSIUS = 5;

    public DisplayNote {
        Require.text("container", container);
        Require.within("celsius", celsius, Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        Require.within("stepCelsius", stepCelsius, Double.MIN_NORMAL, COARSEST_CELSIUS);
    }
}
