package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.OpenDesk;
import org.moultwright.settings.Theme;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.broods.SacPictures;
import org.moultwright.ui.broods.TimingPictures;
import org.moultwright.ui.forecast.AccuracyPictures;
import org.moultwright.ui.forecast.OrdersPictures;
import org.moultwright.ui.intake.IntakePictures;
import org.moultwright.ui.register.RegisterPictures;
import org.moultwright.ui.round.RoundPictures;
import org.moultwright.ui.shell.PageHost;
import org.moultwright.ui.shell.ShellView;
import org.moultwright.ui.takealong.TakeAlongPictures;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Contrast;

/** What holds of every screen in every room, in both themes. A view in a state of its own is one more line. */
@ExtendWith({OneWindow.class, StyleFaults.class})
class EveryViewTest {
    /** WCAG 2.1, success criterion 1.4.3. */
    private static final double ENOUGH_FOR_TEXT = 4.5;

    static final List<String> SCREENS =
            List.of("round", "broods", "shelf", "climate", "forecast", "potting", "register", "settings");

    /** Pages that a button of a screen leads to: the screen, and the button's words. */
    static final List<Page> PAGES = List.of(
            new Page("broods", "New sac"),
            new Page("broods", "Look closely"),
            new Page("shelf", "Labels"),
            new Page("climate", "Calibrate"),
            new Page("climate", "Read a display off"),
            new Page("climate", "Connect a probe"),
            new Page("climate", "How cold is the wall?"),
            new Page("forecast", "What to order"),
            new Page("forecast", "In words"),
            new Page("forecast", "Take along"));

    private static final Map<DeskRoom, OpenDesk> DESKS = new EnumMap<>(DeskRoom.class);

    @TempDir
    private static Path folder;

    @AfterAll
    static void close() {
        DESKS.values().forEach(OpenDesk::close);
        DESKS.clear();
    }

    static Stream<View> views() {
        return views(folder);
    }

    /** Every view; the rooms' stores are made in {@code stores}. */
    static Stream<View> views(Path stores) {
        return Stream.concat(
                Stream.of(
                        alone("round, counting", RoundPictures::counting),
                        alone("round, mould and dead", RoundPictures::mouldAndDead),
                        alone("round, a question", RoundPictures::unbalanced),
                        alone("round, asking why", RoundPictures::asking),
                        alone("round, a sheet outdated and one astray", RoundPictures::interrupted),
                        alone("round, a count far off", RoundPictures::farOff),
                        alone("round, photos", RoundPictures::photos),
                        alone("round, a photo large", RoundPictures::photoLarge),
                        alone("forecast, take along", TakeAlongPictures::planned),
                        alone("forecast, take along refused", TakeAlongPictures::refused),
                        alone("forecast, nothing to take along", TakeAlongPictures::empty),
                        alone("the desk in a sitter's hands", TakeAlongPictures::sitting),
                        alone("the desk in a sitter's hands, nothing there", TakeAlongPictures::sittingInAnEmptyRoom),
                        alone("forecast, what to order", OrdersPictures::demo),
                        alone("broods, a brood's timing", TimingPictures::timing),
                        alone("broods, a new sac", SacPictures::begin),
                        alone("broods, a new sac refused", SacPictures::beginRefused),
                        alone("broods, a sac taken from its mother", SacPictures::pull),
                        alone("broods, a sac opened", SacPictures::opening),
                        alone("broods, an opening that does not add up", SacPictures::question),
                        alone("broods, a clutch weighed", SacPictures::weighed),
                        alone("broods, a form begun", SacPictures::interrupted),
                        alone("broods, one looked at closely", SacPictures::close),
                        alone("broods, a sac looked at closely", SacPictures::closeSac),
                        alone("forecast, how good the dates were", AccuracyPictures::accuracy),
                        alone("register, some selected", RegisterPictures::selected),
                        alone("register, a code misread", RegisterPictures::misread),
                        alone("register, a hand-over slip", RegisterPictures::slip),
                        alone("register, labels again", RegisterPictures::labels),
                        alone("register, labels refused", RegisterPictures::labelsRefused),
                        alone("climate, a reading typed", IntakePictures::reading),
                        alone("climate, a lowest and highest", IntakePictures::extremes),
                        alone("climate, a file of readings", IntakePictures::file),
                        alone("climate, a file taken in", IntakePictures::taken),
                        alone("round, an alarm", () -> RoundPictures.under(new InventedWatch().tooWarm(true).model))),
                Stream.concat(
                        Stream.of(DeskRoom.values())
                                .flatMap(room -> SCREENS.stream().map(screen -> ofDesk(stores, room, screen))),
                        PAGES.stream().map(page -> ofDesk(stores, DeskRoom.DEMO, page))));
    }

