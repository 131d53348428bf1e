package org.moultwright.ui.takealong;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.plan.Parting;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.FirstSeen;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/**
 * A tray that holds animals, with when they enter the last stage as things are.
 *
 * @param brood its brood
 * @param tray the tray as it stands
 * @param moult when they do; empty where too little is known
 * @param seen when the first that had done so was seen
 */
record Expected(BroodView brood, TrayView tray, Optional<MoultForecast> moult, Optional<Instant> seen) {

    /** All such trays of a room in shelf order. */
    static List<Expected> in(RoomView room) {
        return room.broods().stream().flatMap(brood -> of(brood).stream()).toList();
    }

    static List<Expected> of(BroodView brood) {
        return every(brood).stream().filter(tray -> tray.tray().alive() > 0).toList();
    }

    /** All trays of a brood, those that hold none any more too. */
    static List<Expected> every(BroodView brood) {
        Stage last = brood.record().brood().lastStage();
        return brood.trays().stream()
                .map(tray -> new Expected(
                        brood,
                        tray,
                        tray.forecast().flatMap(forecast -> forecast.moult(last)),
                        FirstSeen.in(brood.record(), tray.tray(), last)))
                .toList();
    }

    /** When the first one does, or did. */
    Optional<InstantInterval> first() {
        return moult.map(known -> Parting.first(known, seen));
    }

    Optional<Instant> partBy() {
        return first().map(Parting::due);
    }
}
