package org.moultwright.ui.broods;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.compute.history.Estimates;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;
import org.moultwright.domain.TrayContents;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.SacWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.theme.Token;
import org.moultwright.workflow.BroodView;

/** Where every animal of a brood is, as bars, a sentence and rows. */
final class BroodLedger {
    private BroodLedger() {}

    static String title(BroodView brood) {
        int opened = brood.record().ledger().opened();
        if (opened == 0) {
            return Texts.say("Inside, as far as can be told");
        }
        return (Estimates.isOneIn(brood.record())
                        ? Texts.say("Where all of about %d are")
                        : Texts.say("Where all %d are"))
                .formatted(opened);
    }

    static List<LedgerBars.Bar> bars(Ledger ledger, Token ofTheLiving) {
        List<LedgerBars.Bar> bars = new ArrayList<>();
        bars.add(new LedgerBars.Bar(Texts.say("Opened"), ledger.opened(), false, Token.EGG));
        lossesByCause(ledger).forEach((word, count) -> bars.add(new LedgerBars.Bar(word, count, true, Token.DEAD)));
        add(bars, Texts.say("Missing"), ledger.balance(Account.MISSING), true, Token.DEAD);
        add(bars, Texts.say("Potted"), ledger.balance(Account.POTTED), false, Token.POTTED);
        add(bars, Texts.say("Handed over"), ledger.balance(Account.HANDED_OVER), false, Token.POTTED);
        add(bars, Texts.say("In trays"), ledger.aliveInTrays(), false, ofTheLiving);
        return bars;
    }

    /** Every animal's way from the sac to where it is, cause by cause and stage by stage; together they are all. */
    static List<LedgerBars.Bar> way(BroodView brood, Vocabulary vocabulary) {
        Ledger ledger = brood.record().ledger();
        if (ledger.opened() == 0) {
            return List.of();
        }
        List<LedgerBars.Bar> bars = new ArrayList<>();
        bars.add(new LedgerBars.Bar(Texts.say("From the sac"), ledger.opened(), false, Token.EGG));
        Map<String, Integer> losses = new LinkedHashMap<>();
        ledger.standing().stream()
                .filter(entry -> entry.to().isLoss() != entry.from().isLoss())
                .forEach(entry -> losses.merge(
                        entry.to().isLoss()
                                ? lossWord(entry.to(), entry.cause())
                                : lossWord(entry.from(), entry.cause()),
                        entry.to().isLoss() ? entry.count() : -entry.count(),
                        Integer::sum));
        losses.forEach((word, count) -> add(bars, word, count, true, Token.DEAD));
        add(bars, Texts.say("Handed over"), ledger.balance(Account.HANDED_OVER), true, Token.POTTED);
        add(bars, Texts.say("Potted"), ledger.balance(Account.POTTED), true, Token.POTTED);
        Map<Stage, Integer> living = new EnumMap<>(Stage.class);
        brood.trays()
                .forEach(tray -> TrayContents.at(
                                Instant.MAX, tray.tray(), ledger, brood.record().checks())
                        .byStage()
                        .forEach((stage, count) -> living.merge(stage, count, Integer::sum)));
        living.forEach((stage, count) -> add(bars, vocabulary.label(stage), count, false, Token.of(stage)));
        return bars;
    }

    private static String lossWord(Account account, Cause cause) {
        if (account.equals(Account.INFERTILE)) {
            return Texts.say("Infertile");
        }
        if (account.equals(Account.MISSING)) {
            return Texts.say("Eaten or lost");
        }
        if (cause.equals(Cause.UNKNOWN)) {
            return Texts.say("Cause unknown");
        }
        String words = Texts.say(cause.words());
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What the balance leaves open, and how old the brood is; of a sac, what is expected inside. */
    static String note(BroodView brood, SacWords words) {
        if (brood.record().ledger().opened() == 0) {
            return brood.forecast()
                    .flatMap(BroodForecast::sac)
                    .map(sac -> sac(brood, sac, words))
                    .orElse(Texts.say("No dates: nobody wrote down when it was laid."));
        }
        int missing = brood.record().ledger().balance(Account.MISSING);
        String balance = missing == 0
                ? Texts.say("Nothing unexplained.")
                : Texts.say("{0} eaten or lost, no body found.", missing);
        return brood.forecast()
                .map(forecast ->
                        Texts.say("{0} {1} warm-days since laying.", balance, Numbers.fixed(forecast.warmDays(), 1)))
                .orElse(balance);
    }

    private static String sac(BroodView brood, SacForecast sac, SacWords words) {
        List<String> lines = new ArrayList<>(List.of(words.age(sac) + "."));
        brood.forecast()
                .flatMap(forecast -> words.toPull(sac, brood.record().brood(), forecast.asOf()))
                .ifPresent(lines::add);
        sac.moults().forEach(moult -> lines.add(Texts.say("Thought: {0}.", words.half(moult))));
        lines.add(Texts.say("By belief alone; nobody has looked inside."));
        return String.join("\n", lines);
    }

    static List<EntryLine> entries(Ledger ledger, Vocabulary vocabulary, DayWords days) {
        List<EntryLine> lines = new ArrayList<>();
        for (LedgerEntry entry : ledger.entries()) {
            lines.add(0, line(entry, ledger, vocabulary, days));
        }
        return lines;
    }

    private static EntryLine line(LedgerEntry entry, Ledger ledger, Vocabulary vocabulary, DayWords days) {
        String corrects = entry.corrects()
                .flatMap(ledger::find)
                .map(original -> Texts.say(
                        "takes back {0}, {1} to {2}",
                        days.shortDay(original.at()),
                        original.count(),
                        original.to().code()))
                .orElse(entry.note());
        return new EntryLine(
                days.shortDay(entry.at()) + ", " + days.clock(entry.at()),
                entry.from().code(),
                entry.to().code(),
                Integer.toString(entry.count()),
                vocabulary.label(entry.stage()),
                Texts.say(entry.cause().words()),
                corrects);
    }

    private static Map<String, Integer> lossesByCause(Ledger ledger) {
        return ledger.standing().stream()
                .filter(entry -> entry.to().equals(Account.DEAD) || entry.to().equals(Account.INFERTILE))
                .collect(Collectors.groupingBy(
                        BroodLedger::word, LinkedHashMap::new, Collectors.summingInt(LedgerEntry::count)));
    }

    private static String word(LedgerEntry entry) {
        if (entry.to().equals(Account.INFERTILE)) {
            return Texts.say("Infertile");
        }
        if (entry.cause().equals(Cause.DROWNED)) {
            return Texts.say("Drowned");
        }
        if (entry.cause().equals(Cause.FUSED)) {
            return Texts.say("Fused");
        }
        return entry.cause().equals(Cause.MOULD) ? Texts.say("Mould") : Texts.say("Died");
    }

    private static void add(List<LedgerBars.Bar> bars, String word, int count, boolean isLoss, Token token) {
        if (count > 0) {
            bars.add(new LedgerBars.Bar(word, count, isLoss, token));
        }
    }

    /** The commonest living stage gives the bar of the living its colour. */
    static Token colour(Map<Stage, Double> living) {
        return living.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(entry -> Token.of(entry.getKey()))
                .orElse(Token.POTTED);
    }

    /** One entry of the ledger in words. */
    record EntryLine(String when, String from, String to, String count, String stage, String cause, String note) {}
}
