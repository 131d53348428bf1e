package org.moultwright.settings;

import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelStack;

/**
 * How a keeper works at the desk.
 *
 * @param photoFolder the folder new pictures come to; empty where none is watched
 * @param codePattern how the codes of pots are made
 * @param labelDesign what stands on the labels of pots
 * @param labelStack the sheets labels went on last
 */
public record DeskSettings(
        String photoFolder, CodePattern codePattern, LabelDesign labelDesign, LabelStack labelStack) {
    public static final DeskSettings DEFAULT =
            new DeskSettings("", CodePattern.STANDARD, LabelDesign.STANDARD, LabelStack.NEW);

    public DeskSettings withPhotoFolder(String other) {
        return new DeskSettings(other, codePattern, labelDesign, labelStack);
    }

    public DeskSettings withCodePattern(CodePattern other) {
        return new DeskSettings(photoFolder, other, labelDesign, labelStack);
    }

    public DeskSettings withLabelDesign(LabelDesign other) {
        return new DeskSettings(photoFolder, codePattern, other, labelStack);
    }

    public DeskSettings withLabelStack(LabelStack other) {
        return new DeskSettings(photoFolder, codePattern, labelDesign, other);
    }
}
