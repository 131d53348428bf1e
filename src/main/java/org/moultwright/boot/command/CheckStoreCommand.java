package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code check-store}: reads a whole store and tells what in it does not hold. */
@Command(name = "check-store", description = "Reads a whole store and tells what in it does not hold. Changes nothing.")
final class CheckStoreCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the store")
    Path store = Path.of("");

    @Mixin
    Answer answer = new Answer();

    @Override
    public Integer call() {
        StoreReport report;
        try (H2Store open = Stores.existing(store)) {
            report = open.check();
        }
        if (answer.json) {
            answer.document(json(report));
        } else {
            answer.out()
                    .printf(
                            "%d broods, %d ledger entries, %d readings: %s%n",
                            report.broods(),
                            report.entries(),
                            report.readings(),
                            report.isSound() ? "all is well" : report.problems().size() + " problems");
            answer.out().flush();
        }
        report.problems()
                .forEach(problem -> answer.err()
                        .println("%s, %s: expected %s".formatted(problem.table(), problem.row(), problem.expected())));
        return report.isSound() ? 0 : 1;
    }

    private static ObjectNode json(StoreReport report) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("schemaVersion", report.schemaVersion());
        json.put("broods", report.broods());
        json.put("entries", report.entries());
        json.put("readings", report.readings());
        ArrayNode problems = json.putArray("problems");
        report.problems()
                .forEach(problem -> problems.addObject()
                        .put("table", problem.table())
                        .put("row", problem.row())
                        .put("expected", problem.expected()));
        return json;
    }
}
