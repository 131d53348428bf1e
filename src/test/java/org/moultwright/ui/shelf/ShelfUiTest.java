package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.ShownDesk;
import org.moultwright.domain.ContainerKind;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The shelf of the demo room in the whole window, by keyboard. */
@ExtendWith(ApplicationExtension.class)
class ShelfUiTest {
    /** A line of text is so much higher than its letters. */
    private static final double LINE = 1.4;

    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void open() {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "shelf");
        awaitWords("C1");
        await(() -> has(ListView.class));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aTrayIsMovedWithFiveKeysAndTakenBack(FxRobot robot) {
        awaitFocus("A1, tray, in box 1");
        robot.type(KeyCode.M).write("box 2").type(KeyCode.ENTER);
        awaitWords("A1 moved into box 2.", "in box 2 since 3 May");
        await(() -> has(ListView.class));
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        awaitWords("Taken back: A1 moved into box 2.", "in box 1 since 25 March");
    }

    @Test
    void aMoveIsTakenFurtherAtOnce(FxRobot robot) {
        awaitFocus("A1, tray, in box 1");
        robot.type(KeyCode.M).write("box 2").type(KeyCode.ENTER);
        awaitWords("A1 moved into box 2.");
        await(() -> has(ListView.class));
        robot.type(KeyCode.M);
        await(() -> isTyping());
        await(this::isBoxOneOffered);
        robot.write("box 1").type(KeyCode.ENTER);
        awaitWords("A1 moved into box 1.");
    }

    @Test
    void labelsGoOnASheetThatIsChosen(FxRobot robot) {
        awaitFocus("A1, tray, in box 1");
        robot.type(KeyCode.L);
        awaitWords("Container labels", "1 label: A1");
        robot.type(KeyCode.ESCAPE);
        await(() -> has(ListView.class));
        robot.type(KeyCode.HOME);
        awaitFocus("room, room");
        robot.type(KeyCode.L);
        awaitWords("Container labels", "for the container chosen and all that stands in it");
    }

    @Test
    void escapeLeadsBackFromAFieldOfTheLabels(FxRobot robot) {
        awaitFocus("A1, tray, in box 1");
        robot.type(KeyCode.L);
        awaitWords("Container labels");
        Node first = robot.lookup(".text-field")
                .<TextField>match(field -> "first free label".equals(field.getAccessibleText()))
                .query();
        robot.clickOn(first);
        robot.type(KeyCode.ESCAPE);
        await(() -> has(ListView.class));
    }

    /** Else the field told of a day that is not the one shown. */
    @Test
    void aDayYetToComeIsSaidSoOfAtTheField(FxRobot robot) {
        awaitFocus("A1, tray, in box 1");
        robot.clickOn("another date").write("3 June 2026").type(KeyCode.ENTER);
        awaitWords("That day is yet to come. Choose today or an earlier one.", "as it stands tonight");
        assertThat(desk.words()).doesNotContain("3 Jun 2026");
    }

    private boolean isBoxOneOffered() {
        return stage.getScene().getRoot().lookupAll(".shelf-targets").stream()
                .map(ListView.class::cast)
                .flatMap(list -> ((ListView<?>) list).getItems().stream())
                .anyMatch(target ->
                        target instanceof Targets.Target place && place.title().equals("box 1"));
    }

    @Test
    void whereItCannotGoIsSaidAtTheField(FxRobot robot) {
        robot.type(KeyCode.M).write("A2").type(KeyCode.ENTER);
        awaitWords("A2 is a tray; nothing stands inside one. Choose a box, an incubator, a rack or a room.");
        assertThat(desk.focused()).containsInstanceOf(TextField.class);
        robot.type(KeyCode.ESCAPE);
        await(() -> has(ListView.class));
    }

