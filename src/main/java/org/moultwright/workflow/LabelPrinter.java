package org.moultwright.workflow;

import java.nio.file.Path;

/** Puts pot labels on paper. Faults come as a {@link DocumentException}. */
public interface LabelPrinter {

    /** Writes the job's sheets as one PDF, whole or not at all: a file that was there stays until it is replaced. */
    void save(LabelJob job, Path pdf);

    /**
     * One sheet of the job as a picture, drawn from the very document {@link #save} would write.
     *
     * @param page the sheet, from 0
     * @param widthPixels how wide the picture shall be
     */
    PagePicture picture(LabelJob job, int page, int widthPixels);

    /** Writes a calibration page as PDF, whole or not at all. */
    void save(CalibrationPage page, Path pdf);

    /** A calibration page as a picture, drawn from the very document that would be saved. */
    PagePicture picture(CalibrationPage page, int widthPixels);
}
