package org.moultwright.exchange;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.SheetDraft;

/** Types a larger and larger count and says each one that is kept, until it is killed. */
final class DraftsProgram {
    private DraftsProgram() {}

    public static void main(String[] arguments) {
        DraftsFile<SheetDraft> file = DraftsFile.ofSheets(Path.of(arguments[0]));
        for (int count = 1; count < 100_000; count++) {
            file.keep(List.of(counted(count)));
            System.out.println(count);
            System.out.flush();
        }
    }

    static SheetDraft counted(int count) {
        return new SheetDraft(
                "CC-26-A",
                "A1",
                new SheetDraft.Basis(Instant.parse("2026-05-03T20:41:00Z"), 56, Optional.empty()),
                Map.of(Stage.INSTAR1, Integer.toString(count)),
                List.of(),
                Optional.empty(),
                Set.of(),
                "");
    }
}
