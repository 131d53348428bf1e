package org.moultwright.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

/**
 * Writes a file whole or not at all.
 *
 * <p>The bytes go to a temporary file in the same folder, which then, forced to the disk, takes the target's
 * place; whatever fails, a file that was there is still there and the temporary one is not.
 */
final class WholeFile {
    private WholeFile() {}

    static void write(Path target, byte[] bytes) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new DocumentException(Reason.FOLDER_MISSING, Texts.say("Not saved: there is no folder {0}.", folder));
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new DocumentException(Reason.NOT_A_FILE, Texts.say("Not saved: {0} is not a file.", target));
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new DocumentException(
                    Reason.WRITE_PROTECTED, Texts.say("Not saved: {0} is write-protected.", target));
        }
        try {
            writeBeside(folder, target, bytes);
        } catch (AccessDeniedException e) {
            throw new DocumentException(
                    Reason.NOT_ALLOWED, Texts.say("Not saved: {0} may not be written to.", folder), e);
        } catch (IOException e) {
            throw failure(folder, bytes.length, e);
        }
    }

    private static void writeBeside(Path folder, Path target, byte[] bytes) throws IOException {
        Path temporary = folder.resolve(target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.write(
                    temporary, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
            replace(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    private static void replace(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static DocumentException failure(Path folder, int length, IOException cause) {
        if (folder.toFile().getUsableSpace() < length) {
            return new DocumentException(Reason.DISK_FULL, Texts.say("Not saved: the disk is full."), cause);
        }
        return new DocumentException(Reason.WRITE_FAILED, Texts.say("Not saved: {0}.", cause.getMessage()), cause);
    }
}
