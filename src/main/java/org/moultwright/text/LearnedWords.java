package org.moultwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.language.Texts;

/** What the timing of broods was learned from, in sentences. */
public final class LearnedWords {
    private LearnedWords() {}

    /**
     * One sentence for all broods alike: "CC-26-A and CC-26-B: timing as written down for the brood; no completed
     * brood of the species to learn from yet."
     */
    public static List<String> sentences(List<Learned> broods) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Learned brood : broods) {
            alike.computeIfAbsent(source(brood.forecast(), brood.teachers()), unheard -> new ArrayList<>())
                    .add(brood.forecast().brood());
        }
        return alike.entrySet().stream()
                .map(entry -> Listing.and(entry.getValue()) + ": " + entry.getKey() + ".")
                .toList();
    }

    /** "learned from 2 completed broods", for all of them in short. */
    public static String inShort(List<Learned> broods) {
        int most = broods.stream()
                .mapToInt(brood -> brood.forecast().learnedBroods())
                .max()
                .orElse(0);
        return most == 0
                ? Texts.say("no completed brood to learn from yet")
                : Texts.say("learned from {0}", completed(most));
    }

    private static String source(BroodForecast forecast, List<String> names) {
        return switch (forecast.priorFrom()) {
            case LEARNED ->
                names.isEmpty()
                        ? Texts.say("timing learned from {0} of the species", completed(forecast.learnedBroods()))
                        : Texts.say(
                                "timing learned from {0} of the species, {1}",
                                completed(forecast.learnedBroods()), Listing.and(names));
            case FOLDER ->
                Texts.say("timing as written down for the brood; no completed brood of the species to learn from yet");
            case TAXON ->
                Texts.say("timing as kept for the species; no completed brood of the species to learn from yet");
            case GENERAL ->
                Texts.say("the general timing, an assumption; no completed brood of the species to learn from yet");
        };
    }

    private static String completed(int broods) {
        return Texts.count(broods, "1 completed brood", "{0} completed broods", broods);
    }

    /**
     * A brood and whom it learned from.
     *
     * @param teachers codes of the completed broods; empty where they are not known by name
     */
    public record Learned(BroodForecast forecast, List<String> teachers) {
        public Learned {
            teachers = List.copyOf(teachers);
        }
    }
}
