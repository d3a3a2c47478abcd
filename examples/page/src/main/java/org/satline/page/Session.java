package org.satline.page;

import java.util.List;
import java.util.Optional;
import org.satline.program.ask.FieldTree;
import org.satline.program.ask.NextVisit;
import org.satline.visit.file.FieldValue;

/** The visit in the making and what the device remembers of it and of the kit. For the one thread of a page. */
final class Session {
    private static final String VISIT = "visit";
    private static final String EARLIER = "earlier";
    private static final String KIT = "kit";
    private static final List<String> KIT_PARTS = List.of("instruments", "manifold");
    private static final String HOSE = "cylinder.hoses[0]";
    private static final List<String> CYLINDER_NEEDS = List.of("valve", "tare", "waterCapacity", "temperature");
    private static final List<String> HOSE_NEEDS = List.of("port", "systemEnd", "cylinderEnd", "length");

    /** Instruments as they are common, of no make. */
    static final String COMMON_KIT = """
            { "instruments": {
              "suctionGauge": { "name": "gauge, low side", "percentOfReading": "0.5 %", "limitOfError": "0.5 psi" },
              "liquidGauge": { "name": "gauge, high side", "percentOfReading": "0.5 %", "limitOfError": "0.5 psi" },
              "thermometer": { "name": "thermometer", "accuracyClass": "thermocouple-k-class-1",
                "resolution": "0.1 K", "pipeContact": "0.5 K" },
              "scale": { "name": "scale", "resolution": "0.05 lb", "percentOfReading": "0.1 %" } } }
            """;

    private FieldValue.Fields fields;
    private Optional<FieldValue.Fields> earlier;

    Session() {
        fields = kept(VISIT).orElseGet(Session::fresh);
        earlier = kept(EARLIER);
    }

    /** A new visit: day and time of the device, the kit of last time. */
    private static FieldValue.Fields fresh() {
        FieldValue.Fields start = FieldTree.put(FieldTree.EMPTY, "date", Browser.today());
        start = FieldTree.put(start, "time", Browser.clock());
        return FieldTree.merged(start, usualKit());
    }

    private static FieldValue.Fields usualKit() {
        FieldValue.Fields usual = PageJson.read(COMMON_KIT);
        return kept(KIT).map(kit -> FieldTree.merged(usual, kit)).orElse(usual);
    }