    @Test
    void animalsAreIsolatedWithAReason(FxRobot robot) {
        robot.type(KeyCode.I);
        await(() -> isTyping());
        robot.write("99").type(KeyCode.ENTER);
        awaitWords("A1 holds 56 animals; 99 cannot leave it.");
        robot.eraseText(2).write("1").type(KeyCode.ENTER);
        awaitWords("Say why, such as: failed moult.");
        robot.clickOn(named("why")).write("bitten").type(KeyCode.ENTER);
        awaitWords("1 of A1 isolated in A3.", "CC-26-A, 55 animals");
    }

    @Test
    void whatIsWrongIsSaidAtItsFieldWhichGetsTheKeyboard(FxRobot robot) {
        robot.type(KeyCode.I);
        await(() -> isTyping());
        robot.write("1").type(KeyCode.ENTER);
        awaitWords("Say why");
        awaitTyping("why");
        assertThat(refusals(named("why"))).containsExactly("Say why, such as: failed moult.");
        assertThat(refusals(named("to which tray, a new code makes one"))).isEmpty();
        robot.write("bitten")
                .clickOn(named("how many eggs with legs"))
                .write("3")
                .type(KeyCode.ENTER);
        awaitWords("When it was last looked at, A1 held 0 of these stages; 3 cannot leave it.");
        awaitTyping("how many eggs with legs");
        assertThat(refusals(named("how many eggs with legs"))).hasSize(1);
        assertThat(refusals(named("why"))).isEmpty();
        robot.eraseText(1);
        robot.clickOn(named("to which tray, a new code makes one"))
                .press(KeyCode.CONTROL)
                .type(KeyCode.A)
                .release(KeyCode.CONTROL)
                .write("A1")
                .type(KeyCode.ENTER);
        awaitWords("They are in A1 already.");
        awaitTyping("to which tray, a new code makes one");
        assertThat(refusals(named("to which tray, a new code makes one")))
                .containsExactly("They are in A1 already. Choose another tray.");
    }

    @Test
    void aTimeThatIsNoneIsSaidAtTheTime(FxRobot robot) {
        robot.type(KeyCode.M);
        await(() -> isTyping());
        robot.write("box 2").clickOn(named("time of day")).write("quarter").type(KeyCode.ENTER);
        awaitWords("Type the time as 20:41");
        awaitTyping("time of day");
        assertThat(refusals(named("time of day")))
                .containsExactly("Type the time as 20:41, or leave it empty for now.");
    }

    @Test
    void aFormHalfFilledInWaitsForItsKeeper(FxRobot robot) {
        robot.type(KeyCode.M);
        await(() -> isTyping());
        robot.write("bo");
        goTo(robot, KeyCode.DIGIT2);
        goTo(robot, KeyCode.DIGIT3);
        awaitTyping("move to");
        robot.write("x 2").type(KeyCode.ENTER);
        awaitWords("A1 moved into box 2.");
    }

    @Test
    void aFormIsLeftFromTheCardsToo(FxRobot robot) {
        robot.type(KeyCode.M);
        await(() -> isTyping());
        robot.clickOn(card("B1")).type(KeyCode.ESCAPE);
        awaitFocus("B1, tray");
        await(() -> stage.getScene().getRoot().lookupAll(".shelf-form").isEmpty());
    }

    @Test
    void aCardThatIsPressedTakesTheKeyboard(FxRobot robot) {
        robot.clickOn(named("day shown"));
        await(() -> has(DatePicker.class));
        robot.clickOn(card("B1"));
        awaitFocus("B1, tray");
        robot.type(KeyCode.M);
        awaitWords("Move B1");
    }

    @Test
    void backToTonightLeadsToTheCardChosen(FxRobot robot) {
        robot.type(KeyCode.RIGHT).type(KeyCode.PAGE_UP);
        awaitWords("as it stood at the end of Saturday 2 May");
        robot.clickOn("Back to tonight");
        awaitWords("as it stands tonight");
        awaitFocus("A2, tray");
    }

    @Test
    void noPlaceIsWiderThanTheList(FxRobot robot) {
        robot.type(KeyCode.M);
        await(() -> isTyping());
        assertThat(stage.getScene().getRoot().lookupAll(".shelf-targets .scroll-bar"))
                .filteredOn(bar -> ((ScrollBar) bar).getOrientation() == Orientation.HORIZONTAL)
                .noneMatch(Node::isVisible);
    }

