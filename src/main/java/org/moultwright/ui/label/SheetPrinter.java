package org.moultwright.ui.label;

import java.util.Optional;
import java.util.function.IntFunction;
import org.moultwright.domain.label.PageSize;
import org.moultwright.workflow.PagePicture;

/** The printers of this machine. */
public interface SheetPrinter {
    /** Why nothing can be printed on this machine, and what to do; empty where it can. */
    Optional<String> hindrance();

    /** Asks the keeper which one; nothing if they thought better of it. Called on the thread of the screen. */
    Optional<Printing> choose(String title);

    /** A printer that was chosen. */
    interface Printing {
        /** Why it cannot put out such paper, and what to do, in a sentence; nothing if it can. */
        Optional<String> refusal(PageSize paper);

        /**
         * Puts sheets out at their full size, one after another. It waits for the printer: not for the screen's thread.
         *
         * @param picture draws a sheet, counted from 0; called for one at a time, so that many never stand in memory
         * @return false if the printer would not take them
         */
        boolean print(PageSize paper, int sheets, IntFunction<PagePicture> picture);
    }
}
