package org.moultwright.ui.broods;

import java.util.OptionalInt;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the form for a newly opened sac. */
final class OpenSacView extends VBox {
    private final OpenSacViewModel model;
    private final GridPane trays = grid();

    OpenSacView(OpenSacViewModel model) {
        this.model = model;
        PageHeader header = new PageHeader(
                "Open a sac", Buttons.secondary("Back", model::cancel), Buttons.primary("Keep this sac", model::keep));
        header.subtitleProperty().set("what you know now; ranges are fine");
        Banner caution = new Banner(Tone.ACCENT);
        caution.sentenceProperty().set("Goggles and gloves on: the sac's silk can hold hairs that harm eyes.");
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        getStyleClass().add("page");
        getChildren().addAll(header, caution, problem, sac(), trayCard());
        model.trays().addListener((ListChangeListener<OpenSacViewModel.TrayEntry>) change -> layTrays());
        layTrays();
    }

    private Node sac() {
        GridPane grid = grid();
        grid.addRow(0, Words.plain("Code"), text("brood code", model.codeProperty()));
        grid.addRow(1, Words.plain("Species"), text("scientific name", model.taxonProperty()));
        grid.addRow(
                2,
                Words.plain("Laid"),
                new DayPicker("laid, first day", model.laidFromProperty()),
                Words.muted("to"),
                new DayPicker("laid, last day", model.laidToProperty()));
        grid.addRow(
                3,
                Words.plain("Taken from the mother"),
                new DayPicker("taken from the mother", model.pulledProperty()));
        NumberField infertile = new NumberField("infertile eggs");
        infertile.valueProperty().bindBidirectional(model.infertileProperty());
        infertile.setMaxWidth(110);
        grid.addRow(4, Words.plain("Infertile, put aside"), infertile);
        return Card.titled("The sac", grid);
    }

    private Node trayCard() {
        return Card.titled("Into trays", trays, Buttons.plain("Another tray", model::addTray));
    }

    private void layTrays() {
        trays.getChildren().clear();
        int column = 1;
        trays.add(Words.caption("tray"), 0, 0);
        for (Stage stage : OpenSacViewModel.COUNTED) {
            trays.add(new StageChip(stage, model.stageWord(stage)), column++, 0);
        }
        int row = 1;
        for (OpenSacViewModel.TrayEntry entry : model.trays()) {
            TextField code = text("tray " + row, entry.code());
            code.setMaxWidth(110);
            trays.add(code, 0, row);
            column = 1;
            for (Stage stage : OpenSacViewModel.COUNTED) {
                trays.add(count(entry, stage, row), column++, row);
            }
            row++;
        }
    }

    private Node count(OpenSacViewModel.TrayEntry entry, Stage stage, int row) {
        NumberField field = new NumberField("tray " + row + ", " + model.stageWord(stage));
        ObjectProperty<OptionalInt> count = entry.counts().get(stage);
        if (count != null) {
            field.valueProperty().bindBidirectional(count);
        }
        field.setMaxWidth(110);
        return field;
    }

    private static TextField text(String name, StringProperty value) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.textProperty().bindBidirectional(value);
        field.setPrefColumnCount(22);
        return field;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        return grid;
    }
}
