package org.moultwright.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** The invented room with a sac beside its broods that is still with its mother, of a species nothing is assumed of. */
public final class UnopenedSac {
    public static final String CODE = "GP-26-A";

    private UnopenedSac() {}

    /** The invented broods and the sac. */
    public static RoomView room() {
        List<BroodView> broods = new ArrayList<>(RoomFixture.room().broods());
        broods.add(view());
        return RoomFixture.room(broods);
    }

    /** Laid three weeks ago within a day, at 26 °C. */
    public static BroodView view() {
        Instant laid = RoomFixture.NOW.minus(Duration.ofDays(21));
        Brood brood = new Brood(
                CODE,
                "Inventa pulchra",
                RoomFixture.ZONE,
                Optional.of(new InstantRange(laid.minus(Duration.ofHours(12)), laid.plus(Duration.ofHours(12)))),
                Optional.empty(),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        BroodRecord record = new BroodRecord(
                brood,
                empty.ledger(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new SetPoint("sac", new Span(laid, Optional.empty()), 26, Double.NaN)),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new BroodView(
                record,
                List.of(),
                Optional.of(new Forecaster(TimingsFile.shipped())
                        .forecast(new ForecastQuestion(record, RoomFixture.NOW, PastBroods.NONE, 1, List.of()))));
    }
}
