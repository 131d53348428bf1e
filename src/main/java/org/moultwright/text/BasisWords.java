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

/** What the dates of a brood rest on before it has shown anything, in sentences. */
public record BasisWords(Vocabulary vocabulary) {
    private static final Map<String, String> FIGURES = Map.of(
            "medianWarmDays",
            "the ages",
            "batchSd",
            "how far broods differ",
            "rate",
            "the temperatures",
            "stageSd",
            "how far stages differ");

    /** "your own belief of this brood", "assumed of Genus", "assumed of any species". */
    public String inShort(Brood brood, AssumedTiming assumed) {
        if (isOwn(brood)) {
            return "what you believe of this brood";
        }
        return assumed.isGeneral()
                ? "the general timing, an assumption: nothing is assumed of this species in particular"
                : "what is assumed of " + assumed.taxon();
    }

    /** Ages, spread and temperatures, a line each. */
    public List<String> figures(Brood brood, AssumedTiming assumed) {
        Timing timing = own(brood).orElse(assumed.timing());
        List<String> lines = new ArrayList<>();
        lines.add(timing.medianWarmDays().entrySet().stream()
                .map(median -> vocabulary.plural(median.getKey()) + " at " + number(median.getValue()))
                .collect(Collectors.joining(", ", "", " warm-days")));
        lines.add(String.format(Locale.ROOT, "broods differ by about %.0f %%", 100 * timing.batchSd()));
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
        return String.format(
                Locale.ROOT, "half are %s at %.0f to %.0f", vocabulary.plural(age.into()), age.p10(), age.p90());
    }

    private static boolean isOwn(Brood brood) {
        return own(brood).isPresent();
    }

    private static Optional<Timing> own(Brood brood) {
        return brood.timing().filter(timing -> !timing.medianWarmDays().isEmpty());
    }

    private static String temperatures(RateForm rate) {
        if (rate instanceof RateForm.Linear linear) {
            return "development in proportion to the degrees above " + number(linear.lowerCelsius()) + " °C";
        }
        if (rate instanceof RateForm.Briere1 briere) {
            return "development between " + number(briere.lowerCelsius()) + " and " + number(briere.upperCelsius())
                    + " °C, fastest near the upper end";
        }
        return rate instanceof RateForm.Table ? "development by a table of rates" : "development by a curve of its own";
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
