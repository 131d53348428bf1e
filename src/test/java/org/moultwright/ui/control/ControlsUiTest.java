package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.domain.Stage;
import org.moultwright.ui.ScreenShots;
import org.testfx.framework.junit5.ApplicationExtension;

@ExtendWith(ApplicationExtension.class)
class ControlsUiTest {
    @Test
    void aNumberFieldTakesDigitsOnly() {
        NumberField field = new NumberField("eggs counted");
        field.textProperty().set("12");
        field.input().replaceSelection("x");
        assertThat(field.valueProperty().get()).isEqualTo(OptionalInt.of(12));
        field.textProperty().set("");
        assertThat(field.valueProperty().get()).isEmpty();
        field.valueProperty().set(OptionalInt.of(7));
        assertThat(field.textProperty().get()).isEqualTo("7");
    }

    @Test
    void whatIsMeantByAPastedCountIsTaken() {
        NumberField field = new NumberField("eggs counted");
        Map<String, Integer> meant = Map.of(" 12 ", 12, "12\n", 12, "١٢", 12, "１２", 12, "00012", 12);
        meant.forEach((pasted, count) -> {
            field.input().clear();
            field.input().replaceSelection(pasted);
            assertThat(field.valueProperty().get()).as(pasted).isEqualTo(OptionalInt.of(count));
            assertThat(field.input().getCaretPosition())
                    .as(pasted)
                    .isEqualTo(field.input().getLength());
            assertThat(field.getStyleClass()).doesNotContain("has-problem");
        });
    }

    @Test
    void whatIsNoCountIsSaidSoOfAndNothingIsLost() {
        NumberField field = new NumberField("eggs counted");
        for (String pasted : List.of("12 animals", "-3", "1.5", "123456", "1\n2", "½", "1 2")) {
            field.textProperty().set("7");
            field.input().selectAll();
            field.input().replaceSelection(pasted);
            assertThat(field.textProperty().get()).as(pasted).isEqualTo("7");
            assertThat(field.input().getAccessibleHelp()).as(pasted).isEqualTo("Only a whole number up to 99999.");
            assertThat(field.lookupAll(".problem")).as(pasted).hasSize(1);
        }
        field.input().replaceSelection("8");
        assertThat(field.getStyleClass()).doesNotContain("has-problem");
        assertThat(field.input().getAccessibleHelp()).isEmpty();
    }

    /** Else 15 would stand there without a word. */
    @Test
    void aPointThatWasNotTakenIsSaidSoOfUntilTheCountIsWrittenAnew() {
        NumberField field = new NumberField("eggs counted");
        for (String sign : List.of("1", ".", "5")) {
            field.input().appendText(sign);
        }
        assertThat(field.textProperty().get()).isEqualTo("15");
        assertThat(field.getStyleClass()).contains("has-problem");
        field.input().selectAll();
        field.input().replaceSelection("2");
        assertThat(field.getStyleClass()).doesNotContain("has-problem");
    }

    /** Else 3 would stand there without a word. */
    @Test
    void aMinusThatWasNotTakenIsSaidSoOfWhereverItStands() {
        NumberField empty = new NumberField("eggs counted");
        NumberField selected = new NumberField("eggs counted");
        selected.textProperty().set("7");
        for (String sign : List.of("-", "3")) {
            empty.input().replaceSelection(sign);
            selected.input().selectAll();
            selected.input().replaceSelection(sign);
        }
        for (NumberField field : List.of(empty, selected)) {
            assertThat(field.textProperty().get()).isEqualTo("3");
            assertThat(field.getStyleClass()).contains("has-problem");
            field.input().selectAll();
            field.input().replaceSelection("4");
            assertThat(field.getStyleClass()).doesNotContain("has-problem");
        }
    }

    /** Nobody who types 1.5 and Enter at one go has read that 15 stands there. */
    @Test
    void theFirstEnterAfterSomethingWasNotTakenGoesNowhere() {
        NumberField field = new NumberField("eggs counted");
        new Scene(field);
        AtomicInteger entered = new AtomicInteger();
        field.addEventHandler(KeyEvent.KEY_PRESSED, event -> entered.incrementAndGet());
        enter(field, "1", ".", "5");
        assertThat(entered).hasValue(0);
        assertThat(field.getStyleClass()).contains("has-problem");
        enter(field);
        assertThat(entered).hasValue(1);
        field.input().clear();
        enter(field, ".", "5");
        field.input().clear();
        enter(field, "5");
        assertThat(entered).hasValue(2);
    }

    private static void enter(NumberField field, String... signs) {
        Arrays.stream(signs).forEach(field.input()::appendText);
        field.input().fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
    }

    @Test
    void whatStoodBeneathBeforeStandsThereAgain() {
        EntryField field = new EntryField("shift right, mm", Typable.signedNumber(2, 1));
        field.mark("At most 5 mm.");
        field.textProperty().set("12");
        field.input().appendText("mm");
        assertThat(field.input().getAccessibleHelp()).isEqualTo("Only a number, such as 1.5.");
        field.textProperty().set("\u22121,5 ");
        assertThat(field.textProperty().get()).isEqualTo("-1,5");
        assertThat(field.input().getAccessibleHelp()).isEqualTo("At most 5 mm.");
        field.mark("");
        assertThat(field.getStyleClass()).doesNotContain("has-problem");
    }

