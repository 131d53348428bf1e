package org.moultwright.ui.broods;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.Window;
import org.moultwright.language.Texts;

/** The machine's own dialogue for a folder; it opens beside the folder chosen last. */
public final class FolderDialog implements FolderChooser {
    private final Supplier<Window> owner;
    private Path start;

    /** @param start where it opens the first time */
    public FolderDialog(Supplier<Window> owner, Path start) {
        this.owner = owner;
        this.start = start;
    }

    @Override
    public Optional<Path> choose() {
        DirectoryChooser dialog = new DirectoryChooser();
        dialog.setTitle(Texts.say("Take in a brood folder"));
        if (Files.isDirectory(start)) {
            dialog.setInitialDirectory(start.toFile());
        }
        Optional<Path> chosen =
                Optional.ofNullable(dialog.showDialog(owner.get())).map(File::toPath);
        chosen.map(Path::getParent).ifPresent(parent -> start = parent);
        return chosen;
    }
}
