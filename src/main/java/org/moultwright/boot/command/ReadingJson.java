package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ReadingLog;

/** A kept reading as a JSON document; what was not measured is left out. */
final class ReadingJson {
    private ReadingJson() {}

    static ObjectNode of(ReadingLog.Logged logged) {
        Reading reading = logged.reading();
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("time", reading.takenAt().toString());
        if (!Double.isNaN(reading.temperatureCelsius())) {
            json.put("temperatureCelsius", reading.temperatureCelsius());
        }
        if (!Double.isNaN(reading.humidityPercent())) {
            json.put("humidityPercent", reading.humidityPercent());
        }
        json.put("quality", reading.quality().key());
        json.put("rawLine", logged.rawLine());
        return json;
    }
}
