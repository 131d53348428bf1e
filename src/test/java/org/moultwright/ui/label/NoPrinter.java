package org.moultwright.ui.label;

import java.util.Optional;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.task.InlineRunner;
import org.moultwright.ui.print.Printers;

/** A machine without a printer. */
public final class NoPrinter implements SheetPrinter {
    /** A desk for labels on such a machine, where nobody chooses a file either. */
    public static LabelDesk desk() {
        return new LabelDesk(
                new PdfLabelPrinter(),
                name -> Optional.empty(),
                new NoPrinter(),
                new StackChoice(() -> LabelStack.NEW, stack -> {}),
                new InlineRunner());
    }

    @Override
    public Optional<String> hindrance() {
        return Optional.of(Printers.NO_PRINTER);
    }

    @Override
    public Optional<Printing> choose(String title) {
        return Optional.empty();
    }
}
