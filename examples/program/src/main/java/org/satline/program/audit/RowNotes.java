package org.satline.program.audit;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.satline.audit.AuditedRow;
import org.satline.audit.answer.AuditOutcome.NotComparable;

/** What a page tells of single rows: the first that cannot be compared, and ids that stand there twice. For one thread. */
public final class RowNotes {
    private static final int MOST_REFUSED = 10;
    private static final int MOST_REPEATED = 100;

    private final List<NotComparable> refused = new ArrayList<>();
    private final Set<String> repeated = new LinkedHashSet<>();
    /** Eight bytes of each id stand for it, in an open table that is at most half full: a million ids take sixteen megabytes. */
    private long[] table = new long[1024];

    private int ids;

    /** Notes nothing yet. */
    public RowNotes() {}

    /**
     * Notes a row.
     *
     * @param audited the row
     */
    public void add(AuditedRow audited) {
        if (audited.outcome() instanceof NotComparable row && refused.size() < MOST_REFUSED) {
            refused.add(row);
        }
        String id = audited.outcome().row().id();
        if (!id.isBlank() && !put(digest(id)) && repeated.size() < MOST_REPEATED) {
            repeated.add(id);
        }
    }

    private static long digest(String id) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(digest).getLong() | 1; // 0 is an empty place
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private boolean put(long number) {
        if (2 * (ids + 1) > table.length) {
            long[] old = table;
            table = new long[2 * old.length];
            Arrays.stream(old).filter(each -> each != 0).forEach(each -> table[place(each)] = each);
        }
        int place = place(number);
        if (table[place] == number) {
            return false;
        }
        table[place] = number;
        ids++;
        return true;
    }

    private int place(long number) {
        int place = (int) (number >>> 32) & table.length - 1;
        while (table[place] != 0 && table[place] != number) {
            place = place + 1 & table.length - 1;
        }
        return place;
    }

    List<NotComparable> refused() {
        return refused;
    }

    List<String> repeatedIds() {
        return List.copyOf(repeated);
    }
}
