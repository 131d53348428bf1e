package org.moultwright.workflow;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Require;
import org.moultwright.domain.Span;
import org.moultwright.language.Texts;
import org.moultwright.task.Progress;

/**
 * Takes a file of readings into the log, as those of one probe that stood in one container.
 *
 * <p>All rows that mean a reading are kept, or none: none when it is cancelled, when the disk fails, or when more rows
 * mean nothing than something. It is one deed; undone, its readings are taken out again, and where its probe stood with
 * them.
 */
public final class TakeInReadings {
    private static final int LISTED_ROWS = 1_000;
    private static final int REPORT_EVERY = 5_000;

    private final ReadingFiles files;
    private final BulkReadings log;
    private final ProbePlacings placings;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public TakeInReadings(
            ReadingFiles files,
            BulkReadings log,
            BroodBook book,
            ClimateBook climate,
            InstantSource clock,
            Supplier<UUID> ids) {
        this.files = files;
        this.log = log;
        this.placings = new ProbePlacings(book, climate);
        this.clock = clock;
        this.ids = ids;
    }

    /** Why a probe's readings cannot be those of a container from one instant to another, in a sentence. */
    public Optional<String> contradiction(String probe, String container, Instant first, Instant last) {
        return placings.of(probe).stream()
                .filter(stay -> !stay.container().equals(container) && overlaps(stay.span(), first, last))
                .findFirst()
                .map(stay ->
                        Texts.say("Probe {0} stood in {1} then. Give this one another code.", probe, stay.container()));
    }

    /**
     * Takes in a file; on disk when this returns.
     *
     * @throws DocumentException if the file cannot be read
     * @throws NotUnderstood if the mapping makes sense of too little of it
     * @throws IllegalArgumentException if the probe is known to have stood elsewhere
     */
    public Result takeIn(Path file, ReadingMapping mapping, String probe, String container, Progress progress) {
        mapping.missing().ifPresent(missing -> {
            throw new IllegalArgumentException(missing);
        });
        Require.text("probe", probe);
        Require.text("container", container);
        Tally tally = new Tally();
        Deed.Summary summary = new Deed.Summary(
                ids.get(),
                Optional.empty(),
                clock.instant(),
                Texts.say("Readings of {0} in {1} taken in from {2}", probe, container, file.getFileName()));
        ReadingSource readings = sink -> {
            files.each(file, mapping, (row, share) -> {
                tally.add(row);
                row.reading().ifPresent(reading -> sink.accept(probe, reading));
                if (tally.rows % REPORT_EVERY == 0) {
                    progress.requireGoingOn();
                    progress.report(share, Texts.say("{0} readings so far", tally.good));
                }
            });
            progress.requireGoingOn();
            requireSense(file, tally);
            contradiction(probe, container, tally.first, tally.last).ifPresent(sentence -> {
                throw new IllegalArgumentException(sentence);
            });
        };
        long added = log.takeIn(summary, readings, () -> missingPlacings(probe, container, tally));
        return new Result(tally.good, added, tally.bad, List.copyOf(tally.listed));
    }

    private static void requireSense(Path file, Tally tally) {
        if (tally.good == 0 || tally.bad > tally.good) {
            throw new NotUnderstood(
                    Texts.say(
                            "Of '{0}' {1} rows are readings and {2} are not. Nothing was taken in.",
                            file.getFileName(), tally.good, tally.bad),
                    tally.listed);
        }
    }

    /** Spans the probe is known to have stood there are left as they are; what is missing is written down. */
    private List<ProbeStay> missingPlacings(String probe, String container, Tally tally) {
        List<ProbeStay> missing = new ArrayList<>();
        Instant end = tally.last.plusMillis(1);
        Instant from = tally.first;
        List<Span> known = placings.of(probe).stream()
                .map(ProbeStay::span)
                .filter(span -> overlaps(span, tally.first, tally.last))
                .sorted(Comparator.comparing(Span::from))
                .toList();
        for (Span span : known) {
            if (from.isBefore(span.from())) {
                missing.add(stay(probe, container, from, span.from()));
            }
            from = span.to().filter(end::isAfter).orElse(end);
        }
        if (from.isBefore(end)) {
            missing.add(stay(probe, container, from, end));
        }
        return missing;
    }

    private static ProbeStay stay(String probe, String container, Instant from, Instant to) {
        return new ProbeStay(probe, container, new Span(from, Optional.of(to)), 0, HandReading.SD_CELSIUS);
    }

    private static boolean overlaps(Span span, Instant first, Instant last) {
        return !span.from().isAfter(last)
                && span.to().filter(to -> !to.isAfter(first)).isEmpty();
    }

    /**
     * How a file was taken in.
     *
     * @param readings how many rows were readings
     * @param added how many of them were not there before
     * @param unused how many rows were none
     * @param listed the first of these, each with its reason
     */
    public record Result(long readings, long added, long unused, List<ReadingFiles.Row> listed) {}

    /** The mapping made sense of too little. */
    public static final class NotUnderstood extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient List<ReadingFiles.Row> listed;

        NotUnderstood(String sentence, List<ReadingFiles.Row> listed) {
            super(sentence);
            this.listed = List.copyOf(listed);
        }

        /** The first rows that mean nothing. */
        public List<ReadingFiles.Row> listed() {
            return listed;
        }
    }

    /** What has been read so far. */
    private static final class Tally {
        private final List<ReadingFiles.Row> listed = new ArrayList<>();
        private Instant first = Instant.MAX;
        private Instant last = Instant.MIN;
        private long rows;
        private long good;
        private long bad;

        void add(ReadingFiles.Row row) {
            rows++;
            row.reading().map(Reading::takenAt).ifPresent(at -> {
                good++;
                first = at.isBefore(first) ? at : first;
                last = at.isAfter(last) ? at : last;
            });
            if (!row.reason().isEmpty()) {
                bad++;
                if (listed.size() < LISTED_ROWS) {
                    listed.add(row);
                }
            }
        }
    }
}
