package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.language.Texts;

/** Writes down what a display showed, and judges it beside the probe that was there. */
public final class NoteDisplay {
    /** A reading farther off in time is of other air: half the ripple of a slow incubator. */
    private static final Duration NEAR = Duration.ofMinutes(5);

    private final BroodBook book;
    private final ReadingLog readings;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public NoteDisplay(BroodBook book, ReadingLog readings, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.readings = readings;
        this.clock = clock;
        this.ids = ids;
    }

    /** Keeps what a display shows now; it is on disk when this returns. */
    public DisplayNote save(String container, double celsius, double stepCelsius, String words) {
        Instant now = clock.instant();
        DisplayNote note = new DisplayNote(ids.get(), now, container, celsius, stepCelsius, words);
        Deed.Summary summary =
                new Deed.Summary(ids.get(), Optional.empty(), now, Texts.say("Display of {0} read off", container));
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofRoom(List.of(), List.of(note))));
        return note;
    }

    /**
     * The display beside the nearest good reading of the probe in its container; empty if no probe measured
     * there within five minutes.
     *
     * @param stays as calibrated by now, so that a later calibration changes the verdict on an old note
     * @param positionSdCelsius standard uncertainty of display and probe being in two places
     */
    public Optional<DisplayCheck> check(DisplayNote note, List<ProbeStay> stays, double positionSdCelsius) {
        return stays.stream()
                .filter(stay ->
                        stay.container().equals(note.container()) && stay.span().contains(note.at()))
                .findFirst()
                .flatMap(stay -> nearest(stay.probe(), note.at())
                        .map(indicated -> new DisplayCheck(
                                note.celsius(),
                                stay.airCelsius(indicated),
                                DisplayCheck.Uncertainty.ofStep(
                                        stay.correction().sdAt(indicated), note.stepCelsius(), positionSdCelsius))));
    }

    private Optional<Double> nearest(String probe, Instant at) {
        ReadingSeries around =
                readings.series(probe, at.minus(NEAR), at.plus(NEAR).plusMillis(1));
        Optional<Double> nearest = Optional.empty();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < around.size(); i++) {
            long apart = Math.abs(around.epochMillis(i) - at.toEpochMilli());
            if (around.quality(i) == Quality.GOOD && apart < least) {
                least = apart;
                nearest = Optional.of(around.temperatureCelsius(i));
            }
        }
        return nearest;
    }
}
