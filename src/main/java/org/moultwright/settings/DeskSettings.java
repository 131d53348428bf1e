package org.moultwright.settings;

import org.moultwright.domain.code.CodePattern;

/**
 * How a keeper works at the desk.
 *
 * @param photoFolder the folder new pictures come to; empty where none is watched
 * @param codePattern how the codes of pots are made
 */
public record DeskSettings(String photoFolder, CodePattern codePattern) {
    public static final DeskSettings DEFAULT = new DeskSettings("", CodePattern.STANDARD);

    public DeskSettings withPhotoFolder(String other) {
        return new DeskSettings(other, codePattern);
    }

    public DeskSettings withCodePattern(CodePattern other) {
        return new DeskSettings(photoFolder, other);
    }
}
