package org.moultwright.ui.forecast;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.text.DayWords;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.SacWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomReading;
import org.moultwright.workflow.RoomView;

/** The trays of a room as lanes, and after them the sacs nobody has opened. */
record LaneLines(Vocabulary vocabulary, DayWords days) implements RoomReading<List<LaneLine>> {
    @Override
    public List<LaneLine> read(RoomView room) {
        return read(room, BroodView::forecast);
    }

    /** As they might be. */
    List<LaneLine> read(RoomView room, Function<BroodView, Optional<BroodForecast>> forecasts) {
        ForecastWords words = new ForecastWords(vocabulary, days);
        SacWords sacs = new SacWords(vocabulary, days);
        return Stream.concat(
                        Foreseen.in(room, forecasts).stream().map(tray -> LaneLine.of(tray, room.now(), words)),
                        room.broods().stream()
                                .flatMap(brood -> forecasts.apply(brood).stream()
                                        .flatMap(forecast ->
                                                SacLane.of(brood.record().brood(), forecast, sacs).stream())))
                .toList();
    }
}
