package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import org.moultwright.domain.BroodRecord;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.store.H2Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code export}: writes one brood of a store as a brood folder. */
@Command(name = "export", description = "Writes one brood of a store as a brood folder.")
final class ExportCommand implements Runnable {
    @Parameters(paramLabel = "BROOD", description = "the brood's code")
    String brood = "";

    @Option(names = "--store", required = true, paramLabel = "FILE", description = "the store")
    Path store = Path.of("");

    @Option(names = "--to", required = true, paramLabel = "FOLDER", description = "a folder that is not there yet")
    Path folder = Path.of("");

    @Mixin
    Answer answer = new Answer();

    @Override
    public void run() {
        try (H2Store open = Stores.existing(store)) {
            BroodRecord record = Stores.brood(open, store, brood);
            new PlainBroodFolders(open.photos()).write(record, open.readings().of(record, Stores.END_OF_TIME), folder);
        }
        if (answer.json) {
            answer.document(
                    JsonNodeFactory.instance.objectNode().put("brood", brood).put("folder", folder.toString()));
        } else {
            answer.out().println(brood + " written to " + folder);
        }
    }
}
