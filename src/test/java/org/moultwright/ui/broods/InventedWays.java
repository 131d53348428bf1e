package org.moultwright.ui.broods;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Runner;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.print.Printout;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.FormDraft;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.PullSac;

/** How broods come to a desk over any book; no folder is ever chosen. */
final class InventedWays {
    /** No printer, and nothing is ever saved. */
    static final BroodPaper NO_PAPER = new BroodPaper(
            (title, page) -> Printout.hindered(Printers.NO_PRINTER),
            (picture, title, madeAt, pdf) -> {
                throw new AssertionError("no file was chosen");
            },
            name -> Optional.empty());

    private InventedWays() {}

    static WaysIn in(BroodBook book) {
        return in(book, Optional.empty());
    }

    static WaysIn in(BroodBook book, Optional<Runnable> demoRoom) {
        return in(
                book,
                Optional::empty,
                (folder, progress) -> {
                    throw new AssertionError("no folder was chosen");
                },
                new InlineRunner(),
                demoRoom);
    }

    static WaysIn in(
            BroodBook book, FolderChooser folders, FolderIntake intake, Runner runner, Optional<Runnable> demoRoom) {
        return new WaysIn(sacs(book, List.of(), new ArrayList<>()), folders, intake, runner, demoRoom);
    }

    /** @param kept is told what is begun, each time anew */
    static SacWays sacs(BroodBook book, List<FormDraft> found, List<FormDraft> kept) {
        InstantSource clock = InstantSource.fixed(RoomFixture.NOW);
        return new SacWays(
                new BeginBrood(book, clock, UUID::randomUUID),
                new PullSac(book, clock, UUID::randomUUID),
                new OpenSac(book, clock, UUID::randomUUID),
                new BegunDesk<>(
                        found,
                        drafts -> {
                            kept.clear();
                            kept.addAll(drafts);
                        },
                        new InlineRunner()));
    }
}
