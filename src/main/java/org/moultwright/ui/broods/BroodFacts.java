package org.moultwright.ui.broods;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.moultwright.compute.climate.ClimateDays;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.TrayClimates;
import org.moultwright.compute.history.BroodSurvival;
import org.moultwright.compute.history.Story;
import org.moultwright.compute.history.StoryEvent;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Reconciliation;
import org.moultwright.domain.Stage;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;

/**
 * What a brood's page is drawn from, read from its record.
 *
 * @param climate the air most of its animals lived in
 * @param survival how many survive; empty while nothing was in a tray
 */
record BroodFacts(BroodView brood, Instant now, ClimateDays climate, Optional<BroodSurvival> survival) {
    private static final String NOT_KNOWN = "–";

    static BroodFacts of(BroodView brood, Instant now) {
        BroodRecord record = brood.record();
        LivedTemperature lived = mainTray(record)
                .map(tray -> LivedTemperature.of(record, tray, now))
                .orElseGet(() -> new TrayClimates(record, now).ofSac());
        return new BroodFacts(brood, now, ClimateDays.of(record, lived), BroodSurvival.of(record, now));
    }

    /** The tray most of its animals came into. */
    static Optional<String> mainTray(BroodRecord record) {
        Map<String, Integer> into = new LinkedHashMap<>();
        record.ledger().standing().stream()
                .filter(entry -> entry.to().isTray())
                .forEach((LedgerEntry entry) -> into.merge(entry.to().code(), entry.count(), Integer::sum));
        return into.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** The brood in numbers, name by name, to be laid beside another's. */
    Map<String, String> numbers(Vocabulary vocabulary) {
        Map<String, String> numbers = new LinkedHashMap<>();
        int opened = brood.record().ledger().opened();
        int taken = brood.record().ledger().balance(Account.POTTED)
                + brood.record().ledger().balance(Account.HANDED_OVER);
        int lost = brood.record().ledger().lost();
        numbers.put(Texts.say("from the sac"), opened == 0 ? NOT_KNOWN : Integer.toString(opened));
        numbers.put(
                Texts.say("in trays"), Integer.toString(brood.record().ledger().aliveInTrays()));
        numbers.put(Texts.say("potted"), Integer.toString(taken));
        numbers.put(
                Texts.say("lost"), opened == 0 ? NOT_KNOWN : lost + ", " + Math.round(100.0 * lost / opened) + " %");
        numbers.put(Texts.say("days to opening"), days(survival.map(BroodSurvival::opened)));
        for (Stage stage : List.of(Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2)) {
            numbers.put(Texts.say("first {0}", vocabulary.plural(stage)), days(firstSeen(stage)));
        }
        numbers.put(
                Texts.say("warm-days"),
                brood.forecast()
                        .map(forecast -> Numbers.fixed(forecast.warmDays(), 1))
                        .orElse(NOT_KNOWN));
        numbers.put(Texts.say("mean temperature"), mean(climate));
        numbers.put(
                Texts.say("yield"),
                brood.forecast()
                        .flatMap(forecast -> forecast.yield())
                        .map(ForecastWords::count)
                        .orElse(NOT_KNOWN));
        return numbers;
    }

    private static String mean(ClimateDays climate) {
        OptionalDouble mean = climate.days().stream()
                .mapToDouble(ClimateDays.Day::meanCelsius)
                .average();
        return mean.isPresent() ? Degrees.words(mean.getAsDouble(), 1) : NOT_KNOWN;
    }

    private Optional<Instant> firstSeen(Stage stage) {
        return Story.of(brood.record()).stream()
                .filter(event -> event instanceof StoryEvent.FirstSeen seen && seen.stage() == stage)
                .map(StoryEvent::at)
                .findFirst();
    }

    /** Days since the laying, where both are known. */
    private String days(Optional<Instant> at) {
        OptionalLong days = at.map(brood.record().brood()::daysSinceLaying).orElse(OptionalLong.empty());
        return days.isPresent() ? Texts.say("day {0}", days.getAsLong()) : NOT_KNOWN;
    }

    /** What is not explained: whole counts the ledger does not agree with, the latest of each tray. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        brood.trays()
                .forEach(tray -> Reconciliation.questions(
                                brood.record().ledger(), brood.record().checks())
                        .stream()
                        .filter(question -> question.tray().equals(tray.tray()))
                        .reduce((earlier, later) -> later)
                        .ifPresent(question -> open.add(Texts.say(
                                "{0}: {1} counted, {2} expected",
                                question.tray(), question.counted(), question.expected()))));
        return open;
    }
}
