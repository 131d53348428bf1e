package org.moultwright.ui.potting;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.code.PotPrefix;
import org.moultwright.ui.label.SheetForm;

/** The codes and the sheet, as the keeper fills them in. */
final class LabelForm {
    private final StringProperty prefix = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper prefixProblem = new ReadOnlyStringWrapper("");
    private final StringProperty potSize = new SimpleStringProperty("");
    private final SheetForm sheet = new SheetForm();

    LabelForm() {
        whenChanged(this::check);
    }

    /** Calls back at every change, after the problems are up to date. */
    void whenChanged(Runnable action) {
        sheet.whenChanged(action);
        List.of(prefix, potSize).forEach(text -> text.addListener((o, before, now) -> action.run()));
    }

    StringProperty prefixProperty() {
        return prefix;
    }

    ReadOnlyStringProperty prefixProblemProperty() {
        return prefixProblem.getReadOnlyProperty();
    }

    /** The size of the pots, as it is to stand on their labels, where a tray names no other; possibly empty. */
    StringProperty potSizeProperty() {
        return potSize;
    }

    /** What the labels go on. */
    SheetForm sheet() {
        return sheet;
    }

    Optional<PotPrefix> prefix() {
        return PotPrefix.read(prefix.get());
    }

    private void check() {
        prefixProblem.set(prefix().isPresent() ? "" : PottingWords.PREFIX_RULE);
    }
}
