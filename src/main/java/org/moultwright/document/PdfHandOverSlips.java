package org.moultwright.document;

import java.nio.file.Path;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.HandOverSlips;

/** Hand-over slips as PDF. Holds nothing; safe to share. */
public final class PdfHandOverSlips implements HandOverSlips {
    @Override
    public void save(HandOverSlip slip, Path pdf) {
        DocumentFile.write(pdf, new SlipDocument(slip).bytes());
    }
}