    @Test
    void linesOfPastedWordsBecomeOne() {
        EntryField field = new EntryField("code", Typable.words(10));
        field.input().replaceSelection("CC-26\nA\n");
        assertThat(field.textProperty().get()).isEqualTo("CC-26 A");
        field.input().appendText(" too long");
        assertThat(field.textProperty().get()).isEqualTo("CC-26 A");
        assertThat(field.input().getAccessibleHelp()).isEqualTo("At most 10 letters.");
    }

    @Test
    void aProblemIsShownAndSpoken() {
        NumberField field = new NumberField("eggs counted");
        field.problemProperty().set("57 written, 58 expected.");
        assertThat(field.getStyleClass()).contains("has-problem");
        assertThat(field.input().getAccessibleHelp()).isEqualTo("57 written, 58 expected.");
        field.problemProperty().set("");
        assertThat(field.getStyleClass()).doesNotContain("has-problem");
    }

    /** Else the last word of a label would stand in a line of its own. */
    @Test
    void aBrokenRowGivesAPartTheWholePixelsItNeeds() {
        Region words = new Region();
        words.setMinWidth(10);
        words.setPrefSize(99.6, 20);
        Region wide = new Region();
        wide.setMinSize(195, 20);
        Flow row = new Flow(words, wide);
        row.resize(200, 60);
        row.layout();
        assertThat(wide.getLayoutY()).isGreaterThan(words.getLayoutY());
        assertThat(words.getWidth()).isGreaterThanOrEqualTo(99.6);
    }

    @Test
    void aPartIsRoomyWhileItsPageIsLarge() {
        VBox page = new VBox();
        Region part = new Region();
        page.getChildren().add(part);
        Roomy.mark(page, part, 100, 50);
        double em = new Em().pixels();
        page.resize(100 * em, 50 * em);
        assertThat(part.getPseudoClassStates()).contains(PseudoClass.getPseudoClass("roomy"));
        page.resize(100 * em, 49 * em);
        assertThat(part.getPseudoClassStates()).isEmpty();
    }

    @Test
    void everyControlIsPictured() {
        ScreenShots.of("controls", appearance -> gallery());
    }

    private static Parent gallery() {
        PageHeader header = new PageHeader(
                "Controls",
                KeyCap.hint("=", "looked, as expected"),
                Buttons.secondary("Calendar file", () -> {}),
                Buttons.primary("Open a sac", () -> {}));
        header.subtitleProperty().set("Sunday 3 May, 20:41 · two trays left");
        NumberField wrong = new NumberField("wrong");
        wrong.valueProperty().set(OptionalInt.of(57));
        wrong.problemProperty().set("57 written, 58 expected.");
        NumberField right = new NumberField("right");
        right.valueProperty().set(OptionalInt.of(8));
        ToggleChip on = new ToggleChip("none seen");
        on.setSelected(true);
        Banner balance = new Banner(Tone.ACCENT);
        balance.sentenceProperty().set("59 expected = 59 counted + 0 dead + 0 unexplained");
        balance.detailProperty().set("Dark nymphs foretell the moult: first slings of B1 in about 5 days.");
        Banner warn = new Banner(Tone.WARN);
        warn.sentenceProperty().set("57 written, 58 expected. Recount, an earlier miscount, or one gone?");
        warn.setActions(Buttons.secondary("Recount", () -> {}), Buttons.secondary("Gone", () -> {}));
        Banner bad = new Banner(Tone.BAD);
        bad.sentenceProperty().set("Not saved: the disk is full.");
        bad.detailProperty().set("Your count is kept on screen; free some space and press Done again.");
        Legend legend = new Legend(Arrays.stream(Stage.values())
                .map(stage -> new StageChip(stage, stage.key()))
                .toArray(StageChip[]::new));
        legend.getChildren().add(new StageChip(Swatch.potted(), "Potted"));
        legend.getChildren().add(new StageChip(Swatch.dead(), "Dead"));
        ChoiceBox<String> choice = new ChoiceBox<>();
        choice.getItems().addAll("A4, 3 × 8", "A4, 2 × 7");
        choice.setValue("A4, 3 × 8");
        CheckBox check = new CheckBox("calibration offset");
        check.setSelected(true);
        TextArea area = new TextArea("a note");
        area.setPrefRowCount(2);
        HBox fields = new HBox(12, wrong, right, on, new ToggleChip("shells"), choice, check, new TextField("plain"));
        SegmentedButton segments =
                new SegmentedButton(new ToggleChip("24 h"), new ToggleChip("7 d"), new ToggleChip("30 d"));
        VBox page = new VBox(
                header,
                Card.titled("Fields", fields, new HBox(12, new Slider(24, 29, 27), segments, area)),
                Card.titled("Banners", balance, warn, bad, legend),
                new Card(new EmptyState(
                        Sign.BROODS,
                        "No broods yet. Open a sac, or look around in the demo room.",
                        Buttons.primary("Open a sac", () -> {}))));
        page.getStyleClass().add("page");
        return page;
    }
}
