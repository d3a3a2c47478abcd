package org.satline.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.CRC32;

/**
 * One line of the ledger file and back. The line is a JSON object of exactly this layout, with the CRC-32 of the bytes of the entry:
 * {@code {"crc32":"0123abcd","entry":{...}}}.
 */
final class LedgerLine {
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    private static final String HEAD = "{\"crc32\":\"";
    private static final String MIDDLE = "\",\"entry\":";
    private static final int CRC_DIGITS = 8;
    private static final int ENTRY_AT = HEAD.length() + CRC_DIGITS + MIDDLE.length();

    private LedgerLine() {}

    /** A line that is no whole entry. */
    static final class DamagedLineException extends Exception {
        private static final long serialVersionUID = 1L;

        DamagedLineException(String reason) {
            super(reason);
        }
    }

    /** The bytes of a line, without the line feed. */
    static byte[] encode(Ledger.Numbered numbered) {
        String entry = json(numbered).toString();
        String line = HEAD + crc(entry.getBytes(StandardCharsets.UTF_8)) + MIDDLE + entry + "}";
        return line.getBytes(StandardCharsets.UTF_8);
    }

    private static ObjectNode json(Ledger.Numbered numbered) {
        ObjectNode node = JSON.createObjectNode();
        node.put("number", numbered.number());
        LedgerEntry entry = numbered.entry();
        if (entry instanceof LedgerEntry.Transfer transfer) {
            node.put("kind", "transfer");
            party(node, "from", transfer.from());
            party(node, "to", transfer.to());
            node.put("refrigerant", transfer.refrigerant());
            node.put("mass_mg", transfer.milligrams());
            node.put("uncertainty_mg", transfer.uncertaintyMilligrams());
            node.put("owner", transfer.owner());
        } else if (entry instanceof LedgerEntry.EmptyCylinder empty) {
            node.put("kind", "empty-cylinder");
            node.put("serial", empty.serial());
            node.put("tare_mg", empty.tareMilligrams());
        } else if (entry instanceof LedgerEntry.Weighing weighing) {
            node.put("kind", "weighing");
            node.put("serial", weighing.serial());
            node.put("gross_mg", weighing.grossMilligrams());
            node.put("uncertainty_mg", weighing.uncertaintyMilligrams());
        }
        node.put("time", entry.time().toString());
        node.put("person", entry.person());
        return node;
    }

    private static void party(ObjectNode node, String role, Party party) {
        node.putObject(role)
                .put("kind", party.kind().name().toLowerCase(Locale.ROOT))
                .put("name", party.name());
    }

    private static String crc(byte[] entry) {
        CRC32 crc = new CRC32();
        crc.update(entry);
        return String.format(Locale.ROOT, "%08x", crc.getValue());
    }

    /** Reads a line, without its line feed. */
    static Ledger.Numbered decode(byte[] line) throws DamagedLineException {
        String text = new String(line, StandardCharsets.UTF_8);
        if (line.length <= ENTRY_AT
                || !text.startsWith(HEAD)
                || !text.startsWith(MIDDLE, HEAD.length() + CRC_DIGITS)
                || line[line.length - 1] != '}') {
            throw new DamagedLineException("is not a whole ledger line");
        }
        byte[] entry = Arrays.copyOfRange(line, ENTRY_AT, line.length - 1);
        if (!text.startsWith(crc(entry), HEAD.length())) {
            throw new DamagedLineException("does not match its checksum");
        }
        try {
            JsonNode node = JSON.readTree(entry);
            return new Ledger.Numbered(whole(node, "number"), entry(node));
        } catch (java.io.IOException | IllegalArgumentException | DateTimeException e) {
            throw new DamagedLineException("is no entry: " + firstLine(e));
        }
    }

    private static String firstLine(Exception e) {
        String message = e instanceof JsonProcessingException json ? json.getOriginalMessage() : e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }

    private static LedgerEntry entry(JsonNode node) {
        Instant time = Instant.parse(text(node, "time"));
        String person = text(node, "person");
        String kind = text(node, "kind");
        return switch (kind) {
            case "transfer" ->
                new LedgerEntry.Transfer(
                        party(node, "from"),
                        party(node, "to"),
                        text(node, "refrigerant"),
                        whole(node, "mass_mg"),
                        whole(node, "uncertainty_mg"),
                        text(node, "owner"),
                        time,
                        person);
            case "empty-cylinder" ->
                new LedgerEntry.EmptyCylinder(text(node, "serial"), whole(node, "tare_mg"), time, person);
            case "weighing" ->
                new LedgerEntry.Weighing(
                        text(node, "serial"), whole(node, "gross_mg"), whole(node, "uncertainty_mg"), time, person);
            default -> throw new IllegalArgumentException("kind \"" + kind + "\" is unknown");
        };
    }

    private static Party party(JsonNode node, String role) {
        JsonNode party = node.path(role);
        return new Party(Party.Kind.valueOf(text(party, "kind").toUpperCase(Locale.ROOT)), text(party, "name"));
    }

    private static String text(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isTextual()) {
            throw new IllegalArgumentException("field " + field + " is missing or no text");
        }
        return value.textValue();
    }

    private static long whole(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw new IllegalArgumentException("field " + field + " is missing or no whole number");
        }
        return value.longValue();
    }
}