    /** Enter opens the form, and once more it must not move anything. */
    @Test
    void nothingIsMovedBeforeAPlaceIsChosen(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        await(() -> isTyping());
        robot.type(KeyCode.ENTER);
        awaitWords("Type where it goes, or choose from the list.");
        robot.type(KeyCode.DOWN).type(KeyCode.ENTER);
        awaitWords("A1 moved into room.");
    }

    @Test
    void aPlaceIsChosenByPressingItAndTheKeyboardStays(FxRobot robot) {
        robot.type(KeyCode.M);
        await(() -> isTyping());
        robot.clickOn("box in room, 24.5 °C set");
        awaitTyping("move to");
        robot.type(KeyCode.ENTER);
        awaitWords("A1 moved into mother C.");
    }

    @Test
    void whatWasSaidTonightDoesNotStandOverAnotherDay(FxRobot robot) {
        robot.type(KeyCode.DELETE);
        awaitWords("A1 still holds 56 animals. Move or pot them first.");
        robot.type(KeyCode.PAGE_UP);
        awaitWords("as it stood at the end of Saturday 2 May", "What stands above is of now.");
        assertThat(desk.words()).noneMatch(words -> words.startsWith("A1 still holds"));
    }

    /** What was split off comes back while the next split is being typed. */
    @Test
    void aFormTellsTheCountThatIsInForceNow(FxRobot robot) {
        robot.type(KeyCode.S);
        await(() -> isTyping());
        robot.write("10").type(KeyCode.ENTER);
        awaitWords("10 of A1 moved to A3.", "CC-26-A, 46 animals");
        await(() -> has(ListView.class));
        robot.type(KeyCode.S);
        await(() -> isTyping());
        robot.write("3");
        awaitWords("of 44");
        robot.clickOn(card("A1")).press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        awaitWords("of 54 now");
        robot.clickOn("Split");
        awaitWords("3 of A1 moved to A3.");
    }

    @Test
    void aTrayIsJoinedWithAnother(FxRobot robot) {
        robot.type(KeyCode.J).write("A2").type(KeyCode.ENTER);
        awaitWords("A1 joined with A2.");
        awaitFocus("A2, tray, in box 1, CC-26-A, 106 animals");
    }

    /** The count's field is narrow; what it says stands beneath the row. */
    @Test
    void whatACountDoesNotTakeIsReadInALineOrTwo(FxRobot robot) {
        robot.type(KeyCode.S);
        await(() -> isTyping());
        robot.write("1.");
        awaitWords("Only a whole number up to 99999.");
        Label said = (Label) stage.getScene().getRoot().lookupAll(".problem").stream()
                .filter(words -> words.isVisible() && !((Label) words).getText().isEmpty())
                .findFirst()
                .orElseThrow();
        await(() -> said.getHeight() > 0);
        assertThat(said.getHeight()).isLessThan(2.5 * said.getFont().getSize() * LINE);
    }

    /** A letter chooses as in a list box, and again leads on to the next of that letter. */
    @Test
    void theKindIsChosenByItsLetter(FxRobot robot) {
        robot.type(KeyCode.A);
        await(() -> isTyping());
        robot.write("R 1").type(KeyCode.TAB);
        await(() -> has(ChoiceBox.class));
        robot.write("t");
        await(() -> kind().equals(ContainerKind.TRAY));
        robot.write("r");
        await(() -> kind().equals(ContainerKind.RACK));
        robot.write("r");
        await(() -> kind().equals(ContainerKind.ROOM));
        robot.write("r").type(KeyCode.ENTER);
        awaitWords("R 1 added in box 1.");
        awaitFocus("R 1, rack, in box 1");
    }

    private Object kind() {
        return ((ChoiceBox<?>) desk.focused().orElseThrow()).getValue();
    }

