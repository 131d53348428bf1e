package org.moultwright.ui.potting;

import java.time.InstantSource;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.label.PdfChooser;
import org.moultwright.ui.label.SheetPrinter;
import org.moultwright.ui.label.StackChoice;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.LabelPrinter;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.UndoDeed;

/**
 * All that the potting bench works with.
 *
 * @param room the room as last read
 * @param readAgain asks for the room to be read anew; it need not be done when this returns
 * @param potSlings keeps a potting
 * @param undo takes the last deed back
 * @param pattern how codes are made
 * @param design what stands on labels beside them
 * @param printer makes the labels
 * @param pdfChooser asks where the labels go
 * @param sheetPrinter puts them on paper
 * @param stack the sheets they went on last
 * @param runner runs all of this aside
 * @param saveLine is told what was saved
 * @param clock says when the animals went in
 * @param days the keeper's days
 * @param vocabulary the names of the stages
 */
public record PottingDesk(
        ObservableObjectValue<RoomView> room,
        Runnable readAgain,
        PotSlings potSlings,
        UndoDeed undo,
        PatternChoice pattern,
        DesignChoice design,
        LabelPrinter printer,
        PdfChooser pdfChooser,
        SheetPrinter sheetPrinter,
        StackChoice stack,
        Runner runner,
        SaveLine saveLine,
        InstantSource clock,
        DayWords days,
        ObservableObjectValue<Vocabulary> vocabulary) {
    /** What its labels are made with. */
    LabelDesk labels() {
        return new LabelDesk(printer, pdfChooser, sheetPrinter, stack, runner);
    }
}
