package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the keeper for a brood folder. */
@FunctionalInterface
public interface FolderChooser {
    /** The folder chosen, or nothing if the keeper thought better of it. */
    Optional<Path> choose();
}
