package org.satline.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.visit.file.FieldValue;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;
import org.teavm.jso.core.JSArray;
import org.teavm.jso.core.JSBoolean;
import org.teavm.jso.core.JSNumber;
import org.teavm.jso.core.JSObjects;
import org.teavm.jso.core.JSString;
import org.teavm.jso.json.JSON;

/** Plain fields of a visit file or report as JSON and back, by the browser's own reader and writer. Stateless. */
final class PageJson {
    private PageJson() {}

    /**
     * Reads fields.
     *
     * @param json one JSON object
     * @return its fields
     * @throws IllegalArgumentException if it is no JSON object, or a name stands twice in it
     */
    static FieldValue.Fields read(String json) {
        String fault = fault(json);
        if (!fault.isEmpty()) {
            throw new IllegalArgumentException("broken JSON: " + fault);
        }
        FieldValue value = value(JSON.parse(json));
        if (!(value instanceof FieldValue.Fields fields)) {
            throw new IllegalArgumentException("a JSON object is expected: { \"site\": ... }");
        }
        if (colons(json) != names(fields)) {
            throw new IllegalArgumentException("broken JSON: a field stands twice in one object; leave one out");
        }
        return fields;
    }

    static String write(FieldValue.Fields fields) {
        return indented(json(fields));
    }

    /** The same without line breaks. */
    static String line(FieldValue.Fields fields) {
        return JSON.stringify(json(fields));
    }

    @JSBody(params = "json", script = "try { JSON.parse(json); return ''; } catch (e) { return String(e.message); }")
    private static native String fault(String json);

    @JSBody(params = "value", script = "return JSON.stringify(value, null, 2);")
    private static native String indented(JSObject value);

    @JSBody(
            params = "value",
            script = "return Array.isArray(value) ? 'array' : value === null ? 'null' : typeof value;")
    private static native String type(JSObject value);

    /** The browser keeps the last of two fields of one name without a word; so the colons outside of texts are counted, one for each field. */
    private static int colons(String json) {
        int colons = 0;
        boolean inText = false;
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            if (inText && c == '\\') {
                i++;
            } else if (c == '"') {
                inText = !inText;
            } else if (!inText && c == ':') {
                colons++;
            }
        }
        return colons;
    }

    private static int names(FieldValue value) {
        if (value instanceof FieldValue.Fields fields) {
            return fields.values().size()
                    + fields.values().values().stream()
                            .mapToInt(PageJson::names)
                            .sum();
        }
        return value instanceof FieldValue.Items items
                ? items.values().stream().mapToInt(PageJson::names).sum()
                : 0;
    }

    @SuppressWarnings("unchecked")
    private static FieldValue value(JSObject json) {
        return switch (type(json)) {
            case "string" -> new FieldValue.Text(((JSString) json).stringValue());
            case "number" -> new FieldValue.Plain(((JSNumber) json).doubleValue());
            case "boolean" -> new FieldValue.Flag(((JSBoolean) json).booleanValue());
            case "array" -> {
                List<FieldValue> items = new ArrayList<>();
                JSArray<JSObject> array = (JSArray<JSObject>) json;
                for (int i = 0; i < array.getLength(); i++) {
                    items.add(value(array.get(i)));
                }
                yield new FieldValue.Items(items);
            }
            case "object" -> {
                Map<String, FieldValue> fields = new LinkedHashMap<>();
                for (String name : JSObjects.getOwnPropertyNames(json)) {
                    fields.put(name, value(property(json, name)));
                }
                yield new FieldValue.Fields(fields);
            }
            default -> new FieldValue.Nothing();
        };
    }

    @JSBody(
            params = {"object", "name"},
            script = "return object[name];")
    private static native JSObject property(JSObject object, String name);

    @JSBody(
            params = {"object", "name", "value"},
            script = "Object.defineProperty(object, name,"
                    + " {value: value, enumerable: true, configurable: true, writable: true});")
    private static native void define(JSObject object, String name, JSObject value);

    @JSBody(script = "return null;")
    private static native JSObject nothing();

    private static JSObject json(FieldValue value) {
        if (value instanceof FieldValue.Fields fields) {
            JSObject object = JSObjects.create();
            fields.values().forEach((name, each) -> define(object, name, json(each)));
            return object;
        } else if (value instanceof FieldValue.Items items) {
            JSArray<JSObject> array = new JSArray<>();
            items.values().forEach(each -> array.push(json(each)));
            return array;
        } else if (value instanceof FieldValue.Text text) {
            return JSString.valueOf(text.value());
        } else if (value instanceof FieldValue.Flag flag) {
            return JSBoolean.valueOf(flag.value());
        }
        return value instanceof FieldValue.Plain number ? JSNumber.valueOf(number.value()) : nothing();
    }
}
