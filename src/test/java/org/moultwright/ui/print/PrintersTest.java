package org.moultwright.ui.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintersTest {
    @TempDir
    private Path folder;

    @Test
    void withoutAPrinterThatIsSaid() {
        assertThat(new Printers(() -> false, Optional.empty()).hindrance()).contains(Printers.NO_PRINTER);
    }

    @Test
    void aPrinterNoCommandTakesPagesToPrintsNothing() {
        Path missing = folder.resolve("lpr");
        PaperPrinter printer = new PaperPrinter(
                () -> {
                    throw new AssertionError("nobody is asked where to print what cannot be printed");
                },
                new Printers(() -> true, Optional.of(missing)));
        Printout said = printer.print("CC-26-A", () -> {
            throw new AssertionError("nothing is drawn for no paper");
        });
        assertThat(said.isRefused()).isTrue();
        assertThat(said.sentence())
                .isEqualTo("Nothing was sent: this machine has a printer, but not the command " + missing
                        + " that takes pages to it. Save it as PDF and print that, or have the command installed.");
    }

    @Test
    void withTheCommandOrWithoutTheNeedOfOneItCanPrint() throws Exception {
        Path command = Files.createFile(folder.resolve("lpr"));
        Printers printers = new Printers(() -> true, Optional.of(command));
        assertThat(printers.hindrance()).as("no program").isPresent();
        assertThat(command.toFile().setExecutable(true)).isTrue();
        assertThat(printers.hindrance()).isEmpty();
        assertThat(new Printers(() -> true, Optional.empty()).hindrance()).isEmpty();
    }
}
