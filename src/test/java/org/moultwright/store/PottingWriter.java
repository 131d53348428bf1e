package org.moultwright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.code.CodeRun;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.PotSlings.Outcome;
import org.moultwright.workflow.PotSlings.Potting;
import org.moultwright.workflow.ReadingSource;

/** Pots animals of two broods at once until it is killed, and says the codes of each deed once it is acknowledged. */
final class PottingWriter {
    static final List<String> BROODS = List.of("AA-26-A", "BB-26-B");
    static final int EACH = 3;
    private static final int LEFT_IN_TRAY = 30_000;

    private PottingWriter() {}

    public static void main(String[] arguments) {
        H2Store store = H2Store.open(Path.of(arguments[0]));
        for (String brood : BROODS) {
            BroodRecord record = InventedPots.brood(brood, prefix(brood), 1, LEFT_IN_TRAY);
            store.book().takeIn(record, ReadingSource.of(record));
        }
        PotSlings potSlings = new PotSlings(store.book(), () -> InventedPots.NOW, UUID::randomUUID);
        for (int number = 100 * Integer.parseInt(arguments[1]) + 2; true; number += EACH) {
            int first = number;
            List<Outcome> outcomes =
                    BROODS.stream().map(brood -> outcome(brood, first)).toList();
            potSlings.save(new Potting(Instant.now(), outcomes));
            System.out.println(outcomes.get(1).pots().get(0).code() + ".");
        }
    }

    static String prefix(String brood) {
        return "26" + brood.charAt(0);
    }

    private static Outcome outcome(String brood, int first) {
        CodeRun run = new CodeRun(prefix(brood) + "-", "", 3);
        List<PotLabel> labels = IntStream.range(first, first + EACH)
                .mapToObj(number -> new PotLabel(run.code(number).text(), "Invented species", ""))
                .toList();
        return new Outcome(brood, "A1 " + prefix(brood), "30 ml", labels, 1);
    }
}
