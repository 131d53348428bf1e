package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;
import org.moultwright.text.ForecastWords;

/** A forecast as the JSON document of the brood folder's format. */
final class ForecastJson {
    private final ForecastWords words;

    ForecastJson(ForecastWords words) {
        this.words = words;
    }

    ObjectNode of(BroodForecast forecast) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("brood", forecast.brood());
        json.put("asOf", forecast.asOf().toString());
        json.put("warmDays", Rounded.to(forecast.warmDays(), 100));
        json.put("gapFraction", Rounded.to(forecast.gapFraction(), 10_000));
        json.put("priorFrom", priorFrom(forecast));
        ArrayNode trays = json.putArray("trays");
        forecast.trays().forEach(tray -> trays.add(tray(tray)));
        forecast.sac().ifPresent(sac -> json.set("sac", sac(sac)));
        forecast.yield().ifPresent(count -> json.set("yield", count(forecast.yieldInto(), count)));
        ArrayNode notes = json.putArray("notes");
        forecast.notes().forEach(note -> notes.add(words.note(note)));
        return json;
    }

    private static String priorFrom(BroodForecast forecast) {
        return forecast.priorFrom() == PriorSource.LEARNED
                ? "learned(" + forecast.learnedBroods() + ")"
                : forecast.priorFrom().name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode tray(TrayForecast tray) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("tray", tray.tray());
        json.put("expectedAlive", Rounded.to(tray.expectedAlive(), 100));
        ArrayNode moults = json.putArray("moults");
        tray.moults().forEach(moult -> moults.add(moult(moult)));
        return json;
    }

    /** Beside the trays, of which there are none: a reader that knows no sac reads what it always did. */
    private static ObjectNode sac(SacForecast sac) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("days", Rounded.to(sac.days(), 100));
        json.put("warmDays", Rounded.to(sac.warmDays(), 100));
        json.put("eggsSupposed", SacForecast.EGGS_SUPPOSED);
        ArrayNode moults = json.putArray("moults");
        sac.moults().forEach(moult -> moults.add(moult(moult)));
        sac.pull()
                .ifPresent(pull ->
                        json.putObject("pull").put("from", seconds(pull.from())).put("to", seconds(pull.to())));
        return json;
    }

    private static ObjectNode moult(MoultForecast moult) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("into", moult.into().key());
        json.put("passed", Rounded.to(moult.passed(), 100));
        json.set("first", interval(moult.first()));
        json.set("half", interval(moult.half()));
        json.set("most", interval(moult.most()));
        return json;
    }

    private static ObjectNode interval(InstantInterval interval) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("p10", seconds(interval.p10()));
        json.put("p50", seconds(interval.p50()));
        json.put("p90", seconds(interval.p90()));
        return json;
    }

    private static ObjectNode count(Stage into, CountInterval count) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("into", into.key());
        json.put("p10", Rounded.to(count.p10(), 100));
        json.put("p50", Rounded.to(count.p50(), 100));
        json.put("p90", Rounded.to(count.p90(), 100));
        return json;
    }

    private static String seconds(Instant instant) {
        return instant.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
