package org.moultwright.ui.round;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;

/** The rows of a sheet: per stage the last count, what is expected now, and the field. */
final class StageGrid extends GridPane {
    /** Below this width, in sizes of a stage's name, keys must do without their buttons. */
    private static final int NARROW_IN_LETTERS = 28;

    private final Map<Stage, LookField> fields = new HashMap<>();

    StageGrid(RoundViewModel model, SheetViewModel sheet) {
        getStyleClass().add("stage-grid");
        column(HPos.LEFT, false);
        column(HPos.LEFT, false);
        column(HPos.LEFT, true);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        String last = sheet.factsProperty()
                .get()
                .view()
                .lastLook()
                .map(model.days()::shortDay)
                .orElse(Texts.say("last"));
        add(heading(last), 3, 0);
        add(heading(Texts.say("expected now")), 4, 0);
        add(heading(Texts.say("looked")), 5, 0);
        for (int i = 0; i < sheet.rows().size(); i++) {
            addStage(model, sheet.rows().get(i), i);
        }
    }

    void focus(Stage stage) {
        Optional.ofNullable(fields.get(stage)).ifPresent(field -> {
            field.input().requestFocus();
            field.input().selectAll();
        });
    }

    /** The stage whose field has the focus. */
    Optional<Stage> focused() {
        return fields.entrySet().stream()
                .filter(entry -> entry.getValue().input().isFocused())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private void addStage(RoundViewModel model, StageRow row, int position) {
        int line = 2 * position + 1;
        Label name = Words.styled("", "stage-name");
        name.textProperty().bind(model.vocabularyProperty().map(names -> names.label(row.stage())));
        Label last = Words.styled("", "stage-figure");
        last.textProperty().bind(row.lastProperty());
        Label expected = Words.styled("", "stage-figure", "muted");
        expected.textProperty().bind(row.expectedProperty());
        LookField field = new LookField(row, "");
        field.input().accessibleTextProperty().bind(name.textProperty().concat(Texts.say(", looked")));
        List.of(name, last, expected).forEach(label -> label.setMinWidth(USE_PREF_SIZE));
        fields.put(row.stage(), field);
        Button more = Buttons.secondary("+", row::countOneMore);
        more.getStyleClass().add("step");
        more.setFocusTraversable(false);
        more.managedProperty()
                .bind(widthProperty()
                        .greaterThan(Bindings.createDoubleBinding(
                                () -> NARROW_IN_LETTERS * name.getFont().getSize(), name.fontProperty())));
        more.visibleProperty().bind(more.managedProperty());
        more.accessibleTextProperty().bind(name.textProperty().map(stage -> Texts.say("one more, {0}", stage)));
        List<Node> cells = new ArrayList<>(List.of(
                Swatch.tall(row.stage()),
                new KeyCap(Integer.toString(position + 1)),
                name,
                last,
                expected,
                field,
                more));
        addRow(line, cells.toArray(Node[]::new));
        Region hairline = new Region();
        hairline.getStyleClass().add("hairline");
        Label question = Words.wrapped(Words.muted(""));
        question.textProperty().bind(row.questionProperty());
        question.managedProperty().bind(question.textProperty().isNotEmpty());
        VBox beneath = new VBox(question, hairline);
        beneath.setAlignment(Pos.TOP_RIGHT);
        add(beneath, 0, line + 1, cells.size(), 1);
    }

    private static Label heading(String words) {
        Label heading = Words.caption(words);
        heading.setMinWidth(USE_PREF_SIZE);
        return heading;
    }

    private void column(HPos alignment, boolean grows) {
        ColumnConstraints column = new ColumnConstraints();
        column.setHalignment(alignment);
        column.setHgrow(grows ? Priority.ALWAYS : Priority.NEVER);
        getColumnConstraints().add(column);
        setAlignment(Pos.TOP_LEFT);
    }
}
