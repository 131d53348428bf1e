package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the keeper where a PDF shall go. */
@FunctionalInterface
public interface PdfChooser {
    /** The file chosen, or nothing if the keeper thought better of it. */
    Optional<Path> choose(String proposedName);
}
