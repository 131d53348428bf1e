package org.moultwright.compute.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;

/** The story of a brood: what happened to it, told from its record, in order of time. */
public final class Story {
    /** A probe silent for longer leaves a gap in the warm-days, the same limit the integration uses. */
    private static final Duration SILENCE = Duration.ofHours(3);

    private Story() {}

    public static List<StoryEvent> of(BroodRecord record) {
        List<StoryEvent> events = new ArrayList<>();
        record.runUp().forEach(event -> events.add(new StoryEvent.RunUp(event)));
        record.brood().laid().ifPresent(range -> events.add(new StoryEvent.Laid(range)));
        record.brood().pulled().ifPresent(at -> events.add(new StoryEvent.Pulled(at)));
        events.addAll(LedgerStory.of(record));
        events.addAll(FirstSights.of(record));
        record.mould().forEach(note -> events.add(new StoryEvent.Mould(note)));
        events.addAll(photographs(record.photos()));
        record.readings().forEach((probe, series) -> events.addAll(silences(probe, series)));
        events.addAll(setPointChanges(record.setPoints()));
        events.addAll(calibrations(record.probeStays()));
        events.sort(Comparator.comparing(StoryEvent::at));
        return List.copyOf(events);
    }

    private static List<StoryEvent> photographs(List<PhotoNote> photos) {
        Map<List<Object>, Long> together = photos.stream()
                .collect(Collectors.groupingBy(
                        photo -> List.of(photo.at(), photo.tray()), LinkedHashMap::new, Collectors.counting()));
        List<StoryEvent> events = new ArrayList<>();
        together.forEach((when, count) ->
                events.add(new StoryEvent.Photographed((Instant) when.get(0), (String) when.get(1), count.intValue())));
        return events;
    }

    private static List<StoryEvent> silences(String probe, ReadingSeries series) {
        List<StoryEvent> silences = new ArrayList<>();
        long previous = -1;
        for (int i = 0; i < series.size(); i++) {
            if (series.quality(i) != Quality.GOOD) {
                continue;
            }
            long now = series.epochMillis(i);
            if (previous >= 0 && now - previous > SILENCE.toMillis()) {
                silences.add(
                        new StoryEvent.ProbeSilent(Instant.ofEpochMilli(previous), probe, Instant.ofEpochMilli(now)));
            }
            previous = now;
        }
        return silences;
    }

    /** Each calibration once, from the first stay it corrects on. */
    private static Collection<StoryEvent> calibrations(List<ProbeStay> stays) {
        Map<List<Object>, StoryEvent> byProbeAndTime = new LinkedHashMap<>();
        stays.stream()
                .sorted(Comparator.comparing(stay -> stay.span().from()))
                .forEach(stay -> stay.calibratedAt()
                        .ifPresent(at -> byProbeAndTime.putIfAbsent(
                                List.of(stay.probe(), at),
                                new StoryEvent.Calibrated(
                                        at,
                                        stay.probe(),
                                        stay.span().from(),
                                        stay.offsetCelsius(),
                                        stay.sdCelsius()))));
        return byProbeAndTime.values();
    }

    private static List<StoryEvent> setPointChanges(List<SetPoint> setPoints) {
        Map<String, List<SetPoint>> byContainer =
                setPoints.stream().collect(Collectors.groupingBy(SetPoint::container));
        return byContainer.values().stream().flatMap(Story::changes).toList();
    }

    private static Stream<StoryEvent> changes(List<SetPoint> ofOneContainer) {
        List<SetPoint> ordered = ofOneContainer.stream()
                .sorted(Comparator.comparing(point -> point.span().from()))
                .toList();
        List<StoryEvent> changes = new ArrayList<>();
        for (int i = 1; i < ordered.size(); i++) {
            SetPoint before = ordered.get(i - 1);
            SetPoint after = ordered.get(i);
            if (before.temperatureCelsius() != after.temperatureCelsius()) {
                changes.add(new StoryEvent.SetPointChanged(
                        after.span().from(),
                        after.container(),
                        before.temperatureCelsius(),
                        after.temperatureCelsius()));
            }
        }
        return changes.stream();
    }
}
