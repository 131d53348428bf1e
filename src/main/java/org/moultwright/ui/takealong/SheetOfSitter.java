package org.moultwright.ui.takealong;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Shelf;
import org.moultwright.language.Dates;
import org.moultwright.language.Degrees;
import org.moultwright.settings.PlanSettings;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;
import org.moultwright.text.SitterWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SitterSheet;

/**
 * The sitter's sheet for the days the keeper is away.
 *
 * @param from the first day away
 * @param to the last, not before the first
 */
record SheetOfSitter(LocalDate from, LocalDate to) {

    /** More boxes than this are not ticked. */
    private static final int MOST_DAYS = 31;

    SitterSheet of(RoomView room, Vocabulary vocabulary, DayWords days, PlanSettings plans, Instant madeAt) {
        SitterWords words = new SitterWords(vocabulary, days);
        Instant leaving = from.atStartOfDay(days.zone()).toInstant();
        Instant returning = to.plusDays(1).atStartOfDay(days.zone()).toInstant();
        List<Expected> trays = Expected.in(room);
        return new SitterSheet(
                plans.paper(),
                SitterWords.TITLE,
                words.dates(leaving, returning.minusSeconds(1)),
                plans.phone(),
                from.datesUntil(to.plusDays(1))
                        .limit(MOST_DAYS)
                        .map(Dates.form("EEE d")::format)
                        .toList(),
                new SitterSheet.Lists(SitterWords.TO_DO, SitterWords.call(usual(room)), SitterWords.NEVER),
                trays.stream()
                        .map(tray -> new SitterSheet.Tray(
                                tray.tray().tray(),
                                tray.tray().place(),
                                words.expected(tray.moult(), tray.partBy(), leaving, returning)))
                        .toList(),
                trays.stream()
                        .flatMap(tray -> tray.moult().stream())
                        .findFirst()
                        .map(words::note)
                        .orElse(SitterWords.note()),
                madeAt);
    }

    /** The set-points in force around a tray. */
    private static Stream<SetPoint> around(Expected tray, Instant now) {
        BroodRecord record = tray.brood().record();
        List<String> path = new Shelf(record.stays()).pathOf(tray.tray().tray(), now);
        return record.setPoints().stream()
                .filter(point -> point.span().contains(now) && path.contains(point.container()));
    }

    /** "28.3 °C (INC-1)": what the displays are set to of all that trays with animals stand in. */
    static Optional<String> usual(RoomView room) {
        List<String> displays = Expected.in(room).stream()
                .flatMap(tray -> around(tray, room.now()))
                .flatMap(point -> Double.isNaN(point.temperatureCelsius())
                        ? Stream.empty()
                        : Stream.of(Degrees.words(point.temperatureCelsius(), 1) + " (" + point.container() + ")"))
                .distinct()
                .toList();
        return displays.isEmpty() ? Optional.empty() : Optional.of(Listing.and(displays));
    }
}
