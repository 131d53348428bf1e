package org.moultwright.ui.broods;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.workflow.OpenSac.Aside;

/** What was in a sac, sorted and counted: the good ones by stage, and what was put aside. */
final class SacContents {
    /** What a sac may hold when it is opened; nobody opens one of slings. */
    static final List<Stage> STAGES = List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1);

    private final Map<Stage, FormField> good = new EnumMap<>(Stage.class);
    private final Map<Aside, FormField> aside = new LinkedHashMap<>();
    private final FormField inAll;
    private int gone;

    SacContents(SacForm form) {
        STAGES.forEach(stage -> good.put(
                stage,
                form.field(
                        "good-" + stage.key(),
                        Texts.say("good, {0}", form.desk().vocabulary().get().label(stage)))));
        aside.put(Aside.INFERTILE, form.field("infertile", Texts.say("infertile")));
        aside.put(Aside.FUSED, form.field("fused", Texts.say("fused")));
        aside.put(Aside.MOULDY, form.field("mouldy", Texts.say("mouldy")));
        this.inAll = form.field("in-all", Texts.say("counted in all, if you did"));
    }

    /** The good ones by stage, as counted. */
    Map<Stage, FormField> good() {
        return good;
    }

    Map<Aside, FormField> aside() {
        return aside;
    }

    /** Everything in the sac counted at one go; empty where nobody did. */
    FormField inAll() {
        return inAll;
    }

    /** The good ones by stage, those of no stage left out. */
    Map<Stage, Integer> counted() {
        Map<Stage, Integer> counted = new EnumMap<>(Stage.class);
        good.forEach((stage, field) -> {
            if (field.count() > 0) {
                counted.put(stage, field.count());
            }
        });
        return counted;
    }

    Map<Aside, Integer> putAside() {
        Map<Aside, Integer> put = new EnumMap<>(Aside.class);
        aside.forEach((what, field) -> put.put(what, field.count()));
        put.put(Aside.GONE, gone);
        return put;
    }

    /** How many of what was counted in all are gone: the keeper says so. */
    void setGone(int animals) {
        gone = animals;
    }

    /** How many more were counted in all than sorted; nothing where that was not counted, or agrees. */
    OptionalInt notSorted(int goodOnes) {
        int sorted = goodOnes + asides();
        return inAll.isEmpty() || inAll.count() == sorted
                ? OptionalInt.empty()
                : OptionalInt.of(inAll.count() - sorted);
    }

    int asides() {
        return putAside().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** "120 in the sac = 112 good + 5 infertile + 2 fused + 1 mouldy". */
    String sum(int goodOnes, boolean isEstimate) {
        Object[] places = {
            goodOnes + asides(), goodOnes, count(Aside.INFERTILE), count(Aside.FUSED), count(Aside.MOULDY), gone
        };
        if (isEstimate) {
            return gone == 0
                    ? Texts.say(
                            "about {0} in the sac = about {1} good + {2} infertile + {3} fused + {4} mouldy", places)
                    : Texts.say(
                            "about {0} in the sac = about {1} good + {2} infertile + {3} fused + {4} mouldy + {5} gone",
                            places);
        }
        return gone == 0
                ? Texts.say("{0} in the sac = {1} good + {2} infertile + {3} fused + {4} mouldy", places)
                : Texts.say("{0} in the sac = {1} good + {2} infertile + {3} fused + {4} mouldy + {5} gone", places);
    }

    private int count(Aside what) {
        return putAside().getOrDefault(what, 0);
    }
}
