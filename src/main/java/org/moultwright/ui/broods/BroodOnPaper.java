package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.image.Image;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.print.Pixels;
import org.moultwright.ui.print.Printout;

/**
 * A brood's page printed, or saved as a file.
 *
 * @param code the brood's
 * @param news is told what came of it; nothing if that is nothing any more
 * @param problem is told what did not go, and what to do; nothing if all went
 */
record BroodOnPaper(BroodsDesk desk, String code, Consumer<String> news, Consumer<String> problem) {
    void print(Supplier<Image> page) {
        Printout printout = desk.paper().printer().print(code, page);
        tell(printout.isRefused() ? "" : printout.sentence(), printout.isRefused() ? printout.sentence() : "");
    }

    void save(Supplier<Image> page) {
        desk.paper().chooser().choose(code + ".pdf").ifPresent(pdf -> save(page.get(), pdf));
    }

    private void save(Image page, Path pdf) {
        desk.runner()
                .<Path>run(
                        progress -> {
                            desk.paper()
                                    .pages()
                                    .save(Pixels.of(page), code, desk.clock().instant(), pdf);
                            return pdf;
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<Path> done) {
                                tell(Texts.say("Saved as {0}.", done.value()), "");
                            } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                tell("", String.valueOf(failed.fault().getMessage()));
                            }
                        });
    }

    private void tell(String done, String refused) {
        news.accept(done);
        problem.accept(refused);
    }
}
