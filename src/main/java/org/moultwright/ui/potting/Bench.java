package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.moultwright.domain.code.CodeFacts;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.PotSlings.Outcome;
import org.moultwright.workflow.PotSlings.Potting;
import org.moultwright.workflow.TrayView;

/**
 * Broods laid out for potting: their trays, each with what is taken from it.
 *
 * <p>Codes go to the animals taken in the order of broods, trays and sizes, so that a tray's labels stand together.
 *
 * @param portions how many there are on it: with one more it is another bench
 */
record Bench(List<Taking> takings, int portions) {
    Bench {
        takings = List.copyOf(takings);
    }

    Bench(List<Taking> takings) {
        this(
                takings,
                takings.stream().mapToInt(taking -> taking.portions().size()).sum());
    }

    /** Whether animals of several broods are on it, so that a tray's code does not say whose it is. */
    boolean isOfSeveral() {
        return takings.stream().map(taking -> taking.brood().code()).distinct().count() > 1;
    }

    /** A tray as it is called here. */
    String name(Taking taking) {
        String tray = taking.tray().tray();
        return isOfSeveral() ? taking.brood().code() + " " + tray : tray;
    }

    /** Whether any animal is taken, and none that is not there. */
    boolean takesWhatIsThere() {
        return taken() > 0 && takings.stream().allMatch(Taking::takesWhatIsThere);
    }

    int taken() {
        return sum(Taking::taken);
    }

    int potted() {
        return sum(Taking::potted);
    }

    int lost() {
        return sum(Taking::lost);
    }

    boolean holdsTogether() {
        return taken() > 0 && takings.stream().allMatch(Taking::holdsTogether);
    }

    List<TrayView> trays() {
        return takings.stream().map(Taking::tray).toList();
    }

    /** One label for each animal taken, portion by portion. */
    Labels labels(CodePattern pattern, LabelDesign design, TakenCodes taken, Instant now, LineOf lineOf) {
        Map<Portion, List<PotLabel>> labels = new LinkedHashMap<>();
        for (Taking taking : takings) {
            CodeFacts facts = CodeFacts.of(taking.brood(), taking.tray().tray(), now);
            for (Portion portion : taking.portions()) {
                String line = lineOf.line(taking, portion);
                List<PotCode> codes = pattern.run(facts).next(portion.taken(), taken);
                labels.put(
                        portion,
                        codes.stream()
                                .map(code -> PotLabel.of(
                                        design, code.text(), taking.brood().taxon(), line))
                                .toList());
            }
        }
        return new Labels(labels);
    }

    /**
     * What is written into the book: each portion's first labels are its pots'.
     *
     * @param potSize the size of pots of portions that name no other
     */
    Potting potting(Labels labels, String potSize, Instant at) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Taking taking : takings) {
            taking.portions().stream()
                    .filter(portion -> portion.taken() > 0)
                    .map(portion -> new Outcome(
                            taking.brood().code(),
                            taking.tray().tray(),
                            portion.potSize(potSize),
                            labels.of(portion).subList(0, portion.potted()),
                            portion.lost()))
                    .forEach(outcomes::add);
        }
        return new Potting(at, outcomes);
    }

    /** How many really go into pots of each size. */
    Map<String, Integer> pottedBySize(String potSize) {
        Map<String, Integer> bySize = new LinkedHashMap<>();
        takings.stream()
                .flatMap(taking -> taking.portions().stream())
                .filter(portion -> portion.taken() > 0)
                .forEach(portion -> bySize.merge(portion.potSize(potSize), portion.potted(), Integer::sum));
        return bySize;
    }

    /** These broods' trays; those that are on this bench as they are stay as the keeper filled them in. */
    Bench of(Collection<BroodView> broods, Runnable changed) {
        List<Taking> laid = new ArrayList<>();
        for (BroodView brood : broods) {
            brood.trays().stream()
                    .filter(tray -> tray.alive() > 0)
                    .map(tray -> takings.stream()
                            .filter(taking -> taking.isOf(tray))
                            .findFirst()
                            .orElseGet(() -> new Taking(brood, tray, changed)))
                    .forEach(laid::add);
        }
        return new Bench(laid);
    }

    private int sum(ToIntFunction<Taking> number) {
        return takings.stream().mapToInt(number).sum();
    }

    /** What stands under the name on the labels of a portion. */
    interface LineOf {
        String line(Taking taking, Portion portion);
    }

    /** Labels by portion, in order. */
    record Labels(Map<Portion, List<PotLabel>> byPortion) {
        List<PotLabel> of(Portion portion) {
            return byPortion.getOrDefault(portion, List.of());
        }

        /** The labels of these portions, in order. */
        List<PotLabel> of(Collection<Portion> portions) {
            Collection<Portion> wanted = new HashSet<>(portions);
            return byPortion.entrySet().stream()
                    .filter(entry -> wanted.contains(entry.getKey()))
                    .flatMap(entry -> entry.getValue().stream())
                    .toList();
        }

        /** Those of animals that were taken and did not come to be potted. */
        List<PotLabel> leftOver() {
            return byPortion.entrySet().stream()
                    .flatMap(entry ->
                            entry.getValue().stream().skip(entry.getKey().potted()))
                    .toList();
        }
    }
}
