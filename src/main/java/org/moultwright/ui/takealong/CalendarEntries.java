package org.moultwright.ui.takealong;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.Brood;
import org.moultwright.language.Texts;
import org.moultwright.text.CalendarWords;
import org.moultwright.text.DayWords;
import org.moultwright.text.OrderWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodOrder;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.CalendarEntry;
import org.moultwright.workflow.OrderTerms;
import org.moultwright.workflow.RoomView;

/** What of the forecasts stands in a calendar: windows and the day to part for each tray, orders for each brood. */
final class CalendarEntries {
    private static final String PART =
            Texts.say("About a week after the first ones they have to be kept apart, since they eat each other: "
                    + "common practice, no source. This is the day for an early first one.");

    private final Vocabulary vocabulary;
    private final DayWords days;
    private final OrderTerms terms;
    private final CalendarWords words;
    private final Instant now;
    private final List<CalendarEntry> entries = new ArrayList<>();

    private CalendarEntries(RoomView room, Vocabulary vocabulary, DayWords days, OrderTerms terms) {
        this.vocabulary = vocabulary;
        this.days = days;
        this.terms = terms;
        this.now = room.now();
        this.words = new CalendarWords(days, room.now());
    }

    /** The earliest first; none for a tray of which too little is known. */
    static List<CalendarEntry> of(RoomView room, Vocabulary vocabulary, DayWords days, OrderTerms terms) {
        CalendarEntries calendar = new CalendarEntries(room, vocabulary, days, terms);
        room.broods().forEach(calendar::add);
        calendar.entries.sort(Comparator.comparing(CalendarEntry::first));
        return calendar.entries;
    }

    private void add(BroodView brood) {
        Expected.of(brood).forEach(tray -> tray.moult().ifPresent(moult -> addTray(tray, moult)));
        brood.forecast()
                .flatMap(forecast -> BroodOrder.of(brood, forecast, terms))
                .ifPresent(order -> addOrders(brood.record().brood(), order));
    }

    private void addTray(Expected tray, MoultForecast moult) {
        String stages = vocabulary.plural(moult.into());
        InstantInterval first = tray.first().orElse(moult.first());
        boolean isSeen = moult.hasBegun() && tray.seen().isPresent();
        addWindow(
                tray,
                "first",
                isSeen ? Texts.say("first {0} seen", stages) : Texts.say("first {0}", stages),
                first,
                isSeen);
        addWindow(
                tray,
                "half",
                isPast(moult.half()) ? Texts.say("half were {0}", stages) : Texts.say("half are {0}", stages),
                moult.half(),
                false);
        addWindow(
                tray,
                "most",
                isPast(moult.most()) ? Texts.say("95 % were {0}", stages) : Texts.say("95 % are {0}", stages),
                moult.most(),
                false);
        tray.partBy()
                .map(days::date)
                .ifPresent(day -> addDay(
                        key(tray, "part"),
                        day,
                        Texts.say("{0}: separate the {1}", tray.tray().tray(), stages),
                        PART,
                        about(tray)));
    }

    private void addWindow(Expected tray, String event, String title, InstantInterval when, boolean isSeen) {
        entries.add(new CalendarEntry(
                key(tray, event),
                days.date(when.p10()),
                days.date(when.p90()),
                tray.tray().tray() + ": " + title,
                notes(isSeen ? words.seen(when.p50()) : words.window(when), about(tray))));
    }

    private void addOrders(Brood brood, BroodOrder order) {
        OrderWords said = new OrderWords(days, terms.safety());
        String stages = vocabulary.plural(order.into());
        String about = CalendarWords.about(brood.code(), brood.taxon(), "");
        addDay(
                brood.code() + "/order-pots",
                order.pots().orderBy(),
                Texts.say("Order pots and labels for {0}", brood.code()),
                said.pots(order.count(), order.pots(), order.hasBegun(), stages),
                about);
        addDay(
                brood.code() + "/order-food",
                order.food().orderBy(),
                Texts.say("Order food for {0}", brood.code()),
                said.food(order.count(), order.food()),
                about);
    }

    private void addDay(String key, LocalDate day, String title, String what, String about) {
        entries.add(new CalendarEntry(key, day, day, title, notes(what, about)));
    }

    private String notes(String what, String about) {
        return String.join("\n", what, about, words.told());
    }

    private boolean isPast(InstantInterval when) {
        return !when.p90().isAfter(now);
    }

    private static String about(Expected tray) {
        Brood brood = tray.brood().record().brood();
        return CalendarWords.about(brood.code(), brood.taxon(), tray.tray().place());
    }

    /** Names neither the words of a stage nor anything else a keeper may change. */
    private static String key(Expected tray, String event) {
        return tray.brood().code() + "/" + tray.tray().tray() + "/" + event;
    }
}
