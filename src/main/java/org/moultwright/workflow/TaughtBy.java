package org.moultwright.workflow;

import java.util.List;
import org.moultwright.domain.Brood;

/** Names the completed broods of a room that taught another its timing, and those that could. */
public final class TaughtBy {
    private TaughtBy() {}

    /** Their codes; empty where not as many taught as could have, so that none is named that did not. */
    public static List<String> named(BroodView brood, RoomView room) {
        int taught = brood.forecast().map(forecast -> forecast.learnedBroods()).orElse(0);
        if (taught == 0) {
            return List.of();
        }
        List<String> completed = couldTeach(brood.record().brood(), room).stream()
                .map(BroodView::code)
                .filter(code -> !room.leftOut().containsKey(code))
                .toList();
        return completed.size() == taught ? completed : List.of();
    }

    /** The completed broods of its species, those left out among them. */
    public static List<BroodView> couldTeach(Brood brood, RoomView room) {
        return room.broods().stream()
                .filter(other -> Teachers.mayTeach(other.record(), brood))
                .toList();
    }
}
