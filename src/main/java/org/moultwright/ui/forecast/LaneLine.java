package org.moultwright.ui.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.ForecastWords;
import org.moultwright.ui.chart.Lane;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.FirstSeen;
import org.moultwright.workflow.TrayView;

/**
 * A tray as one lane.
 *
 * @param brood the code of its brood
 * @param tray its code
 * @param animals such as "56 animals"
 * @param phrase such as "half are slings 4 to 7 May"
 * @param sentence the phrase as a whole sentence with the tray's name
 * @param windows every window in words
 * @param lane its windows as a picture
 * @param asItIs the same as things are, where the lane is a what-if
 */
record LaneLine(
        String brood,
        String tray,
        String animals,
        String phrase,
        String sentence,
        List<Windows> windows,
        Lane lane,
        Optional<Lane> asItIs) {

    static LaneLine of(Foreseen foreseen, Instant now, ForecastWords words) {
        BroodView brood = foreseen.brood();
        TrayView tray = foreseen.tray();
        TrayForecast forecast = foreseen.forecast();
        List<Windows> inWords = forecast.moults().stream()
                .map(moult -> new Windows(moult.into(), words.windows(moult, now)))
                .toList();
        return new LaneLine(
                brood.code(),
                tray.tray(),
                Texts.count(tray.alive(), "1 animal", "{0} animals", tray.alive()),
                words.phrase(forecast, now),
                words.sentence(forecast, now),
                inWords,
                lane(foreseen, now, words),
                Optional.empty());
    }

    private static Lane lane(Foreseen foreseen, Instant now, ForecastWords words) {
        List<Lane.Window> windows = new ArrayList<>();
        Optional<Lane.Begun> begun = Optional.empty();
        for (MoultForecast moult : foreseen.forecast().moults()) {
            Optional<Instant> seen =
                    FirstSeen.in(foreseen.brood().record(), foreseen.tray().tray(), moult.into());
            windows.addAll(windows(moult, seen, now, words));
            if (ForecastWords.hasBegun(moult) && seen.isEmpty()) {
                begun = Optional.of(new Lane.Begun(moult.into(), words.there(moult)));
            }
        }
        return new Lane(windows, begun);
    }

    /** This lane as a what-if, beside the one as things are. */
    LaneLine tried(double celsius, LaneLine asThingsAre) {
        return new LaneLine(
                brood,
                tray,
                animals,
                phrase,
                Texts.say("At {0}, {1}", Temperatures.words(celsius), sentence),
                windows,
                lane,
                Optional.of(asThingsAre.lane()));
    }

    boolean isOfSameTrayAs(LaneLine other) {
        return tray.equals(other.tray) && brood.equals(other.brood);
    }

    /**
     * What has begun stands on the day it was first seen, wherever the forecast would have put it. What is as good as
     * never is left to words: on a calendar that reached it nobody could read the days of other trays.
     */
    private static List<Lane.Window> windows(
            MoultForecast moult, Optional<Instant> seen, Instant now, ForecastWords words) {
        List<Lane.Window> windows = new ArrayList<>();
        if (ForecastWords.hasBegun(moult)) {
            seen.ifPresent(at -> windows.add(
                    new Lane.Window(Lane.Row.FIRST, moult.into(), at, at, at, true, words.since(moult, at))));
        } else {
            window(Lane.Row.FIRST, moult, moult.first(), now, words).ifPresent(windows::add);
        }
        window(Lane.Row.HALF, moult, moult.half(), now, words).ifPresent(windows::add);
        window(Lane.Row.MOST, moult, moult.most(), now, words).ifPresent(windows::add);
        return windows;
    }

    /** The stage a keeper waits for leads; what is long past comes last. */
    List<Windows> latestFirst() {
        List<Windows> reversed = new ArrayList<>(windows);
        Collections.reverse(reversed);
        return reversed;
    }

    private static Optional<Lane.Window> window(
            Lane.Row row, MoultForecast moult, InstantInterval interval, Instant now, ForecastWords words) {
        if (interval.isFarFrom(now)) {
            return Optional.empty();
        }
        boolean isPast = !interval.p90().isAfter(now);
        return Optional.of(new Lane.Window(
                row,
                moult.into(),
                interval.p10(),
                interval.p50(),
                interval.p90(),
                isPast,
                words.since(moult, interval.p50())));
    }

    /** The windows of one moult in words. */
    record Windows(Stage into, List<String> lines) {
        Windows {
            lines = List.copyOf(lines);
        }
    }
}
