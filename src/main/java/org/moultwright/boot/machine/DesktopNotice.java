package org.moultwright.boot.machine;

import java.awt.AWTException;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.SystemTray;
import java.awt.TrayIcon;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.moultwright.language.Texts;

/** A notice in a corner of the screen, by the machine's own way: {@code notify-send} where it is, else the tray. */
final class DesktopNotice {
    private static final String COMMAND = "notify-send";
    private static final int ICON_PIXELS = 16;
    private static final int ICON_COLOUR = 0xFFA8261C;

    private final Optional<Path> command;
    private Optional<TrayIcon> tray = Optional.empty();

    /** @param command the program that shows notices, if the machine has it */
    DesktopNotice(Optional<Path> command) {
        this.command = command;
    }

    static DesktopNotice ofMachine() {
        return new DesktopNotice(Arrays.stream(
                        Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, COMMAND))
                .filter(Files::isExecutable)
                .findFirst());
    }

    String way() {
        return command.isPresent() ? COMMAND : Texts.say("the tray of the desktop");
    }

    /** Shows a notice and does not wait until it is gone; whether there is a way to show one. */
    boolean show(String title, String words) {
        return command.isPresent() ? run(command.get(), title, words) : showInTray(title, words);
    }

    private static boolean run(Path program, String title, String words) {
        // The words come last and behind "--": the name of a container can never become an option.
        List<String> line =
                List.of(program.toString(), "--urgency=critical", "--app-name=Moultwright", "--", title, words);
        try {
            new ProcessBuilder(line)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException notRun) {
            // It was there when the desk opened and is gone: as good as never there.
            return false;
        }
    }

    private synchronized boolean showInTray(String title, String words) {
        if (GraphicsEnvironment.isHeadless() || !SystemTray.isSupported()) {
            return false;
        }
        if (tray.isEmpty()) {
            tray = icon();
        }
        tray.ifPresent(
                icon -> EventQueue.invokeLater(() -> icon.displayMessage(title, words, TrayIcon.MessageType.WARNING)));
        return tray.isPresent();
    }

    private static Optional<TrayIcon> icon() {
        BufferedImage image = new BufferedImage(ICON_PIXELS, ICON_PIXELS, BufferedImage.TYPE_INT_ARGB);
        for (int x = 2; x < ICON_PIXELS - 2; x++) {
            for (int y = 2; y < ICON_PIXELS - 2; y++) {
                image.setRGB(x, y, ICON_COLOUR);
            }
        }
        TrayIcon icon = new TrayIcon(image, "Moultwright");
        try {
            SystemTray.getSystemTray().add(icon);
            return Optional.of(icon);
        } catch (AWTException noTray) {
            return Optional.empty();
        }
    }
}
