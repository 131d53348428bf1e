package org.moultwright.ui.label;

import org.moultwright.task.Runner;
import org.moultwright.workflow.LabelPrinter;

/**
 * All that labels are made with.
 *
 * @param printer draws them
 * @param pdfChooser asks where a PDF goes
 * @param sheetPrinter puts them on paper
 * @param stack the sheets they went on last
 * @param runner runs all of this aside
 */
public record LabelDesk(
        LabelPrinter printer, PdfChooser pdfChooser, SheetPrinter sheetPrinter, StackChoice stack, Runner runner) {}
