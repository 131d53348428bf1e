package org.moultwright.ui.label;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.stage.Window;
import org.moultwright.domain.label.PageSize;
import org.moultwright.ui.print.Pixels;
import org.moultwright.ui.print.Printers;
import org.moultwright.workflow.PagePicture;

/** The machine's own printers and its own dialogue to choose one. */
public final class SystemPrinter implements SheetPrinter {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    /** Printers round their papers' sizes. */
    private static final double CUT_MILLIMETRES = 1;

    private final Supplier<Window> owner;
    private final Printers printers;

    public SystemPrinter(Supplier<Window> owner, Printers printers) {
        this.owner = owner;
        this.printers = printers;
    }

    @Override
    public Optional<String> hindrance() {
        return printers.hindrance();
    }

    @Override
    public Optional<Printing> choose(String title) {
        return Optional.ofNullable(PrinterJob.createPrinterJob()).flatMap(job -> {
            job.getJobSettings().setJobName(title);
            if (job.showPrintDialog(owner.get())) {
                return Optional.of(new Sheets(job));
            }
            job.cancelJob();
            return Optional.empty();
        });
    }

    private record Sheets(PrinterJob job) implements Printing {
        @Override
        public boolean print(PagePicture page, PageSize paper) {
            Optional<Paper> known = known(paper);
            if (known.isEmpty()) {
                return false;
            }
            PageLayout layout = job.getPrinter()
                    .createPageLayout(known.get(), PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM);
            ImageView sheet = new ImageView(Pixels.image(page));
            sheet.setFitWidth(paper.widthMillimetres() * POINTS_PER_MILLIMETRE);
            sheet.setFitHeight(paper.heightMillimetres() * POINTS_PER_MILLIMETRE);
            // The printer counts from the edge of what it can print, the sheet from the edge of the paper.
            sheet.setX(-layout.getLeftMargin());
            sheet.setY(-layout.getTopMargin());
            return job.printPage(layout, new Group(sheet));
        }

        @Override
        public boolean end() {
            return job.endJob();
        }

        /** The printer's own paper of that size; the toolkit cannot make one the printer does not have. */
        private Optional<Paper> known(PageSize page) {
            return job.getPrinter().getPrinterAttributes().getSupportedPapers().stream()
                    .filter(paper -> isAbout(paper.getWidth(), page.widthMillimetres())
                            && isAbout(paper.getHeight(), page.heightMillimetres()))
                    .findFirst();
        }

        private static boolean isAbout(double points, double millimetres) {
            return Math.abs(points / POINTS_PER_MILLIMETRE - millimetres) <= CUT_MILLIMETRES;
        }
    }
}
