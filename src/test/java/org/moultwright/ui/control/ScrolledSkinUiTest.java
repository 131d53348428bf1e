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
    private final PageHost page = new PageHost();
    private final Scrolled fields = new Scrolled(new Label("fields"));

    @Start
    void start(Stage window) {
        page.setContent(new Label("a page"));
        window.setScene(new Scene(new VBox(page, fields), 300, 200));
        window.show();
    }

    @Test
    void onlyWhatChangedIsPainted() {
        for (ScrollPane pane : List.of(page, fields)) {
            assertThat(pane.lookupAll(".viewport")).isNotEmpty().noneMatch(Node::isCache);
        }
    }
}