    private static Optional<FieldValue.Fields> kept(String name) {
        String text = Browser.remembered(name);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(PageJson.read(text));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty(); // what an older page left behind is no reason to show nothing
        }
    }

    FieldValue.Fields fields() {
        return fields;
    }

    /** Whether new readings are being taken on top of a visit. */
    boolean isNext() {
        return earlier.isPresent();
    }

    /** What was typed under a path, as the file has it. */
    String answer(String path) {
        FieldValue value = FieldTree.get(fields, path).orElse(null);
        if (value instanceof FieldValue.Flag flag) {
            return flag.value() ? "yes" : "no";
        } else if (value instanceof FieldValue.Plain number) {
            return String.valueOf((int) number.value());
        }
        return value instanceof FieldValue.Text text ? text.value() : "";
    }

    /** Puts an answer under a path; an empty one takes it away. A cylinder without a name is called as stated. */
    void answer(Ask ask, String text, String unnamed) {
        String path = ask.path();
        if (path.equals(Asks.VALVE) && text.equals(Asks.NO_CYLINDER)) {
            fields = FieldTree.without(fields, "cylinder");
        } else if (text.isEmpty()) {
            fields = without(fields, path);
        } else if (ask.kind() instanceof Ask.Kind.Flag) {
            fields = FieldTree.put(fields, path, new FieldValue.Flag(text.equals("yes")));
        } else if (path.equals("manifold.valves")) {
            fields = FieldTree.put(fields, path, new FieldValue.Plain(Integer.parseInt(text)));
        } else {
            fields = FieldTree.put(fields, path, text);
        }
        if (FieldTree.has(fields, "cylinder") && !FieldTree.has(fields, "cylinder.name")) {
            fields = FieldTree.put(fields, "cylinder.name", unnamed);
        }
        if (path.equals(Asks.VALVE) && FieldTree.has(fields, "cylinder") && !FieldTree.has(fields, HOSE)) {
            kept(KIT)
                    .flatMap(kit -> FieldTree.get(kit, "hose"))
                    .ifPresent(hose -> fields = FieldTree.put(fields, HOSE, hose));
        }
        keep();
    }

    private static FieldValue.Fields without(FieldValue.Fields fields, String path) {
        int at = path.lastIndexOf('.');
        FieldValue parent = FieldTree.get(fields, path.substring(0, at)).orElse(null);
        return parent instanceof FieldValue.Fields found
                ? FieldTree.put(fields, path.substring(0, at), FieldTree.without(found, path.substring(at + 1)))
                : fields;
    }

    private void keep() {
        Browser.remember(VISIT, PageJson.write(fields));
        Browser.remember(EARLIER, earlier.map(PageJson::write).orElse(""));
        FieldValue.Fields kit = FieldTree.EMPTY;
        for (String part : KIT_PARTS) {
            // what a manifold holds is a matter of the day
            Optional<FieldValue> own = FieldTree.get(without(fields, "manifold.holds"), part);
            kit = own.isPresent() ? FieldTree.put(kit, part, own.get()) : kit;
        }
        Optional<FieldValue> hose = FieldTree.get(fields, HOSE);
        Optional<FieldValue> before = kept(KIT).flatMap(known -> FieldTree.get(known, "hose"));
        FieldValue last = hose.or(() -> before).orElse(null);
        // what a hose holds is a matter of the day
        kit = last instanceof FieldValue.Fields known
                ? FieldTree.put(kit, "hose", FieldTree.without(FieldTree.without(known, "holds"), "contentsFrom"))
                : kit;
        Browser.remember(KIT, PageJson.write(kit));
    }

    /** The part of the visit that stands by itself: a cylinder or hose of which too little is known yet is left out. */
    FieldValue.Fields readable() {
        FieldValue.Fields whole =
                FieldTree.has(fields, "readings") ? fields : FieldTree.put(fields, "readings", FieldTree.EMPTY);
        if (lacks(whole, "cylinder", CYLINDER_NEEDS)) {
            whole = FieldTree.without(whole, "cylinder");
        } else if (lacks(whole, HOSE, HOSE_NEEDS)) {
            whole = without(whole, "cylinder.hoses");
        }
        if (!FieldTree.has(whole, "conditions.nominalCooling") || !FieldTree.has(whole, "conditions.airflow")) {
            whole = without(without(whole, "conditions.airflow"), "conditions.nominalCooling");
        }
        return whole;
    }

    private static boolean lacks(FieldValue.Fields fields, String object, List<String> needs) {
        return needs.stream().anyMatch(need -> !FieldTree.has(fields, object + "." + need));
    }

    /** What is to be judged: new readings on top of the earlier visit where there is one. */
    FieldValue.Fields judged() {
        return earlier.isPresent()
                ? NextVisit.of(earlier.get(), readable(), Optional.empty()).visit()
                : readable();
    }

    /** Begins new readings on top of this visit. */
    void next() {
        FieldValue.Fields before = judged();
        fields = FieldTree.put(
                FieldTree.put(NextVisit.started(before), "date", Browser.today()), "time", Browser.clock());
        earlier = Optional.of(before);
        keep();
    }

    /** Begins a new visit. */
    void begin() {
        fields = fresh();
        earlier = Optional.empty();
        keep();
    }

    /** Takes a visit file. */
    void take(String json) {
        fields = PageJson.read(json);
        earlier = Optional.empty();
        keep();
    }
}
