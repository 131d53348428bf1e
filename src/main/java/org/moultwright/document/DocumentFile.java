package org.moultwright.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.moultwright.file.WholeFile;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

/** Writes a document whole or not at all, and says in a sentence why it could not be. */
final class DocumentFile {
    private DocumentFile() {}

    static void write(Path target, byte[] bytes) {
        Path folder = folderOf(target);
        if (!Files.isDirectory(folder)) {
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
            WholeFile.write(target, bytes);
        } catch (AccessDeniedException e) {
            throw new DocumentException(
                    Reason.NOT_ALLOWED, Texts.say("Not saved: {0} may not be written to.", folder), e);
        } catch (IOException e) {
            throw failure(folder, bytes.length, e);
        }
    }

    /** The folder the document goes to, beyond links. */
    private static Path folderOf(Path target) {
        try {
            return WholeFile.place(target).resolveSibling("");
        } catch (IOException leadsNowhere) {
            throw new DocumentException(
                    Reason.NOT_A_FILE, Texts.say("Not saved: {0} is not a file.", target), leadsNowhere);
        }
    }

    private static DocumentException failure(Path folder, int length, IOException cause) {
        if (folder.toFile().getUsableSpace() < length) {
            return new DocumentException(Reason.DISK_FULL, Texts.say("Not saved: the disk is full."), cause);
        }
        return new DocumentException(Reason.WRITE_FAILED, Texts.say("Not saved: {0}.", said(cause)), cause);
    }

    /** What the system said, without the file it was writing to until that was to take the document's place. */
    private static String said(IOException cause) {
        String message = String.valueOf(cause.getMessage());
        return cause instanceof FileSystemException fault && fault.getReason() != null ? fault.getReason() : message;
    }
}
