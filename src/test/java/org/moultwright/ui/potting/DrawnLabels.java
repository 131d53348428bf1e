package org.moultwright.ui.potting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.LabelPrinter;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PotLabel;

/** A printer that writes the codes of a job, one a line, and draws blank paper. */
final class DrawnLabels implements LabelPrinter {
    private boolean full;

    void fillTheDisk() {
        full = true;
    }

    @Override
    public void save(LabelJob job, Path pdf) {
        if (full) {
            throw new DocumentException(DocumentException.Reason.DISK_FULL, "Not saved: the disk is full.");
        }
        try {
            Files.write(pdf, job.labels().stream().map(PotLabel::code).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void save(CalibrationPage page, Path pdf) {
        try {
            Files.writeString(pdf, "calibration of " + page.sheet().title());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public PagePicture picture(CalibrationPage page, int widthPixels) {
        return blank(page.sheet(), widthPixels);
    }

    @Override
    public PagePicture picture(LabelJob job, int page, int widthPixels) {
        return blank(job.sheet(), widthPixels);
    }

    private static PagePicture blank(LabelSheet sheet, int widthPixels) {
        double shape = sheet.paper().heightMillimetres() / sheet.paper().widthMillimetres();
        int heightPixels = (int) Math.ceil(widthPixels * shape);
        int[] white = new int[widthPixels * heightPixels];
        Arrays.fill(white, 0xFFFFFFFF);
        return new PagePicture(widthPixels, heightPixels, white);
    }
}
