package org.satline.program.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.satline.program.mapped.MappedMachine;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Draws machines of another build. */
final class RandomMapped implements Machines {
    private static final List<String> REFRIGERANTS = List.of("R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a");

    private final Random random;
    private final Map<String, SaturationCurve> curves = new HashMap<>();

    RandomMapped(Random random) {
        this.random = random;
    }

    @Override
    public SaturationCurve curve(Refrigerant refrigerant) {
        return curves.computeIfAbsent(refrigerant.designation(), name -> SaturationCurves.of(refrigerant));
    }

    @Override
    public Optional<Machine> next() {
        Refrigerant refrigerant = Catalogue.standard().find(REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size())));
        return MappedMachine.drawn(random, curve(refrigerant)).map(each -> new MappedOne(each, refrigerant));
    }

    @Override
    public Optional<Machine> filledWithAnother(Machine machine) {
        return Optional.empty();
    }
}
