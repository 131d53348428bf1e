package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.OptionalInt;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.kordamp.ikonli.materialdesign2.MaterialDesignE;
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
                        MaterialDesignE.EGG_OUTLINE,
                        "No broods yet. Open a sac, or look around in the demo room.",
                        Buttons.primary("Open a sac", () -> {}))));
        page.getStyleClass().add("page");
        return page;
    }
}
