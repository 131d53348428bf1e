package org.moultwright.store;

import java.util.List;
import org.moultwright.store.sql.Problem;

/**
 * What a check of a store found.
 *
 * @param schemaVersion the version of its tables
 * @param broods how many broods it holds
 * @param entries how many ledger entries
 * @param readings how many readings
 * @param problems what is wrong, empty where all is well
 */
public record StoreReport(int schemaVersion, int broods, int entries, long readings, List<Problem> problems) {
    public StoreReport {
        problems = List.copyOf(problems);
    }

    public boolean isSound() {
        return problems.isEmpty();
    }
}
