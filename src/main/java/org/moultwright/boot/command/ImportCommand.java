package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.TakeInFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import}: takes brood folders into a store, each all or nothing. */
@Command(name = "import", description = "Takes brood folders into a store, each all or nothing.")
final class ImportCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "brood folders, or zip files of them")
    List<Path> folders = List.of();

    @Option(
            names = "--store",
            required = true,
            paramLabel = "FILE",
            description = "the store; it is made if it is not there")
    Path store = Path.of("");

    @Mixin
    Answer answer = new Answer();

    @Override
    public Integer call() {
        try (H2Store open = H2Store.open(store)) {
            TakeInFolders takeIn = new TakeInFolders(new PlainBroodFolders(), open.book(), Optional.of(open.photos()));
            boolean allTakenIn = true;
            for (Path folder : folders) {
                TakeInFolders.Result result = takeIn.takeIn(folder);
                tell(result);
                allTakenIn &= result.takenIn().isPresent();
            }
            return allTakenIn ? 0 : 1;
        }
    }

    private void tell(TakeInFolders.Result result) {
        if (result.takenIn().isEmpty()) {
            answer.err().println(Folders.listed(result.folder(), result.problems()));
        }
        Folders.tellNotices(answer.err(), result.folder(), result.notices());
        if (answer.json) {
            answer.document(json(result));
        } else {
            result.takenIn()
                    .ifPresent(takenIn -> answer.out()
                            .println(
                                    takenIn.changedNothing()
                                            ? result.brood().orElse("") + ": nothing new"
                                            : "%s: %d rows and %d readings taken in"
                                                    .formatted(
                                                            result.brood().orElse(""),
                                                            takenIn.rows(),
                                                            takenIn.readings())));
        }
        answer.out().flush();
    }

    private static ObjectNode json(TakeInFolders.Result result) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("folder", result.folder().toString());
        result.brood().ifPresent(code -> json.put("brood", code));
        result.takenIn().ifPresent(takenIn -> json.put("rows", takenIn.rows()).put("readings", takenIn.readings()));
        ArrayNode problems = json.putArray("problems");
        result.problems()
                .forEach(problem -> problems.addObject()
                        .put("file", problem.file())
                        .put("line", problem.line())
                        .put("column", problem.column())
                        .put("value", problem.value())
                        .put("expected", problem.expected()));
        ArrayNode notices = json.putArray("notices");
        result.notices().forEach(notices::add);
        return json;
    }
}
