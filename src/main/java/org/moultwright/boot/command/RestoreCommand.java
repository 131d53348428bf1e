package org.moultwright.boot.command;

import java.nio.file.Path;
import org.moultwright.store.H2Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code restore}: makes a store of a backup, never over one that is there. */
@Command(name = "restore", description = "Makes a store of a backup, in a file that is not there yet.")
final class RestoreCommand implements Runnable {
    @Parameters(paramLabel = "BACKUP", description = "the backup")
    Path backup = Path.of("");

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the store to make")
    Path target = Path.of("");

    @Mixin
    OutputOnly output = new OutputOnly();

    @Override
    public void run() {
        H2Store.restore(backup, target);
        output.out().println(backup + " restored to " + target);
    }
}
