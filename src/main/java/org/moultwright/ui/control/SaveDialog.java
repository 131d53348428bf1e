package org.moultwright.ui.control;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.moultwright.language.Texts;

/**
 * The machine's own dialogue for a file to be saved; it opens in the folder used last.
 *
 * <p>The machine asks before a file is replaced. Where a name is given its ending here, and a file has that name already,
 * the keeper is asked once more, under the whole name, so that the machine can ask.
 */
public final class SaveDialog implements SaveChooser {
    private final Function<FileChooser, Optional<Path>> machine;
    private final Kind kind;
    private Path folder;

    /** @param folder where it opens the first time */
    public SaveDialog(Supplier<Window> owner, Path folder, Kind kind) {
        this(dialog -> Optional.ofNullable(dialog.showSaveDialog(owner.get())).map(File::toPath), folder, kind);
    }

    /** @param machine shows a dialogue, and says what was chosen in it */
    SaveDialog(Function<FileChooser, Optional<Path>> machine, Path folder, Kind kind) {
        this.machine = machine;
        this.folder = folder;
        this.kind = kind;
    }

    @Override
    public Optional<Path> choose(String proposedName) {
        return ask(proposedName, kind.title());
    }

    private Optional<Path> ask(String proposedName, String title) {
        FileChooser dialog = new FileChooser();
        dialog.setTitle(title);
        dialog.setInitialFileName(proposedName);
        dialog.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(kind.word(), "*" + kind.extension()));
        if (Files.isDirectory(folder)) {
            dialog.setInitialDirectory(folder.toFile());
        }
        Optional<Path> chosen = machine.apply(dialog);
        chosen.map(Path::getParent).ifPresent(parent -> folder = parent);
        return chosen.flatMap(this::withExtension);
    }

    private Optional<Path> withExtension(Path path) {
        String name = path.getFileName().toString();
        if (name.toLowerCase(Locale.ROOT).endsWith(kind.extension())) {
            return Optional.of(path);
        }
        String whole = name + kind.extension();
        Path named = path.resolveSibling(whole);
        return Files.exists(named)
                ? ask(whole, Texts.say("{0} is there already: replace it, or give another name", whole))
                : Optional.of(named);
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
