package org.moultwright.ui.control;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The machine's own dialogue for a file to be saved; it opens in the folder used last. */
public final class SaveDialog implements SaveChooser {
    private final Supplier<Window> owner;
    private final Kind kind;
    private Path folder;

    /** @param folder where it opens the first time */
    public SaveDialog(Supplier<Window> owner, Path folder, Kind kind) {
        this.owner = owner;
        this.folder = folder;
        this.kind = kind;
    }

    @Override
    public Optional<Path> choose(String proposedName) {
        FileChooser dialog = new FileChooser();
        dialog.setTitle(kind.title());
        dialog.setInitialFileName(proposedName);
        dialog.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(kind.word(), "*" + kind.extension()));
        if (Files.isDirectory(folder)) {
            dialog.setInitialDirectory(folder.toFile());
        }
        Optional<Path> chosen = Optional.ofNullable(dialog.showSaveDialog(owner.get()))
                .map(File::toPath)
                .map(this::withExtension);
        chosen.map(Path::getParent).ifPresent(parent -> folder = parent);
        return chosen;
    }

    private Path withExtension(Path path) {
        String name = path.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(kind.extension())
                ? path
                : path.resolveSibling(name + kind.extension());
    }

    /**
     * What is saved.
     *
     * @param title what the dialogue says, "Save labels as PDF"
     * @param word what such a file is called
     * @param extension how its name ends, such as ".pdf"
     */
    public record Kind(String title, String word, String extension) {}
}
