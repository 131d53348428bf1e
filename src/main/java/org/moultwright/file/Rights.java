package org.moultwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Whose a file is and who may read and write it, where its file system tells.
 *
 * @param owner whose it is
 * @param group who share it
 * @param permissions what they and others may
 */
record Rights(UserPrincipal owner, GroupPrincipal group, Set<PosixFilePermission> permissions) {
    private static final Set<PosixFilePermission> OF_THE_GROUP = EnumSet.of(
            PosixFilePermission.GROUP_READ, PosixFilePermission.GROUP_WRITE, PosixFilePermission.GROUP_EXECUTE);

    private static final FileAttribute<?> OWN =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

    /** Those of a file; none where there is no file, or a file system that knows none of this. */
    static Optional<Rights> of(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view == null || Files.notExists(file)) {
            return Optional.empty();
        }
        PosixFileAttributes there = view.readAttributes();
        return Optional.of(new Rights(there.owner(), there.group(), Set.copyOf(there.permissions())));
    }

    /** What to make a file with that will replace another: its writer's alone, so that it is never more open. */
    static FileAttribute<?>[] inTheMakingOf(Path target) throws IOException {
        return of(target).isPresent() ? new FileAttribute<?>[] {OWN} : new FileAttribute<?>[0];
    }

    /** Gives them to another file as far as the system lets; what one group may not have, no other gets instead. */
    void layOn(Path file) {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        Set<PosixFilePermission> given = EnumSet.noneOf(PosixFilePermission.class);
        given.addAll(permissions);
        isLet(() -> view.setOwner(owner));
        if (!isLet(() -> view.setGroup(group))) {
            given.removeAll(OF_THE_GROUP);
        }
        isLet(() -> view.setPermissions(given));
    }

    private static boolean isLet(Change change) {
        try {
            change.make();
            return true;
        } catch (IOException notLet) {
            return false;
        }
    }

    /** Changes one of them. */
    @FunctionalInterface
    private interface Change {
        void make() throws IOException;
    }
}
