package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.settings.SettingsFile;
import picocli.CommandLine.Option;

/** The option that names another file of assumed timings than the keeper's own. */
final class OwnTimings {
    @Option(
            names = "--timings",
            paramLabel = "FILE",
            description = "assumed timings of species (default: your own file beside the settings)")
    Optional<Path> file = Optional.empty();

    TimingsFile file() {
        return new TimingsFile(file.orElseGet(() -> SettingsFile.atHome().beside(TimingsFile.NAME)));
    }

    /** The timings to use; what ails the keeper's own file is told, and the shipped ones hold. */
    AssumedTimings timings(PrintWriter err) {
        TimingsFile.Loaded loaded = file().load();
        loaded.problem().ifPresent(err::println);
        err.flush();
        return loaded.timings();
    }
}
