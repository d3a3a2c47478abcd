package org.satline.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/** Makes the whole table of one refrigerant from the equation. One use, one thread. */
final class TableBuilder {
    private final FluidModel model;
    private final List<SaturationProperty> shortOfBound = new ArrayList<>();

    TableBuilder(FluidModel model) {
        this.model = model;
    }

    /** Properties that miss a bound at one of the points tried. */
    List<SaturationProperty> shortOfBound() {
        return List.copyOf(shortOfBound);
    }

    TableData build() {
        Refrigerant refrigerant = model.refrigerant();
        LineSampler bubble = new LineSampler(model, true);
        LineSampler dew = new LineSampler(model, false);
        boolean pure = refrigerant.composition().components().size() == 1;
        Map<SaturationProperty, Column> columns = new EnumMap<>(SaturationProperty.class);
        for (SaturationProperty property : SaturationProperty.values()) {
            Column same = pure ? sameOnBubbleLine(columns, property) : null;
            columns.put(property, same != null ? same : column(property, property.onBubbleLine() ? bubble : dew));
        }
        return new TableData(
                refrigerant.designation(),
                refrigerant.dataVersion(),
                TableData.partsOf(refrigerant),
                SaturationCurves.solving(model).source(),
                reference(),
                bubble.facts(),
                dew.facts(),
                columns);
    }

    private Column column(SaturationProperty property, LineSampler line) {
        ColumnBuilder builder = new ColumnBuilder(property, line);
        Column column = builder.build();
        if (!builder.kept()) {
            shortOfBound.add(property);
        }
        return column;
    }

    private static @Nullable Column sameOnBubbleLine(
            Map<SaturationProperty, Column> columns, SaturationProperty property) {
        return switch (property) {
            case DEW_PRESSURE -> columns.get(SaturationProperty.BUBBLE_PRESSURE);
            case DEW_TEMPERATURE -> columns.get(SaturationProperty.BUBBLE_TEMPERATURE);
            default -> null;
        };
    }

    private TableData.Reference reference() {
        ReferenceState state = model.referenceState();
        if (state == ReferenceState.IIR) {
            return new TableData.Reference(TableData.Reference.Kind.IIR, 0);
        }
        return state == ReferenceState.NORMAL_BOILING_POINT
                ? new TableData.Reference(TableData.Reference.Kind.NORMAL_BOILING_POINT, 0)
                : new TableData.Reference(
                        TableData.Reference.Kind.COLDEST_LIQUID,
                        model.bubbleTemperatureRange().low());
    }
}
