package org.moultwright.ui.label;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** The sheet labels go on, as the keeper fills it in: which one, where it was begun, how far the printer is off. */
public final class SheetForm {
    private final OwnSheet own = new OwnSheet();
    private final ObjectProperty<LabelSheet> sheet = new SimpleObjectProperty<>(LabelSheets.A4_3X8);
    private final ObjectProperty<OptionalInt> firstCell = new SimpleObjectProperty<>(OptionalInt.empty());
    private final ReadOnlyStringWrapper firstCellProblem = new ReadOnlyStringWrapper("");
    private final StringProperty shiftRight = new SimpleStringProperty("");
    private final StringProperty shiftDown = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper shiftProblem = new ReadOnlyStringWrapper("");

    /** @param begun the stack to begin with */
    public SheetForm(LabelStack begun) {
        boolean isKnown = LabelSheets.everything().contains(begun.sheet());
        sheet.set(isKnown ? begun.sheet() : LabelSheets.A4_3X8);
        own.show(begun.sheet());
        own.usedProperty().set(!isKnown);
        firstCell.set(OptionalInt.of(begun.firstCell()));
        shiftRight.set(Numbers.fixed(begun.shift().rightMillimetres(), 1));
        shiftDown.set(Numbers.fixed(begun.shift().downMillimetres(), 1));
        // Told of a change before all who ask which sheet lies there: the toolkit tells such listeners first.
        sheet.addListener((InvalidationListener) changed -> own.show(sheet.get()));
        whenChanged(this::check);
    }

    /** The stack as it lies there; empty while what is filled in makes none. */
    public Optional<LabelStack> stack() {
        OptionalInt cell = firstCell();
        return cell.isEmpty() || (own.isUsed() && !own.isSound())
                ? Optional.empty()
                : shift().map(shift -> new LabelStack(laidSheet(), cell.getAsInt(), shift));
    }

    /** Calls back at every change, after the problems are up to date. */
    public void whenChanged(Runnable action) {
        InvalidationListener listener = changed -> action.run();
        own.whenChanged(action);
        List.of(shiftRight, shiftDown).forEach(text -> text.addListener((o, before, now) -> action.run()));
        sheet.addListener(listener);
        firstCell.addListener(listener);
    }

    /** A page that shows how far the printer is off for the sheet as it lies there; none while that is not sound. */
    public Optional<CalibrationPage> calibration(Instant madeAt) {
        return own.isUsed() && !own.isSound()
                ? Optional.empty()
                : shift().map(shift -> new CalibrationPage(laidSheet(), shift, madeAt));
    }

    /** The dimensions of a sheet of the keeper's own. */
    public OwnSheet own() {
        return own;
    }

    /** The sheet as it lies there: the keeper's own, as it last held together, or the one chosen. */
    public LabelSheet laidSheet() {
        return own.isUsed() ? own.lastSound() : sheet.get();
    }

    /** These labels on that sheet, if all that is filled in holds together. */
    public Optional<LabelJob> job(List<PotLabel> labels, Instant madeAt) {
        return stack().map(stack -> new LabelJob(stack.sheet(), stack.firstCell(), stack.shift(), labels, madeAt));
    }

    /** One of the known sheets. */
    public ObjectProperty<LabelSheet> sheetProperty() {
        return sheet;
    }

    public ObjectProperty<OptionalInt> firstCellProperty() {
        return firstCell;
    }

    public ReadOnlyStringProperty firstCellProblemProperty() {
        return firstCellProblem.getReadOnlyProperty();
    }

    public StringProperty shiftRightProperty() {
        return shiftRight;
    }

    public StringProperty shiftDownProperty() {
        return shiftDown;
    }

    public ReadOnlyStringProperty shiftProblemProperty() {
        return shiftProblem.getReadOnlyProperty();
    }

    /** The first free cell, if the sheet has it. */
    public OptionalInt firstCell() {
        OptionalInt cell = firstCell.get();
        boolean exists = cell.isPresent()
                && cell.getAsInt() >= 1
                && cell.getAsInt() <= laidSheet().cells();
        return exists ? cell : OptionalInt.empty();
    }

    Optional<PrintShift> shift() {
        return millimetres(shiftRight.get())
                .flatMap(right -> millimetres(shiftDown.get()).map(down -> new PrintShift(right, down)));
    }

    private void check() {
        firstCellProblem.set(
                firstCell().isPresent()
                        ? ""
                        : Texts.say("1 to {0} on this sheet.", laidSheet().cells()));
        shiftProblem.set(
                shift().isPresent() ? "" : Texts.say("At most {0} mm.", Numbers.fixed(PrintShift.MOST_MILLIMETRES, 0)));
    }

    private static Optional<Double> millimetres(String typed) {
        OptionalDouble value = typed.isBlank() ? OptionalDouble.of(0) : Typed.number(typed);
        return value.isPresent() && Math.abs(value.getAsDouble()) <= PrintShift.MOST_MILLIMETRES
                ? Optional.of(value.getAsDouble())
                : Optional.empty();
    }
}
