package org.moultwright.ui.climate;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Scene;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.moultwright.settings.Theme;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;

/** The machine's own printers and its own dialogue to choose one. A trace is printed in light colours, on its side. */
public final class PrinterPaper implements TracePaper {
    private static final double WIDTH = 1500;
    private static final double HEIGHT = 900;

    private final Supplier<Window> owner;

    public PrinterPaper(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public String print(String title, Trace trace) {
        Optional<PrinterJob> job = Printer.getAllPrinters().isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(PrinterJob.createPrinterJob());
        if (job.isEmpty()) {
            return "This machine has no printer. Copy the picture instead.";
        }
        job.get().getJobSettings().setJobName(title);
        if (!job.get().showPrintDialog(owner.get())) {
            job.get().cancelJob();
            return "";
        }
        PageLayout layout = job.get()
                .getPrinter()
                .createPageLayout(Paper.A4, PageOrientation.LANDSCAPE, Printer.MarginType.DEFAULT);
        ImageView picture = new ImageView(page(title, trace).snapshot(null));
        picture.setPreserveRatio(true);
        picture.setFitWidth(layout.getPrintableWidth());
        picture.setFitHeight(layout.getPrintableHeight());
        return job.get().printPage(layout, picture) && job.get().endJob()
                ? "Printed."
                : "The printer refused. Look at its own messages, then print again.";
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
