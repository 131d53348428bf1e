package org.moultwright.ui.potting;

import javafx.beans.property.ObjectProperty;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Typable;

/** What stands on each label beside its code: a chip for each part, and a field for words of the keeper's own. */
final class DesignRow extends Flow {
    private static final Typable WORDS = Typable.words(24);

    private final ObjectProperty<LabelDesign> design;

    DesignRow(ObjectProperty<LabelDesign> design) {
        this.design = design;
        getStyleClass().addAll("span-chips", "design-row");
        for (LabelPart part : LabelPart.values()) {
            getChildren().add(chip(part));
        }
        getChildren().add(ownWords());
    }

    private ToggleChip chip(LabelPart part) {
        ToggleChip chip = new ToggleChip(word(part));
        chip.setAccessibleText(Texts.say("{0} on the label", word(part)));
        chip.getStyleClass().add("small-chip");
        design.subscribe(now -> chip.setSelected(now.has(part)));
        chip.setOnAction(event -> design.set(design.get().with(part, chip.isSelected())));
        return chip;
    }

    private EntryField ownWords() {
        EntryField field = FormFields.quiet(new EntryField(Texts.say("own words on the label"), WORDS), "own-words");
        field.input().setPromptText(Texts.say("own words"));
        field.textProperty().set(design.get().ownWords());
        field.textProperty()
                .addListener((observed, before, now) -> design.set(design.get().withOwnWords(now)));
        return field;
    }

    private static String word(LabelPart part) {
        return switch (part) {
            case SQUARE -> Texts.say("code square");
            case NAME -> Texts.say("name");
            case STAGE_AND_DAY -> Texts.say("stage and day");
            case POT_SIZE -> Texts.say("pot size");
            case BROOD -> Texts.say("brood");
            case TRAY -> Texts.say("tray");
        };
    }
}
