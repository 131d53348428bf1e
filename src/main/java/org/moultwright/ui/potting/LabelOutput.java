package org.moultwright.ui.potting;

import java.nio.file.Path;
import org.moultwright.task.Outcome;
import org.moultwright.ui.potting.SheetPrinter.Printing;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PagePicture;

/** Puts labels out: into a PDF, or onto paper sheet by sheet. */
final class LabelOutput {
    private static final double PRINTED_DOTS_PER_MILLIMETRE = 300 / 25.4;

    private final PottingDesk desk;
    private final BenchNews news;

    LabelOutput(PottingDesk desk, BenchNews news) {
        this.desk = desk;
        this.news = news;
    }

    /** Saves the labels as one PDF, where the keeper says. */
    void save(LabelJob job) {
        desk.pdfChooser().choose(PottingWords.fileName(job)).ifPresent(pdf -> save(job, pdf));
    }

    /** Prints the labels, where the keeper says. */
    void print(LabelJob job) {
        if (!desk.sheetPrinter().isThere()) {
            news.failed(PottingWords.NO_PRINTER);
            return;
        }
        desk.sheetPrinter()
                .choose("Pot labels " + PottingWords.codes(job))
                .ifPresent(printing -> print(job, printing, 0));
    }

    private void save(LabelJob job, Path pdf) {
        desk.runner()
                .<Path>run(
                        progress -> {
                            desk.printer().save(job, pdf);
                            return pdf;
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<Path> done) {
                                news.done(PottingWords.labelsSaved(done.value()));
                            } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                news.failed(failed.fault(), "Not saved");
                            }
                        });
    }

    /** One sheet is drawn at a time, so that many never stand in memory together. */
    private void print(LabelJob job, Printing printing, int sheet) {
        int widthPixels = (int) Math.round(job.sheet().paper().widthMillimetres() * PRINTED_DOTS_PER_MILLIMETRE);
        desk.runner().<PagePicture>run(progress -> desk.printer().picture(job, sheet, widthPixels), outcome -> {
            if (outcome instanceof Outcome.Done<PagePicture> drawn) {
                printed(
                        job,
                        printing,
                        sheet,
                        printing.print(drawn.value(), job.sheet().paper()));
            } else {
                printing.end();
                if (outcome instanceof Outcome.Failed<PagePicture> failed) {
                    news.failed(failed.fault(), "Not printed");
                }
            }
        });
    }

    private void printed(LabelJob job, Printing printing, int sheet, boolean taken) {
        boolean isLast = sheet + 1 == job.sheets();
        if (taken && !isLast) {
            print(job, printing, sheet + 1);
        } else if (printing.end() && taken) {
            news.done(PottingWords.printed(job));
        } else {
            news.failed(PottingWords.notPrinted(sheet + 1));
        }
    }
}
