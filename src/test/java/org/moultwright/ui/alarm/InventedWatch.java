package org.moultwright.ui.alarm;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Span;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.MemoryAlarmJournal;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.WatchListener;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WatchView;

/** A watch over two boxes by a clock of its own, with the model it is shown by. */
public final class InventedWatch {
    private static final Instant START = Instant.parse("2026-05-03T19:20:00Z");
    private static final Span ALWAYS = new Span(Instant.EPOCH, Optional.empty());

    public final MemoryAlarmJournal journal = new MemoryAlarmJournal();
    final List<Instant> rung = new ArrayList<>();
    private Instant now = START;
    private long nanos;
    public final AlarmViewModel model;
    public final KeepWatch watch;

    public InventedWatch() {
        AlarmViewModel[] shown = new AlarmViewModel[1];
        watch = new KeepWatch(
                journal,
                new NoLog(),
                () -> now,
                () -> nanos,
                UUID::randomUUID,
                new WatchPlaces(
                        List.of(
                                new ProbeStay("P-1", "box 1", ALWAYS, 0, 0.1),
                                new ProbeStay("P-2", "box 2", ALWAYS, 0, 0.1)),
                        new Shelf(List.of()),
                        List.of()),
                AlarmLimits.USUAL,
                new WatchListener() {
                    @Override
                    public void turned(AlarmEntry entry) {
                        shown[0].turned(entry);
                    }

                    @Override
                    public void stands(WatchView view) {
                        shown[0].show(view);
                    }
                });
        model = new AlarmViewModel(new AlarmDesk(
                watch::acknowledge,
                watch::snooze,
                new InlineRunner(),
                () -> rung.add(now),
                () -> nanos,
                () -> now,
                new DayWords(ZoneOffset.ofHours(1))));
        shown[0] = model;
    }

    /** Ten minutes in which box 1 is too warm, and box 2 says nothing if it is to be silent. */
    public InventedWatch tooWarm(boolean secondIsSilent) {
        watch.begin("P-1");
        watch.begin("P-2");
        for (int second = 0; second < 600; second += 10) {
            read("P-1", 30.4);
            if (!secondIsSilent) {
                read("P-2", 27);
            }
            pass(Duration.ofSeconds(10));
        }
        return this;
    }

    void read(String probe, double celsius) {
        watch.heard(probe, new Reading(now, celsius, Double.NaN, Quality.GOOD));
    }

    void pass(Duration time) {
        now = now.plus(time);
        nanos += time.toNanos();
        watch.tick();
    }

    private static final class NoLog implements ReadingLog {
        @Override
        public List<Logged> append(String probe, List<Logged> readings) {
            return readings;
        }

        @Override
        public ReadingSeries series(String probe, Instant from, Instant to) {
            return ReadingSeries.EMPTY;
        }

        @Override
        public Map<String, Reading> latest() {
            return Map.of();
        }
    }
}
