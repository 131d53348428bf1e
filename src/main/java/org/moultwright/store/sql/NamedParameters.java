package org.moultwright.store.sql;

import org.jdbi.v3.core.statement.ParsedSql;
import org.jdbi.v3.core.statement.SqlParser;
import org.jdbi.v3.core.statement.StatementContext;

/**
 * Finds the parameters of a statement: a colon and a name, or a question mark. What stands in quotes is left alone. Read
 * in one pass, where the library's own reader makes a grammar first, which a desk that opens would wait for.
 */
public final class NamedParameters implements SqlParser {
    private static final char MARK = ':';
    private static final char PLACE = '?';

    @Override
    public ParsedSql parse(String sql, StatementContext context) {
        return parse(sql);
    }

    static ParsedSql parse(String sql) {
        ParsedSql.Builder parsed = ParsedSql.builder();
        int written = 0;
        int at = 0;
        while (at < sql.length()) {
            int end = at + 1;
            char sign = sql.charAt(at);
            if (sign == '\'' || sign == '"') {
                end = afterQuoted(sql, at);
            } else if (sign == MARK) {
                end = afterName(sql, at + 1);
                if (end > at + 1) {
                    parsed.append(sql.substring(written, at)).appendNamedParameter(sql.substring(at + 1, end));
                    written = end;
                }
            } else if (sign == PLACE) {
                parsed.append(sql.substring(written, at)).appendPositionalParameter();
                written = end;
            }
            at = end;
        }
        return parsed.append(sql.substring(written)).build();
    }

    @Override
    public String nameParameter(String name, StatementContext context) {
        return MARK + name;
    }

    private static int afterQuoted(String sql, int quote) {
        int end = sql.indexOf(sql.charAt(quote), quote + 1);
        return end < 0 ? sql.length() : end + 1;
    }

    private static int afterName(String sql, int from) {
        int end = from;
        while (end < sql.length() && Character.isJavaIdentifierPart(sql.charAt(end))) {
            end++;
        }
        return end;
    }
}
