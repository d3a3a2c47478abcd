package org.satline.ledger;

import java.math.BigInteger;
import java.nio.Buffer;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One line of the ledger file and back. The line is a JSON object (RFC 8259) of one layout, byte for byte: members in this order, no
 * space between them, UTF-8, in texts the escapes {@code \"} and {@code \\} alone. {@code before} is the digest of the line before,
 * {@code sha256} that of all bytes of this line ahead of {@code ,"sha256"} (FIPS 180-4).
 */
final class LedgerLine {
    static final int DIGEST_DIGITS = 64;
    /** Stands for the digest of a line before the first. */
    static final String NOTHING_BEFORE = "0".repeat(DIGEST_DIGITS);
    /** Longest line in bytes: five texts, each character in at most three bytes or escaped in two, and less than 700 around them. */
    static final int LONGEST = 5 * 3 * LedgerText.LONGEST + 700;

    private static final String SEAL = ",\"sha256\":\"";
    private static final int SEAL_LENGTH = SEAL.length() + DIGEST_DIGITS + "\"}".length();
    private static final Map<String, Party.Kind> PARTIES = words(Party.Kind.values());
    private static final Map<String, Kind> KINDS = words(Kind.values());

    private enum Kind {
        TRANSFER,
        EMPTY_CYLINDER,
        WEIGHING
    }

    /** What a line says. */
    record Decoded(Ledger.Numbered numbered, String before, String digest) {}

    /** A line without the line feed, and its digest. */
    record Encoded(String line, String digest) {
        /** As it stands in the file. */
        byte[] withFeed() {
            return (line + "\n").getBytes(StandardCharsets.UTF_8);
        }
    }

    private LedgerLine() {}

    private static <E extends Enum<E>> Map<String, E> words(E[] values) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E value : values) {
            words.put(word(value), value);
        }
        return words;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Encoded encode(Ledger.Numbered numbered, String before) {
        StringBuilder line = new StringBuilder("{\"number\":").append(numbered.number());
        LedgerEntry entry = numbered.entry();
        if (entry instanceof LedgerEntry.Transfer transfer) {
            text(line, "kind", word(Kind.TRANSFER));
            party(line, "from", transfer.from());
            party(line, "to", transfer.to());
            text(line, "refrigerant", transfer.refrigerant());
            whole(line, "mass_mg", transfer.milligrams());
            whole(line, "uncertainty_mg", transfer.uncertaintyMilligrams());
            text(line, "owner", transfer.owner());
        } else if (entry instanceof LedgerEntry.EmptyCylinder empty) {
            text(line, "kind", word(Kind.EMPTY_CYLINDER));
            text(line, "serial", empty.serial());
            whole(line, "tare_mg", empty.tareMilligrams());
        } else if (entry instanceof LedgerEntry.Weighing weighing) {
            text(line, "kind", word(Kind.WEIGHING));
            text(line, "serial", weighing.serial());
            whole(line, "gross_mg", weighing.grossMilligrams());
            whole(line, "uncertainty_mg", weighing.uncertaintyMilligrams());
        }
        text(line, "time", entry.time().toString());
        text(line, "person", entry.person());
        text(line, "before", before);
        byte[] sealed = line.toString().getBytes(StandardCharsets.UTF_8);
        String digest = sha256(sealed, sealed.length);
        return new Encoded(line.append(SEAL).append(digest).append("\"}").toString(), digest);
    }

    private static void text(StringBuilder line, String name, String value) {
        line.append(",\"").append(name).append("\":");
        quote(line, value);
    }

    private static void quote(StringBuilder line, String value) {
        line.append('"')
                .append(value.replace("\\", "\\\\").replace("\"", "\\\""))
                .append('"');
    }

    private static void whole(StringBuilder line, String name, long value) {
        line.append(",\"").append(name).append("\":").append(value);
    }

    private static void party(StringBuilder line, String role, Party party) {
        line.append(",\"").append(role).append("\":{\"kind\":");
        quote(line, word(party.kind()));
        line.append(",\"name\":");
        quote(line, party.name());
        line.append('}');
    }

    private static String sha256(byte[] bytes, int length) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(bytes, 0, length);
            return String.format(Locale.ROOT, "%064x", new BigInteger(1, digest.digest()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java lacks SHA-256, which every Java platform must have", e);
        }
    }

    /** Reads a line, without its line feed. */
    static Decoded decode(byte[] line) throws DamagedLineException {
        if (line.length > LONGEST) {
            throw DamagedLineException.unreadable("has " + line.length + " bytes, more than " + LONGEST);
        }
        CharBuffer characters = CharBuffer.allocate(line.length);
        ByteBuffer bytes = ByteBuffer.wrap(line);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CoderResult result = decoder.decode(bytes, characters, false);
        if (result.isError()) {
            throw DamagedLineException.unreadable("has in byte " + (bytes.position() + 1) + " no UTF-8");
        }
        ((Buffer) characters).flip(); // as the older runtimes of the supported floor know it
        LineScanner scanner = new LineScanner(characters.toString());
        Decoded decoded = decode(scanner);
        scanner.end();
        if (bytes.hasRemaining()) {
            throw DamagedLineException.unreadable("goes on after its end");
        }
        if (!decoded.digest().equals(sha256(line, line.length - SEAL_LENGTH))) {
            throw DamagedLineException.wrongDigest("does not match its SHA-256 digest");
        }
        return decoded;
    }

    private static Decoded decode(LineScanner scanner) throws DamagedLineException {
        scanner.literal("{");
        long number = scanner.whole("number");
        scanner.literal(",");
        Kind kind = scanner.word("kind", KINDS);
        scanner.literal(",");
        try {
            LedgerEntry entry = switch (kind) {
                case TRANSFER -> transfer(scanner);
                case EMPTY_CYLINDER -> emptyCylinder(scanner);
                case WEIGHING -> weighing(scanner);
            };
            scanner.literal(",");
            String before = scanner.digest("before");
            scanner.literal(",");
            String digest = scanner.digest("sha256");
            scanner.literal("}");
            return new Decoded(new Ledger.Numbered(number, entry), before, digest);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw DamagedLineException.unreadable("is no entry: " + e.getMessage());
        }
    }

    private static LedgerEntry transfer(LineScanner scanner) throws DamagedLineException {
        Party from = party(scanner, "from");
        Party to = party(scanner, "to");
        String refrigerant = scanner.text("refrigerant");
        scanner.literal(",");
        long mass = scanner.whole("mass_mg");
        scanner.literal(",");
        long uncertainty = scanner.whole("uncertainty_mg");
        scanner.literal(",");
        String owner = scanner.text("owner");
        Instant time = time(scanner);
        return new LedgerEntry.Transfer(from, to, refrigerant, mass, uncertainty, owner, time, scanner.text("person"));
    }

    private static LedgerEntry emptyCylinder(LineScanner scanner) throws DamagedLineException {
        String serial = scanner.text("serial");
        scanner.literal(",");
        long tare = scanner.whole("tare_mg");
        Instant time = time(scanner);
        return new LedgerEntry.EmptyCylinder(serial, tare, time, scanner.text("person"));
    }

    private static LedgerEntry weighing(LineScanner scanner) throws DamagedLineException {
        String serial = scanner.text("serial");
        scanner.literal(",");
        long gross = scanner.whole("gross_mg");
        scanner.literal(",");
        long uncertainty = scanner.whole("uncertainty_mg");
        Instant time = time(scanner);
        return new LedgerEntry.Weighing(serial, gross, uncertainty, time, scanner.text("person"));
    }

    private static Party party(LineScanner scanner, String role) throws DamagedLineException {
        scanner.literal("\"" + role + "\":{");
        Party.Kind kind = scanner.word("kind", PARTIES);
        scanner.literal(",");
        Party party = new Party(kind, scanner.text("name"));
        scanner.literal("},");
        return party;
    }

    private static Instant time(LineScanner scanner) throws DamagedLineException {
        scanner.literal(",");
        String written = scanner.text("time");
        scanner.literal(",");
        Instant time = Instant.parse(written);
        if (!time.toString().equals(written)) {
            throw DamagedLineException.unreadable("gives the time as " + written + ", the ledger writes " + time);
        }
        return time;
    }
}
