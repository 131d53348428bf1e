package org.moultwright.ui.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/**
 * A tray that holds animals, with what is expected of it.
 *
 * @param brood its brood
 * @param tray the tray as it stands
 * @param forecast what is expected of it, as things are or as they might be
 */
record Foreseen(BroodView brood, TrayView tray, TrayForecast forecast) {

    /** All such trays of a room in shelf order. */
    static List<Foreseen> in(RoomView room, Function<BroodView, Optional<BroodForecast>> forecasts) {
        return room.broods().stream()
                .flatMap(brood -> forecasts.apply(brood).stream().flatMap(forecast -> of(brood, forecast).stream()))
                .toList();
    }

    private static List<Foreseen> of(BroodView brood, BroodForecast forecast) {
        return brood.trays().stream()
                .filter(tray -> tray.alive() > 0)
                .flatMap(tray -> forecast.tray(tray.tray()).stream().map(found -> new Foreseen(brood, tray, found)))
                .toList();
    }

    String code() {
        return tray.tray();
    }

    Stage lastStage() {
        return brood.record().brood().lastStage();
    }

    /** What of its last moult other set-points can still move: half, most once half are over; empty once both are. */
    Optional<Milestone> movable(Instant now) {
        return moult(lastStage())
                .flatMap(last -> Stream.of(Milestone.HALF, Milestone.MOST)
                        .filter(milestone -> last.at(milestone).p90().isAfter(now))
                        .findFirst());
    }

    /** When its last moult reaches a milestone. */
    Optional<InstantInterval> last(Milestone milestone) {
        return moult(lastStage()).map(moult -> moult.at(milestone));
    }

    Optional<MoultForecast> moult(Stage into) {
        return forecast.moult(into);
    }
}
