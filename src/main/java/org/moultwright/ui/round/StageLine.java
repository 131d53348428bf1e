package org.moultwright.ui.round;

import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;

/** The line of one stage in the grid of a sheet. It stays from tray to tray: making a field anew is dear. */
final class StageLine {
    private final Node swatch;
    private final KeyCap key;
    private final Label name = Words.styled("", "stage-name");
    private final Label last = Words.styled("", "stage-figure");
    private final Label expected = Words.styled("", "stage-figure", "muted");
    private final LookField field = new LookField();
    private final Button more = Buttons.secondary("+", field::countOneMore);
    private final VBox beneath = new VBox();

    /** Few stages are ever asked about. */
    private final Once<Label> question = new Once<>(this::question);

    private Subscription shown = Subscription.EMPTY;

    StageLine(Stage stage, ObservableValue<String> label, int position) {
        swatch = Swatch.tall(stage);
        key = new KeyCap(Integer.toString(position));
        name.textProperty().bind(label);
        field.input().accessibleTextProperty().bind(name.textProperty().map(named -> Texts.say("{0}, looked", named)));
        List.of(name, last, expected).forEach(each -> each.setMinWidth(Region.USE_PREF_SIZE));
        more.getStyleClass().add("step");
        more.setFocusTraversable(false);
        more.visibleProperty().bind(more.managedProperty());
        more.accessibleTextProperty().bind(name.textProperty().map(words -> Texts.say("one more, {0}", words)));
        Region hairline = new Region();
        hairline.getStyleClass().add("hairline");
        beneath.setAlignment(Pos.TOP_RIGHT);
        beneath.getChildren().add(hairline);
    }

    /** @param when given the stage's name as shown, tells when the button beside the field has no room */
    void hideStepWhen(Function<Label, ? extends ObservableBooleanValue> when) {
        more.managedProperty().bind(when.apply(name).map(hidden -> !hidden));
    }

    void lay(StageRow row) {
        shown.unsubscribe();
        field.lay(row);
        shown = Subscription.combine(
                row.lastProperty().subscribe(last::setText),
                row.expectedProperty().subscribe(expected::setText),
                row.questionProperty().subscribe(this::ask));
    }

    TextField input() {
        return field.input();
    }

    List<Node> cells() {
        return List.of(swatch, key, name, last, expected, field, more);
    }

    Node beneath() {
        return beneath;
    }

    private void ask(String words) {
        if (words.isEmpty()) {
            question.made().ifPresent(asked -> asked.setText(words));
        } else {
            question.get().setText(words);
        }
    }

    private Label question() {
        Label asked = Words.wrapped(Words.muted(""));
        asked.managedProperty().bind(asked.textProperty().isNotEmpty());
        beneath.getChildren().add(0, asked);
        return asked;
    }
}
