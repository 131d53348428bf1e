package org.moultwright.ui.broods;

import java.time.Instant;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.compute.history.Estimates;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.SacWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.workflow.BroodView;

/**
 * A brood as one row of the list.
 *
 * @param code the brood's code
 * @param alive such as "106 of 118 alive"
 * @param stages what they are now, such as "94 nymphs, 12 dark nymphs"
 * @param next what comes next, such as "slings 4 to 8 May"; empty where nothing can be told
 * @param yield such as "103 to 106"; empty where nothing can be told
 * @param ribbon its picture
 */
record BroodLine(String code, String alive, String stages, String next, String yield, Ribbon ribbon) {
    private static final int STAGES_NAMED = 2;

    static BroodLine of(BroodView brood, Instant now, ForecastWords words) {
        Ribbon ribbon = BroodRibbon.of(brood, now);
        Optional<SacForecast> sac = brood.forecast().flatMap(BroodForecast::sac);
        if (sac.isPresent()) {
            return unopened(
                    brood.record().brood(), sac.get(), new SacWords(words.vocabulary(), words.days()), now, ribbon);
        }
        int alive = brood.record().ledger().aliveInTrays();
        String next = alive == 0
                ? Texts.say("no longer in trays")
                : brood.forecast().map(forecast -> next(words, brood, now)).orElse("");
        return new BroodLine(
                brood.code(),
                Estimates.isOneIn(brood.record())
                        ? Texts.say(
                                "about {0} of {1} alive",
                                alive + potted(ribbon), brood.record().ledger().opened())
                        : Texts.say(
                                "{0} of {1} alive",
                                alive + potted(ribbon), brood.record().ledger().opened()),
                stages(ribbon, words.vocabulary()),
                next,
                brood.forecast()
                        .flatMap(forecast -> forecast.yield())
                        .map(ForecastWords::count)
                        .orElse(""),
                ribbon);
    }

    /** What is in it nobody knows. */
    private static BroodLine unopened(Brood brood, SacForecast sac, SacWords words, Instant now, Ribbon ribbon) {
        return new BroodLine(
                brood.code(),
                Texts.say("sac unopened, yield unknown"),
                words.age(sac),
                words.pull(sac, brood, now).orElse(""),
                "",
                ribbon);
    }

    /** The row in one sentence, for those who hear it. */
    String spoken() {
        String foresight = yield.isEmpty() ? next : Texts.say("{0}, yield {1}", next, yield);
        return "%s, %s, %s, %s".formatted(code, alive, stages, foresight);
    }

    private static String next(ForecastWords words, BroodView brood, Instant now) {
        return brood.forecast()
                .flatMap(forecast -> words.brood(forecast, now))
                .orElseGet(() ->
                        brood.forecast().flatMap(forecast -> forecast.yield()).isPresent()
                                ? Texts.say(
                                        "mostly {0} by now",
                                        words.vocabulary()
                                                .plural(brood.record().brood().lastStage()))
                                : Texts.say("too early to say"));
    }

    private static int potted(Ribbon ribbon) {
        return last(ribbon).map(point -> (int) point.potted()).orElse(0);
    }

    private static String stages(Ribbon ribbon, Vocabulary vocabulary) {
        Optional<Ribbon.Point> point = last(ribbon);
        String living = point.map(Ribbon.Point::living).orElse(Map.of()).entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .sorted(Map.Entry.<Stage, Double>comparingByValue(Comparator.reverseOrder()))
                .limit(STAGES_NAMED)
                .map(entry -> counted(entry.getValue().intValue(), entry.getKey(), vocabulary))
                .collect(Collectors.joining(", "));
        int potted = potted(ribbon);
        if (potted == 0) {
            return living.isEmpty() ? Texts.say("nothing in trays") : living;
        }
        return living.isEmpty() ? Texts.say("{0} potted", potted) : Texts.say("{0}, {1} potted", living, potted);
    }

    private static String counted(int count, Stage stage, Vocabulary vocabulary) {
        return count + " " + (count == 1 ? vocabulary.singular(stage) : vocabulary.plural(stage));
    }

    private static Optional<Ribbon.Point> last(Ribbon ribbon) {
        return ribbon.past().stream().reduce((first, second) -> second);
    }
}
