package org.moultwright.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.language.Texts;

/** The brood itself: {@code brood.json}. */
final class BroodJson {
    static final String FILE = "brood.json";
    static final String FORMAT = "moultwright-brood/1";

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Set<String> FIELDS = Set.of(
            "format", "code", "taxon", "zone", "laid", "pulled", "stages", "referenceTemperatureCelsius", "timing");
    private static final String INSTANT = Texts.say("an instant such as 2026-03-25T18:00:00Z");

    private BroodJson() {}

    /** Reads the brood; empty, and told of, where anything needed is missing or wrong. */
    static Optional<Brood> read(String content, Problems problems) throws IOException {
        Optional<JsonFields> document = JsonFields.parse(FILE, content, problems);
        return document.isEmpty() ? Optional.empty() : read(document.get(), problems);
    }

    private static Optional<Brood> read(JsonFields json, Problems problems) {
        noticeUnknown(json, problems);
        Optional<String> format = json.text("/format", "\"" + FORMAT + "\"", BroodJson::requireFormat);
        Optional<String> code = json.text("/code", Texts.say("the brood's code"), text -> text);
        Optional<String> taxon = json.text("/taxon", Texts.say("the species' scientific name"), text -> text);
        Optional<ZoneId> zone = json.text("/zone", Texts.say("a time zone such as Europe/Lisbon"), ZoneId::of);
        Optional<InstantRange> laid = json.has("/laid") ? laid(json) : Optional.empty();
        Optional<Instant> pulled =
                json.has("/pulled") ? json.text("/pulled", INSTANT, Numerals::instant) : Optional.empty();
        List<Stage> stages = stages(json);
        Optional<Double> reference = json.has("/referenceTemperatureCelsius")
                ? json.number("/referenceTemperatureCelsius", 5, 45)
                : Optional.of(Brood.DEFAULT_REFERENCE_CELSIUS);
        Optional<Timing> timing = json.has("/timing") ? TimingJson.read(json, "/timing") : Optional.empty();
        boolean sound = problems.isEmpty() && format.isPresent();
        return sound && code.isPresent() && taxon.isPresent() && zone.isPresent() && reference.isPresent()
                ? Optional.of(
                        new Brood(code.get(), taxon.get(), zone.get(), laid, pulled, stages, reference.get(), timing))
                : Optional.empty();
    }

    static String write(Brood brood) {
        ObjectNode json = MAPPER.createObjectNode();
        json.put("format", FORMAT);
        json.put("code", brood.code());
        json.put("taxon", brood.taxon());
        json.put("zone", brood.zone().getId());
        brood.laid()
                .ifPresent(laid -> json.putObject("laid")
                        .put("earliest", laid.earliest().toString())
                        .put("latest", laid.latest().toString()));
        brood.pulled().ifPresent(pulled -> json.put("pulled", pulled.toString()));
        ArrayNode stages = json.putArray("stages");
        brood.stages().forEach(stage -> stages.add(stage.key()));
        json.put("referenceTemperatureCelsius", brood.referenceTemperatureCelsius());
        brood.timing().ifPresent(timing -> json.set("timing", TimingJson.write(timing)));
        return json.toPrettyString() + "\n";
    }

    private static String requireFormat(String format) {
        if (!format.equals(FORMAT)) {
            throw new IllegalArgumentException(format);
        }
        return format;
    }

    private static Optional<InstantRange> laid(JsonFields json) {
        Optional<Instant> earliest = json.text("/laid/earliest", INSTANT, Numerals::instant);
        Optional<Instant> latest = json.text("/laid/latest", INSTANT, Numerals::instant);
        if (earliest.isEmpty() || latest.isEmpty()) {
            return Optional.empty();
        }
        return latest.get().isBefore(earliest.get())
                ? json.refuse("/laid/latest", Texts.say("an instant not before {0}", earliest.get()))
                : Optional.of(new InstantRange(earliest.get(), latest.get()));
    }

    private static List<Stage> stages(JsonFields json) {
        List<Stage> stages = new ArrayList<>();
        JsonNode list = json.at("/stages");
        for (int i = 0; i < list.size(); i++) {
            Optional<Stage> stage = Stage.fromKey(list.get(i).asText());
            if (stage.isPresent()) {
                stages.add(stage.get());
            } else {
                json.refuse("/stages/" + i, AnimalTables.STAGES);
            }
        }
        if (stages.stream().distinct().count() < 2) {
            json.refuse("/stages", Texts.say("at least two stages"));
        }
        return stages;
    }

    private static void noticeUnknown(JsonFields json, Problems problems) {
        for (Iterator<String> names = json.at("").fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!FIELDS.contains(name)) {
                problems.notice(
                        "%s: the field '%s' is not part of the format and was passed over".formatted(FILE, name));
            }
        }
    }
}
