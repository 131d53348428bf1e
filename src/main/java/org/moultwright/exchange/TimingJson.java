package org.moultwright.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.language.Texts;

/** The part of a document that says what is believed of a timing. */
final class TimingJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonFields json;
    private final String medians;
    private final String batchSd;
    private final String rate;

    private TimingJson(JsonFields json, String pointer) {
        this.json = json;
        this.medians = pointer + "/medianWarmDays";
        this.batchSd = pointer + "/batchSd";
        this.rate = pointer + "/rate";
    }

    /** Reads the timing at a place of a document; empty, and told of, where anything of it is missing or wrong. */
    static Optional<Timing> read(JsonFields json, String pointer) {
        return new TimingJson(json, pointer).read();
    }

    private Optional<Timing> read() {
        Optional<Map<Stage, Double>> medians = medians();
        Optional<Double> batchSd = json.number(this.batchSd, 0, 2);
        Optional<RateForm> rate = rate();
        if (medians.isEmpty() || batchSd.isEmpty() || rate.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Timing(medians.get(), batchSd.get(), rate.get()));
        } catch (IllegalArgumentException broken) {
            return json.refuse(this.medians, String.valueOf(broken.getMessage()));
        }
    }

    static ObjectNode write(Timing timing) {
        ObjectNode json = MAPPER.createObjectNode();
        ObjectNode medians = json.putObject("medianWarmDays");
        timing.medianWarmDays().forEach((stage, warmDays) -> medians.put(stage.key(), warmDays));
        json.put("batchSd", timing.batchSd());
        ObjectNode rate = json.putObject("rate").put("form", timing.rate().key());
        if (timing.rate() instanceof RateForm.Linear linear) {
            rate.put("lowerCelsius", linear.lowerCelsius());
        } else if (timing.rate() instanceof RateForm.Briere1 briere) {
            rate.put("lowerCelsius", briere.lowerCelsius()).put("upperCelsius", briere.upperCelsius());
        } else if (timing.rate() instanceof RateForm.Lactin2 lactin) {
            rate.put("rho", lactin.rho())
                    .put("maximumCelsius", lactin.maximumCelsius())
                    .put("deltaCelsius", lactin.deltaCelsius())
                    .put("lambda", lactin.lambda());
        } else if (timing.rate() instanceof RateForm.Table table) {
            ArrayNode points = rate.putArray("points");
            table.points()
                    .forEach(point ->
                            points.addArray().add(point.temperatureCelsius()).add(point.rate()));
        }
        return json;
    }

    private Optional<Map<Stage, Double>> medians() {
        JsonNode node = json.at(this.medians);
        if (!node.isObject()) {
            return json.refuse(this.medians, Texts.say("warm-days by stage"));
        }
        Map<Stage, Double> medians = new EnumMap<>(Stage.class);
        boolean sound = true;
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String pointer = this.medians + "/" + field.getKey();
            Optional<Stage> stage = Stage.fromKey(field.getKey());
            Optional<Double> warmDays = json.number(pointer, 0, 10_000);
            if (stage.isEmpty()) {
                json.refuse(pointer, AnimalTables.STAGES);
            }
            sound &= stage.isPresent() && warmDays.isPresent();
            stage.ifPresent(known -> medians.put(known, warmDays.orElse(0.0)));
        }
        return sound ? Optional.of(medians) : Optional.empty();
    }

    private Optional<RateForm> rate() {
        String form = json.at(rate + "/form").asText();
        try {
            return switch (form) {
                case "linear" -> temperature("lowerCelsius").map(RateForm.Linear::new);
                case "briere1" ->
                    temperature("lowerCelsius")
                            .flatMap(lower ->
                                    temperature("upperCelsius").map(upper -> new RateForm.Briere1(lower, upper)));
                case "lactin2" -> lactin();
                case "table" -> points().map(RateForm.Table::new);
                default -> json.refuse(rate + "/form", Texts.say("linear, briere1, lactin2 or table"));
            };
        } catch (IllegalArgumentException broken) {
            return json.refuse(rate, String.valueOf(broken.getMessage()));
        }
    }

    private Optional<RateForm> lactin() {
        Optional<Double> rho = json.number(rate + "/rho", 0, 1);
        Optional<Double> maximum = temperature("maximumCelsius");
        Optional<Double> delta = json.number(rate + "/deltaCelsius", 0, 100);
        Optional<Double> lambda = json.number(rate + "/lambda", -10, 10);
        boolean complete = rho.isPresent() && maximum.isPresent() && delta.isPresent() && lambda.isPresent();
        return complete
                ? Optional.of(new RateForm.Lactin2(rho.get(), maximum.get(), delta.get(), lambda.get()))
                : Optional.empty();
    }

    private Optional<List<RateForm.Point>> points() {
        List<RateForm.Point> points = new ArrayList<>();
        int size = json.at(rate + "/points").size();
        for (int i = 0; i < size; i++) {
            String pointer = rate + "/points/" + i;
            Optional<Double> temperature = json.number(pointer + "/0", -50, 80);
            Optional<Double> rate = json.number(pointer + "/1", 0, 1e9);
            if (temperature.isEmpty() || rate.isEmpty()) {
                return Optional.empty();
            }
            points.add(new RateForm.Point(temperature.get(), rate.get()));
        }
        return size < 2
                ? json.refuse(rate + "/points", Texts.say("at least two pairs [°C, rate]"))
                : Optional.of(points);
    }

    private Optional<Double> temperature(String field) {
        return json.number(rate + "/" + field, -50, 80);
    }
}
