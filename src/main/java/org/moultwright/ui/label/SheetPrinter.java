package org.moultwright.ui.label;

import java.util.Optional;
import org.moultwright.domain.label.PageSize;
import org.moultwright.workflow.PagePicture;

/** The printers of this machine. Used on the thread of the screen. */
public interface SheetPrinter {
    /** Why nothing can be printed on this machine, and what to do; empty where it can. */
    Optional<String> hindrance();

    /** Asks the keeper which one; nothing if they thought better of it. */
    Optional<Printing> choose(String title);

    /** Sheets on their way to a printer. */
    interface Printing {
        /** Puts one sheet out at its full size; false if the printer would not take it or knows no such paper. */
        boolean print(PagePicture page, PageSize paper);

        /** Says that the last sheet was put out, or that no more comes; false if the printer would not take them. */
        boolean end();
    }
}
