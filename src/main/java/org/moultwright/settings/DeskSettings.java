package org.moultwright.settings;

/**
 * How a keeper works at the desk.
 *
 * @param photoFolder the folder new pictures come to; empty where none is watched
 */
public record DeskSettings(String photoFolder) {
    public static final DeskSettings DEFAULT = new DeskSettings("");

    public DeskSettings withPhotoFolder(String other) {
        return new DeskSettings(other);
    }
}
