package org.moultwright.ui.control;

import javafx.beans.InvalidationListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * On a large display a page's own content may be set larger. Style sheets know a part whose page has that room as
 * {@code :roomy}; the page's text stays as it is, so that its size says the same before and after.
 */
public final class Roomy {
    private static final PseudoClass ROOMY = PseudoClass.getPseudoClass("roomy");

    private Roomy() {}

    /** Marks a part of a page while the page is at least so large, in sizes of its text. */
    public static void mark(Pane page, Node part, double widthEms, double heightEms) {
        Em em = new Em();
        page.getChildren().add(em);
        InvalidationListener measure = changed -> part.pseudoClassStateChanged(
                ROOMY, page.getWidth() >= widthEms * em.pixels() && page.getHeight() >= heightEms * em.pixels());
        page.widthProperty().addListener(measure);
        page.heightProperty().addListener(measure);
        em.fontProperty().addListener(measure);
    }
}
