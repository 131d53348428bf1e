package org.moultwright.ui.broods;

import java.util.List;
import org.moultwright.text.DayWords;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.RoomReading;
import org.moultwright.workflow.RoomView;

/** The broods of a room as rows of the list. */
record BroodLines(Vocabulary vocabulary, DayWords days) implements RoomReading<List<BroodLine>> {
    @Override
    public List<BroodLine> read(RoomView room) {
        ForecastWords words = new ForecastWords(vocabulary, days);
        return room.broods().stream()
                .map(brood -> BroodLine.of(brood, room.now(), words))
                .toList();
    }
}
