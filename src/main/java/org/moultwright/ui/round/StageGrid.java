package org.moultwright.ui.round;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Words;

/** The rows of a sheet: per stage the last count, what is expected now, and the field. */
final class StageGrid extends GridPane {
    /** Below this width, in sizes of a stage's name, keys must do without their buttons. */
    private static final int NARROW_IN_LETTERS = 28;

    private final List<Stage> stages;
    private final Label last = heading("");
    private final Map<Stage, StageLine> lines = new LinkedHashMap<>();

    StageGrid(RoundViewModel model, List<Stage> stages) {
        this.stages = List.copyOf(stages);
        getStyleClass().add("stage-grid");
        column(HPos.LEFT, false);
        column(HPos.LEFT, false);
        column(HPos.LEFT, true);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        column(HPos.RIGHT, false);
        add(last, 3, 0);
        add(heading(Texts.say("expected now")), 4, 0);
        add(heading(Texts.say("looked")), 5, 0);
        for (int i = 0; i < stages.size(); i++) {
            addStage(model, stages.get(i), i);
        }
    }

    /** Whether a sheet's rows can be laid into this grid. */
    boolean takes(SheetViewModel sheet) {
        return sheet.rows().stream().map(StageRow::stage).toList().equals(stages);
    }

    /** Shows another sheet; a field that has the keyboard keeps it. */
    void lay(RoundViewModel model, SheetViewModel sheet) {
        last.setText(sheet.factsProperty()
                .get()
                .view()
                .lastLook()
                .map(model.days()::shortDay)
                .orElse(Texts.say("last")));
        sheet.rows().forEach(row -> line(row.stage()).ifPresent(line -> line.lay(row)));
    }

    void focus(Stage stage) {
        line(stage).ifPresent(line -> {
            line.input().requestFocus();
            line.input().selectAll();
        });
    }

    /** The stage whose field a node is. */
    Optional<Stage> at(@Nullable Node field) {
        return lines.entrySet().stream()
                .filter(entry -> entry.getValue().input() == field)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private Optional<StageLine> line(Stage stage) {
        return Optional.ofNullable(lines.get(stage));
    }

    private void addStage(RoundViewModel model, Stage stage, int position) {
        StageLine line =
                new StageLine(stage, model.vocabularyProperty().map(names -> names.label(stage)), position + 1);
        lines.put(stage, line);
        line.hideStepWhen(name -> widthProperty()
                .lessThanOrEqualTo(Bindings.createDoubleBinding(
                        () -> NARROW_IN_LETTERS * name.getFont().getSize(), name.fontProperty())));
        List<Node> cells = line.cells();
        addRow(2 * position + 1, cells.toArray(Node[]::new));
        add(line.beneath(), 0, 2 * position + 2, cells.size(), 1);
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
