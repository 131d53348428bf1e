package org.moultwright.ui.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.JointChance;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.ChanceWords;
import org.moultwright.text.Vocabulary;

/**
 * One tray while nobody is there, in words.
 *
 * @param sentence what matters most
 * @param details the figures behind it, a line each
 * @param needsHands how likely the tray needs hands, within [0, 1]
 */
record AwayLine(String sentence, List<String> details, double needsHands) {
    /** What is rarer is not worth a sentence. */
    private static final double WORTH_A_WORD = 0.05;

    private static final double RATHER_THAN_NOT = 0.5;

    private static final double LEAST_PERCENT = 0.01;

    private static final double ALL_BUT_IMPOSSIBLE = 0.001;

    AwayLine {
        details = List.copyOf(details);
    }

    static AwayLine of(AwayChances tray, Vocabulary vocabulary) {
        List<String> details = new ArrayList<>();
        tray.separation()
                .filter(due -> due.beforeLeaving() < RATHER_THAN_NOT)
                .ifPresent(due -> details.add(Texts.say(
                        "must be separated before you return: {0}", ChanceWords.percent(due.beforeReturn()))));
        tray.moults().stream()
                .flatMap(moult -> figures(moult, vocabulary).stream())
                .forEach(details::add);
        return new AwayLine(sentence(tray, vocabulary), details, tray.needsHands());
    }

    /** How likely any of the trays needs hands, all together, and how exactly the draws know it. */
    static String any(JointChance chance) {
        String likely = capital(ChanceWords.of(chance.probability()));
        // Where all draws agree, or all but a few, they cannot tell it from certain, and have no error to tell.
        double told = Math.max(ALL_BUT_IMPOSSIBLE, Math.min(1 - ALL_BUT_IMPOSSIBLE, chance.probability()));
        return told <= LEAST_PERCENT || told >= 1 - LEAST_PERCENT
                ? Texts.say("{0} that a tray needs hands while you are away: {1}.", likely, ChanceWords.percent(told))
                : Texts.say(
                        "{0} that a tray needs hands while you are away: {1}, give or take {2}.",
                        likely,
                        ChanceWords.percent(told),
                        Numbers.fixed(Math.max(1, Math.ceil(100 * chance.monteCarloSd())), 0));
    }

    /** The same of all that is to be seen, whether it needs hands or not. */
    static String anything(JointChance chance) {
        return Texts.say(
                "A first dark patch, a first, half or 95 % of a moult, or a separation falls on those days: {0}.",
                ChanceWords.percent(chance.probability()));
    }

    private static String sentence(AwayChances tray, Vocabulary vocabulary) {
        if (tray.moults().isEmpty()) {
            return Texts.say("{0}: too early to say.", tray.tray());
        }
        Optional<Happening> likeliest = tray.separation()
                .filter(due -> due.beforeLeaving() >= RATHER_THAN_NOT)
                .map(due -> new Happening(
                        due.beforeLeaving(), Texts.say("{0} should be separated before you leave", tray.tray())))
                .or(() -> happenings(tray, vocabulary)
                        .filter(happening -> happening.chance() >= WORTH_A_WORD)
                        .findFirst());
        return likeliest
                .map(Happening::sentence)
                .orElse(Texts.say("Little is likely to happen in {0} while you are away.", tray.tray()));
    }

    /** The first slings first, since they start the week; then whatever is likeliest. */
    private static Stream<Happening> happenings(AwayChances tray, Vocabulary vocabulary) {
        AwayChances.Moult last = tray.moults().get(0);
        Stream<Happening> others = tray.moults().stream()
                .flatMap(moult -> Stream.of(
                        first(tray.tray(), moult, vocabulary),
                        half(tray.tray(), moult, vocabulary),
                        most(tray.tray(), moult, vocabulary)))
                .sorted(Comparator.comparingDouble(Happening::chance).reversed());
        return Stream.concat(Stream.of(first(tray.tray(), last, vocabulary)), others);
    }

    private static Happening first(String tray, AwayChances.Moult moult, Vocabulary vocabulary) {
        return new Happening(
                moult.first(),
                Texts.say("{0}'s first {1} come while you are away", tray, vocabulary.plural(moult.into())));
    }

    private static Happening half(String tray, AwayChances.Moult moult, Vocabulary vocabulary) {
        return new Happening(
                moult.half(),
                Texts.say("half of {0} become {1} while you are away", tray, vocabulary.plural(moult.into())));
    }

    private static Happening most(String tray, AwayChances.Moult moult, Vocabulary vocabulary) {
        return new Happening(
                moult.most(),
                Texts.say("most of {0} become {1} while you are away", tray, vocabulary.plural(moult.into())));
    }

    /** "slings: first 94 %, half 60 %"; empty where none of it falls into those days. */
    private static Optional<String> figures(AwayChances.Moult moult, Vocabulary vocabulary) {
        String named = Stream.of(
                        new Happening(moult.first(), Texts.say("first")),
                        new Happening(moult.half(), Texts.say("half")),
                        new Happening(moult.most(), Texts.say("most")))
                .filter(happening -> happening.chance() > 0)
                .map(happening -> happening.what() + " " + ChanceWords.percent(happening.chance()))
                .collect(Collectors.joining(", "));
        return named.isEmpty() ? Optional.empty() : Optional.of(vocabulary.plural(moult.into()) + ": " + named);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private record Happening(double chance, String what) {
        String sentence() {
            return Texts.say("{0} that {1}.", capital(ChanceWords.of(chance)), what);
        }
    }
}
