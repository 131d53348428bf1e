package org.moultwright.boot.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.store.H2Store;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code labels}: writes the labels of a brood's pots as PDF. */
@Command(name = "labels", description = "Writes the labels of a brood's pots as PDF.")
final class LabelsCommand implements Runnable {
    @Option(names = "--store", required = true, paramLabel = "FILE", description = "the store")
    Path store = Path.of("");

    @Option(names = "--brood", required = true, paramLabel = "CODE", description = "the brood's code")
    String brood = "";

    @Option(names = "--sheet", required = true, paramLabel = "SHEET", description = "the sheet, such as a4-3x8-70x37")
    String sheet = "";

    @Option(names = "--start", paramLabel = "CELL", description = "the first free label, from 1 (default: 1)")
    int start = 1;

    @Option(names = "--to", required = true, paramLabel = "FILE.pdf", description = "the document to write")
    Path pdf = Path.of("");

    @Mixin
    OutputOnly output = new OutputOnly();

    @Override
    public void run() {
        LabelSheet labelSheet = LabelSheets.find(sheet).orElseThrow(this::noSuchSheet);
        if (start < 1 || start > labelSheet.cells()) {
            throw new Refusal("There is no label %d on sheet '%s'. It has labels 1 to %d."
                    .formatted(start, sheet, labelSheet.cells()));
        }
        BroodRecord record;
        try (H2Store open = Stores.existing(store)) {
            record = Stores.brood(open, store, brood);
        }
        if (record.pots().isEmpty()) {
            throw new Refusal("Brood '%s' has no pots yet, so there is nothing to label.".formatted(brood));
        }
        List<PotLabel> labels = labels(record);
        LabelJob job = new LabelJob(labelSheet, start, PrintShift.NONE, labels, Instant.now());
        new PdfLabelPrinter().save(job, pdf);
        output.out().println("%d labels on %d sheets written to %s".formatted(labels.size(), job.sheets(), pdf));
    }

    private static List<PotLabel> labels(BroodRecord record) {
        DayWords days = new DayWords(record.brood().zone());
        return record.pots().stream()
                .map(pot -> new PotLabel(
                        pot.code(),
                        record.brood().taxon(),
                        pot.label().isEmpty() ? "potted " + days.shortDay(pot.potted()) : pot.label()))
                .toList();
    }

    private Refusal noSuchSheet() {
        return new Refusal("There is no sheet '%s'. Known are: %s."
                .formatted(
                        sheet,
                        LabelSheets.everything().stream().map(LabelSheet::code).collect(Collectors.joining(", "))));
    }
}
