package org.satline.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurveProvider;
import org.satline.tables.TableProvider;

/** The tables, each read once: the page asks for its curve at each keystroke. For the one thread of a page. */
public final class KeptCurves implements SaturationCurveProvider {
    /** The service loader makes a provider for each question, so what is kept outlives it. */
    private static final Map<Refrigerant, Optional<SaturationCurve>> KEPT = new HashMap<>();

    private final TableProvider tables = new TableProvider();

    /** Made by the service loader. */
    public KeptCurves() {}

    @Override
    public Optional<SaturationCurve> curve(Refrigerant refrigerant) {
        return KEPT.computeIfAbsent(refrigerant, tables::curve);
    }
}