    @Test
    void whatIsNotEmptyIsNotPutAway(FxRobot robot) {
        robot.type(KeyCode.DELETE);
        awaitWords("A1 still holds 56 animals. Move or pot them first.");
        robot.type(KeyCode.A);
        await(() -> isTyping());
        robot.write("box 3").type(KeyCode.ENTER);
        awaitWords("box 3 added in box 1.");
    }

    @Test
    void thePastIsOnlyShown(FxRobot robot) {
        robot.type(KeyCode.PAGE_UP);
        awaitWords("as it stood at the end of Saturday 2 May, read only");
        assertThat(desk.words()).doesNotContain("Add a container");
        robot.type(KeyCode.M);
        awaitWords("This is the past: it is only shown. Go back to tonight to change something.");
        robot.type(KeyCode.T);
        awaitWords("as it stands tonight");
    }

    @Test
    void aSacNotOpenedYetIsTold(FxRobot robot) {
        for (int day = 0; day < 17; day++) {
            robot.type(KeyCode.PAGE_UP);
        }
        awaitWords("as it stood at the end of Thursday 16 April", "1 sac not opened yet");
        robot.clickOn(card("CC-26-C"));
        awaitFocus("CC-26-C, hammock, in mother C, a sac, not opened yet");
        assertThat(desk.words())
                .filteredOn(words -> words.startsWith("a sac, not opened yet"))
                .hasSize(2);
    }

    @Test
    void beforeTheFirstContainerTheKeysStillLeadBack(FxRobot robot) {
        for (int day = 0; day < 80; day++) {
            robot.type(KeyCode.PAGE_UP);
        }
        awaitWords("Nothing stood on the shelf on that day.");
        robot.type(KeyCode.T);
        awaitWords("as it stands tonight");
        awaitFocus("A1, tray");
    }

    @Test
    void arrowsLeadFromCardToCard(FxRobot robot) {
        awaitFocus("A1, tray");
        robot.type(KeyCode.RIGHT);
        awaitFocus("A2, tray");
        robot.type(KeyCode.DOWN);
        awaitFocus("box 2, box");
        robot.type(KeyCode.DOWN);
        awaitFocus("B1, tray");
        robot.type(KeyCode.HOME);
        awaitFocus("room, room");
    }

    /** The sentences beneath a field, or beneath its row. */
    private List<String> refusals(Node field) {
        Node whole = field;
        for (Node at = field; at != null; at = at.getParent()) {
            whole = at.getStyleClass().contains("entry") ? at : whole;
        }
        return whole.lookupAll(".problem").stream()
                .filter(Node::isVisible)
                .map(label -> ((Label) label).getText())
                .filter(words -> !words.isEmpty())
                .toList();
    }

    private Node card(String code) {
        return stage.getScene().getRoot().lookupAll(".shelf-card").stream()
                .filter(card -> card instanceof ContainerCard shown && shown.isVisible() && code.equals(shown.code()))
                .findFirst()
                .orElseThrow();
    }

    private static void goTo(FxRobot robot, KeyCode screen) {
        robot.press(KeyCode.CONTROL).type(screen).release(KeyCode.CONTROL);
    }

    private void awaitTyping(String field) {
        await(() -> isTyping()
                && desk.focused()
                        .filter(node -> field.equals(node.getAccessibleText()))
                        .isPresent());
    }

    private Node named(String name) {
        return stage.getScene().getRoot().lookupAll(".text-field").stream()
                .filter(node -> name.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private boolean has(Class<?> kind) {
        return desk.focused().filter(kind::isInstance).isPresent();
    }

    private boolean isTyping() {
        return desk.focused()
                .filter(TextField.class::isInstance)
                .map(TextField.class::cast)
                .filter(field -> field.getSkin() != null)
                .isPresent();
    }

    private void awaitFocus(String words) {
        await(() -> desk.focused()
                .filter(ListView.class::isInstance)
                .filter(list -> String.valueOf(list.getAccessibleText()).startsWith(words))
                .isPresent());
    }

    private void awaitWords(String... parts) {
        desk.awaitParts(parts);
    }

    private void await(Supplier<Boolean> condition) {
        desk.awaitHolds(condition);
    }
}
