package org.moultwright.ui.label;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.Window;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.moultwright.ui.print.PrinterChoice;
import org.moultwright.ui.print.Printers;

/** The machine's own printers and its own dialogue to choose one. */
public final class SystemPrinter implements SheetPrinter {
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
        return PrinterChoice.ask(owner, title).flatMap(asked -> {
            // The toolkit only asks: it would cut a label short where the paper is wider than high.
            asked.cancelJob();
            return service(asked.getPrinter().getName())
                    .map(printer -> new SheetRun(
                            printers.areAskedForPaper(),
                            printer,
                            title,
                            asked.getJobSettings().getCopies()));
        });
    }

    private static Optional<PrintService> service(String name) {
        return Arrays.stream(PrintServiceLookup.lookupPrintServices(null, null))
                .filter(printer -> printer.getName().equals(name))
                .findFirst();
    }
}
