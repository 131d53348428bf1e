package org.moultwright.boot;

import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.ui.intake.Intake;
import org.moultwright.ui.intake.IntakeDesk;
import org.moultwright.ui.intake.ReadingFileDialog;
import org.moultwright.workflow.SittersBook;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.WriteClimate;

/** Puts together the ways by which climate is written in. */
record IntakeParts(DeskTools tools) {
    Intake intake() {
        DelimitedReadings files = new DelimitedReadings();
        return new Intake(new IntakeDesk(
                tools.shown().room(),
                tools.shown().readAgain(),
                new WriteClimate(tools.book(), tools.store().climate(), tools.clock(), tools.ids()),
                tools.undo(),
                files,
                new TakeInReadings(
                        files,
                        SittersBook.guarding(
                                tools.store().bulkReadings(), tools.opened().sitterMode()),
                        tools.book(),
                        tools.store().climate(),
                        tools.clock(),
                        tools.ids()),
                new ReadingFileDialog(tools.window(), DeskTools.HOME),
                tools.runners().keeper(),
                tools.runners().intake(),
                tools.clock(),
                tools.days()));
    }
}
