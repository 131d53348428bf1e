package org.moultwright.boot.command;

import java.nio.file.Path;
import org.moultwright.store.H2Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code backup}: copies a store to a file that is not there yet. */
@Command(
        name = "backup",
        description = "Copies a store to a file that is not there yet, and makes sure the copy opens.")
final class BackupCommand implements Runnable {
    @Parameters(paramLabel = "FILE", description = "the store")
    Path store = Path.of("");

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the copy")
    Path target = Path.of("");

    @Mixin
    OutputOnly output = new OutputOnly();

    @Override
    public void run() {
        try (H2Store open = Stores.existing(store)) {
            open.backup(target);
        }
        output.out().println(store + " copied to " + target);
    }
}
