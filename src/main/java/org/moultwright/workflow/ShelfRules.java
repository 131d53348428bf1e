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
import org.moultwright.language.Texts;

/** What may stand where: each rule answers with the sentence that says why not, or with nothing. */
public final class ShelfRules {
    private static final int LONGEST_CODE = 40;

    private ShelfRules() {}

    /** Why a new container cannot have this code. */
    public static Optional<String> againstCode(ShelfAt shelf, String code) {
        if (code.isBlank()) {
            return Optional.of(Texts.say("Give it a code, such as box 3 or A4."));
        }
        if (code.length() > LONGEST_CODE || !code.equals(code.strip())) {
            return Optional.of(Texts.say("A code has at most {0} characters. Choose a shorter one.", LONGEST_CODE));
        }
        if (!Account.fromCode(code).isTray()) {
            return Optional.of(Texts.say("'{0}' names something else in the ledger. Choose another code.", code));
        }
        return shelf.find(code).map(there -> Texts.say("{0} is on the shelf already. Choose another code.", code));
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
            return Optional.of(Texts.say("There is no '{0}' on the shelf. Choose another place.", around));
        }
        if (around.equals(code)) {
            return Optional.of(Texts.say("{0} cannot stand inside itself. Choose another place.", code));
        }
        if (kind == ContainerKind.ROOM) {
            return Optional.of(Texts.say("A room stands in nothing. Choose nothing as its place."));
        }
        if (place.get().kind().holdsBrood()) {
            return Optional.of(Texts.say(
                    "{0} is a {1}; nothing stands inside one. Choose a box, an incubator, a rack or a room.",
                    around, place.get().kind().word()));
        }
        boolean isCircle = shelf.find(code)
                .filter(moved -> moved.contents().stream().anyMatch(inner -> holds(inner, around)))
                .isPresent();
        return isCircle
                ? Optional.of(Texts.say(
                        "{0} stands inside {1}, so {1} cannot go into it. Move {0} out first, or choose another place.",
                        around, code))
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
                .map(instant -> Texts.say(
                        "{0} would come to stand inside itself, as things were moved later. Choose a later time.",
                        move.container()));
    }

    /** Why a container cannot be put away: it has to be empty, of animals, of a sac and of other containers. */
    public static Optional<String> againstPuttingAway(Standing standing) {
        if (standing.alive() > 0) {
            return Optional.of(Texts.say(
                    "{0} still holds {1}. Move or pot them first.", standing.code(), animals(standing.alive())));
        }
        if (standing.holdsSac()) {
            return Optional.of(Texts.say(
                    "{0} holds a sac that is not opened yet. Open the sac first, on the page of its brood.",
                    standing.code()));
        }
        if (!standing.contents().isEmpty()) {
            String codes = standing.contents().stream().map(Standing::code).collect(Collectors.joining(", "));
            return Optional.of(Texts.say("{0} still holds {1}. Move what is in it first.", standing.code(), codes));
        }
        return Optional.empty();
    }

    static String animals(int count) {
        return Texts.count(count, "1 animal", "{0} animals", count);
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
