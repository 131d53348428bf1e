package org.moultwright.ui.print;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.stage.Window;

/** The machine's own printers and its own dialogue to choose one. A picture fills a page on its side. */
public final class PaperPrinter implements PagePrinter {
    private final Supplier<Window> owner;
    private final Printers printers;

    public PaperPrinter(Supplier<Window> owner, Printers printers) {
        this.owner = owner;
        this.printers = printers;
    }

    @Override
    public Printout print(String title, Supplier<Image> page) {
        Optional<String> hindrance = printers.hindrance();
        if (hindrance.isPresent()) {
            return Printout.hindered(hindrance.get());
        }
        Optional<PrinterJob> job = PrinterChoice.ask(owner, title);
        if (job.isEmpty()) {
            return Printout.LET_BE;
        }
        PageLayout layout = job.get()
                .getPrinter()
                .createPageLayout(
                        job.get().getJobSettings().getPageLayout().getPaper(),
                        PageOrientation.LANDSCAPE,
                        Printer.MarginType.DEFAULT);
        ImageView picture = new ImageView(page.get());
        picture.setPreserveRatio(true);
        picture.setFitWidth(layout.getPrintableWidth());
        picture.setFitHeight(layout.getPrintableHeight());
        return job.get().printPage(layout, picture) && job.get().endJob() ? Printout.PRINTED : Printout.REFUSED;
    }
}
