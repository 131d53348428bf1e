package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.PotSlings.Outcome;
import org.moultwright.workflow.PotSlings.Potting;
import org.moultwright.workflow.TrayView;

/**
 * One brood laid out for potting: its trays, each with what is taken from it.
 *
 * <p>Codes go to the animals taken in the order of the trays, so that a tray's labels stand together.
 */
record Bench(BroodView brood, List<Taking> takings) {

    static Bench of(BroodView brood) {
        Stage stage = brood.record().brood().lastStage();
        return new Bench(
                brood,
                brood.trays().stream()
                        .filter(tray -> tray.alive() > 0)
                        .map(tray -> new Taking(tray, stage))
                        .toList());
    }

    Stage stage() {
        return brood.record().brood().lastStage();
    }

    boolean isOf(String broodCode) {
        return brood.code().equals(broodCode);
    }

    /** Whether any animal is taken, and none that is not there. */
    boolean takesWhatIsThere() {
        return taken() > 0
                && takings.stream()
                        .allMatch(taking -> taking.problemProperty().get().isEmpty());
    }

    int ready() {
        return takings.stream().mapToInt(Taking::ready).sum();
    }

    int taken() {
        return takings.stream().mapToInt(Taking::taken).sum();
    }

    int potted() {
        return takings.stream().mapToInt(Taking::potted).sum();
    }

    int lost() {
        return takings.stream().mapToInt(Taking::lost).sum();
    }

    boolean holdsTogether() {
        return taken() > 0 && takings.stream().allMatch(Taking::holdsTogether);
    }

    /** One label for each animal taken, tray by tray. */
    Labels labels(PotPrefix prefix, List<Pot> existing, Function<Taking, String> lineOf) {
        List<PotCode> codes = prefix.next(taken(), existing);
        List<List<PotLabel>> byTray = new ArrayList<>();
        int next = 0;
        for (Taking taking : takings) {
            String line = lineOf.apply(taking);
            byTray.add(codes.subList(next, next + taking.taken()).stream()
                    .map(code ->
                            new PotLabel(code.text(), brood.record().brood().taxon(), line))
                    .toList());
            next += taking.taken();
        }
        return new Labels(byTray);
    }

    /**
     * What is written into the book: each tray's first labels are its pots'.
     *
     * @param potSize the size of pots of trays that name no other
     */
    Potting potting(Labels labels, String potSize, Instant at) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < takings.size(); i++) {
            Taking taking = takings.get(i);
            if (taking.taken() > 0) {
                List<PotLabel> used = labels.byTray().get(i).subList(0, taking.potted());
                outcomes.add(new Outcome(taking.tray().tray(), taking.potSize(potSize), used, taking.lost()));
            }
        }
        return new Potting(brood.code(), at, outcomes);
    }

    /** The labels of animals that were taken and did not come to be potted. */
    List<PotLabel> leftOver(Labels labels) {
        List<PotLabel> left = new ArrayList<>();
        for (int i = 0; i < takings.size(); i++) {
            List<PotLabel> ofTray = labels.byTray().get(i);
            left.addAll(ofTray.subList(Math.min(takings.get(i).potted(), ofTray.size()), ofTray.size()));
        }
        return left;
    }

    /** The day the animals were last seen in their stage; where they never were, today. */
    Instant seen(Taking taking, Instant now) {
        Optional<Instant> look = taking.ready() > 0 ? taking.tray().lastLook() : Optional.empty();
        return look.orElse(now);
    }

    List<TrayView> trays() {
        return takings.stream().map(Taking::tray).toList();
    }

    /** Labels by tray, in the order of the trays. */
    record Labels(List<List<PotLabel>> byTray) {
        List<PotLabel> all() {
            return byTray.stream().flatMap(List::stream).toList();
        }
    }
}
