package org.moultwright.boot;

import org.moultwright.document.PdfHandOverSlips;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.language.Texts;
import org.moultwright.settings.DeskSettings;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.label.PdfFileDialog;
import org.moultwright.ui.label.StackChoice;
import org.moultwright.ui.label.SystemPrinter;
import org.moultwright.ui.potting.PatternChoice;
import org.moultwright.ui.potting.PottingDesk;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.register.RegisterDesk;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.TendPots;

/** Puts together what the screens about pots and labels work with. */
record PotParts(DeskTools tools) {
    PottingDesk potting() {
        return new PottingDesk(
                tools.shown().written(),
                tools.shown().readAgain(),
                new PotSlings(tools.book(), tools.clock(), tools.ids()),
                tools.undo(),
                codePattern(),
                labelDesign(),
                new PdfLabelPrinter(),
                new PdfFileDialog(tools.window(), DeskTools.HOME),
                new SystemPrinter(tools.window(), Printers.ofThisMachine()),
                labelStack(),
                tools.runners().keeper(),
                tools.shell(),
                tools.clock(),
                tools.days(),
                tools.words());
    }

    RegisterDesk register() {
        return new RegisterDesk(
                tools.shown().written(),
                tools.shown().readAgain(),
                new TendPots(tools.book(), tools.clock(), tools.ids()),
                tools.undo(),
                new PdfHandOverSlips(),
                tools.savesPdf(Texts.say("Save the hand-over slip")),
                labels(),
                labelDesign(),
                tools.paper(),
                tools.runners().keeper(),
                tools.shell(),
                tools.clock(),
                tools.days(),
                tools.words());
    }

    LabelDesk labels() {
        return new LabelDesk(
                new PdfLabelPrinter(),
                new PdfFileDialog(tools.window(), DeskTools.HOME),
                new SystemPrinter(tools.window(), Printers.ofThisMachine()),
                labelStack(),
                tools.runners().keeper());
    }

    private PatternChoice codePattern() {
        return new PatternChoice(
                chosen().codePattern(), pattern -> tools.settings().choose(chosen().withCodePattern(pattern)));
    }

    private DesignChoice labelDesign() {
        return new DesignChoice(
                () -> chosen().labelDesign(), design -> tools.settings().choose(chosen().withLabelDesign(design)));
    }

    private StackChoice labelStack() {
        return new StackChoice(
                () -> chosen().labelStack(), stack -> tools.settings().choose(chosen().withLabelStack(stack)));
    }

    private DeskSettings chosen() {
        return tools.settings().settingsProperty().get().desk();
    }
}
