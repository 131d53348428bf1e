package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.moultwright.compute.climate.ClimateSummary;
import org.moultwright.compute.climate.LivedSpan;
import org.moultwright.compute.climate.TemperatureSource;

/** A container's climate as a JSON document; what is not known is left out. */
final class ClimateJson {
    private ClimateJson() {}

    static ObjectNode of(String brood, ClimateSummary climate) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("brood", brood);
        json.put("container", climate.container());
        json.put("from", climate.lived().from().toString());
        json.put("to", climate.lived().until().toString());
        json.put("warmDays", Rounded.to(climate.warmDays(), 100));
        json.put("gapFraction", Rounded.to(climate.lived().gapFraction(), 10_000));
        json.put("nominalCelsius", climate.lived().nominalCelsius());
        json.put("readings", climate.readings());
        range(json, "temperatureCelsius", climate.temperatureCelsius());
        range(json, "humidityPercent", climate.humidityPercent());
        range(json, "dewPointCelsius", climate.dewPointCelsius());
        climate.humidityPercent()
                .ifPresent(known ->
                        json.put("mouldIndex", Rounded.to(climate.mould().value(), 100)));
        ArrayNode sources = json.putArray("sources");
        climate.lived().spans().forEach(span -> sources.add(source(span)));
        return json;
    }

    private static void range(ObjectNode json, String name, Optional<ClimateSummary.Range> range) {
        range.ifPresent(known -> json.putObject(name)
                .put("lowest", Rounded.to(known.lowest(), 100))
                .put("mean", Rounded.to(known.mean(), 100))
                .put("highest", Rounded.to(known.highest(), 100)));
    }

    private static ObjectNode source(LivedSpan span) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("from", span.from().toString());
        json.put("to", span.to().toString());
        json.put("sdCelsius", Rounded.to(span.sdCelsius(), 100));
        if (span.source() instanceof TemperatureSource.Probe probe) {
            json.put("source", "probe").put("probe", probe.probe()).put("container", probe.container());
        } else if (span.source() instanceof TemperatureSource.BetweenExtremes extremes) {
            json.put("source", "extremes").put("container", extremes.container());
        } else if (span.source() instanceof TemperatureSource.Habit habit) {
            json.put("source", "habit").put("container", habit.container());
        } else if (span.source() instanceof TemperatureSource.SetPointAlone setPoint) {
            json.put("source", "set-point").put("container", setPoint.container());
        } else {
            json.put("source", "reference");
        }
        return json;
    }
}
