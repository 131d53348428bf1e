package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.Window;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.SaveDialog;

/** The machine's own dialogue for labels to be saved as PDF; it opens in the folder used last. */
public final class PdfFileDialog implements PdfChooser {
    private final SaveDialog dialog;

    /** @param folder where it opens the first time */
    public PdfFileDialog(Supplier<Window> owner, Path folder) {
        this.dialog =
                new SaveDialog(owner, folder, new SaveDialog.Kind(Texts.say("Save labels as PDF"), "PDF", ".pdf"));
    }

    @Override
    public Optional<Path> choose(String proposedName) {
        return dialog.choose(proposedName);
    }
}
