package org.moultwright.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.language.Texts;

/** The document that says what is assumed of the timing of species. */
final class TimingsJson {
    static final String FORMAT = "moultwright-timings/1";

    private static final Set<String> FIELDS = Set.of("taxon", "timing", "stageSd", "source");
    private static final List<String> SOURCED = List.of("medianWarmDays", "batchSd", "rate");
    private static final double USUAL_STAGE_SD = 0.2;

    private final JsonFields json;
    private final String file;
    private final Set<String> taxa = new HashSet<>();

    private TimingsJson(JsonFields json, String file) {
        this.json = json;
        this.file = file;
    }

    /** Reads all of a document; what is wrong is told to the problems, and then nothing of it is to be used. */
    static List<AssumedTiming> read(String file, String content, Problems problems) throws IOException {
        Optional<JsonFields> document = JsonFields.parse(file, content, problems);
        return document.map(json -> new TimingsJson(json, file).read()).orElse(List.of());
    }

    private List<AssumedTiming> read() {
        if (!json.at("/format").asText().equals(FORMAT)) {
            json.refuse("/format", "\"" + FORMAT + "\"");
        }
        JsonNode list = json.at("/timings");
        if (!list.isArray()) {
            json.refuse("/timings", Texts.say("a list of timings"));
        }
        List<AssumedTiming> timings = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            timing("/timings/" + i).ifPresent(timings::add);
        }
        return timings;
    }

    private Optional<AssumedTiming> timing(String at) {
        json.at(at).fieldNames().forEachRemaining(name -> {
            if (!FIELDS.contains(name)) {
                json.refuse(
                        at + "/" + name, Texts.say("no field of this name, only taxon, timing, stageSd and source"));
            }
        });
        Optional<String> taxon =
                json.text(at + "/taxon", Texts.say("a species, a genus, or \"general\""), String::strip);
        taxon.filter(name -> !taxa.add(name.toLowerCase(Locale.ROOT)))
                .ifPresent(twice -> json.refuse(at + "/taxon", Texts.say("each taxon once")));
        Optional<Timing> timing = TimingJson.read(json, at + "/timing");
        timing.filter(found -> found.medianWarmDays().isEmpty())
                .ifPresent(none ->
                        json.refuse(at + "/timing/medianWarmDays", Texts.say("the median of at least one stage")));
        boolean isGeneral = taxon.filter(AssumedTiming.GENERAL::equals).isPresent();
        timing.filter(found -> isGeneral && !isWhole(found.medianWarmDays()))
                .ifPresent(part -> json.refuse(
                        at + "/timing/medianWarmDays",
                        Texts.say("in the general timing a median of every stage but the egg")));
        Optional<Double> stageSd =
                json.has(at + "/stageSd") ? json.number(at + "/stageSd", 0, 2) : Optional.of(USUAL_STAGE_SD);
        Map<String, String> sources = sources(at + "/source");
        boolean isSound = taxon.isPresent()
                && stageSd.isPresent()
                && timing.filter(found -> !found.medianWarmDays().isEmpty()).isPresent();
        return isSound
                ? Optional.of(new AssumedTiming(taxon.get(), timing.get(), stageSd.get(), sources, file))
                : Optional.empty();
    }

    /** Where each figure is from, which a reader of dates has a right to know: none may be left out. */
    private Map<String, String> sources(String at) {
        Map<String, String> sources = new TreeMap<>();
        for (String figure : SOURCED) {
            json.text(at + "/" + figure, Texts.say("where it is from, or \"no source\""), String::strip)
                    .ifPresent(source -> sources.put(figure, source));
        }
        if (json.has(at + "/stageSd")) {
            json.text(at + "/stageSd", Texts.say("where it is from, or \"no source\""), String::strip)
                    .ifPresent(source -> sources.put("stageSd", source));
        }
        return sources;
    }

    private static boolean isWhole(Map<Stage, Double> medians) {
        return medians.keySet().size() - (medians.containsKey(Stage.EGG) ? 1 : 0) == Stage.values().length - 1;
    }
}
