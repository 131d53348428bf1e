package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.workflow.RoundSheet;
import org.moultwright.workflow.SheetDraft;

/** What is typed on a sheet is kept until it is saved or dropped, and is there again after an interruption. */
class BegunSheetsTest {
    private static final int A2 = 1;

    private final InventedRoom room = new InventedRoom();

    /** A sheet of a brood begun before the room's evening. */
    static SheetDraft draft(String tray) {
        return new SheetDraft(
                "CC-26-A",
                tray,
                new SheetDraft.Basis(InventedRoom.NOW.minusSeconds(3600), 56, Optional.empty()),
                Map.of(Stage.INSTAR1, "34", Stage.DARKENED, "7/"),
                List.of(new RoundSheet.Loss(Stage.INSTAR1, Cause.FAILED_MOULT, 2)),
                Optional.of(new RoundSheet.Mould("shells", "speck", "removed")),
                Set.of("watered"),
                "lid was ajar");
    }

    /** Somebody counts A1 at another desk. */
    static void countElsewhere(InventedRoom room) {
        List<SheetDraft> own = room.begun;
        RoundViewModel other = new RoundViewModel(room.desk());
        other.open(0);
        OpenSheet sheet = open(other);
        sheet.fields().rows().forEach(row -> row.textProperty().set(""));
        sheet.keys().typed('=');
        other.done();
        room.begun = own;
    }

    @Test
    void allThatIsTypedIsThereAgain() {
        RoundViewModel model = new RoundViewModel(room.desk());
        model.open(A2);
        write(model, Stage.INSTAR1, "7/");
        "wd3f".chars().forEach(key -> open(model).keys().typed((char) key));
        open(model).keys().typed('m');
        open(model).keys().typed('l');
        open(model).fields().noteProperty().set("lid was ajar");
        List<SheetDraft> kept = room.begun;
        RoundViewModel again = new RoundViewModel(room.desk());
        assertThat(open(again).facts().tray()).isEqualTo("A2");
        assertThat(BegunSheet.draft(open(again).fields()))
                .isEqualTo(BegunSheet.draft(open(model).fields()));
        assertThat(open(again)
                        .fields()
                        .row(Stage.INSTAR1)
                        .orElseThrow()
                        .textProperty()
                        .get())
                .isEqualTo("7/");
        assertThat(open(again).fields().outdated()).isEmpty();
        assertThat(room.begun).isEqualTo(kept).hasSize(1);
        again.open(0);
        assertThat(again.lines().get(A2).state()).isEqualTo("begun");
    }

    @Test
    void whatIsTakenBackIsNotKept() {
        RoundViewModel model = new RoundViewModel(room.desk());
        write(model, Stage.INSTAR1, "3");
        assertThat(room.begun).hasSize(1);
        write(model, Stage.INSTAR1, "");
        assertThat(room.begun).isEmpty();
    }

    @Test
    void aSavedSheetIsNotKeptAndAnUndoneOneIs() {
        RoundViewModel model = new RoundViewModel(room.desk());
        open(model).keys().typed('=');
        model.done();
        assertThat(room.begun).isEmpty();
        room.undos.get(0).run();
        assertThat(room.begun).extracting(SheetDraft::tray).containsExactly("A1");
        assertThat(open(model).fields().outdated()).isEmpty();
    }

    @Test
    void aSheetThatCannotBeSavedIsKept() {
        RoundViewModel model = new RoundViewModel(room.desk(room.fullDisk()));
        open(model).keys().typed('=');
        model.done();
        assertThat(room.begun).extracting(SheetDraft::tray).containsExactly("A1");
    }

    @Test
    void aTrayCountedMeanwhileIsToldOfAndItsSheetCanBeDropped() {
        RoundViewModel model = new RoundViewModel(room.desk());
        write(model, Stage.INSTAR1, "34");
        countElsewhere(room);
        SheetViewModel fields = open(model).fields();
        assertThat(fields.outdated()
                        .map(basis -> RoundWords.outdated(open(model).facts(), basis, model.days())))
                .hasValue("A1 changed since this sheet was begun, 3 May, 20:41.");
        assertThat(fields.row(Stage.INSTAR1).orElseThrow().textProperty().get()).isEqualTo("34");
        model.drop();
        assertThat(open(model).fields().isBlank()).isTrue();
        assertThat(room.begun).isEmpty();
    }

    @Test
    void aSheetWhoseTrayIsGoneIsShownAndKeptUntilDropped() {
        room.begun = List.of(draft("D1"));
        RoundViewModel model = new RoundViewModel(room.desk());
        SheetDraft stray = model.begun().strayProperty().get().orElseThrow();
        assertThat(RoundWords.stray(stray, model.days()))
                .isEqualTo("A sheet for D1, begun on 3 May, 19:41, was not saved, and D1 holds no animals any more.");
        assertThat(RoundWords.written(stray, Vocabulary.ENGLISH_HOBBY))
                .isEqualTo("Written: Nymph 34; Dark nymph 7/; 2 dead of Nymph, failed moult;"
                        + " mould on shells, speck, removed; watered; lid was ajar");
        write(model, Stage.INSTAR1, "3");
        assertThat(room.begun).extracting(SheetDraft::tray).containsExactly("D1", "A1");
        model.begun().dropStray();
        assertThat(model.begun().strayProperty().get()).isEmpty();
        assertThat(room.begun).extracting(SheetDraft::tray).containsExactly("A1");
    }

    @Test
    void twoSheetsOfOneTrayAreOneAgain() {
        SheetDraft later = new SheetDraft(
                "CC-26-A", "A1", draft("A1").basis(), Map.of(), List.of(), Optional.empty(), Set.of("turned"), "");
        room.begun = List.of(draft("A1"), later);
        RoundViewModel model = new RoundViewModel(room.desk());
        assertThat(open(model).fields().care()).containsExactlyInAnyOrder("watered", "turned");
        assertThat(room.begun).hasSize(1);
    }

    @Test
    void aDiskThatTakesNothingIsToldOf() {
        RoundDesk desk = room.desk();
        BegunDesk<SheetDraft> full = new BegunDesk<>(
                List.of(),
                drafts -> {
                    throw new IllegalStateException("the disk is full.");
                },
                new InlineRunner());
        RoundViewModel model = new RoundViewModel(new RoundDesk(
                desk.room(),
                desk.readAgain(),
                desk.record(),
                desk.undo(),
                desk.runner(),
                desk.saveLine(),
                desk.clock(),
                new DayWords(desk.days().zone()),
                desk.vocabulary(),
                full,
                desk.sounds(),
                desk.photos()));
        write(model, Stage.INSTAR1, "3");
        assertThat(model.begun().problemProperty().get())
                .isEqualTo("What you type is not on disk until it is saved: the disk is full.");
    }

    private static OpenSheet open(RoundViewModel model) {
        return model.openProperty().get().orElseThrow();
    }

    private static void write(RoundViewModel model, Stage stage, String text) {
        open(model).fields().row(stage).orElseThrow().textProperty().set(text);
    }
}
