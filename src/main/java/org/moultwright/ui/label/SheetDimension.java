package org.moultwright.ui.label;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PageSize;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;

/** The dimensions that make a sheet of labels, each with its word; all but columns and rows in mm. */
public enum SheetDimension {
    PAGE_WIDTH(Texts.say("page width")),
    PAGE_HEIGHT(Texts.say("page height")),
    COLUMNS(Texts.say("columns")),
    ROWS(Texts.say("rows")),
    WIDTH(Texts.say("label width")),
    HEIGHT(Texts.say("label height")),
    LEFT(Texts.say("left margin")),
    TOP(Texts.say("top margin")),
    PITCH_X(Texts.say("column to column")),
    PITCH_Y(Texts.say("row to row"));

    static final String RANGES =
            Texts.say("A page is 10 to 1000 mm wide and high; there is at least one column and one row.");

    /** As fine as a sheet is told. */
    static final int DECIMALS = 3;

    private final String word;

    SheetDimension(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    /** Whether it counts labels; the others are lengths. */
    boolean isCount() {
        return this == COLUMNS || this == ROWS;
    }

    /** As it is written in a field. */
    String written(LabelSheet sheet) {
        return written(of().applyAsDouble(sheet));
    }

    static String written(double value) {
        return Numbers.shortest(value, DECIMALS);
    }

    /**
     * The sheet these texts stand for, empty where one of them is no number.
     *
     * @throws IllegalArgumentException if the numbers make no sheet
     */
    static Optional<LabelSheet> sheet(Map<SheetDimension, StringProperty> texts, LabelShape shape) {
        Map<SheetDimension, Double> read = new EnumMap<>(SheetDimension.class);
        texts.forEach((dimension, text) -> Typed.number(text.get()).ifPresent(value -> read.put(dimension, value)));
        if (read.size() < values().length) {
            return Optional.empty();
        }
        return Optional.of(new LabelSheet(
                PageSize.of(read.getOrDefault(PAGE_WIDTH, 0.0), read.getOrDefault(PAGE_HEIGHT, 0.0)),
                (int) Math.rint(read.getOrDefault(COLUMNS, 0.0)),
                (int) Math.rint(read.getOrDefault(ROWS, 0.0)),
                read.getOrDefault(WIDTH, 0.0),
                read.getOrDefault(HEIGHT, 0.0),
                read.getOrDefault(TOP, 0.0),
                read.getOrDefault(LEFT, 0.0),
                read.getOrDefault(PITCH_X, 0.0),
                read.getOrDefault(PITCH_Y, 0.0),
                shape));
    }

    /** The dimension that is a measure of a sheet. */
    static SheetDimension of(LabelSheet.Measure measure) {
        return switch (measure) {
            case COLUMNS -> COLUMNS;
            case ROWS -> ROWS;
            case LABEL_WIDTH -> WIDTH;
            case LABEL_HEIGHT -> HEIGHT;
            case LEFT -> LEFT;
            case TOP -> TOP;
            case PITCH_X -> PITCH_X;
            case PITCH_Y -> PITCH_Y;
        };
    }

    /** Whether a number is written there. */
    static boolean isWritten(String typed) {
        return Typed.number(typed).isPresent();
    }

    /** Whether what is written can be, whatever the other dimensions. */
    boolean isInRange(String typed) {
        double value = Typed.number(typed).orElse(0);
        return switch (this) {
            case PAGE_WIDTH, PAGE_HEIGHT -> value >= PageSize.LEAST_MILLIMETRES && value <= PageSize.MOST_MILLIMETRES;
            case COLUMNS, ROWS -> value >= 1;
            default -> true;
        };
    }

    private ToDoubleFunction<LabelSheet> of() {
        return switch (this) {
            case PAGE_WIDTH -> sheet -> sheet.paper().widthMillimetres();
            case PAGE_HEIGHT -> sheet -> sheet.paper().heightMillimetres();
            case COLUMNS -> LabelSheet::columns;
            case ROWS -> LabelSheet::rows;
            case WIDTH -> LabelSheet::labelWidthMillimetres;
            case HEIGHT -> LabelSheet::labelHeightMillimetres;
            case LEFT -> LabelSheet::leftMillimetres;
            case TOP -> LabelSheet::topMillimetres;
            case PITCH_X -> LabelSheet::pitchXMillimetres;
            case PITCH_Y -> LabelSheet::pitchYMillimetres;
        };
    }
}
