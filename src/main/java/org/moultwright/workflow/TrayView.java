package org.moultwright.workflow;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Check;
import org.moultwright.domain.Stage;

/**
 * One tray as it stands now.
 *
 * @param brood the code of the brood it holds
 * @param tray the tray's code
 * @param place where it stands, innermost first, such as "box 1, INC-1"; empty where nobody wrote it down
 * @param alive animals in it by the ledger
 * @param composition the stages last seen, less what was taken out since; they add up to {@code alive}
 *     where the last count was whole
 * @param lastCheck the last look at it
 * @param due whether tonight's look is done
 * @param forecast what is expected of it
 */
public record TrayView(
        String brood,
        String tray,
        String place,
        int alive,
        Map<Stage, Integer> composition,
        Optional<Check> lastCheck,
        Due due,
        Optional<TrayForecast> forecast) {

    /** Whether a tray has been looked at today. */
    public enum Due {
        DONE,
        DUE,
        LATE
    }

    public Optional<Instant> lastLook() {
        return lastCheck.map(Check::at);
    }
}
