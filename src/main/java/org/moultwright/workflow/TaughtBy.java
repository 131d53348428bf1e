package org.moultwright.workflow;

import java.util.List;

/** Names the completed broods of a room that taught another its timing. */
public final class TaughtBy {
    private TaughtBy() {}

    /** Their codes; empty where not as many taught as could have, so that none is named that did not. */
    public static List<String> named(BroodView brood, RoomView room) {
        List<String> completed = room.broods().stream()
                .filter(other ->
                        Teachers.mayTeach(other.record(), brood.record().brood()))
                .map(BroodView::code)
                .toList();
        int taught = brood.forecast().map(forecast -> forecast.learnedBroods()).orElse(0);
        return completed.size() == taught ? completed : List.of();
    }
}
