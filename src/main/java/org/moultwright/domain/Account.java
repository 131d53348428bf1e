package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where animals of a brood are, or went, in its ledger: one of a few fixed accounts, or a tray.
 *
 * @param kind what sort of account this is
 * @param code the tray's code, or the fixed account's key; it names the account in files and in the store
 */
public record Account(Kind kind, String code) {

    /** The sorts of account. Every kind but a tray has exactly one account in a brood. */
    public enum Kind {
        SAC("sac"),
        TRAY("tray"),
        POTTED("potted"),
        DEAD("dead"),
        INFERTILE("infertile"),
        MISSING("missing"),
        HANDED_OVER("handed-over");

        private final String key;

        Kind(String key) {
            this.key = key;
        }
    }

    public static final Account SAC = fixed(Kind.SAC);
    public static final Account POTTED = fixed(Kind.POTTED);
    public static final Account DEAD = fixed(Kind.DEAD);
    public static final Account INFERTILE = fixed(Kind.INFERTILE);
    public static final Account MISSING = fixed(Kind.MISSING);
    public static final Account HANDED_OVER = fixed(Kind.HANDED_OVER);

    public Account {
        Require.text("code", code);
        boolean reserved = fixedKind(code).isPresent();
        Require.that(
                kind == Kind.TRAY ? !reserved : code.equals(kind.key),
                "code '" + code + "' does not name an account of kind " + kind);
    }

    public static Account tray(String code) {
        return new Account(Kind.TRAY, code);
    }

    /** The account written this way in files and in the store: a fixed account's key, else a tray. */
    public static Account fromCode(String code) {
        return fixedKind(code).map(Account::fixed).orElseGet(() -> tray(code));
    }

    public boolean isTray() {
        return kind == Kind.TRAY;
    }

    /** Whether animals here count as lost to the brood. */
    public boolean isLoss() {
        return kind == Kind.DEAD || kind == Kind.INFERTILE || kind == Kind.MISSING;
    }

    /** Written out, as is the hash: what Java puts a record's own together of when it is first asked holds up a start. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Account account && kind == account.kind && code.equals(account.code);
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }

    private static Account fixed(Kind kind) {
        return new Account(kind, kind.key);
    }

    private static Optional<Kind> fixedKind(String code) {
        return Arrays.stream(Kind.values())
                .filter(kind -> kind != Kind.TRAY && kind.key.equals(code))
                .findFirst();
    }
}
