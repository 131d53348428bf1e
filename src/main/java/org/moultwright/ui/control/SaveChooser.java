package org.moultwright.ui.control;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the keeper where something shall be saved. */
@FunctionalInterface
public interface SaveChooser {
    /** The file chosen, or nothing if the keeper thought better of it. */
    Optional<Path> choose(String proposedName);
}
