package org.moultwright.compute.plan;

import java.util.Optional;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;

/**
 * How many pots one tray needs: one for every animal in the last stage, never more than there are animals.
 *
 * @param lastStage the stage that is potted
 * @param alive animals in the tray
 * @param safety how sure there shall be enough
 */
public record TrayPots(Stage lastStage, int alive, Safety safety) {

    /** At the instant of a composition. */
    public int at(Composition composition) {
        return Optional.ofNullable(composition.byStage().get(lastStage))
                .map(safety::enough)
                .map(count -> (int) Math.min(alive, Math.ceil(count)))
                .orElse(0);
    }

    /** As far as the forecast sees. */
    public int inAll(TrayForecast forecast) {
        return forecast.compositions().stream().mapToInt(this::at).max().orElse(0);
    }
}
