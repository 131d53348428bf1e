package org.moultwright.ui.shelf;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Standing;

/** The card that has the focus, in full, and what can be done with it. */
final class DetailCard extends VBox {
    private final ShelfViewModel model;
    private final Standing standing;
    private final VBox air = new VBox();

    DetailCard(ShelfViewModel model, Standing standing, Vocabulary names) {
        this.model = model;
        this.standing = standing;
        air.getStyleClass().add("shelf-air");
        getStyleClass().addAll("card", "shelf-detail");
        Flow title = new Flow(
                Words.styled(standing.code(), "tray-name"),
                Words.muted(
                        standing.kind().key().equals(standing.code())
                                ? ""
                                : standing.kind().word()));
        title.getStyleClass().add("lane-name");
        getChildren().addAll(title, Words.wrapped(Words.plain(ShelfWords.place(standing, model.days()))), air);
        showAir();
        standing.occupants().forEach(occupants -> occupants(occupants, names));
        if (!standing.contents().isEmpty()) {
            getChildren().add(Words.wrapped(Words.plain(ShelfWords.within(standing))));
        } else if (standing.holdsSac()) {
            getChildren().add(Words.wrapped(Words.strong(ShelfWords.unlived(standing))));
        }
        getChildren().add(actions(standing));
    }

    /** The air as it is by now; the rest stays as it is, for the keyboard may be in it. */
    void showAir() {
        air.getChildren()
                .setAll(model.aired(standing)
                        .air()
                        .map(this::words)
                        .orElseGet(() -> List.of(
                                Words.wrapped(Words.caption(Texts.say("No probe and no set-point is known here."))))));
    }

    private List<Node> words(Standing.Air known) {
        String humidity = ShelfWords.humidity(known);
        return List.of(
                Words.strong(ShelfWords.temperature(known) + (humidity.isEmpty() ? "" : ", " + humidity)),
                Words.wrapped(Words.caption(ShelfWords.source(
                        standing, known, model.airedProperty().get().at()))));
    }

    private void occupants(Standing.Occupants occupants, Vocabulary names) {
        getChildren().add(Words.strong(occupants.brood() + ", " + ShelfWords.animals(occupants.alive())));
        for (Stage stage : Stage.values()) {
            int count = occupants.byStage().getOrDefault(stage, 0);
            if (count > 0) {
                Flow row = new Flow(
                        new StageChip(stage, names.label(stage)),
                        ContainerCard.gap(),
                        Words.plain(Integer.toString(count)));
                row.getStyleClass().add("shelf-count");
                getChildren().add(row);
            }
        }
    }

    private FlowPane actions(Standing standing) {
        FlowPane actions = new FlowPane();
        actions.getStyleClass().add("chips");
        if (!model.isPast()) {
            actions.getChildren().add(small(Texts.say("Move to…"), model::openMove));
            if (!standing.occupants().isEmpty()) {
                actions.getChildren()
                        .addAll(
                                small(Texts.say("Split…"), () -> model.openSplit(false)),
                                small(Texts.say("Isolate…"), () -> model.openSplit(true)),
                                small(Texts.say("Join…"), model::openMerge));
            }
            actions.getChildren().add(small(Texts.say("Put away"), model::putAway));
        }
        actions.getChildren().add(small(Texts.say("Labels"), model::printLabels));
        return actions;
    }

    private static Button small(String word, Runnable action) {
        Button button = Buttons.secondary(word, action);
        button.getStyleClass().add("small-button");
        return button;
    }
}
