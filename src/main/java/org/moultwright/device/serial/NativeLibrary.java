package org.moultwright.device.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import org.moultwright.device.DeviceException;
import org.moultwright.language.Texts;

/**
 * The serial library's native part. By itself it would be unpacked into the common temporary folder, where
 * another user of the machine could put a file of theirs in its place.
 */
final class NativeLibrary {
    private static final String TEMPORARY_FOLDER = "java.io.tmpdir";

    private NativeLibrary() {}

    /**
     * Unpacks and loads it, if it is not loaded yet.
     *
     * @param folder one that only this user can write to; made if it is not there
     * @throws DeviceException if the folder cannot be made
     */
    static synchronized void loadFrom(Path folder) {
        makePrivate(folder);
        String usual = System.getProperty(TEMPORARY_FOLDER);
        // The library reads this property once, when its class is loaded, and offers no other way.
        System.setProperty(TEMPORARY_FOLDER, folder.toString());
        try {
            SerialPort.getVersion();
        } finally {
            System.setProperty(TEMPORARY_FOLDER, usual);
        }
    }

    private static void makePrivate(Path folder) {
        try {
            Files.createDirectories(folder, ownerOnly(folder));
        } catch (IOException e) {
            throw new DeviceException(
                    DeviceException.Reason.FAILED, Texts.say("The folder {0} cannot be made.", folder), e);
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path folder) {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
    }
}
