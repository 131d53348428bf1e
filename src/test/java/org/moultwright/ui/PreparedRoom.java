package org.moultwright.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.PreparedForecasts;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The invented room with the forecasts the program makes of it, ready to be asked what if. */
public final class PreparedRoom {
    private static final int DAYS_AHEAD = 60;

    private final PreparedForecasts prepared = new PreparedForecasts(new Forecaster(TimingsFile.shipped()));
    private final RoomView room;

    public PreparedRoom() {
        this.room = RoomFixture.room(
                RoomFixture.room().broods().stream().map(this::forecast).toList());
    }

    public RoomView room() {
        return room;
    }

    public PreparedForecasts prepared() {
        return prepared;
    }

    private BroodView forecast(BroodView brood) {
        BroodForecast forecast = prepared.apply(new ForecastQuestion(
                brood.record(),
                RoomFixture.NOW,
                PastBroods.NONE,
                1,
                IntStream.rangeClosed(0, DAYS_AHEAD)
                        .mapToObj(day -> RoomFixture.NOW.plus(Duration.ofDays(day)))
                        .toList()));
        List<TrayView> trays = brood.trays().stream()
                .map(tray -> new TrayView(
                        tray.brood(),
                        tray.tray(),
                        tray.place(),
                        tray.alive(),
                        tray.composition(),
                        tray.lastCheck(),
                        tray.due(),
                        forecast.tray(tray.tray())))
                .toList();
        return new BroodView(brood.record(), trays, Optional.of(forecast));
    }
}
