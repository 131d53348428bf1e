package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PageSize;
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

    /** Saves the labels where the keeper says: one PDF for each kind of sheet, all of them or none. */
    public void save(List<LabelJob> jobs) {
        Map<Path, LabelJob> places = new LinkedHashMap<>();
        for (LabelJob job : jobs) {
            Optional<Path> pdf = desk.pdfChooser().choose(LabelWords.fileName(job));
            if (pdf.isEmpty()) {
                return;
            }
            if (places.putIfAbsent(pdf.get(), job) != null) {
                news.failed(LabelWords.sameFile(pdf.get()));
                return;
            }
        }
        if (!places.isEmpty()) {
            save(places);
        }
    }

    /** Prints the labels where the keeper says, one kind of sheet after another. */
    public void print(List<LabelJob> jobs) {
        if (jobs.isEmpty()) {
            return;
        }
        ifPossible(() -> printNext(jobs, 0));
    }

    private void printNext(List<LabelJob> jobs, int at) {
        if (at == jobs.size()) {
            news.done(LabelWords.printed(jobs));
            return;
        }
        LabelJob job = jobs.get(at);
        int wide = widthPixels(job.sheet());
        desk.sheetPrinter()
                .choose(Texts.say("Pot labels {0}", LabelWords.codes(job)))
                .ifPresentOrElse(
                        printing -> put(
                                printing,
                                job.sheet().paper(),
                                job.sheets(),
                                sheet -> desk.printer().picture(job, sheet, wide),
                                () -> printNext(jobs, at + 1)),
                        () -> {
                            if (at > 0) {
                                news.done(LabelWords.printed(jobs.subList(0, at)));
                            }
                        });
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
        ifPossible(() -> printOne(page));
    }

    private void ifPossible(Runnable printing) {
        desk.sheetPrinter().hindrance().ifPresentOrElse(news::failed, printing);
    }

    private void printOne(CalibrationPage page) {
        desk.sheetPrinter()
                .choose(Texts.say("Calibration page"))
                .ifPresent(printing -> put(
                        printing,
                        page.sheet().paper(),
                        1,
                        sheet -> desk.printer().picture(page, widthPixels(page.sheet())),
                        () -> news.done(LabelWords.CALIBRATION_PRINTED)));
    }

    private static int widthPixels(LabelSheet sheet) {
        return (int) Math.round(sheet.paper().widthMillimetres() * PRINTED_DOTS_PER_MILLIMETRE);
    }

    private void save(Map<Path, LabelJob> places) {
        desk.runner()
                .<List<Path>>run(
                        progress -> {
                            places.forEach((pdf, job) -> desk.printer().save(job, pdf));
                            return List.copyOf(places.keySet());
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<List<Path>> done) {
                                news.done(LabelWords.labelsSaved(done.value()));
                            } else if (outcome instanceof Outcome.Failed<List<Path>> failed) {
                                news.failed(failed.fault(), Texts.say("Not saved"));
                            }
                        });
    }

    private void put(
            Printing printing, PageSize paper, int sheets, IntFunction<PagePicture> picture, Runnable printed) {
        Optional<String> refusal = printing.refusal(paper);
        if (refusal.isPresent()) {
            news.failed(refusal.get());
            return;
        }
        desk.runner().<Boolean>run(progress -> printing.print(paper, sheets, picture), outcome -> {
            if (outcome instanceof Outcome.Failed<Boolean> failed) {
                news.failed(failed.fault(), Texts.say("Not printed"));
            } else if (outcome instanceof Outcome.Done<Boolean> done && done.value()) {
                printed.run();
            } else {
                news.failed(LabelWords.NOT_PRINTED);
            }
        });
    }
}
