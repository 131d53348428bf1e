package org.moultwright.ui.broods;

import org.moultwright.ui.control.SaveChooser;
import org.moultwright.ui.print.PagePrinter;
import org.moultwright.workflow.PicturePages;

/**
 * How a brood's page comes on paper.
 *
 * @param printer prints it
 * @param pages saves it as PDF
 * @param chooser asks where
 */
public record BroodPaper(PagePrinter printer, PicturePages pages, SaveChooser chooser) {}
