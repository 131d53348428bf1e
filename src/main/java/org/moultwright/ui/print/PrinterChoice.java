package org.moultwright.ui.print;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.stage.Window;

/** The machine's own dialogue in which one of its printers is chosen. */
public final class PrinterChoice {
    private PrinterChoice() {}

    /** Asks the keeper which one; nothing if they thought better of it. */
    public static Optional<PrinterJob> ask(Supplier<Window> owner, String title) {
        return first().map(PrinterJob::createPrinterJob).filter(job -> {
            job.getJobSettings().setJobName(title);
            boolean isChosen = job.showPrintDialog(owner.get());
            if (!isChosen) {
                job.cancelJob();
            }
            return isChosen;
        });
    }

    /** The one the dialogue opens with. A machine may have printers and none that it takes by itself. */
    private static Optional<Printer> first() {
        return Optional.ofNullable(Printer.getDefaultPrinter())
                .or(() -> Printer.getAllPrinters().stream().findFirst());
    }
}
