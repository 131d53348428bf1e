package org.moultwright.ui.label;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;

/** A sheet of labels by dimensions the keeper fills in, beginning with those of the sheet chosen last. */
public final class OwnSheet {
    private static final String UNREADABLE =
            Texts.say("Every dimension is a number above 0, margins 0 or more, all in mm.");

    private final BooleanProperty used = new SimpleBooleanProperty(false);
    private final BooleanProperty round = new SimpleBooleanProperty(false);
    private final Map<SheetDimension, StringProperty> texts = new EnumMap<>(SheetDimension.class);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Set<SheetDimension>> faulty = new ReadOnlyObjectWrapper<>(Set.of());
    private LabelSheet lastSound = LabelSheets.A4_3X8;
    private boolean showing;

    OwnSheet() {
        for (SheetDimension dimension : SheetDimension.values()) {
            texts.put(dimension, new SimpleStringProperty(""));
        }
        whenChanged(this::check);
    }

    public BooleanProperty usedProperty() {
        return used;
    }

    /** Whether each label is a circle. */
    BooleanProperty roundProperty() {
        return round;
    }

    /** Takes over a known paper's size. */
    void choosePaper(Paper paper) {
        textProperty(SheetDimension.PAGE_WIDTH).set(SheetDimension.written(paper.widthMillimetres()));
        textProperty(SheetDimension.PAGE_HEIGHT).set(SheetDimension.written(paper.heightMillimetres()));
    }

    public StringProperty textProperty(SheetDimension dimension) {
        return texts.computeIfAbsent(dimension, missing -> new SimpleStringProperty(""));
    }

    /** Why these dimensions make no sheet, in a sentence; empty when they do. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The dimensions that are to be mended, where it is known which. */
    ReadOnlyObjectProperty<Set<SheetDimension>> faultyProperty() {
        return faulty.getReadOnlyProperty();
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
        round.addListener((observed, before, now) -> unlessShowing.run());
        texts.values().forEach(text -> text.addListener((observed, before, now) -> unlessShowing.run()));
    }

    /** Takes over the dimensions of a known sheet, to be changed from there. */
    void show(LabelSheet sheet) {
        showing = true;
        round.set(sheet.shape() == LabelShape.ROUND);
        texts.forEach((dimension, text) -> text.set(dimension.written(sheet)));
        showing = false;
        check();
    }

    private void check() {
        try {
            Optional<LabelSheet> sheet =
                    SheetDimension.sheet(texts, round.get() ? LabelShape.ROUND : LabelShape.RECTANGLE);
            sheet.ifPresent(sound -> lastSound = sound);
            tell(
                    sheet.isPresent() ? "" : UNREADABLE,
                    marked(dimension ->
                            !SheetDimension.isWritten(textProperty(dimension).get())));
        } catch (LabelSheet.Misfit misfit) {
            tell(misfit.sentence(), Set.of(SheetDimension.of(misfit.measure())));
        } catch (IllegalArgumentException broken) {
            tell(
                    SheetDimension.RANGES,
                    marked(dimension ->
                            !dimension.isInRange(textProperty(dimension).get())));
        }
    }

    private void tell(String sentence, Set<SheetDimension> dimensions) {
        problem.set(sentence);
        faulty.set(dimensions);
    }

    private Set<SheetDimension> marked(Predicate<SheetDimension> which) {
        return texts.keySet().stream().filter(which).collect(Collectors.toUnmodifiableSet());
    }
}
