package org.moultwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.ExpectedAge;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.Brood;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Timing;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/** What the dates of a brood rest on before it has shown anything, in sentences. */
public record BasisWords(Vocabulary vocabulary) {
    private static final Map<String, String> FIGURES = Map.of(
            "medianWarmDays",
            Texts.say("the ages"),
            "batchSd",
            Texts.say("how far broods differ"),
            "rate",
            Texts.say("the temperatures"),
            "stageSd",
            Texts.say("how far stages differ"));

    /** "your own belief of this brood", "assumed of Genus", "assumed of any species". */
    public String inShort(Brood brood, AssumedTiming assumed) {
        if (isOwn(brood)) {
            return Texts.say("what you believe of this brood");
        }
        return assumed.isGeneral()
                ? Texts.say("the general timing, an assumption: nothing is assumed of this species in particular")
                : Texts.say("what is assumed of {0}", assumed.taxon());
    }

    /** Ages, spread and temperatures, a line each. */
    public List<String> figures(Brood brood, AssumedTiming assumed) {
        Timing timing = own(brood).orElse(assumed.timing());
        List<String> lines = new ArrayList<>();
        lines.add(Texts.say(
                "{0} warm-days",
                timing.medianWarmDays().entrySet().stream()
                        .map(median ->
                                Texts.say("{0} at {1}", vocabulary.plural(median.getKey()), number(median.getValue())))
                        .collect(Collectors.joining(", "))));
        lines.add(Texts.say("broods differ by about {0} %", Numbers.fixed(100 * timing.batchSd(), 0)));
        lines.add(temperatures(brood.timing().map(Timing::rate).orElse(timing.rate())));
        return lines;
    }

    /** Where each figure of an assumption is from; nothing of a keeper's own belief, which needs no source. */
    public List<String> sources(Brood brood, AssumedTiming assumed) {
        if (isOwn(brood)) {
            return List.of();
        }
        return assumed.sources().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(source -> capital(FIGURES.getOrDefault(source.getKey(), source.getKey())) + ": "
                        + source.getValue() + ".")
                .toList();
    }

    /** "half are nymphs at 39 to 44". */
    public String expected(ExpectedAge age) {
        return Texts.say(
                "half are {0} at {1} to {2}",
                vocabulary.plural(age.into()), Numbers.fixed(age.p10(), 0), Numbers.fixed(age.p90(), 0));
    }

    private static boolean isOwn(Brood brood) {
        return own(brood).isPresent();
    }

    private static Optional<Timing> own(Brood brood) {
        return brood.timing().filter(timing -> !timing.medianWarmDays().isEmpty());
    }

    private static String temperatures(RateForm rate) {
        if (rate instanceof RateForm.Linear linear) {
            return Texts.say("development in proportion to the degrees above {0}", degrees(linear.lowerCelsius()));
        }
        if (rate instanceof RateForm.Briere1 briere) {
            return Texts.say(
                    "development between {0} and {1}, fastest near the upper end",
                    Degrees.shortest(briere.lowerCelsius(), 1), degrees(briere.upperCelsius()));
        }
        return rate instanceof RateForm.Table
                ? Texts.say("development by a table of rates")
                : Texts.say("development by a curve of its own");
    }

    private static String degrees(double celsius) {
        return Degrees.shortest(celsius, 1) + " " + Degrees.symbol();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Numbers.fixed(value, 1);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
