package org.moultwright.boot;

import javafx.application.Platform;
import org.moultwright.boot.machine.TallyNotes;
import org.moultwright.language.Texts;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.round.RoundDesk;
import org.moultwright.ui.takealong.SitterDesk;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.SitterDeeds;

/** Puts together what those work with who go from tray to tray: the keeper on the round, and a sitter meanwhile. */
record RoundParts(DeskTools tools) {
    RoundDesk round(PhotoDesk photos) {
        return new RoundDesk(
                tools.shown().written(),
                tools.shown().readAgain(),
                record(),
                tools.undo(),
                tools.runners().keeper(),
                tools.shell(),
                tools.clock(),
                tools.days(),
                tools.words(),
                tools.begun(tools.opened().begunSheets(), Texts.say("sheets")),
                new TallyNotes(Platform::runLater),
                photos);
    }

    /** @param plans what is planned, as the keeper sees it too */
    SitterDesk sitter(PlanChoices plans, AlarmViewModel alarms) {
        return new SitterDesk(
                tools.shown().written(),
                tools.shown().readAgain(),
                tools.opened().sitterMode(),
                new SitterDeeds(record(), tools.clock()),
                tools.undo(),
                tools.book(),
                plans,
                alarms,
                tools.runners().keeper(),
                tools.shell(),
                tools.clock(),
                tools.days(),
                tools.words());
    }

    private RecordRound record() {
        return new RecordRound(tools.book(), tools.clock(), tools.ids());
    }
}
