package org.moultwright.store.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jdbi.v3.core.statement.ParsedSql;
import org.junit.jupiter.api.Test;

class NamedParametersTest {
    @Test
    void aColonAndANameAreAParameter() {
        ParsedSql parsed = NamedParameters.parse("select * from pot where code=:code and at <= :at_millis");

        assertThat(parsed.getSql()).isEqualTo("select * from pot where code=? and at <= ?");
        assertThat(parsed.getParameters().getParameterNames()).isEqualTo(List.of("code", "at_millis"));
    }

    @Test
    void aParameterMayStandTwiceAndBeTheLastOfAll() {
        ParsedSql parsed = NamedParameters.parse("values (:a, :b, :a), :b");

        assertThat(parsed.getSql()).isEqualTo("values (?, ?, ?), ?");
        assertThat(parsed.getParameters().getParameterNames()).isEqualTo(List.of("a", "b", "a", "b"));
    }

    @Test
    void whatStandsInQuotesIsLeftAlone() {
        String sql = "select ':a', \"b:c\", 'it''s :d' from brood where note = 'never closed :e";

        assertThat(NamedParameters.parse(sql).getSql()).isEqualTo(sql);
    }

    @Test
    void aColonWithoutANameIsLeftAlone() {
        assertThat(NamedParameters.parse("select ': ' || a : b").getSql()).isEqualTo("select ': ' || a : b");
        assertThat(NamedParameters.parse("checkpoint sync").getSql()).isEqualTo("checkpoint sync");
    }

    @Test
    void aQuestionMarkIsAParameterWithoutAName() {
        ParsedSql parsed = NamedParameters.parse("backup to ? -- not '?'");

        assertThat(parsed.getSql()).isEqualTo("backup to ? -- not '?'");
        assertThat(parsed.getParameters().isPositional()).isTrue();
        assertThat(parsed.getParameters().getParameterCount()).isEqualTo(1);
    }
}
