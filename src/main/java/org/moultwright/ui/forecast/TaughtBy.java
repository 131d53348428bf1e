package org.moultwright.ui.forecast;

import java.util.List;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.text.LearnedWords;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** Which completed broods of a room a forecast was learned from. */
final class TaughtBy {
    private TaughtBy() {}

    /** Broods are named only where those that can have taught are as many as did. */
    static LearnedWords.Learned of(BroodView brood, BroodForecast forecast, RoomView room) {
        List<String> emptied = room.broods().stream()
                .filter(other -> !other.code().equals(brood.code()))
                .filter(other -> other.record()
                        .brood()
                        .taxon()
                        .equals(brood.record().brood().taxon()))
                .filter(other -> other.record().ledger().opened() > 0
                        && other.record().ledger().aliveInTrays() == 0)
                .map(BroodView::code)
                .toList();
        return new LearnedWords.Learned(forecast, emptied.size() == forecast.learnedBroods() ? emptied : List.of());
    }
}
