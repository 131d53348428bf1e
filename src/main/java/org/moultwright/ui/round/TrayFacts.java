package org.moultwright.ui.round;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Stage;
import org.moultwright.text.ForecastWords;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/**
 * What is known of a tray before the keeper looks tonight.
 *
 * @param now the instant it is known at
 * @param view the tray as it stands
 * @param record its brood
 * @param awaitsDates whether its forecast is still being worked out
 */
record TrayFacts(Instant now, TrayView view, BroodRecord record, boolean awaitsDates) {
    /** A forecast for another moment than this near says nothing of tonight. */
    private static final Duration NEAR = Duration.ofHours(12);

    static TrayFacts of(RoomView room, BroodView brood, TrayView tray) {
        return new TrayFacts(room.now(), tray, brood.record(), room.awaitsDates());
    }

    public String tray() {
        return view.tray();
    }

    /** Tells this tray from all others. */
    String key() {
        return key(brood(), tray());
    }

    static String key(String brood, String tray) {
        return brood + "/" + tray;
    }

    /** The latest look at the tray, or note of it, that was saved. */
    Optional<Instant> lastWritten() {
        return Stream.of(
                        record.checks().stream()
                                .filter(check -> check.tray().equals(tray()))
                                .map(Check::at),
                        record.care().stream()
                                .filter(care -> care.tray().equals(tray()))
                                .map(CareNote::at),
                        record.mould().stream()
                                .filter(mould -> mould.tray().equals(tray()))
                                .map(MouldNote::at))
                .flatMap(instants -> instants)
                .max(Comparator.naturalOrder());
    }

    public String brood() {
        return view.brood();
    }

    public List<Stage> stages() {
        return record.brood().stages();
    }

    /** Animals in the tray by the ledger. */
    public int alive() {
        return view.alive();
    }

    /** Animals of a stage by the last whole count, less those taken out since. */
    OptionalInt last(Stage stage) {
        return view.lastCheck().isEmpty() && view.composition().isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(view.composition().getOrDefault(stage, 0));
    }

    /** Animals of a stage expected now. */
    Optional<CountInterval> expected(Stage stage) {
        return view.forecast()
                .flatMap(this::compositionNow)
                .map(composition -> composition.byStage().get(stage));
    }

    /** Days since laying, counted from the middle of the range it was laid in. */
    OptionalLong day() {
        return record.brood().daysSinceLaying(now);
    }

    Optional<Double> warmDays() {
        return view.forecast().map(TrayForecast::warmDays);
    }

    /** The next stage to be entered for the first time, and when. */
    Optional<Map.Entry<Stage, InstantInterval>> nextFirst() {
        return view.forecast().stream()
                .flatMap(forecast -> forecast.moults().stream())
                .filter(moult ->
                        !ForecastWords.hasBegun(moult) && moult.first().p50().isAfter(now))
                .min(Comparator.comparing(moult -> moult.first().p50()))
                .map(moult -> Map.entry(moult.into(), moult.first()));
    }

    private Optional<Composition> compositionNow(TrayForecast forecast) {
        return forecast.compositions().stream()
                .filter(composition -> distance(composition).compareTo(NEAR) <= 0)
                .min(Comparator.comparing(this::distance));
    }

    private Duration distance(Composition composition) {
        return Duration.between(now, composition.at()).abs();
    }
}
