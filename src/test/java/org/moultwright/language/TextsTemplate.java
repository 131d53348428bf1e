package org.moultwright.language;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.moultwright.domain.Stage;
import org.moultwright.text.Vocabulary;

/**
 * Every text of the program, read off its sources: what is given to {@code Texts.say}, {@code count} and {@code kept},
 * and the names of stages as they stand inside sentences.
 */
public final class TextsTemplate {
    /** Where the template lies. */
    static final Path KEPT = Path.of("src/main/resources/org/moultwright/language/texts.pot");

    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final String VOCABULARY = "org/moultwright/text/Vocabulary.java";

    private final Map<Text, Set<String>> found = new LinkedHashMap<>();

    /** One text; with a plural where it counts something. */
    public record Text(String text, Optional<String> plural) {}

    /** All texts, in the order of the sources. */
    public static Map<Text, Set<String>> texts() throws IOException {
        TextsTemplate template = new TextsTemplate();
        template.read();
        return template.found;
    }

    private void read() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8);
                Stream<Path> paths = Files.walk(SOURCES)) {
            List<Path> sources = paths.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                read(unit);
            }
        }
        for (Vocabulary vocabulary :
                List.of(Vocabulary.ENGLISH_HOBBY, Vocabulary.SCIENTIFIC, Vocabulary.N_L_COUNTING)) {
            for (Stage stage : Stage.values()) {
                add(vocabulary.singular(stage), Optional.empty(), VOCABULARY);
                add(vocabulary.plural(stage), Optional.empty(), VOCABULARY);
            }
        }
    }

    private void read(CompilationUnitTree unit) {
        String file = SOURCES.toUri()
                .relativize(Path.of(unit.getSourceFile().getName()).toUri())
                .getPath();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                List<? extends ExpressionTree> given = call.getArguments();
                switch (call.getMethodSelect().toString()) {
                    case "Texts.say", "Texts.kept" ->
                        constants(given.get(0)).forEach(text -> add(text, Optional.empty(), file));
                    case "Texts.count" ->
                        constants(given.get(1))
                                .forEach(one ->
                                        constants(given.get(2)).forEach(many -> add(one, Optional.of(many), file)));
                    default -> {}
                }
                return super.visitMethodInvocation(call, null);
            }
        }.scan(unit, null);
    }

    private void add(String text, Optional<String> plural, String file) {
        found.computeIfAbsent(new Text(text, plural), fresh -> new TreeSet<>()).add(file);
    }

    private static List<String> constants(ExpressionTree tree) {
        if (tree instanceof ParenthesizedTree inside) {
            return constants(inside.getExpression());
        }
        if (tree instanceof LiteralTree literal && literal.getValue() instanceof String text) {
            return List.of(text);
        }
        if (tree instanceof ConditionalExpressionTree either) {
            List<String> both = new ArrayList<>(constants(either.getTrueExpression()));
            both.addAll(constants(either.getFalseExpression()));
            return both;
        }
        if (tree instanceof BinaryTree sum) {
            List<String> left = constants(sum.getLeftOperand());
            List<String> right = constants(sum.getRightOperand());
            return left.size() == 1 && right.size() == 1 ? List.of(left.get(0) + right.get(0)) : List.of();
        }
        return List.of();
    }

    /** The template as a file to be translated. */
    public static List<String> lines() throws IOException {
        List<String> lines = new ArrayList<>(List.of(
                "# Every text of Moultwright. Copy this file to the name of a language, such as de.po, and fill it in.",
                "msgid \"\"",
                "msgstr \"\"",
                "\"Language: \\n\"",
                "\"Content-Type: text/plain; charset=UTF-8\\n\"",
                "\"Content-Transfer-Encoding: 8bit\\n\"",
                "\"Plural-Forms: nplurals=2; plural=n != 1;\\n\""));
        texts().forEach((text, files) -> {
            lines.add("");
            files.forEach(file -> lines.add("#: " + file));
            lines.add("msgid " + quoted(text.text()));
            text.plural()
                    .ifPresentOrElse(
                            many -> lines.addAll(
                                    List.of("msgid_plural " + quoted(many), "msgstr[0] \"\"", "msgstr[1] \"\"")),
                            () -> lines.add("msgstr \"\""));
        });
        return lines;
    }

    /** Writes the template anew, where it belongs. */
    public static void main(String[] none) throws IOException {
        Files.write(KEPT, lines());
    }

    static String quoted(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }
}
