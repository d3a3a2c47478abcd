package org.satline.program.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Path;

/** A JSON file that is written piece by piece and is whole or absent; what cannot be written throws. For one thread. */
public final class JsonOutput implements AutoCloseable {
    private final Path out;
    private final WholeFile whole;
    private final JsonGenerator json;

    private JsonOutput(Path out, WholeFile whole, JsonGenerator json) {
        this.out = out;
        this.whole = whole;
        this.json = json;
    }

    /** What may fail for the disk. */
    private interface Writing {
        void run() throws IOException;
    }

    private static void tried(Path out, Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
    }

    /**
     * Opens an output.
     *
     * @param in the path of the input, to see that the output is another file
     * @param out the output
     * @return the output, to be closed
     * @throws BadInputException if the output cannot be used
     */
    public static JsonOutput of(Path in, Path out) {
        WholeFile whole = WholeFile.besides(in, out);
        try {
            JsonGenerator json = new JsonFactory()
                    .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .createGenerator(new BufferedOutputStream(whole.stream()));
            return new JsonOutput(out, whole, json);
        } catch (IOException e) {
            tried(out, whole::close);
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
    }

    /** Begins an object. */
    public void object() {
        tried(out, json::writeStartObject);
    }

    /** Begins an object on a line of its own. */
    public void objectOnItsLine() {
        tried(out, () -> {
            json.writeRaw("\n");
            json.writeStartObject();
        });
    }

    /** Ends the object. */
    public void endObject() {
        tried(out, json::writeEndObject);
    }

    /**
     * Begins a list in an object.
     *
     * @param name of the field
     */
    public void list(String name) {
        tried(out, () -> json.writeArrayFieldStart(name));
    }

    /** Ends the list. */
    public void endList() {
        tried(out, json::writeEndArray);
    }

    /**
     * Writes a text into an object.
     *
     * @param name of the field
     * @param text the text
     */
    public void field(String name, String text) {
        tried(out, () -> json.writeStringField(name, text));
    }

    /**
     * Writes a number into an object.
     *
     * @param name of the field
     * @param number the number, finite
     */
    public void field(String name, double number) {
        tried(out, () -> json.writeNumberField(name, number));
    }

    /**
     * Writes a whole number into an object.
     *
     * @param name of the field
     * @param number the number
     */
    public void field(String name, int number) {
        tried(out, () -> json.writeNumberField(name, number));
    }

    /**
     * Writes into an object what is JSON already.
     *
     * @param name of the field
     * @param value the JSON
     */
    public void fieldOfJson(String name, String value) {
        tried(out, () -> {
            json.writeFieldName(name);
            json.writeRawValue(value);
        });
    }

    /**
     * Writes a text into a list.
     *
     * @param text the text
     */
    public void item(String text) {
        tried(out, () -> json.writeString(text));
    }

    /**
     * Writes a whole number into a list.
     *
     * @param number the number
     */
    public void item(int number) {
        tried(out, () -> json.writeNumber(number));
    }

    /**
     * Writes into a list what is JSON already.
     *
     * @param value the JSON
     */
    public void itemOfJson(String value) {
        tried(out, () -> json.writeRawValue(value));
    }

    /**
     * Puts the whole file in its place.
     *
     * @throws BadInputException if it cannot be written; what stood there before is left
     */
    public void commit() {
        tried(out, () -> {
            json.writeRaw("\n");
            json.close();
            whole.commit();
        });
    }

    /** Drops the draft unless it was committed. */
    @Override
    public void close() {
        tried(out, whole::close);
    }
}
