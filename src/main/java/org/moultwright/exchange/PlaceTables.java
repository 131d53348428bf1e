package org.moultwright.exchange;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;

/** The tables of places: where containers stood, which probe measured them, what they were set to. */
final class PlaceTables {
    static final Table<Stay> CONTAINERS = new Table<>(
            "containers.csv",
            List.of("container", "kind", "inside", "from", "to"),
            List.of("container", "kind", "from"),
            stay -> stay.span().from(),
            row -> new Stay(
                    row.required("container"),
                    row.oneOf("kind", "room, incubator, box, tray, hammock or rack", ContainerKind::fromKey),
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

    private PlaceTables() {}

    private static Span span(Row row) throws Row.Unusable {
        Instant from = row.instant("from");
        Optional<Instant> to = row.optionalInstant("to");
        if (to.isPresent() && to.get().isBefore(from)) {
            throw row.refuse("to", "an instant not before " + from);
        }
        return new Span(from, to);
    }
}
