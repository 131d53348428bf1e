package org.moultwright.workflow;

import java.nio.file.Path;

/** Puts a sitter's sheet on paper. Faults come as a {@link DocumentException}. */
@FunctionalInterface
public interface SitterSheets {
    /** Writes the sheet as a PDF of one page, whole or not at all. */
    void save(SitterSheet sheet, Path pdf);
}
