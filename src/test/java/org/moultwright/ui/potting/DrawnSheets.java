package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.label.PageSize;
import org.moultwright.ui.label.SheetPrinter;
import org.moultwright.ui.print.Printers;
import org.moultwright.workflow.PagePicture;

/** A printer that keeps the sheets it was given, until it runs out of paper. */
final class DrawnSheets implements SheetPrinter, SheetPrinter.Printing {
    final List<PagePicture> sheets = new ArrayList<>();
    boolean unplugged;
    int paperLeft = 100;
    int ended;

    @Override
    public Optional<String> hindrance() {
        return unplugged ? Optional.of(Printers.NO_PRINTER) : Optional.empty();
    }

    @Override
    public Optional<Printing> choose(String title) {
        return Optional.of(this);
    }

    @Override
    public boolean print(PagePicture page, PageSize paper) {
        paperLeft--;
        if (paperLeft < 0) {
            return false;
        }
        sheets.add(page);
        return true;
    }

    @Override
    public boolean end() {
        ended++;
        return true;
    }
}
