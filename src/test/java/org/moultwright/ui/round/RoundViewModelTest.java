package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.RoundSheet;

class RoundViewModelTest {
    private final InventedRoom room = new InventedRoom();

    @Test
    void aSheetThatCannotBeSavedStaysAsItWas() {
        RoundViewModel model = new RoundViewModel(room.desk(room.fullDisk()));
        OpenSheet sheet = open(model);
        sheet.keys().typed('=');
        model.done();
        assertThat(model.problemProperty().get()).startsWith("Not saved: the disk is full.");
        assertThat(open(model)).isSameAs(sheet);
        assertThat(sheet.fields()
                        .row(Stage.DARKENED)
                        .orElseThrow()
                        .textProperty()
                        .get())
                .isEqualTo("seen");
        assertThat(room.undos).isEmpty();
    }

    @Test
    void withoutAForecastNothingIsExpectedButTheLastCountStands() {
        RoundViewModel model = new RoundViewModel(room.desk());
        model.open(3);
        StageRow eggsWithLegs = open(model).fields().row(Stage.POSTEMBRYO).orElseThrow();
        assertThat(eggsWithLegs.lastProperty().get()).isEqualTo("57");
        assertThat(eggsWithLegs.expectedProperty().get()).isEqualTo("–");
    }

    @Test
    void onceTheFirstTraysAreThereTheKeepersHandsAreOnThem() {
        RoundDesk desk = room.desk();
        ReadOnlyObjectWrapper<RoomView> late = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);
        RoundViewModel model = new RoundViewModel(new RoundDesk(
                late,
                desk.readAgain(),
                desk.record(),
                desk.undo(),
                desk.runner(),
                desk.saveLine(),
                desk.clock(),
                desk.days(),
                desk.vocabulary(),
                desk.begun(),
                desk.sounds(),
                desk.photos()));
        assertThat(model.focusProperty().get().target()).isNotInstanceOf(FocusRequest.Row.class);
        late.set(desk.room().get());
        assertThat(model.focusProperty().get().target()).isInstanceOf(FocusRequest.Row.class);
    }

    @Test
    void whatIsTypedBeforeTheDatesAreThereStaysWhenTheyCome() {
        room.readAtAGlance();
        RoundViewModel model = new RoundViewModel(room.desk());
        OpenSheet sheet = open(model);
        sheet.keys().typed('=');
        assertThat(foresight(model)).startsWith("The dates are being worked out.");
        String typed =
                sheet.fields().row(Stage.DARKENED).orElseThrow().textProperty().get();
        room.readAgain();
        assertThat(open(model)).isSameAs(sheet);
        assertThat(sheet.fields()
                        .row(Stage.DARKENED)
                        .orElseThrow()
                        .textProperty()
                        .get())
                .isEqualTo(typed)
                .isNotEmpty();
        assertThat(foresight(model)).startsWith("First slings of A1:");
    }

    /** 20 to 24 are expected: 16 and 28 lie beyond by as much as the interval is wide, 15 and 29 by more. */
    @ParameterizedTest
    @CsvSource({"16, false", "28, false", "15, true", "29, true", "2/90, false", "none, false"})
    void aCountIsFarBeyondTheWidthOfWhatWasExpected(String text, boolean isFar) {
        StageRow row = new StageRow(Stage.INSTAR1);
        row.show(OptionalInt.of(22), Optional.of(new CountInterval(20, 22, 24)));
        row.textProperty().set(text);
        assertThat(row.questionProperty().get()).isEmpty();
        row.left();
        assertThat(row.questionProperty().get())
                .isEqualTo(isFar ? "Far from the 20 to 24 expected. Is it as you meant it?" : "");
        row.textProperty().set("22");
        assertThat(row.questionProperty().get()).isEmpty();
    }

    /** Where exactly none are expected, two may be a slip. */
    @Test
    void aCountOfTwoIsNeverFar() {
        StageRow row = new StageRow(Stage.EGG);
        row.show(OptionalInt.of(0), Optional.of(new CountInterval(0, 0, 0)));
        row.textProperty().set("2");
        row.left();
        assertThat(row.questionProperty().get()).isEmpty();
        row.textProperty().set("3");
        row.left();
        assertThat(row.questionProperty().get()).startsWith("Far from the 0 expected.");
    }

    @Test
    void severalDeadOfOneStageAndCauseAreOneLine() {
        OpenSheet sheet = open(new RoundViewModel(room.desk()));
        for (char key : "d312fd3f".toCharArray()) {
            sheet.keys().typed(key);
        }
        assertThat(sheet.fields().losses()).containsExactly(new RoundSheet.Loss(Stage.INSTAR1, Cause.FAILED_MOULT, 13));
    }

    @Test
    void aTallyTellsHowFarItIsAndIsHeardOnceSoundsAreOn() {
        RoundViewModel model = new RoundViewModel(room.desk());
        OpenSheet sheet = open(model);
        "t3s349".chars().forEach(key -> sheet.keys().typed((char) key));
        sheet.keys().takeBack();
        Prompt.Tally tally = (Prompt.Tally) sheet.keys().promptProperty().get();
        assertThat(RoundWords.tally(tally, sheet.fields().balanceProperty().get()))
                .isEqualTo("Tally: 2 animals counted, 56 expected.");
        assertThat(room.heard.notes).containsExactly("on", "stage 2", "stage 3", "refused", "taken back");
        "s3".chars().forEach(key -> sheet.keys().typed((char) key));
        assertThat(room.heard.notes).hasSize(5);
        assertThat(sheet.fields()
                        .row(Stage.INSTAR1)
                        .orElseThrow()
                        .textProperty()
                        .get())
                .isEqualTo("3");
    }

    @Test
    void aTallyThatCannotBeHeardSaysSoAndTriesAgain() {
        RoundViewModel model = new RoundViewModel(room.desk());
        SheetKeys keys = open(model).keys();
        "ts".chars().forEach(key -> keys.typed((char) key));
        assertThat(tallyKeys(keys)).contains("S turns sounds off");
        room.heard.whenMute.run();
        assertThat(tallyKeys(keys)).startsWith("This machine has no sound that can be used");
        keys.typed('3');
        assertThat(room.heard.notes).containsExactly("on");
        keys.typed('s');
        assertThat(tallyKeys(keys)).contains("S turns sounds off");
        assertThat(room.heard.notes).containsExactly("on", "on");
        keys.typed('t');
        room.heard.whenMute.run();
        assertThat(keys.isOpen()).isTrue();
    }

    private static String tallyKeys(SheetKeys keys) {
        return RoundWords.tallyKeys((Prompt.Tally) keys.promptProperty().get(), 5);
    }

    @ParameterizedTest
    @CsvSource({"12, full", "7/20, sample", "seen, seen", "none, none", "'', not looked"})
    void looksAreReadAsWritten(String text, String key) {
        assertThat(LookEntry.parse(text).map(Look::key)).hasValue(key);
    }

    @ParameterizedTest
    @ValueSource(strings = {"7/", "21/20", "0/0", "3.5", "3,5", "-5", "1/2/3", "123456"})
    void halfALookIsNone(String text) {
        assertThat(LookEntry.parse(text)).isEmpty();
        assertThat(LookEntry.problem(text)).isNotEmpty();
    }

    @Test
    void thePaceIsToldFromTheSecondSheetOn() {
        Instant now = InventedRoom.NOW;
        assertThat(RoundWords.pace(List.of(now), 3)).isEmpty();
        assertThat(RoundWords.pace(List.of(now, now.plusSeconds(90), now.plusSeconds(180)), 2))
                .isEqualTo("About 3 minutes left at tonight's pace.");
    }

    private static String foresight(RoundViewModel model) {
        return RoundWords.foresight(
                open(model).facts(), model.days(), model.vocabularyProperty().get());
    }

    private static OpenSheet open(RoundViewModel model) {
        return model.openProperty().get().orElseThrow();
    }
}
