package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stay;

/** What may stand where: each rule answers with the sentence that says why not, or with nothing. */
public final class ShelfRules {
    private static final int LONGEST_CODE = 40;

    private ShelfRules() {}

    /** Why a new container cannot have this code. */
    public static Optional<String> againstCode(ShelfAt shelf, String code) {
        if (code.isBlank()) {
            return Optional.of("Give it a code, such as box 3 or A4.");
        }
        if (code.length() > LONGEST_CODE || !code.equals(code.strip())) {
            return Optional.of("A code has at most " + LONGEST_CODE + " characters.");
        }
        if (!Account.fromCode(code).isTray()) {
            return Optional.of("'" + code + "' names something else in the ledger. Choose another code.");
        }
        return shelf.find(code).map(there -> "There is a " + code + " on the shelf already. Choose another code.");
    }

    /**
     * Why a container cannot stand there.
     *
     * @param shelf the shelf at the instant of the move
     * @param inside the container around it, empty for none
     */
    public static Optional<String> againstPlace(
            ShelfAt shelf, String code, ContainerKind kind, Optional<String> inside) {
        if (inside.isEmpty()) {
            return Optional.empty();
        }
        String around = inside.get();
        Optional<Standing> place = shelf.find(around);
        if (place.isEmpty()) {
            return Optional.of("There is no '" + around + "' on the shelf then. Choose one from the list.");
        }
        if (around.equals(code)) {
            return Optional.of(code + " cannot stand inside itself.");
        }
        if (kind == ContainerKind.ROOM) {
            return Optional.of("A room stands in nothing.");
        }
        if (place.get().kind().holdsBrood()) {
            return Optional.of(around + " is a " + place.get().kind().key()
                    + "; nothing stands inside one. Choose a box," + " an incubator, a rack or a room.");
        }
        boolean isCircle = shelf.find(code)
                .filter(moved -> moved.contents().stream().anyMatch(inner -> holds(inner, around)))
                .isPresent();
        return isCircle
                ? Optional.of(around + " stands inside " + code + ", so " + code + " cannot go into it.")
                : Optional.empty();
    }

    /** Why a move would leave a container standing inside itself at some later time. */
    static Optional<String> againstLaterCircle(Shelf shelf, ContainerMove move) {
        Shelf moved = shelf.with(List.of(move));
        return Stream.concat(
                        Stream.of(move.at()),
                        moved.stays().stream().map(stay -> stay.span().from()))
                .filter(instant -> !instant.isBefore(move.at()))
                .filter(instant -> isInCircle(moved, move.container(), instant))
                .findFirst()
                .map(instant -> move.container() + " would come to stand inside itself, as things were moved later."
                        + " Choose a later time.");
    }

    /** Why a container cannot be put away: it has to be empty. */
    public static Optional<String> againstPuttingAway(Standing standing) {
        if (standing.alive() > 0) {
            return Optional.of(
                    "%s still holds %s. Move or pot them first.".formatted(standing.code(), animals(standing.alive())));
        }
        if (!standing.contents().isEmpty()) {
            String codes = standing.contents().stream().map(Standing::code).collect(Collectors.joining(", "));
            return Optional.of("%s still holds %s. Move what is in it first.".formatted(standing.code(), codes));
        }
        return Optional.empty();
    }

    static String animals(int count) {
        return count == 1 ? "1 animal" : count + " animals";
    }

    private static boolean holds(Standing standing, String code) {
        return standing.code().equals(code) || standing.contents().stream().anyMatch(inner -> holds(inner, code));
    }

    private static boolean isInCircle(Shelf shelf, String container, Instant instant) {
        List<String> path = shelf.pathOf(container, instant);
        return shelf.stayOf(path.get(path.size() - 1), instant)
                .flatMap(Stay::inside)
                .filter(path::contains)
                .isPresent();
    }
}
