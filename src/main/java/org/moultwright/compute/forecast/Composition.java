package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.Map;
import org.moultwright.domain.Stage;

/**
 * What one tray is expected to hold at an instant, had nothing been taken out but the dead.
 *
 * @param at the instant
 * @param byStage living animals by stage
 * @param alive all living animals
 */
public record Composition(Instant at, Map<Stage, CountInterval> byStage, CountInterval alive) {
    public Composition {
        byStage = Map.copyOf(byStage);
    }
}
