package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;

/** The readings of all probes, raw as they came. */
public interface ReadingLog extends ReadingSink {

    /** The readings of a probe taken at or after {@code from} and before {@code to}, in order of time. */
    ReadingSeries series(String probe, Instant from, Instant to);

    /**
     * Hands over the same readings piece by piece, in order of time, as they all stood when this was called: years of
     * them in little memory.
     */
    default void each(String probe, Instant from, Instant to, Consumer<ReadingSeries> action) {
        action.accept(series(probe, from, to));
    }

    /** The same readings, with or without their humidity, whichever is quicker. */
    default ReadingSeries temperatures(String probe, Instant from, Instant to) {
        return series(probe, from, to);
    }

    /**
     * The roll-ups of a level that hold instants at or after {@code from} and before {@code to}, each whole, in
     * order of time. They come to what rolling up the readings themselves would give.
     */
    default List<RollUp> rollUps(String probe, RollUpLevel level, Instant from, Instant to) {
        Instant start = Instant.ofEpochMilli(level.startMillis(from.toEpochMilli()));
        Instant end = Instant.ofEpochMilli(level.startMillis(to.toEpochMilli() - 1) + level.millis());
        return RollUps.of(series(probe, start, end), level);
    }

    /** The instant of a probe's first reading, if it has any. */
    default Optional<Instant> earliest(String probe) {
        ReadingSeries all = series(probe, Instant.EPOCH, Instant.ofEpochMilli(Long.MAX_VALUE / 2));
        return all.isEmpty() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(all.epochMillis(0)));
    }

    /** The readings before {@code to} of every probe that measured something for a brood, probe by probe. */
    default ReadingSource of(BroodRecord record, Instant to) {
        return sink -> record.probeStays().stream()
                .map(ProbeStay::probe)
                .distinct()
                .sorted()
                .forEach(probe ->
                        each(probe, Instant.EPOCH, to, piece -> piece.forEach(reading -> sink.accept(probe, reading))));
    }

    /** A number that grows with what is kept; {@link #earliestSince} takes it. */
    default long mark() {
        return 0;
    }

    /**
     * The earliest instant at which a probe may have readings that it had not when a mark was given; empty if
     * nothing of it was kept since. A log that does not know says the beginning.
     */
    default Optional<Instant> earliestSince(String probe, long mark) {
        return Optional.of(Instant.EPOCH);
    }

    /** The latest reading of every probe that has one, by probe code. */
    Map<String, Reading> latest();

    /**
     * A reading and the line it was read from.
     *
     * @param rawLine the line as it came over the wire, empty where there was none
     */
    record Logged(Reading reading, String rawLine) {}
}
