package org.moultwright.ui.broods;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Stage;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.UnopenedSac;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.FormDraft;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.OpenSac.Aside;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RoomView;

/** The forms about a sac beside the invented broods, for tests that look at every view. */
public final class SacPictures {
    private SacPictures() {}

    /** A new sac, half written. */
    public static Parent begin() {
        return shown(model -> {
            model.forms().begin();
            BeginForm form = (BeginForm) model.forms().openProperty().get().orElseThrow();
            form.code().set("GP-26-B");
            form.laid().set("2 apr");
            form.laidTo().set("3.4.");
            form.whereProperty().set(BeginForm.Where.TAKEN);
        });
    }

    /** A new sac of which too little and something wrong is written. */
    public static Parent beginRefused() {
        return shown(model -> {
            model.forms().begin();
            BeginForm form = (BeginForm) model.forms().openProperty().get().orElseThrow();
            form.code().set("CC-26-A");
            form.laid().set("31.2.");
            form.inside().set("nowhere");
            form.keep();
        });
    }

    public static Parent pull() {
        return shown(model -> model.forms().pull());
    }

    /** A sac sorted and spread over three trays. */
    public static Parent opening() {
        return shown(model -> opening(model, "3"));
    }

    /** One whose count in all does not agree. */
    public static Parent question() {
        return shown(model -> {
            OpeningForm form = opening(model, "2");
            form.contents().inAll().set("122");
            form.keep();
        });
    }

    /** One weighed. */
    public static Parent weighed() {
        return shown(model -> {
            OpeningForm form = weighing(model);
            List<WeighedSamples.Sample> samples = form.weighing().samples();
            weigh(samples.get(0), "40", "0.52");
            weigh(samples.get(1), "38", "0.47");
            weigh(samples.get(2), "41", "0.54");
            form.weighing().whole().set("6.1");
            form.shares().number().set("6");
        });
    }

    /** One weighed, of which less is in the whole than in its samples, and one sample not weighed. */
    public static Parent weighedTooLittle() {
        return shown(model -> {
            OpeningForm form = weighing(model);
            List<WeighedSamples.Sample> samples = form.weighing().samples();
            weigh(samples.get(0), "40", "0.52");
            form.weighing().whole().set("0.4");
            form.keep();
            weigh(samples.get(1), "38", "");
            form.keep();
        });
    }

    /** The broods with a form begun and not saved. */
    public static Parent interrupted() {
        BroodsViewModel model =
                model(List.of(new FormDraft(OpeningForm.FORM, UnopenedSac.CODE, Map.of("infertile", "4"))));
        return new BroodsView(model, new Appearance().paletteProperty());
    }

    /** A brood looked at closely, another beside it. */
    public static Parent close() {
        return shown(model -> {
            model.chosenProperty().set(model.lines().stream().findFirst());
            model.look();
            model.closelyProperty().get().orElseThrow().beside().toggle("CC-26-B");
        });
    }

    /** A sac nobody has opened, looked at closely. */
    public static Parent closeSac() {
        return shown(BroodsViewModel::look);
    }

    private static OpeningForm weighing(BroodsViewModel model) {
        model.forms().openUp();
        OpeningForm form = (OpeningForm) model.forms().openProperty().get().orElseThrow();
        form.weighing().onProperty().set(true);
        return form;
    }

    static void weigh(WeighedSamples.Sample sample, String animals, String grams) {
        sample.count().set(animals);
        sample.grams().set(grams);
    }

    static OpeningForm opening(BroodsViewModel model, String trays) {
        model.forms().openUp();
        OpeningForm form = (OpeningForm) model.forms().openProperty().get().orElseThrow();
        form.contents().good().get(Stage.EGG).set("4");
        form.contents().good().get(Stage.POSTEMBRYO).set("108");
        form.contents().aside().get(Aside.INFERTILE).set("5");
        form.contents().aside().get(Aside.FUSED).set("2");
        form.contents().aside().get(Aside.MOULDY).set("1");
        form.shares().number().set(trays);
        return form;
    }

    private static Parent shown(Consumer<BroodsViewModel> opened) {
        BroodsViewModel model = model(List.of());
        BroodsView view = new BroodsView(model, new Appearance().paletteProperty());
        opened.accept(model);
        return view;
    }

    static BroodsViewModel model(List<FormDraft> begun) {
        MemoryBroodBook book = new MemoryBroodBook();
        RoomView room = UnopenedSac.room();
        room.broods().forEach(brood -> {
            BroodRecord record = brood.record();
            book.takeIn(record, ReadingSource.of(record.withReadings(Map.<String, ReadingSeries>of())));
        });
        BroodsViewModel model = new BroodsViewModel(new BroodsDesk(
                new SimpleObjectProperty<>(room),
                () -> {},
                new WaysIn(
                        InventedWays.sacs(book, begun, new ArrayList<>()),
                        Optional::empty,
                        (folder, progress) -> {
                            throw new AssertionError("no folder was chosen");
                        },
                        new InlineRunner(),
                        Optional.empty()),
                InventedBeliefs.in(book),
                InventedWays.NO_PAPER,
                new InlineRunner(),
                InstantSource.fixed(RoomFixture.NOW),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE))));
        model.chosenProperty()
                .set(model.lines().stream()
                        .filter(line -> line.code().equals(UnopenedSac.CODE))
                        .findFirst());
        return model;
    }
}
