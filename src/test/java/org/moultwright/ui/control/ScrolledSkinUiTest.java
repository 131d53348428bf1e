package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.shell.PageHost;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Of what stands in a scroll pane no picture is kept, which would be painted anew, all of it, at each letter typed. */
@ExtendWith(ApplicationExtension.class)
class ScrolledSkinUiTest {
    private List<ScrollPane> panes = List.of();

    @Start
    void start(Stage window) {
        PageHost page = new PageHost();
        page.setContent(new Label("a page"));
        panes = List.of(page, new Scrolled(new Label("fields")));
        window.setScene(new Scene(new VBox(panes.toArray(Node[]::new)), 300, 200));
        window.show();
    }

    @Test
    void onlyWhatChangedIsPainted() {
        assertThat(panes).isNotEmpty();
        for (ScrollPane pane : panes) {
            assertThat(pane.lookupAll(".viewport")).isNotEmpty().noneMatch(Node::isCache);
        }
    }
}
