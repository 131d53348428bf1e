package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Require;
import org.moultwright.domain.Span;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;

/** Writes down what a keeper without a wire knows of the climate: each a deed of the room, undone like any other. */
public final class WriteClimate {
    private final BroodBook book;
    private final ClimateBook climate;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public WriteClimate(BroodBook book, ClimateBook climate, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.climate = climate;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * Keeps a lowest and a highest; on disk when this returns. One it replaces no longer counts.
     *
     * @throws IllegalArgumentException if it tells of what is yet to come
     */
    public Deed.Summary keep(Extremes extremes) {
        requireNotAhead(extremes.to());
        return keep(
                Texts.say(
                        "{0}, {1} to {2} written down",
                        extremes.container(),
                        Degrees.number(extremes.lowestCelsius(), 1),
                        Degrees.words(extremes.highestCelsius(), 1)),
                new ClimateWriting(List.of(extremes), List.of(), List.of()));
    }

    /** What was written before and counts no longer once this is. */
    public Optional<Extremes> replacedBy(Extremes extremes) {
        return climate.extremes().stream().filter(extremes::replaces).reduce((earlier, later) -> later);
    }

    /** The lowest and highest values that count in a container, the one read last leading. */
    public List<Extremes> written(String container) {
        return Extremes.inForce(climate.extremes()).stream()
                .filter(extremes -> extremes.container().equals(container))
                .sorted(Comparator.comparing(Extremes::to).reversed())
                .toList();
    }

    /**
     * Keeps a reading taken off a thermometer in a container; on disk when this returns.
     *
     * @throws IllegalArgumentException if it was not taken yet
     */
    public Deed.Summary keep(String container, Reading reading) {
        requireNotAhead(reading.takenAt());
        HandReading read = new HandReading(HandReading.probeIn(container), reading);
        return keep(
                Texts.say("{0}, {1} written down", container, Degrees.words(reading.temperatureCelsius(), 1)),
                new ClimateWriting(
                        List.of(),
                        List.of(read),
                        missingPlacing(container, read).stream().toList()));
    }

    /** Where the thermometer hangs, unless it is known to hang there by then: from this reading on. */
    private Optional<ProbeStay> missingPlacing(String container, HandReading read) {
        Instant at = read.reading().takenAt();
        List<Span> known = new ProbePlacings(book, climate)
                .of(read.probe()).stream().map(ProbeStay::span).toList();
        if (known.stream().anyMatch(span -> span.contains(at))) {
            return Optional.empty();
        }
        Optional<Instant> next =
                known.stream().map(Span::from).filter(at::isBefore).min(Instant::compareTo);
        return Optional.of(new ProbeStay(read.probe(), container, new Span(at, next), 0, HandReading.SD_CELSIUS));
    }

    private void requireNotAhead(Instant at) {
        Require.that(!at.isAfter(clock.instant()), at + " is yet to come; write it down then");
    }

    private Deed.Summary keep(String words, ClimateWriting writing) {
        Deed.Summary summary = new Deed.Summary(ids.get(), Optional.empty(), clock.instant(), words);
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofClimate(writing)));
        return summary;
    }
}
