package org.moultwright.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;

/**
 * The facts of one sac of the demo room. Invented.
 *
 * @param code the brood's code
 * @param mother the enclosure the sac was laid in
 * @param motherCelsius how warm that was
 * @param box where its trays stood
 * @param laid the night it was laid
 * @param pulled when it was taken from its mother
 * @param trays its trays
 */
record DemoBrood(
        String code,
        String mother,
        double motherCelsius,
        String box,
        InstantRange laid,
        Instant pulled,
        List<DemoTray> trays) {

    static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");

    /** What the keeper believes of the species; the animals keep to their own, a little faster. */
    private static final Timing BELIEVED = new Timing(
            Map.of(Stage.POSTEMBRYO, 25.0, Stage.INSTAR1, 41.0, Stage.DARKENED, 60.5, Stage.INSTAR2, 66.0),
            0.12,
            new RateForm.Briere1(11, 38));

    static final List<DemoBrood> ALL = List.of(
            new DemoBrood(
                    "CC-26-A",
                    "mother A",
                    25.5,
                    "box 1",
                    night("2026-02-26"),
                    Instant.parse("2026-03-25T18:00:00Z"),
                    List.of(
                            new DemoTray("A1", LocalTime.of(20, 30), LocalDate.parse("2026-04-28")),
                            new DemoTray("A2", LocalTime.of(20, 40), LocalDate.parse("2026-04-28")))),
            new DemoBrood(
                    "CC-26-B",
                    "mother B",
                    25.0,
                    "box 2",
                    night("2026-03-03"),
                    Instant.parse("2026-03-22T18:00:00Z"),
                    List.of(new DemoTray("B1", LocalTime.of(20, 50), LocalDate.parse("2026-05-04")))),
            new DemoBrood(
                    "CC-26-C",
                    "mother C",
                    24.5,
                    "box 2",
                    night("2026-03-19"),
                    Instant.parse("2026-04-17T17:00:00Z"),
                    List.of(new DemoTray("C1", LocalTime.of(21, 0), LocalDate.parse("2026-05-19")))));

    Brood brood() {
        return new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZONE,
                Optional.of(laid),
                Optional.of(pulled),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.of(BELIEVED));
    }

    String folder() {
        return code.toLowerCase(Locale.ROOT);
    }

    private static InstantRange night(String evening) {
        LocalDate date = LocalDate.parse(evening);
        return new InstantRange(
                date.atTime(20, 0).atZone(ZONE).toInstant(),
                date.plusDays(1).atTime(8, 0).atZone(ZONE).toInstant());
    }

    /**
     * One tray.
     *
     * @param code its code
     * @param checkedAt the time of day at which the keeper comes to it
     * @param darkSeen the evening of its first dark nymph
     */
    record DemoTray(String code, LocalTime checkedAt, LocalDate darkSeen) {
        Instant check(LocalDate date) {
            return date.atTime(checkedAt).atZone(ZONE).toInstant();
        }
    }
}
