package org.moultwright.ui.potting;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.label.LabelDesign;

/** How codes are made and how large the pots are, as the keeper fills it in. */
final class LabelForm {
    private final StringProperty pattern;
    private final ReadOnlyStringWrapper patternProblem = new ReadOnlyStringWrapper("");
    private final ObjectProperty<LabelDesign> design;
    private final StringProperty potSize = new SimpleStringProperty("");

    LabelForm(CodePattern begun, LabelDesign design) {
        this.pattern = new SimpleStringProperty(begun.written());
        this.design = new SimpleObjectProperty<>(design);
        whenChanged(
                () -> patternProblem.set(CodePattern.problemOf(pattern.get()).orElse("")));
    }

    /** Calls back at every change, after the problems are up to date. */
    void whenChanged(Runnable action) {
        List.of(pattern, potSize).forEach(text -> text.addListener((o, before, now) -> action.run()));
        design.addListener((o, before, now) -> action.run());
    }

    StringProperty patternProperty() {
        return pattern;
    }

    ReadOnlyStringProperty patternProblemProperty() {
        return patternProblem.getReadOnlyProperty();
    }

    /** What stands on each label beside its code. */
    ObjectProperty<LabelDesign> designProperty() {
        return design;
    }

    /** Codes of this pattern do not go on a label; empty if they do. */
    void tellMisfit(String sentence) {
        patternProblem.set(CodePattern.problemOf(pattern.get()).orElse(sentence));
    }

    /** The size of the pots, as it is to stand on their labels, where a tray names no other; possibly empty. */
    StringProperty potSizeProperty() {
        return potSize;
    }

    Optional<CodePattern> pattern() {
        return CodePattern.read(pattern.get());
    }
}
