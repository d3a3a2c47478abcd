package org.satline.fleet;

import java.lang.reflect.Type;
import java.util.Map;
import org.apache.flink.api.common.typeinfo.TypeInfoFactory;
import org.apache.flink.api.common.typeinfo.TypeInformation;

/** Tells the engine of {@link UnitReadingType}. */
public final class UnitReadingFactory extends TypeInfoFactory<UnitReading> {
    /** For the engine. */
    public UnitReadingFactory() {}

    @Override
    public TypeInformation<UnitReading> createTypeInfo(Type type, Map<String, TypeInformation<?>> parameters) {
        return new UnitReadingType();
    }
}
