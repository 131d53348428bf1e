package org.moultwright.ui.shelf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Standing;

/** A container in which nothing else stands: its code, who lives in it, and the air where it has its own. */
final class ContainerCard extends VBox {
    static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

    ContainerCard(Standing standing, Vocabulary names, boolean isCurrent) {
        getStyleClass().addAll("card", "shelf-card");
        pseudoClassStateChanged(CURRENT, isCurrent);
        Flow head = new Flow(
                Words.strong(standing.code()),
                Words.caption(standing.occupants().isEmpty() ? standing.kind().word() : ShelfWords.broods(standing)),
                gap(),
                Words.strong(standing.alive() == 0 ? "" : Integer.toString(standing.alive())));
        head.getStyleClass().add("shelf-line");
        getChildren().add(head);
        if (standing.alive() > 0) {
            getChildren().add(new StageStrip(byStage(standing)));
        }
        getChildren().add(foot(standing, names));
    }

    private static Label foot(Standing standing, Vocabulary names) {
        if (standing.alive() > 0) {
            String stages = ShelfWords.stages(byStage(standing), names);
            return Words.styled(stages.isEmpty() ? Texts.say("not yet counted by stage") : stages, "small");
        }
        Optional<Standing.Air> own =
                standing.air().filter(air -> air.container().equals(standing.code()));
        return Words.caption(own.map(air -> Texts.say("no animals · {0}", ShelfWords.temperature(air)))
                .orElse(Texts.say("no animals")));
    }

    private static Map<Stage, Integer> byStage(Standing standing) {
        Map<Stage, Integer> all = new HashMap<>();
        standing.occupants()
                .forEach(one -> one.byStage().forEach((stage, count) -> all.merge(stage, count, Integer::sum)));
        return all;
    }

    static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }
}
