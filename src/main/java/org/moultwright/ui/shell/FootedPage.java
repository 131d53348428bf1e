package org.moultwright.ui.shell;

import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.ScrolledSkin;

/**
 * A page that scrolls where it is higher than its room, and a foot beneath it that stays in sight. Where the foot would
 * leave too little of the page to type in, it is the page's end and scrolls with it.
 */
public final class FootedPage extends VBox {
    /** A field, and what it says of an entry it does not take. */
    private static final double LEAST_PAGE_EMS = 8;

    /** What its end looks like while the foot is beneath it. */
    private static final PseudoClass FOOTED = PseudoClass.getPseudoClass("footed");

    private final VBox scrolled;
    private final Region foot;
    private final Em em = new Em();

    public FootedPage(Region page, Region foot) {
        this.scrolled = new VBox(page);
        this.foot = foot;
        PageHost host = new PageHost();
        foot.managedProperty().subscribe(isThere -> page.pseudoClassStateChanged(FOOTED, isThere));
        setVgrow(page, Priority.ALWAYS);
        host.setContent(scrolled);
        // Given one on screen instead, the first field could not have the keyboard from the first frame on.
        host.setSkin(new ScrolledSkin(host));
        setVgrow(host, Priority.ALWAYS);
        getChildren().addAll(host, foot, em);
    }

    /** The place is changed between frames: what changes it while all is laid out is painted once without its style. */
    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        if (foot.getParent() != place()) {
            Platform.runLater(this::put);
        }
    }

    private Pane place() {
        boolean isRoomy = getHeight() - foot.prefHeight(getWidth()) >= LEAST_PAGE_EMS * em.pixels();
        return isRoomy ? this : scrolled;
    }

    private void put() {
        Pane place = place();
        if (foot.getParent() != place) {
            Node focused = getScene() == null ? null : getScene().getFocusOwner();
            ((Pane) foot.getParent()).getChildren().remove(foot);
            place.getChildren().add(foot);
            // What is taken out of its place loses the keyboard.
            if (focused != null && focused.getScene() == getScene()) {
                focused.requestFocus();
            }
        }
    }
}
