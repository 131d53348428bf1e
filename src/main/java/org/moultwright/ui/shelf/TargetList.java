package org.moultwright.ui.shelf;

import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Skin;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.RowSkin;
import org.moultwright.ui.control.Words;

/** The places that fit, one of them chosen by pressing it; the keyboard stays in the field it is typed into. */
final class TargetList extends ListView<Targets.Target> {
    TargetList(Targets targets) {
        super(targets.fitting());
        setAccessibleText(Texts.say("places that fit"));
        getStyleClass().add("shelf-targets");
        setCellFactory(view -> new TargetCell(targets));
        setFocusTraversable(false);
        targets.chosenProperty().addListener((observed, before, now) -> show(now));
        show(targets.chosenProperty().get());
    }

    private void show(Targets.@Nullable Target target) {
        if (target == null) {
            getSelectionModel().clearSelection();
        } else {
            getSelectionModel().select(target);
            scrollTo(target);
        }
    }

    private static final class TargetCell extends ListCell<Targets.Target> {
        TargetCell(Targets targets) {
            // As wide as the list: a long place goes on below.
            setPrefWidth(0);
            setOnMousePressed(event -> {
                if (getItem() != null) {
                    targets.chosenProperty().set(getItem());
                }
                event.consume();
            });
        }

        @Override
        protected Skin<?> createDefaultSkin() {
            return new RowSkin(this);
        }

        @Override
        protected void updateItem(Targets.@Nullable Target target, boolean empty) {
            super.updateItem(target, empty);
            if (target == null || empty) {
                setGraphic(null);
            } else {
                Flow row = new Flow(Words.strong(target.title()), Words.caption(target.detail()));
                row.getStyleClass().add("shelf-line");
                setGraphic(row);
            }
        }
    }
}
