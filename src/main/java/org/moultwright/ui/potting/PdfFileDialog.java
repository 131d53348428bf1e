package org.moultwright.ui.potting;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The machine's own dialogue for a PDF to be saved; it opens in the folder used last. */
public final class PdfFileDialog implements PdfChooser {
    private final Supplier<Window> owner;
    private Path folder;

    /** @param folder where it opens the first time */
    public PdfFileDialog(Supplier<Window> owner, Path folder) {
        this.owner = owner;
        this.folder = folder;
    }

    @Override
    public Optional<Path> choose(String proposedName) {
        FileChooser dialog = new FileChooser();
        dialog.setTitle("Save labels as PDF");
        dialog.setInitialFileName(proposedName);
        dialog.getExtensionFilters().setAll(new FileChooser.ExtensionFilter("PDF", "*.pdf"));
        if (Files.isDirectory(folder)) {
            dialog.setInitialDirectory(folder.toFile());
        }
        Optional<Path> chosen = Optional.ofNullable(dialog.showSaveDialog(owner.get()))
                .map(File::toPath)
                .map(PdfFileDialog::withExtension);
        chosen.map(Path::getParent).ifPresent(parent -> folder = parent);
        return chosen;
    }

    private static Path withExtension(Path path) {
        String name = path.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(".pdf") ? path : path.resolveSibling(name + ".pdf");
    }
}