    /** The largest rooms hold no other controls than the demo does. */
    static Stream<View> viewsOfSmallRooms(Path stores) {
        return views(stores)
                .filter(view ->
                        !view.name().contains("six-hundred") && !view.name().contains("five-thousand"));
    }

    private static View alone(String name, Supplier<Parent> content) {
        return new View(name, () -> new Worn(hosted(content.get()), new Appearance()));
    }

    /** A page stands as it does in the frame, whose part it is. */
    private static Parent hosted(Parent page) {
        if (page instanceof ShellView) {
            return page;
        }
        PageHost host = new PageHost();
        host.setContent(page);
        return host;
    }

    private static View ofDesk(Path stores, DeskRoom room, String screen) {
        return new View(screen + ", " + room.key(), () -> {
            OpenDesk desk = offStage(stores, room);
            return new Worn(desk.show(screen), desk.appearance());
        });
    }

    private static View ofDesk(Path stores, DeskRoom room, Page page) {
        return new View(page.screen() + ", " + room.key() + ", " + page.button(), () -> {
            OpenDesk desk = offStage(stores, room);
            return new Worn(desk.show(page.screen(), page.button()), desk.appearance());
        });
    }

    /**
     * A room's desk in no scene at all. The toolkit forgets the styles of a scene once its window shows another, and
     * what is opened in such a scene finds no colour.
     */
    private static OpenDesk offStage(Path stores, DeskRoom room) {
        OpenDesk desk = DESKS.computeIfAbsent(room, closed -> closed.open(stores));
        ToolkitThread.ask(() -> Worn.leave(desk.view()));
        return desk;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void everyControlTheKeyboardReachesHasAName(View view, Stage window) {
        Scene scene = shown(view, Theme.LIGHT, window);
        ToolkitThread.run(() -> assertThat(focusable(scene.getRoot()))
                .allSatisfy(
                        node -> assertThat(nameOf(node)).as("name of %s", node).isNotBlank()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void tabReachesEverythingOnceAndReadsDownThePage(View view, Stage window) {
        Scene scene = shown(view, Theme.LIGHT, window);
        ToolkitThread.run(() -> {
            List<Node> stops = stopsFromTheFirst(scene);
            assertThat(stops).containsExactlyInAnyOrderElementsOf(FocusWalk.expected(scene.getRoot()));
            for (int i = 1; i < stops.size(); i++) {
                assertThat(FocusWalk.goesBack(stops.get(i - 1), stops.get(i)))
                        .as("Tab leads back up from %s to %s", stops.get(i - 1), stops.get(i))
                        .isFalse();
            }
        });
    }

    private static List<Node> stopsFromTheFirst(Scene scene) {
        FocusWalk.expected(scene.getRoot()).get(0).requestFocus();
        return FocusWalk.stops(scene);
    }

    /** Else Tab leads from the last field out of the form, and what is typed is kept by whoever goes back for it. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void aFormIsKeptByAButtonAfterItsFields(View view, Stage window) {
        Scene scene = shown(view, Theme.LIGHT, window);
        ToolkitThread.run(() -> {
            List<Node> onPage = stopsFromTheFirst(scene).stream()
                    .filter(stop -> isWithin(stop, "page"))
                    .toList();
            List<Node> atTheHead = onPage.stream()
                    .filter(stop -> stop.getStyleClass().contains("primary") && isWithin(stop, "page-header"))
                    .toList();
            if (onPage.stream().anyMatch(TextInputControl.class::isInstance)) {
                assertThat(atTheHead).as("buttons before the fields").isEmpty();
            }
        });
    }

    private static boolean isWithin(Node node, String style) {
        return Stream.iterate(node, Objects::nonNull, Node::getParent)
                .anyMatch(around -> around.getStyleClass().contains(style));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void everyWordStandsOutFromItsGround(View view, Stage window) {
        for (Theme theme : Theme.values()) {
            Scene scene = shown(view, theme, window);
            ToolkitThread.run(() -> assertThat(nodes(scene.getRoot()))
                    .filteredOn(node -> node instanceof Text text && isSeen(text))
                    .isNotEmpty()
                    .allSatisfy(node -> standsOut((Text) node, theme)));
        }
    }

    private static void standsOut(Text text, Theme theme) {
        assertThat(Contrast.between((Color) text.getFill(), ground(text)))
                .as("'%s' in %s", text.getText(), theme)
                .isGreaterThanOrEqualTo(ENOUGH_FOR_TEXT);
    }

    private Scene shown(View view, Theme theme, Stage window) {
        Worn worn = view.content().get();
        ToolkitThread.run(() -> {
            worn.appearance().themeProperty().set(theme);
            Scene scene = worn.scene(1280, 800);
            window.setScene(scene);
            window.show();
        });
        OneWindow.settle(window.getScene());
        return window.getScene();
    }

    private static String nameOf(Node node) {
        if (node.getAccessibleText() != null) {
            return node.getAccessibleText();
        }
        return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    private static List<Node> nodes(Parent root) {
        List<Node> all = new ArrayList<>(List.of(root));
        root.getChildrenUnmodifiable().forEach(child -> {
            if (child instanceof Parent parent) {
                all.addAll(nodes(parent));
            } else {
                all.add(child);
            }
        });
        return all;
    }

    private static List<Node> focusable(Parent root) {
        return nodes(root).stream().filter(Node::isFocusTraversable).toList();
    }

    private static boolean isSeen(Text text) {
        for (Node node = text; node != null; node = node.getParent()) {
            if (!node.isVisible() || node.getOpacity() == 0) {
                return false;
            }
        }
        return !text.getText().isBlank();
    }

    /** The uppermost opaque fill behind a node. */
    private static Color ground(Node node) {
        for (Node behind = node.getParent(); behind != null; behind = behind.getParent()) {
            Background background = behind instanceof Region region ? region.getBackground() : null;
            if (background != null && !background.getFills().isEmpty()) {
                List<BackgroundFill> fills = background.getFills();
                if (fills.get(fills.size() - 1).getFill() instanceof Color colour && colour.isOpaque()) {
                    return colour;
                }
            }
        }
        throw new AssertionError("nothing opaque lies behind " + node);
    }

    /** A page that a button leads to. */
    record Page(String screen, String button) {
        /** Whether a room has it: the demo has all, a brood needs one. */
        boolean isIn(DeskRoom room) {
            boolean isOfBroods = screen.equals("broods") && (room == DeskRoom.SIX_HUNDRED || button.equals("New sac"));
            return room == DeskRoom.DEMO || isOfBroods;
        }

        /** As part of a file's name. */
        String key() {
            return screen + "-" + button.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
        }
    }

    /** A view with its look. */
    record Worn(Parent content, Appearance appearance) {
        /** A scene of its own for the content, whichever it stood in before. */
        Scene scene(double width, double height) {
            Scene scene = new Scene(leave(content), width, height);
            appearance.dress(scene.getStylesheets());
            return scene;
        }

        /** Takes content out of the scene whose root it is, if it is one. */
        private static Parent leave(Parent content) {
            Scene before = content.getScene();
            if (before != null) {
                before.setRoot(new Group());
            }
            return content;
        }
    }

    /** A view by name; its content is asked for on the test's thread. */
    record View(String name, Supplier<Worn> content) {
        @Override
        public String toString() {
            return name;
        }
    }
}
