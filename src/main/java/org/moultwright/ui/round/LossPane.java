package org.moultwright.ui.round;

import java.util.Arrays;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.RoundSheet;

/** The animals taken out dead, by stage and cause, and the question for the next one. */
final class LossPane extends VBox {
    private final FlowPane content = KeyedChip.row();
    private final RoundViewModel model;
    private final OpenSheet sheet;

    LossPane(RoundViewModel model, OpenSheet sheet) {
        this.model = model;
        this.sheet = sheet;
        getStyleClass().add("loss-pane");
        getChildren().addAll(Words.strong(Texts.say("Dead, taken out")), content);
        sheet.fields().losses().addListener((InvalidationListener) changed -> show());
        sheet.keys().promptProperty().addListener((observed, before, now) -> show());
        show();
    }

    private void show() {
        Prompt prompt = sheet.keys().promptProperty().get();
        if (prompt instanceof Prompt.LossStage) {
            content.getChildren().setAll(Words.muted(Texts.say("which stage?")));
            sheet.fields().rows().forEach(row -> content.getChildren().add(stageChip(row)));
        } else if (prompt instanceof Prompt.LossWhy why) {
            content.getChildren().setAll(Words.strong(why.count() + " " + name(why)), Words.muted(Texts.say("why?")));
            Arrays.stream(LossCause.values())
                    .forEach(cause -> content.getChildren().add(causeChip(cause)));
        } else {
            content.getChildren()
                    .setAll(sheet.fields().losses().stream().map(this::loss).toList());
            content.getChildren()
                    .add(KeyedChip.of(
                            SheetKeys.LOSS,
                            Texts.say("one dead"),
                            () -> sheet.keys().typed(SheetKeys.LOSS)));
            if (sheet.fields().losses().isEmpty()) {
                content.getChildren().add(Words.muted(Texts.say("then stage and cause")));
            }
        }
    }

    private Node stageChip(StageRow row) {
        int position = sheet.fields().rows().indexOf(row) + 1;
        char key = Character.forDigit(position, 10);
        return KeyedChip.of(
                key,
                model.vocabularyProperty().get().label(row.stage()),
                () -> sheet.keys().typed(key));
    }

    private Node causeChip(LossCause cause) {
        return KeyedChip.of(
                cause.key(), Texts.say(cause.words()), () -> sheet.keys().typed(cause.key()));
    }

    private String name(Prompt.LossWhy why) {
        return why.count() == 1
                ? model.vocabularyProperty().get().singular(why.stage())
                : model.vocabularyProperty().get().plural(why.stage());
    }

    private Node loss(RoundSheet.Loss loss) {
        String words = loss.count() + " " + model.vocabularyProperty().get().label(loss.stage()) + ", "
                + Texts.say(loss.cause().words());
        Button remove = Buttons.plain("×", () -> sheet.fields().losses().remove(loss));
        remove.setAccessibleText(Texts.say("take back: {0}", words));
        remove.setFocusTraversable(false);
        Flow row = new Flow(Swatch.of(loss.stage()), Words.plain(words), remove);
        row.getStyleClass().add("loss");
        return row;
    }
}
