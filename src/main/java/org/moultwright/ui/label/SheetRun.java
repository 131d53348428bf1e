package org.moultwright.ui.label;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import java.util.function.IntFunction;
import javax.print.PrintService;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.MediaPrintableArea;
import javax.print.attribute.standard.OrientationRequested;
import org.moultwright.domain.label.PageSize;
import org.moultwright.workflow.PagePicture;

/**
 * Sheets on their way to one printer, as one job.
 *
 * @param isAskedForPaper whether the job says which paper it wants; else the printer takes the one it is set to
 */
record SheetRun(boolean isAskedForPaper, PrintService printer, String title, int copies)
        implements SheetPrinter.Printing {
    @Override
    public Optional<String> refusal(PageSize paper) {
        PrinterPapers papers = new PrinterPapers(printer);
        if (papers.of(paper).isEmpty()) {
            return Optional.of(LabelWords.noSuchPaper(printer.getName(), paper));
        }
        return isAskedForPaper || papers.isSetTo(paper)
                ? Optional.empty()
                : Optional.of(LabelWords.otherPaper(printer.getName(), paper));
    }

    @Override
    public boolean print(PageSize paper, int sheets, IntFunction<PagePicture> picture) {
        PrinterJob job = PrinterJob.getPrinterJob();
        try {
            job.setPrintService(printer);
            job.setPrintable(new DrawnPages(paper, sheets, picture));
            job.print(asked(paper));
            return true;
        } catch (PrinterException refused) {
            return false;
        }
    }

    private PrintRequestAttributeSet asked(PageSize paper) {
        float width = (float) paper.widthMillimetres();
        float height = (float) paper.heightMillimetres();
        boolean isWide = width > height;
        PrintRequestAttributeSet asked = new HashPrintRequestAttributeSet();
        new PrinterPapers(printer).of(paper).ifPresent(asked::add);
        // The whole paper, of which the printer leaves out what it cannot reach.
        asked.add(
                new MediaPrintableArea(0, 0, Math.min(width, height), Math.max(width, height), MediaPrintableArea.MM));
        asked.add(isWide ? OrientationRequested.REVERSE_LANDSCAPE : OrientationRequested.PORTRAIT);
        asked.add(new JobName(title, null));
        asked.add(new Copies(copies));
        return asked;
    }
}
