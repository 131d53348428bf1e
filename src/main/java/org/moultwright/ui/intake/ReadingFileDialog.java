package org.moultwright.ui.intake;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.moultwright.language.Texts;

/** The machine's own dialogue for a file of readings; it opens in the folder used last. */
public final class ReadingFileDialog implements Supplier<Optional<Path>> {
    private final Supplier<Window> owner;
    private Path folder;

    /** @param folder where it opens the first time */
    public ReadingFileDialog(Supplier<Window> owner, Path folder) {
        this.owner = owner;
        this.folder = folder;
    }

    @Override
    public Optional<Path> get() {
        FileChooser dialog = new FileChooser();
        dialog.setTitle(Texts.say("Take in a file of readings"));
        dialog.getExtensionFilters()
                .setAll(
                        new FileChooser.ExtensionFilter(
                                Texts.say("Readings in columns"), "*.csv", "*.txt", "*.tsv", "*.log"),
                        new FileChooser.ExtensionFilter(Texts.say("Any file"), "*"));
        if (Files.isDirectory(folder)) {
            dialog.setInitialDirectory(folder.toFile());
        }
        Optional<Path> chosen =
                Optional.ofNullable(dialog.showOpenDialog(owner.get())).map(File::toPath);
        chosen.map(Path::getParent).ifPresent(parent -> folder = parent);
        return chosen;
    }
}
