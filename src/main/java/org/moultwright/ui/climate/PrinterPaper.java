package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.settings.Theme;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.control.SaveChooser;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.print.PagePrinter;
import org.moultwright.ui.print.Pixels;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PicturePages;

/** A trace on paper. It is printed in light colours, on its side. */
public final class PrinterPaper implements TracePaper {
    private static final double WIDTH = 1500;
    private static final double HEIGHT = 900;

    private final PagePrinter printer;
    private final PicturePages pages;
    private final SaveChooser chooser;

    /**
     * @param printer prints a picture
     * @param pages saves a picture as PDF
     * @param chooser asks where
     */
    public PrinterPaper(PagePrinter printer, PicturePages pages, SaveChooser chooser) {
        this.printer = printer;
        this.pages = pages;
        this.chooser = chooser;
    }

    @Override
    public Optional<Supplier<String>> toSave(String title, Trace trace, Instant madeAt) {
        return chooser.choose("climate.pdf").map(pdf -> {
            PagePicture picture = Pixels.of(page(title, trace).snapshot(null));
            return () -> {
                pages.save(picture, title, madeAt, pdf);
                return Texts.say("Saved as {0}.", pdf);
            };
        });
    }

    @Override
    public String print(String title, Trace trace) {
        return printer.print(title, () -> page(title, trace).snapshot(null)).sentence();
    }

    /** What is put on paper. */
    static Scene page(String title, Trace trace) {
        TraceChart chart = new TraceChart(new SimpleObjectProperty<>(new Palette(Theme.LIGHT)));
        chart.traceProperty().set(Optional.of(trace));
        VBox.setVgrow(chart, Priority.ALWAYS);
        VBox page = new VBox(Words.cardTitle(title), chart);
        page.getStyleClass().add("card");
        Scene scene = new Scene(page, WIDTH, HEIGHT);
        new Appearance().dress(scene.getStylesheets());
        return scene;
    }
}
