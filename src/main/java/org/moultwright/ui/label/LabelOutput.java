package org.moultwright.ui.label;

import java.nio.file.Path;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.label.SheetPrinter.Printing;
import org.moultwright.workflow.CalibrationPage;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PagePicture;

/** Puts labels out: into a PDF, or onto paper sheet by sheet. */
public final class LabelOutput {
    private static final double PRINTED_DOTS_PER_MILLIMETRE = 300 / 25.4;

    private final LabelDesk desk;
    private final LabelNews news;

    public LabelOutput(LabelDesk desk, LabelNews news) {
        this.desk = desk;
        this.news = news;
    }

    /** Saves the labels as one PDF, where the keeper says. */
    public void save(LabelJob job) {
        desk.pdfChooser().choose(LabelWords.fileName(job)).ifPresent(pdf -> save(job, pdf));
    }

    /** Prints the labels, where the keeper says. */
    public void print(LabelJob job) {
        if (!desk.sheetPrinter().isThere()) {
            news.failed(LabelWords.NO_PRINTER);
            return;
        }
        desk.sheetPrinter()
                .choose(Texts.say("Pot labels {0}", LabelWords.codes(job)))
                .ifPresent(printing -> print(job, printing, 0));
    }

    /** Saves a page that shows how far the printer is off. */
    public void saveCalibration(CalibrationPage page) {
        desk.pdfChooser()
                .choose("calibration-" + page.sheet().code() + ".pdf")
                .ifPresent(pdf -> desk.runner()
                        .<Path>run(
                                progress -> {
                                    desk.printer().save(page, pdf);
                                    return pdf;
                                },
                                outcome -> {
                                    if (outcome instanceof Outcome.Done<Path> done) {
                                        news.done(LabelWords.calibrationSaved(done.value()));
                                    } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                        news.failed(failed.fault(), Texts.say("Not saved"));
                                    }
                                }));
    }

    /** Prints that page on plain paper, the way labels are printed. */
    public void printCalibration(CalibrationPage page) {
        if (!desk.sheetPrinter().isThere()) {
            news.failed(LabelWords.NO_PRINTER);
            return;
        }
        desk.sheetPrinter()
                .choose(Texts.say("Calibration page"))
                .ifPresent(printing -> desk.runner()
                        .<PagePicture>run(
                                progress -> desk.printer().picture(page, widthPixels(page.sheet())), outcome -> {
                                    boolean isTaken = outcome instanceof Outcome.Done<PagePicture> drawn
                                            && printing.print(
                                                    drawn.value(), page.sheet().paper());
                                    boolean isOut = printing.end() && isTaken;
                                    if (outcome instanceof Outcome.Failed<PagePicture> failed) {
                                        news.failed(failed.fault(), Texts.say("Not printed"));
                                    } else if (isOut) {
                                        news.done(LabelWords.CALIBRATION_PRINTED);
                                    } else {
                                        news.failed(LabelWords.notPrinted(
                                                1, page.sheet().paper()));
                                    }
                                }));
    }

    private static int widthPixels(LabelSheet sheet) {
        return (int) Math.round(sheet.paper().widthMillimetres() * PRINTED_DOTS_PER_MILLIMETRE);
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
                                news.done(LabelWords.labelsSaved(done.value()));
                            } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                news.failed(failed.fault(), Texts.say("Not saved"));
                            }
                        });
    }

    /** One sheet is drawn at a time, so that many never stand in memory together. */
    private void print(LabelJob job, Printing printing, int sheet) {
        int wide = widthPixels(job.sheet());
        desk.runner().<PagePicture>run(progress -> desk.printer().picture(job, sheet, wide), outcome -> {
            if (outcome instanceof Outcome.Done<PagePicture> drawn) {
                printed(
                        job,
                        printing,
                        sheet,
                        printing.print(drawn.value(), job.sheet().paper()));
            } else {
                printing.end();
                if (outcome instanceof Outcome.Failed<PagePicture> failed) {
                    news.failed(failed.fault(), Texts.say("Not printed"));
                }
            }
        });
    }

    private void printed(LabelJob job, Printing printing, int sheet, boolean taken) {
        boolean isLast = sheet + 1 == job.sheets();
        if (taken && !isLast) {
            print(job, printing, sheet + 1);
        } else if (printing.end() && taken) {
            news.done(LabelWords.printed(job));
        } else {
            news.failed(LabelWords.notPrinted(sheet + 1, job.sheet().paper()));
        }
    }
}
