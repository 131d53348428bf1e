package org.moultwright.document;

import java.nio.file.Path;
import org.moultwright.workflow.SitterSheet;
import org.moultwright.workflow.SitterSheets;

/** Sitter's sheets as PDF. Holds nothing; safe to share. */
public final class PdfSitterSheets implements SitterSheets {
    @Override
    public void save(SitterSheet sheet, Path pdf) {
        DocumentFile.write(pdf, new SitterDocument(sheet).bytes());
    }
}
