package org.moultwright.ui.potting;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;

/** A sheet of labels by dimensions the keeper fills in, beginning with those of the sheet chosen last. */
final class OwnSheet {
    private static final String UNREADABLE = "Every dimension is a number above 0, margins 0 or more, all in mm.";

    private final BooleanProperty used = new SimpleBooleanProperty(false);
    private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);
    private final Map<SheetDimension, StringProperty> texts = new EnumMap<>(SheetDimension.class);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private LabelSheet lastSound = LabelSheets.A4_3X8;
    private boolean showing;

    OwnSheet() {
        for (SheetDimension dimension : SheetDimension.values()) {
            texts.put(dimension, new SimpleStringProperty(""));
        }
        whenChanged(this::check);
    }

    BooleanProperty usedProperty() {
        return used;
    }

    ObjectProperty<Paper> paperProperty() {
        return paper;
    }

    StringProperty textProperty(SheetDimension dimension) {
        return texts.computeIfAbsent(dimension, missing -> new SimpleStringProperty(""));
    }

    /** Why these dimensions make no sheet, in a sentence; empty when they do. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    boolean isUsed() {
        return used.get();
    }

    boolean isSound() {
        return problem.get().isEmpty();
    }

    LabelSheet lastSound() {
        return lastSound;
    }

    /** Calls back at every change that is the keeper's. */
    void whenChanged(Runnable action) {
        Runnable unlessShowing = () -> {
            if (!showing) {
                action.run();
            }
        };
        used.addListener((observed, before, now) -> unlessShowing.run());
        paper.addListener((observed, before, now) -> unlessShowing.run());
        texts.values().forEach(text -> text.addListener((observed, before, now) -> unlessShowing.run()));
    }

    /** Takes over the dimensions of a known sheet, to be changed from there. */
    void show(LabelSheet sheet) {
        showing = true;
        paper.set(sheet.paper());
        texts.forEach((dimension, text) -> text.set(dimension.written(sheet)));
        showing = false;
        check();
    }

    private void check() {
        try {
            Optional<LabelSheet> sheet = SheetDimension.sheet(paper.get(), texts);
            sheet.ifPresent(sound -> lastSound = sound);
            problem.set(sheet.isPresent() ? "" : UNREADABLE);
        } catch (IllegalArgumentException broken) {
            String reason = String.valueOf(broken.getMessage());
            problem.set(reason.startsWith("Labels") ? reason : SheetDimension.RANGES);
        }
    }
}
