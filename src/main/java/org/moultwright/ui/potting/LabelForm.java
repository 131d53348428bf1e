package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** The codes and the sheet, as the keeper fills them in. */
final class LabelForm {
    private final StringProperty prefix = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper prefixProblem = new ReadOnlyStringWrapper("");
    private final StringProperty potSize = new SimpleStringProperty("");
    private final OwnSheet own = new OwnSheet();
    private final ObjectProperty<LabelSheet> sheet = new SimpleObjectProperty<>(LabelSheets.A4_3X8);
    private final ObjectProperty<OptionalInt> firstCell = new SimpleObjectProperty<>(OptionalInt.of(1));
    private final ReadOnlyStringWrapper firstCellProblem = new ReadOnlyStringWrapper("");
    private final StringProperty shiftRight = new SimpleStringProperty("0.0");
    private final StringProperty shiftDown = new SimpleStringProperty("0.0");
    private final ReadOnlyStringWrapper shiftProblem = new ReadOnlyStringWrapper("");

    LabelForm() {
        sheet.addListener((observed, before, now) -> own.show(now));
        own.show(sheet.get());
        whenChanged(this::check);
    }

    /** Calls back at every change, after the problems are up to date. */
    void whenChanged(Runnable action) {
        InvalidationListener listener = changed -> action.run();
        own.whenChanged(action);
        List.of(prefix, potSize, shiftRight, shiftDown)
                .forEach(text -> text.addListener((o, before, now) -> action.run()));
        sheet.addListener(listener);
        firstCell.addListener(listener);
    }

    StringProperty prefixProperty() {
        return prefix;
    }

    ReadOnlyStringProperty prefixProblemProperty() {
        return prefixProblem.getReadOnlyProperty();
    }

    /** The size of the pots, as it is to stand on their labels; possibly empty. */
    StringProperty potSizeProperty() {
        return potSize;
    }

    /** The dimensions of a sheet of the keeper's own. */
    OwnSheet own() {
        return own;
    }

    /** The sheet as it lies there: the keeper's own, as it last held together, or the one chosen. */
    LabelSheet laidSheet() {
        return own.isUsed() ? own.lastSound() : sheet.get();
    }

    /** These labels on that sheet, if all that is filled in holds together. */
    Optional<LabelJob> job(List<PotLabel> labels, Instant madeAt) {
        OptionalInt cell = firstCell();
        if (cell.isEmpty() || (own.isUsed() && !own.isSound())) {
            return Optional.empty();
        }
        return shift().map(shift -> new LabelJob(laidSheet(), cell.getAsInt(), shift, labels, madeAt));
    }

    /** One of the known sheets. */
    ObjectProperty<LabelSheet> sheetProperty() {
        return sheet;
    }

    ObjectProperty<OptionalInt> firstCellProperty() {
        return firstCell;
    }

    ReadOnlyStringProperty firstCellProblemProperty() {
        return firstCellProblem.getReadOnlyProperty();
    }

    StringProperty shiftRightProperty() {
        return shiftRight;
    }

    StringProperty shiftDownProperty() {
        return shiftDown;
    }

    ReadOnlyStringProperty shiftProblemProperty() {
        return shiftProblem.getReadOnlyProperty();
    }

    Optional<PotPrefix> prefix() {
        return PotPrefix.read(prefix.get());
    }

    /** The first free cell, if the sheet has it. */
    OptionalInt firstCell() {
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
        prefixProblem.set(prefix().isPresent() ? "" : PottingWords.PREFIX_RULE);
        firstCellProblem.set(
                firstCell().isPresent()
                        ? ""
                        : "1 to %d on this sheet.".formatted(laidSheet().cells()));
        shiftProblem.set(shift().isPresent() ? "" : "At most %.0f mm.".formatted(PrintShift.MOST_MILLIMETRES));
    }

    private static Optional<Double> millimetres(String typed) {
        try {
            double value = typed.isBlank()
                    ? 0
                    : Double.parseDouble(typed.replace(',', '.').replace('−', '-'));
            return Math.abs(value) <= PrintShift.MOST_MILLIMETRES ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException unfinished) {
            return Optional.empty();
        }
    }
}
