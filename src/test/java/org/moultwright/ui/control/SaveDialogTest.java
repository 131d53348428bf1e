package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.stage.FileChooser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveDialogTest {
    private final List<FileChooser> shown = new ArrayList<>();

    @TempDir
    Path folder;

    @Test
    void aNameWithoutItsEndingGetsIt() {
        assertThat(answering("labels").choose("proposed.pdf")).contains(folder.resolve("labels.pdf"));
        assertThat(answering("LABELS.PDF").choose("proposed.pdf")).contains(folder.resolve("LABELS.PDF"));
    }

    /** The machine asked about "labels", which nothing was called, so it has asked nothing about "labels.pdf". */
    @Test
    void aFileThatIsThereIsNotReplacedUnasked() throws IOException {
        Files.writeString(folder.resolve("labels.pdf"), "of last week");
        assertThat(answering("labels", "labels.pdf").choose("proposed.pdf")).contains(folder.resolve("labels.pdf"));
        assertThat(shown).extracting(FileChooser::getInitialFileName).containsExactly("proposed.pdf", "labels.pdf");
        assertThat(shown.get(1).getTitle()).startsWith("labels.pdf is there already");
        assertThat(shown.get(1).getInitialDirectory()).isEqualTo(folder.toFile());
    }

    @Test
    void whoThinksBetterOfItChoosesNothing() throws IOException {
        assertThat(answering().choose("proposed.pdf")).isEmpty();
        Files.writeString(folder.resolve("labels.pdf"), "of last week");
        assertThat(answering("labels").choose("proposed.pdf")).isEmpty();
    }

    @Test
    void theNextOneOpensInTheFolderUsedLast() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        SaveDialog dialog = answering("other/labels.pdf", "more.pdf");
        dialog.choose("proposed.pdf");
        dialog.choose("proposed.pdf");
        assertThat(shown).extracting(FileChooser::getInitialDirectory).containsExactly(folder.toFile(), other.toFile());
    }

    /** A machine whose keeper gives these names, and then none. */
    private SaveDialog answering(String... names) {
        List<String> left = new ArrayList<>(List.of(names));
        return new SaveDialog(
                dialog -> {
                    shown.add(dialog);
                    return left.isEmpty()
                            ? Optional.empty()
                            : Optional.of(left.remove(0)).map(name -> new File(folder.toFile(), name).toPath());
                },
                folder,
                new SaveDialog.Kind("Save labels as PDF", "PDF", ".pdf"));
    }
}
