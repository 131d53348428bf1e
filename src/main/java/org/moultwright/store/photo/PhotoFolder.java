package org.moultwright.store.photo;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Require;
import org.moultwright.file.FileInTheMaking;
import org.moultwright.language.Texts;
import org.moultwright.store.file.DiskRoom;
import org.moultwright.store.file.FullDisk;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PhotoException;
import org.moultwright.workflow.PhotoException.Reason;
import org.moultwright.workflow.PhotoFiles;

/**
 * Pictures in a folder, each named by the SHA-256 of its bytes.
 *
 * <p>A picture is written beside its place, forced to the disk, and then given its name in one step; only a file that
 * does not hold what its name says is ever replaced. Safe to share between threads.
 */
public final class PhotoFolder implements PhotoFiles {
    /** More than any camera or telephone makes, little enough to be held at once. Our own figure. */
    static final long MOST_BYTES = 64L << 20;

    /** What a picture is tried at before it is kept. */
    private static final int TRIAL_PIXELS = 160;

    private final Path folder;

    /** @param folder made when the first picture is kept */
    public PhotoFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    public String keep(Path picture) {
        String name = String.valueOf(picture.getFileName());
        if (Files.isDirectory(picture)) {
            throw new PhotoException(Reason.NOT_A_FILE, Texts.say("'{0}' is a folder.", name));
        }
        try {
            long bytes = Files.size(picture);
            if (bytes == 0) {
                throw new PhotoException(Reason.NOT_A_FILE, Texts.say("'{0}' is empty.", name));
            }
            if (bytes > MOST_BYTES) {
                throw tooLarge(name);
            }
            return keep(Files.readAllBytes(picture), name);
        } catch (NoSuchFileException gone) {
            throw new PhotoException(Reason.NOT_A_FILE, Texts.say("'{0}' is not there any more.", name), gone);
        } catch (AccessDeniedException notAllowed) {
            throw new PhotoException(Reason.NOT_A_FILE, Texts.say("'{0}' may not be read by you.", name), notAllowed);
        } catch (IOException fault) {
            throw new PhotoException(Reason.NOT_A_FILE, Texts.say("'{0}' cannot be read.", name), fault);
        }
    }

    @Override
    public String keep(PagePicture picture, String name) {
        return keep(PictureBytes.png(picture), name);
    }

    @Override
    public String keep(byte[] picture, String name) {
        if (picture.length > MOST_BYTES) {
            throw tooLarge(name);
        }
        PictureBytes read = PictureBytes.of(picture, name);
        read.scaled(TRIAL_PIXELS);
        String file = ContentHash.of(picture) + "." + read.ending();
        try {
            write(picture, folder.resolve(file));
        } catch (IOException fault) {
            throw FullDisk.isSaidBy(fault)
                    ? new PhotoException(
                            Reason.DISK_FULL, Texts.say("The disk is full; '{0}' was not attached.", name), fault)
                    : new PhotoException(
                            Reason.NOT_WRITABLE, Texts.say("'{0}' could not be kept in '{1}'.", name, folder), fault);
        }
        return file;
    }

    @Override
    public boolean holds(Path picture) {
        try {
            if (!Files.isDirectory(folder) || Files.size(picture) > MOST_BYTES) {
                return false;
            }
            String hash = ContentHash.of(Files.readAllBytes(picture));
            return PictureBytes.ENDINGS.stream().anyMatch(ending -> Files.exists(folder.resolve(hash + "." + ending)));
        } catch (IOException unknown) {
            return false;
        }
    }

    @Override
    public Optional<Path> find(String file) {
        Require.that(PhotoNote.isFile(file), "'" + file + "' is no picture's file");
        return Optional.of(folder.resolve(file)).filter(Files::isRegularFile);
    }

    @Override
    public PagePicture look(String file, int longestPixels) {
        Path picture = find(file)
                .orElseThrow(() ->
                        new PhotoException(Reason.MISSING, Texts.say("The picture is not in '{0}' any more.", folder)));
        try {
            return PictureBytes.of(Files.readAllBytes(picture), file).scaled(longestPixels);
        } catch (IOException fault) {
            throw new PhotoException(Reason.MISSING, Texts.say("The picture in '{0}' cannot be read.", folder), fault);
        }
    }

    private void write(byte[] picture, Path target) throws IOException {
        Files.createDirectories(folder);
        boolean isThere = Files.exists(target);
        if (isThere && ContentHash.isOf(target)) {
            return;
        }
        if (!DiskRoom.of(folder).isLeft()) {
            throw new IOException("No space left");
        }
        try (FileInTheMaking making = FileInTheMaking.of(target)) {
            making.write(picture);
            if (isThere) {
                making.replace();
            } else {
                making.become();
            }
        } catch (FileAlreadyExistsException keptMeanwhile) {
            // Its name is its content: whoever kept it kept the same.
        }
    }

    private static PhotoException tooLarge(String name) {
        return new PhotoException(Reason.TOO_LARGE, Texts.say("'{0}' is larger than {1} MB.", name, MOST_BYTES >> 20));
    }
}
