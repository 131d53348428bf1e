package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.domain.Stage;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** The forms about a sac: what they make of what is typed, and pictures of every state to be looked at. */
@ExtendWith(ApplicationExtension.class)
class SacFormsUiTest {
    private static final Map<String, Supplier<Parent>> STATES = Map.of(
            "sac-begin", SacPictures::begin,
            "sac-begin-refused", SacPictures::beginRefused,
            "sac-pull", SacPictures::pull,
            "sac-opening", SacPictures::opening,
            "sac-question", SacPictures::question,
            "sac-weighed", SacPictures::weighed,
            "sac-weighed-too-little", SacPictures::weighedTooLittle,
            "sac-interrupted", SacPictures::interrupted,
            "brood-close-sac", SacPictures::closeSac);

    /** A line of text is so much higher than its letters. */
    private static final double LINE = 1.4;

    private final BroodsViewModel model = SacPictures.model(List.of());

    @Test
    void whatIsWrittenIntoATrayStaysAndTheOthersShareTheRest() {
        TrayShares shares = SacPictures.opening(model, "3").shares();
        assertThat(counts(shares)).containsExactly("36", "36", "36");
        field(shares, 1).set("50");
        assertThat(counts(shares)).containsExactly("29", "50", "29");
        assertThat(shares.sum()).isEqualTo("112 good = 31 in A3 + 51 in A4 + 30 in A5");
        shares.number().set("2");
        assertThat(counts(shares)).containsExactly("58", "50");
        shares.shareEqually();
        assertThat(counts(shares)).containsExactly("54", "54");
    }

    @Test
    void goodOnesInNoTrayAreAskedOf() {
        OpeningForm form = SacPictures.opening(model, "2");
        field(form.shares(), 0).set("40");
        field(form.shares(), 1).set("60");
        assertThat(form.spreadProperty().get()).isEqualTo("8 of 112 in no tray yet");
        form.keep();
        OpeningQuestion question = form.questionProperty().get().orElseThrow();
        assertThat(question.sentence()).isEqualTo("104 in trays, 112 good. Which is right?");
        question.answers().get(0).give().run();
        assertThat(form.questionProperty().get()).isEmpty();
        assertThat(model.forms().openProperty().get()).as("kept, and left").isEmpty();
        assertThat(model.deeds().doneProperty().get()).isEqualTo("GP-26-A opened.");
    }

    @Test
    void oneSampleGivesANumberAndNoRange() {
        model.forms().openUp();
        OpeningForm form = (OpeningForm) model.forms().openProperty().get().orElseThrow();
        form.weighing().onProperty().set(true);
        form.keep();
        assertThat(form.weighing().samples().get(0).count().problemProperty().get())
                .isEqualTo("Count one sample at least.");
        SacPictures.weigh(form.weighing().samples().get(0), "40", "0,5");
        form.weighing().whole().set("0.4");
        form.keep();
        assertThat(form.weighing().whole().problemProperty().get()).startsWith("Less than the samples alone.");
        form.weighing().whole().set("3");
        assertThat(form.estimateProperty().get()).isEqualTo("about 240");
        assertThat(form.estimateNoteProperty().get()).startsWith("From one sample nobody can say how far off it is.");
        // Cochran's ratio: 78 animals in 1 g, 3 g of them; df 1, so that the range is wide.
        SacPictures.weigh(form.weighing().samples().get(1), "38", "0.5");
        assertThat(form.estimateProperty().get()).isEqualTo("about 234");
        assertThat(form.estimateNoteProperty().get()).startsWith("171 to 297 in 95 of 100");
    }

    @Test
    void whatIsWrongIsSaidAtItsField() {
        model.forms().begin();
        BeginForm form = (BeginForm) model.forms().openProperty().get().orElseThrow();
        form.code().set("CC-26-A");
        form.laid().set("31.2.");
        form.inside().set("nowhere");
        form.keep();
        assertThat(form.code().problemProperty().get())
                .isEqualTo("There is a brood CC-26-A already. Choose another code.");
        assertThat(form.taxon().problemProperty().get()).startsWith("Which species?");
        assertThat(form.laid().problemProperty().get()).isEqualTo("Write the day as 26 Feb or 26.2.");
        assertThat(form.inside().problemProperty().get()).startsWith("There is no 'nowhere' on the shelf.");
        form.laid().set("20 apr");
        form.laidTo().set("19.4.2026");
        form.keep();
        assertThat(form.laid().problemProperty().get()).isEmpty();
        assertThat(form.laidTo().problemProperty().get()).isEqualTo("The last day is before the first.");
        assertThat(model.forms().openProperty().get()).isPresent();
    }

    /** The fields are narrow; what they say stands beneath their row. */
    @Test
    void whatAWeightLacksIsReadInALineOrTwo(FxRobot robot) {
        robot.interact(() -> {
            Scene scene = new Scene(SacPictures.weighedTooLittle(), 1188, 752);
            new Appearance().dress(scene.getStylesheets());
            javafx.stage.Stage window = new javafx.stage.Stage();
            window.setScene(scene);
            window.show();
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            List<Label> said = scene.getRoot().lookupAll(".sorting-card .problem").stream()
                    .map(Label.class::cast)
                    .filter(words -> words.isVisible() && !words.getText().isEmpty())
                    .toList();
            assertThat(said.stream().map(Label::getText))
                    .containsExactlyInAnyOrder(
                            "Weigh it too.",
                            "Less than the samples alone. Weigh all of them together, the samples too.");
            assertThat(said)
                    .allSatisfy(words -> assertThat(words.getHeight())
                            .isLessThan(2.5 * LINE * words.getFont().getSize()));
            window.close();
        });
    }

    @Test
    void whatIsWrongIsSaidOnceItsFieldIsLeft(FxRobot robot) {
        OpeningForm form = SacPictures.opening(model, "2");
        robot.interact(() -> {
            FormInputs inputs = new FormInputs(() -> {});
            EntryField place = inputs.words(form.inside(), "");
            EntryField day = inputs.words(form.day(), "");
            javafx.stage.Stage window = new javafx.stage.Stage();
            window.setScene(new Scene(new VBox(place, day)));
            window.show();
            place.input().requestFocus();
            form.inside().set("nowhere");
            assertThat(place.problemProperty().get()).as("while it is written").isEmpty();
            day.input().requestFocus();
            assertThat(place.problemProperty().get()).startsWith("There is no 'nowhere' on the shelf.");
            form.day().set("31.2.");
            place.input().requestFocus();
            assertThat(day.problemProperty().get()).isEqualTo("Write the day as 26 Feb or 26.2.");
            form.inside().set("");
            form.day().set("");
            day.input().requestFocus();
            assertThat(place.problemProperty().get() + day.problemProperty().get())
                    .as("empty is an answer")
                    .isEmpty();
            window.close();
        });
    }

    @Test
    void everyStateIsPictured() {
        STATES.forEach((name, state) -> {
            ScreenShots.of(name, 1188, 752, look -> state.get());
            ScreenShots.of(name + "-large", 1828, 1032, look -> state.get());
            assertThat(Path.of("target", "screenshots", name + "-large-dark.png"))
                    .isNotEmptyFile();
        });
    }

    private static FormField field(TrayShares shares, int tray) {
        Optional<FormField> field = shares.rows().get(tray).count(Stage.POSTEMBRYO);
        return field.orElseThrow();
    }

    private static List<String> counts(TrayShares shares) {
        return shares.rows().stream()
                .map(row -> row.count(Stage.POSTEMBRYO).orElseThrow().written())
                .toList();
    }
}
