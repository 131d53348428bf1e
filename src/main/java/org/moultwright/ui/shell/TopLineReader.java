package org.moultwright.ui.shell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** Picks from the room what the top line shows. */
public final class TopLineReader {
    private static final int TRAYS_NAMED = 3;

    private TopLineReader() {}

    public static TopLine read(RoomView room, DayWords days, Vocabulary vocabulary) {
        List<TrayView> trays = room.occupiedTrays();
        int left = (int)
                trays.stream().filter(tray -> tray.due() != TrayView.Due.DONE).count();
        return new TopLine(
                probes(room),
                trays.isEmpty() ? Optional.empty() : Optional.of(new TopLine.TraysLeft(left, trays.size())),
                next(room, days, vocabulary));
    }

    /**
     * The probes that measure something now, each where it stands and with its offset taken off. What was read by hand
     * is not of now, and must not hide that a probe beside it is silent.
     */
    private static List<TopLine.ProbeNow> probes(RoomView room) {
        Map<String, TopLine.ProbeNow> byPlace = new TreeMap<>();
        for (BroodView brood : room.broods()) {
            for (ProbeStay stay : brood.record().probeStays()) {
                Reading latest = room.latestReadings().get(stay.probe());
                if (latest != null
                        && !HandReading.isByHand(stay.probe())
                        && latest.quality() == Quality.GOOD
                        && stay.span().contains(room.now())) {
                    byPlace.put(
                            stay.container(),
                            new TopLine.ProbeNow(
                                    stay.container(), stay.airCelsius(latest.temperatureCelsius()), latest.takenAt()));
                }
            }
        }
        return new ArrayList<>(byPlace.values());
    }

    private static Optional<TopLine.NextMoult> next(RoomView room, DayWords days, Vocabulary vocabulary) {
        List<Coming> coming = room.occupiedTrays().stream()
                .flatMap(tray -> tray.forecast().stream()
                        .flatMap(forecast -> forecast.moults().stream())
                        .filter(moult -> moult.into() != Stage.DARKENED
                                && moult.half().p50().isAfter(room.now())
                                && !moult.half().isFarFrom(room.now()))
                        .map(moult -> new Coming(tray, moult)))
                .sorted(Comparator.comparing(Coming::middle))
                .toList();
        return coming.stream().findFirst().map(first -> {
            List<Coming> together = coming.stream().filter(first::isAlike).toList();
            Instant from = together.stream()
                    .map(one -> one.moult().half().p10())
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
            Instant to = together.stream()
                    .map(one -> one.moult().half().p90())
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
            return new TopLine.NextMoult(
                    becoming(together, vocabulary.plural(first.moult().into())), days.days(from, to));
        });
    }

    private static String becoming(List<Coming> together, String stage) {
        List<String> trays =
                together.stream().map(one -> one.tray().tray()).sorted().toList();
        return Texts.count(trays.size(), "{0} becomes {1}", "{0} become {1}", Listing.few(trays, TRAYS_NAMED), stage);
    }

    private record Coming(TrayView tray, MoultForecast moult) {
        Instant middle() {
            return moult.half().p50();
        }

        /** Whether both are the same moult of the same brood. */
        boolean isAlike(Coming other) {
            return tray.brood().equals(other.tray.brood()) && moult.into() == other.moult.into();
        }
    }
}
