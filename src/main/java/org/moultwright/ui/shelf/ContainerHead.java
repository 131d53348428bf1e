package org.moultwright.ui.shelf;

import java.time.Instant;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.Standing;

/** The head of a container in which others stand: its code and kind, its air, and how many live inside. */
final class ContainerHead extends Flow {
    ContainerHead(Standing standing, Instant at, boolean isCurrent) {
        getStyleClass().addAll("shelf-head", "shelf-line");
        pseudoClassStateChanged(ContainerCard.CURRENT, isCurrent);
        getChildren().add(Words.cardTitle(standing.code()));
        if (!standing.kind().key().equals(standing.code())) {
            getChildren().add(Words.caption(standing.kind().word()));
        }
        standing.air().ifPresent(air -> {
            getChildren().add(Words.strong(ShelfWords.temperature(air)));
            if (!ShelfWords.humidity(air).isEmpty()) {
                getChildren().add(Words.muted(ShelfWords.humidity(air)));
            }
            getChildren().add(Words.caption(ShelfWords.source(standing, air, at)));
        });
        getChildren().addAll(ContainerCard.gap(), Words.muted(ShelfWords.within(standing)));
    }
}
