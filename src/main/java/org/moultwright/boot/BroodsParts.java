package org.moultwright.boot;

import java.util.Optional;
import org.moultwright.document.PdfPicturePages;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.language.Texts;
import org.moultwright.ui.broods.BeliefWays;
import org.moultwright.ui.broods.BroodPaper;
import org.moultwright.ui.broods.BroodsDesk;
import org.moultwright.ui.broods.FolderDialog;
import org.moultwright.ui.broods.SacWays;
import org.moultwright.ui.broods.WaysIn;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.BroodFolders;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.PullSac;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.TakeInFolders;

/**
 * Puts together what the screen of broods works with.
 *
 * @param demoDoor leads to the demo room; empty where this is it
 */
record BroodsParts(DeskTools tools, PhotoDesk photos, Optional<DemoDoor> demoDoor) {
    private static final String FORMS_BEGUN = ".forms";

    BroodsDesk desk() {
        return new BroodsDesk(
                tools.shown().room(),
                tools.shown().readAgain(),
                waysIn(),
                beliefs(),
                paper(),
                tools.runners().keeper(),
                tools.clock(),
                tools.days(),
                tools.words(),
                photos);
    }

    private BeliefWays beliefs() {
        Forecasting forecasting = tools.opened().forecasting().get();
        return new BeliefWays(
                new StateBelief(tools.book(), tools.clock(), tools.ids()),
                tools.undo(),
                tools.shell(),
                forecasting.assumed().timings(),
                forecasting.own().place());
    }

    private BroodPaper paper() {
        return new BroodPaper(
                tools.paperPrinter(),
                new PdfPicturePages(tools.paper()),
                tools.savesPdf(Texts.say("Save the brood's page")));
    }

    private WaysIn waysIn() {
        BroodFolders folders = new PlainBroodFolders();
        return new WaysIn(
                new SacWays(
                        new BeginBrood(tools.book(), tools.clock(), tools.ids()),
                        new PullSac(tools.book(), tools.clock(), tools.ids()),
                        new OpenSac(tools.book(), tools.clock(), tools.ids()),
                        tools.begun(DraftsFile.ofForms(tools.store().beside(FORMS_BEGUN)), Texts.say("forms"))),
                new FolderDialog(tools.window(), DeskTools.HOME),
                (folder, progress) -> new TakeInFolders(
                                new WatchedFolders(folders, progress),
                                tools.book(),
                                Optional.of(tools.store().photos()))
                        .takeIn(folder),
                tools.runners().intake(),
                demoDoor.map(door -> () -> enter(door)));
    }

    private void enter(DemoDoor door) {
        tools.tell(Tone.ACCENT, Texts.say("The demo room is being made ready. It opens in a window of its own."), "");
        door.open(
                tools.runners().intake(),
                () -> tools.shell().noticeProperty().set(Optional.empty()),
                fault -> tools.tell(
                        Tone.BAD, Texts.say("The demo room cannot be opened."), String.valueOf(fault.getMessage())));
    }
}
