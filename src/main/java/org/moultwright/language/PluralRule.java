package org.moultwright.language;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which form of a text a count takes, as a translation file says it: {@code nplurals=3; plural=n%10==1 ? 0 : 1}. The
 * expression is that of gettext's Plural-Forms (GNU gettext manual, section 11.2.6): n, whole numbers, the operators
 * {@code ? : || && == != < > <= >= + - * / % !} and parentheses, as in C.
 */
public final class PluralRule {
    private static final Pattern FORM = Pattern.compile("nplurals\\s*=\\s*(\\d+)\\s*;\\s*plural\\s*=\\s*([^;]+);?\\s*");
    private static final Pattern TOKEN =
            Pattern.compile("\\s*(\\d+|n|\\|\\||&&|==|!=|<=|>=|[<>?:+\\-*/%!()])", Pattern.CASE_INSENSITIVE);

    /** One, and all else. */
    public static final PluralRule ENGLISH = new PluralRule(2, count -> count == 1 ? 0 : 1);

    private final int forms;
    private final Node expression;

    private PluralRule(int forms, Node expression) {
        this.forms = forms;
        this.expression = expression;
    }

    /**
     * Reads a rule.
     *
     * @throws IllegalArgumentException if it is not understood, or leads out of the forms for a count up to 1000
     */
    public static PluralRule of(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new IllegalArgumentException(
                    "Plural-Forms is '" + text + "' but must be like 'nplurals=2; plural=n != 1;'");
        }
        PluralRule rule = new PluralRule(
                Integer.parseInt(form.group(1)), new Reader(form.group(2).strip()).whole());
        for (int count = 0; count <= 1000; count++) {
            long which = rule.expression.of(count);
            if (which < 0 || which >= rule.forms) {
                throw new IllegalArgumentException(
                        "Plural-Forms gives form " + which + " for " + count + " but there are " + rule.forms);
            }
        }
        return rule;
    }

    /** How many forms there are. */
    public int forms() {
        return forms;
    }

    /** The number of the form, from 0 on. */
    public int of(long count) {
        return (int) Math.max(0, Math.min(forms - 1, expression.of(Math.abs(count))));
    }

    /** Part of an expression. */
    @FunctionalInterface
    private interface Node {
        long of(long n);
    }

    /** Reads an expression by precedence, weakest first. */
    private static final class Reader {
        private static final List<Set<String>> LEVELS = List.of(
                Set.of("||"),
                Set.of("&&"),
                Set.of("==", "!="),
                Set.of("<", ">", "<=", ">="),
                Set.of("+", "-"),
                Set.of("*", "/", "%"));

        private final String text;
        private final Iterator<String> tokens;
        private String next;

        Reader(String text) {
            this.text = text;
            List<String> all = new ArrayList<>();
            Matcher token = TOKEN.matcher(text);
            int end = 0;
            while (end < text.length()) {
                if (!token.find(end) || token.start() != end) {
                    throw notUnderstood();
                }
                all.add(token.group(1).toLowerCase(Locale.ROOT));
                end = token.end();
            }
            this.tokens = all.iterator();
            this.next = tokens.hasNext() ? tokens.next() : "";
        }

        Node whole() {
            Node node = choice();
            if (!next.isEmpty()) {
                throw notUnderstood();
            }
            return node;
        }

        private Node choice() {
            Node condition = level(0);
            if (!taken("?")) {
                return condition;
            }
            Node yes = choice();
            need(":");
            Node no = choice();
            return n -> condition.of(n) != 0 ? yes.of(n) : no.of(n);
        }

        private Node level(int level) {
            if (level == LEVELS.size()) {
                return single();
            }
            Node left = level(level + 1);
            while (true) {
                String operator = next;
                if (!LEVELS.get(level).contains(operator)) {
                    return left;
                }
                advance();
                Node first = left;
                Node second = level(level + 1);
                left = n -> applied(operator, first.of(n), second.of(n));
            }
        }

        private Node single() {
            if (taken("!")) {
                Node negated = single();
                return n -> negated.of(n) == 0 ? 1 : 0;
            }
            if (taken("(")) {
                Node inside = choice();
                need(")");
                return inside;
            }
            if (taken("n")) {
                return n -> n;
            }
            if (next.isEmpty() || !Character.isDigit(next.charAt(0))) {
                throw notUnderstood();
            }
            long number = Long.parseLong(next);
            advance();
            return n -> number;
        }

        private boolean taken(String token) {
            boolean is = next.equals(token);
            if (is) {
                advance();
            }
            return is;
        }

        private void need(String token) {
            if (!taken(token)) {
                throw notUnderstood();
            }
        }

        private void advance() {
            next = tokens.hasNext() ? tokens.next() : "";
        }

        private IllegalArgumentException notUnderstood() {
            return new IllegalArgumentException("Plural-Forms holds '" + text + "', which is not understood");
        }
    }

    private static long applied(String operator, long left, long right) {
        return switch (operator) {
            case "||" -> left != 0 || right != 0 ? 1 : 0;
            case "&&" -> left != 0 && right != 0 ? 1 : 0;
            case "==" -> left == right ? 1 : 0;
            case "!=" -> left != right ? 1 : 0;
            case "<" -> left < right ? 1 : 0;
            case ">" -> left > right ? 1 : 0;
            case "<=" -> left <= right ? 1 : 0;
            case ">=" -> left >= right ? 1 : 0;
            case "+" -> left + right;
            case "-" -> left - right;
            case "*" -> left * right;
            case "/" -> right == 0 ? 0 : left / right;
            default -> right == 0 ? 0 : left % right;
        };
    }
}
