package org.moultwright.ui.register;

import java.time.Instant;
import java.util.Comparator;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.WholeColumns;
import org.moultwright.ui.control.Words;

/**
 * The pots shown, one a row. Which row is looked at and which are selected is the model's; the table's own selection is
 * left empty, since it follows places in the list and not pots.
 */
final class PotTable extends TableView<PotRow> {
    private static final int FAR = 1_000_000;

    private static final double LEAST_CODE_EMS = 6.6;
    private static final double CODE_PADDING_EMS = 1.3;

    /** Capitals and figures, hyphens among them, as wide as they come on the whole. */
    private static final double CODE_LETTER_EMS = 0.56;

    private final RegisterViewModel model;
    private final Em type;

    /** @param type stands where the table does */
    PotTable(RegisterViewModel model, Em type) {
        super(model.shown());
        this.model = model;
        this.type = type;
        DayWords days = model.days();
        getStyleClass().addAll("bare", "pot-table");
        setPlaceholder(Words.wrapped(Words.muted("")));
        setRowFactory(table -> new PotTableRow(model));
        getColumns().add(marks());
        TableColumn<PotRow, PotRow> codes =
                add(Texts.say("code"), LEAST_CODE_EMS, Comparator.comparing(PotRow::code), PotRow::code);
        WholeColumns.atLeast(codes, Bindings.createDoubleBinding(this::codeWidth, type.fontProperty(), model.all()));
        add(Texts.say("brood"), 6.2, Comparator.comparing(PotRow::broodCode), PotRow::broodCode);
        add(Texts.say("size"), 4.3, Comparator.comparing(PotRow::size), PotRow::size);
        add(Texts.say("potted"), 5.8, Comparator.comparing(PotRow::potted), row -> days.shortDay(row.potted()));
        add(
                Texts.say("state"),
                7.33,
                Comparator.comparing(PotRow::state),
                row -> row.state().word());
        add(Texts.say("last fed"), 6, byLast(What.FED), row -> RegisterWords.when(row, What.FED, days));
        add(Texts.say("last moult"), 7.2, byLast(What.MOULTED), row -> RegisterWords.when(row, What.MOULTED, days));
        add(
                Texts.say("stage"),
                6.6,
                Comparator.comparing((PotRow row) -> row.life().moults()),
                row -> RegisterWords.stage(row, model.vocabularyProperty().get()));
        WholeColumns.of(this, type);
        comparatorProperty().addListener((observed, before, now) -> reveal());
        model.shown().comparatorProperty().bind(comparatorProperty());
        model.cursorProperty().addListener((observed, before, now) -> reveal());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.vocabularyProperty().addListener((observed, before, now) -> refresh());
        model.cursorProperty().addListener((observed, before, now) -> tell());
        model.marks().revisionProperty().addListener((observed, before, now) -> tell());
        tell();
    }

    /** What is said while no row is shown. */
    void setEmptyWords(String sentence) {
        setPlaceholder(Words.wrapped(Words.muted(sentence)));
    }

    /** Looks at the first row, unless one of those shown is looked at. */
    void begin() {
        if (rowOfCursor() < 0) {
            step(0);
        }
    }

    private TableColumn<PotRow, PotRow> marks() {
        TableColumn<PotRow, PotRow> column = column("");
        column.setPrefWidth(MarkCell.WIDTH_PIXELS);
        column.setSortable(false);
        column.setMaxWidth(MarkCell.WIDTH_PIXELS);
        column.setCellFactory(shown -> new MarkCell(model));
        return column;
    }

    private TableColumn<PotRow, PotRow> add(
            String title, double ems, Comparator<PotRow> order, Function<PotRow, String> text) {
        TableColumn<PotRow, PotRow> column = column(title);
        WholeColumns.atLeast(column, type.times(ems));
        column.setComparator(order);
        column.setCellFactory(shown -> new WordCell(text));
        getColumns().add(column);
        return column;
    }

    /** A code that is cut short is no code. */
    private double codeWidth() {
        int longest =
                model.all().stream().mapToInt(row -> row.code().length()).max().orElse(0);
        return type.pixels() * Math.max(LEAST_CODE_EMS, CODE_PADDING_EMS + longest * CODE_LETTER_EMS);
    }

    private static TableColumn<PotRow, PotRow> column(String title) {
        TableColumn<PotRow, PotRow> column = new TableColumn<>(title);
        column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
        column.setReorderable(false);
        return column;
    }

    /** Those to whom it never happened lead. */
    private static Comparator<PotRow> byLast(What what) {
        return Comparator.comparing(row -> row.last(what).orElse(Instant.MIN));
    }

    private void pressed(KeyEvent event) {
        if (event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
            return;
        }
        switch (event.getCode()) {
            case UP -> stepMarking(-1, event.isShiftDown());
            case DOWN -> stepMarking(1, event.isShiftDown());
            case PAGE_UP -> step(-page());
            case PAGE_DOWN -> step(page());
            case HOME -> step(-FAR);
            case END -> step(FAR);
            case SPACE, ENTER -> model.toggleCursor();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void stepMarking(int rows, boolean marks) {
        if (marks) {
            model.markCursor();
        }
        step(rows);
        if (marks) {
            model.markCursor();
        }
    }

    private void step(int rows) {
        int last = getItems().size() - 1;
        if (last >= 0) {
            int from = rowOfCursor();
            int to = from < 0 ? 0 : Math.max(0, Math.min(last, from + rows));
            model.look(getItems().get(to));
        }
    }

    private int rowOfCursor() {
        return model.cursorProperty().get().map(getItems()::indexOf).orElse(-1);
    }

    private int page() {
        return lookup(".virtual-flow") instanceof VirtualFlow<?> flow && flow.getLastVisibleCell() != null
                ? Math.max(
                        1,
                        flow.getLastVisibleCell().getIndex()
                                - flow.getFirstVisibleCell().getIndex())
                : 1;
    }

    /** Scrolls only as far as it takes to see the row looked at. */
    private void reveal() {
        int row = rowOfCursor();
        if (row >= 0 && !shows(row)) {
            scrollTo(Math.max(0, row - page() / 2));
        }
    }

    private boolean shows(int row) {
        return lookup(".virtual-flow") instanceof VirtualFlow<?> flow
                && flow.getFirstVisibleCell() != null
                && flow.getFirstVisibleCell().getIndex() <= row
                && row < flow.getLastVisibleCell().getIndex();
    }

    private void tell() {
        setAccessibleText(model.cursorProperty()
                .get()
                .map(row -> model.marks().has(row.code())
                        ? Texts.say(
                                "{0}, {1}, {2}, selected",
                                row.code(), row.broodCode(), row.state().word())
                        : String.join(
                                ", ", row.code(), row.broodCode(), row.state().word()))
                .orElse(Texts.say("pots")));
    }
}
