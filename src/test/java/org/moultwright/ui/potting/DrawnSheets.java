package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.moultwright.domain.label.PageSize;
import org.moultwright.ui.label.SheetPrinter;
import org.moultwright.ui.print.Printers;
import org.moultwright.workflow.PagePicture;

/** A printer that keeps the sheets it was given, until it runs out of paper. */
final class DrawnSheets implements SheetPrinter, SheetPrinter.Printing {
    final List<PagePicture> sheets = new ArrayList<>();
    boolean unplugged;
    String refusal;
    int paperThere = 100;
    int jobs;

    @Override
    public Optional<String> hindrance() {
        return unplugged ? Optional.of(Printers.NO_PRINTER) : Optional.empty();
    }

    @Override
    public Optional<Printing> choose(String title) {
        return Optional.of(this);
    }

    @Override
    public Optional<String> refusal(PageSize paper) {
        return Optional.ofNullable(refusal);
    }

    @Override
    public boolean print(PageSize paper, int sheets, IntFunction<PagePicture> picture) {
        for (int sheet = 0; sheet < sheets; sheet++) {
            if (this.sheets.size() == paperThere) {
                return false;
            }
            this.sheets.add(picture.apply(sheet));
        }
        jobs++;
        return true;
    }
}
