package org.moultwright.compute.history;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.moultwright.domain.Stage;

/**
 * What a brood was known to hold right after something of it was written down.
 *
 * @param at the instant
 * @param living animals in trays by stage, as last seen and less what was taken out since
 * @param potted animals potted or handed over
 * @param lost animals dead, infertile or missing
 */
public record BroodDay(Instant at, Map<Stage, Integer> living, int potted, int lost) {
    public BroodDay {
        EnumMap<Stage, Integer> ordered = new EnumMap<>(Stage.class);
        ordered.putAll(living);
        living = Collections.unmodifiableMap(ordered);
    }

    public int alive() {
        return living.values().stream().mapToInt(Integer::intValue).sum();
    }
}
