package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Words;

/** The good ones spread over trays: how many trays, their codes, and what goes into each. */
final class SpreadingCard extends VBox {
    private final OpeningForm form;
    private final FormInputs inputs;
    private final GridPane trays = SacFormView.grid();
    private final List<TextField> laid = new ArrayList<>();
    private List<Stage> shown = List.of();
    private int rows;

    SpreadingCard(OpeningForm form, FormInputs inputs) {
        this.form = form;
        this.inputs = inputs;
        getStyleClass().addAll("card", "spreading-card");
        GridPane head = SacFormView.grid();
        Node number = inputs.trays(form.shares().number());
        Node place = inputs.choice(form.inside(), Texts.say("nothing yet"), form::places);
        place.getStyleClass().add("spread-place");
        GridPane.setHgrow(place, Priority.ALWAYS);
        head.addRow(0, word(Texts.say("How many trays")), number, word(Texts.say("New trays stand in")), place);
        head.addRow(
                1,
                word(Texts.say("Opened on")),
                inputs.day(
                        form.day(),
                        Texts.say("today"),
                        form.day().textProperty().map(form::dayInWords)));
        Label spread = Words.wrapped(Words.strong(""));
        spread.textProperty().bind(form.spreadProperty());
        Scrolled scrolled = new Scrolled(trays);
        setVgrow(scrolled, Priority.ALWAYS);
        Node equal = Buttons.plain(Texts.say("Share equally"), form.shares()::shareEqually);
        getChildren().addAll(Words.cardTitle(Texts.say("Into trays")), head, scrolled, equal, spread);
        form.shares().rows().addListener((ListChangeListener<TrayShares.Row>) change -> lay());
        form.spreadProperty().addListener((observed, before, now) -> lay());
        lay();
    }

    /** Beside its field, whatever is said beneath that. */
    private static Label word(String text) {
        Label word = Words.plain(text);
        word.getStyleClass().add("sac-word");
        GridPane.setValignment(word, VPos.TOP);
        return word;
    }

    /** Laid anew only where there are other trays or other stages: a field being typed in stays. */
    private void lay() {
        List<Stage> stages = form.shares().stages();
        int count = form.shares().rows().size();
        if (stages.equals(shown) && count == rows) {
            return;
        }
        shown = stages;
        rows = count;
        inputs.forget(laid);
        laid.clear();
        trays.getChildren().clear();
        trays.add(Words.caption(Texts.say("tray")), 0, 0);
        for (int i = 0; i < stages.size(); i++) {
            trays.add(new StageChip(stages.get(i), form.stageWord(stages.get(i))), i + 1, 0);
        }
        int line = 1;
        for (TrayShares.Row row : form.shares().rows()) {
            EntryField code = inputs.words(row.code(), "");
            code.getStyleClass().add("short-field");
            trays.add(remembered(code), 0, line);
            for (int i = 0; i < stages.size(); i++) {
                int column = i + 1;
                int at = line;
                row.count(stages.get(i)).ifPresent(field -> trays.add(remembered(inputs.animals(field)), column, at));
            }
            line++;
        }
    }

    private EntryField remembered(EntryField entry) {
        laid.add(entry.input());
        return entry;
    }
}
