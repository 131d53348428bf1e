package org.moultwright.ui.broods;

import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.RunUpEvent;

/** Who laid a sac, as its run-up tells. */
final class Mothers {
    private Mothers() {}

    static Optional<String> of(BroodRecord record) {
        return record.runUp().stream()
                .filter(event -> event.what().equals(RunUpEvent.MOTHER))
                .map(RunUpEvent::note)
                .filter(code -> !code.isBlank())
                .findFirst();
    }
}
