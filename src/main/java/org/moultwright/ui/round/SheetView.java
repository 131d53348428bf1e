package org.moultwright.ui.round;

import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** The middle of the round: the open tray, its stages, its dead. */
final class SheetView extends VBox {
    private static final int TITLE = 0;
    private static final int OUTDATED = 1;
    private static final int PHOTOS = 2;
    private static final int DEAD = 4;
    private static final int MOULD = 5;

    private final StageGrid grid;
    private final RoundViewModel model;
    private OpenSheet sheet;
    private SheetPhotos photos;

    SheetView(RoundViewModel model, OpenSheet sheet) {
        this.model = model;
        this.sheet = sheet;
        this.grid = new StageGrid(
                model, sheet.fields().rows().stream().map(StageRow::stage).toList());
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        getStyleClass().addAll("card", "sheet");
        getChildren()
                .addAll(new Region(), new Region(), new Region(), grid, new Region(), new Region(), gap, problem());
        lay(sheet);
    }

    /** Whether a sheet counts the same stages, so that it can be laid into this view. */
    boolean takes(OpenSheet other) {
        return grid.takes(other.fields());
    }

    /** Shows another sheet; the fields stay, and with them the keyboard. */
    void lay(OpenSheet other) {
        sheet = other;
        photos = new SheetPhotos(model.photos(), sheet);
        grid.lay(model, sheet.fields());
        getChildren().set(TITLE, title());
        getChildren().set(OUTDATED, outdated());
        getChildren().set(PHOTOS, new PhotoNotices(model.photos(), sheet.facts().tray()));
        getChildren().set(DEAD, new LossPane(model, sheet));
        getChildren().set(MOULD, new MouldPane(sheet));
    }

    StageGrid grid() {
        return grid;
    }

    SheetPhotos photos() {
        return photos;
    }

    private Node title() {
        Label facts = Words.muted("");
        facts.textProperty().bind(sheet.fields().factsProperty().map(RoundWords::trayFacts));
        Flow title = new Flow(Words.styled(sheet.facts().tray(), "tray-name"), facts);
        title.getStyleClass().add("sheet-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        return new Flow(title, photos);
    }

    /** Said where the tray changed since the sheet was begun. */
    private Node outdated() {
        OpenSheet laid = sheet;
        Banner outdated = new Banner(Tone.WARN);
        // As wide as the sheet, however long the sentence: the columns beside keep theirs.
        outdated.setPrefWidth(0);
        outdated.setActions(Buttons.secondary(Texts.say("Drop this sheet"), model::drop));
        outdated.sentenceProperty()
                .bind(Bindings.createStringBinding(
                        () -> laid.fields()
                                .outdated()
                                .map(basis -> RoundWords.outdated(laid.facts(), basis, model.days()))
                                .orElse(""),
                        sheet.fields().factsProperty(),
                        sheet.fields().basisProperty()));
        return outdated;
    }

    private Node problem() {
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        return problem;
    }
}
