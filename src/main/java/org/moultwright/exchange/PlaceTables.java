package org.moultwright.exchange;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reading;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;
import org.moultwright.language.Texts;

/** The tables of places: where containers stood, which probe measured them, what they were set to,
 * what thermometers that remember told. */
final class PlaceTables {
    private static final String MIN_PERCENT = "min_humidity_percent";
    private static final String MAX_PERCENT = "max_humidity_percent";

    static final Table<Stay> CONTAINERS = new Table<>(
            "containers.csv",
            List.of("container", "kind", "inside", "from", "to"),
            List.of("container", "kind", "from"),
            stay -> stay.span().from(),
            row -> new Stay(
                    row.required("container"),
                    row.oneOf("kind", Texts.say("room, incubator, box, tray, hammock or rack"), ContainerKind::fromKey),
                    row.optional("inside"),
                    span(row)),
            stay -> List.of(
                    Cell.text(stay.container()),
                    stay.kind().key(),
                    Cell.text(stay.inside().orElse("")),
                    Cell.instant(stay.span().from()),
                    Cell.optional(stay.span().to())));

    static final Table<ProbeStay> PROBES = new Table<>(
            "probes.csv",
            List.of("probe", "container", "from", "to", "offset_celsius", "sd_celsius"),
            List.of("probe", "container", "from"),
            stay -> stay.span().from(),
            row -> new ProbeStay(
                    row.required("probe"),
                    row.required("container"),
                    span(row),
                    row.numberOr("offset_celsius", -20, 20, 0),
                    row.numberOr("sd_celsius", 0, 20, 0)),
            stay -> List.of(
                    Cell.text(stay.probe()),
                    Cell.text(stay.container()),
                    Cell.instant(stay.span().from()),
                    Cell.optional(stay.span().to()),
                    Cell.number(stay.offsetCelsius()),
                    Cell.number(stay.sdCelsius())));

    static final Table<SetPoint> SET_POINTS = new Table<>(
            "setpoints.csv",
            List.of("container", "from", "to", "temperature_celsius", "humidity_percent"),
            List.of("container", "from", "temperature_celsius"),
            point -> point.span().from(),
            row -> new SetPoint(
                    row.required("container"),
                    span(row),
                    row.number("temperature_celsius", -10, 60),
                    row.numberOr("humidity_percent", 0, 100, Double.NaN)),
            point -> List.of(
                    Cell.text(point.container()),
                    Cell.instant(point.span().from()),
                    Cell.optional(point.span().to()),
                    Cell.number(point.temperatureCelsius()),
                    Cell.number(point.humidityPercent())));

    static final Table<Extremes> EXTREMES = new Table<>(
            "extremes.csv",
            List.of("container", "from", "to", "min_celsius", "max_celsius", MIN_PERCENT, MAX_PERCENT),
            List.of("container", "from", "to", "min_celsius", "max_celsius"),
            Extremes::from,
            PlaceTables::extremes,
            extremes -> List.of(
                    Cell.text(extremes.container()),
                    Cell.instant(extremes.from()),
                    Cell.instant(extremes.to()),
                    Cell.number(extremes.lowestCelsius()),
                    Cell.number(extremes.highestCelsius()),
                    Cell.number(extremes.lowestPercent()),
                    Cell.number(extremes.highestPercent())));

    private PlaceTables() {}

    /** The table of these, with columns for humidity only where some were measured. */
    static Table<Extremes> extremesOf(List<Extremes> all) {
        boolean humid = all.stream().anyMatch(extremes -> !Double.isNaN(extremes.lowestPercent()));
        return humid ? EXTREMES : EXTREMES.without(MAX_PERCENT).without(MIN_PERCENT);
    }

    private static Extremes extremes(Row row) throws Row.Unusable {
        String container = row.required("container");
        Instant from = row.instant("from");
        Instant to = row.instant("to");
        if (!from.isBefore(to) || Duration.between(from, to).compareTo(Duration.ofDays(Extremes.LONGEST_DAYS)) > 0) {
            throw row.refuse("to", Texts.say("an instant after {0}, by {1} days at most", from, Extremes.LONGEST_DAYS));
        }
        double lowest = row.number("min_celsius", Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        double highest = row.number("max_celsius", lowest, Reading.HIGHEST_CELSIUS);
        double driest = row.numberOr(MIN_PERCENT, 0, 100, Double.NaN);
        double dampest = row.numberOr(MAX_PERCENT, Double.isNaN(driest) ? 0 : driest, 100, Double.NaN);
        if (Double.isNaN(driest) != Double.isNaN(dampest)) {
            throw row.refuse(
                    Double.isNaN(driest) ? MIN_PERCENT : MAX_PERCENT,
                    Texts.say("a number, as the other of the two has one"));
        }
        return new Extremes(container, from, to, lowest, highest, driest, dampest);
    }

    private static Span span(Row row) throws Row.Unusable {
        Instant from = row.instant("from");
        Optional<Instant> to = row.optionalInstant("to");
        if (to.isPresent() && to.get().isBefore(from)) {
            throw row.refuse("to", Texts.say("an instant not before {0}", from));
        }
        return new Span(from, to);
    }
}
