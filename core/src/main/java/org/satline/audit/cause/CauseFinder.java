package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Figure;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * Finds mistakes that explain the rows outside of one refrigerant, or how all of its rows within tolerance differ. Each hypothesis is tried
 * on each row of a sample; that which explains most is taken, then the next for the rows that are left. One that may well fit by chance is
 * not named. Thread-safe.
 */
public final class CauseFinder {

    private final Catalogue catalogue = Catalogue.standard();
    private final ReferenceState reference;
    private final Map<String, Optional<FluidModel>> others = new ConcurrentHashMap<>();

    /**
     * Makes one.
     *
     * @param reference where enthalpy and entropy count from
     */
    public CauseFinder(ReferenceState reference) {
        Parts.required("reference", reference);
        this.reference = reference;
    }

    /**
     * Searches the causes of the differences of one refrigerant.
     *
     * @param designation the refrigerant
     * @param outside some of its rows outside
     * @param within some of its rows within tolerance
     * @return what was found
     */
    public Findings search(String designation, List<AuditCase> outside, List<AuditCase> within) {
        return new CauseSearch(outside, within, () -> others(designation)).findings();
    }

    private List<Hypothesis> others(String own) {
        List<Hypothesis> refrigerants = new ArrayList<>();
        for (Refrigerant each : catalogue.all()) {
            if (!each.designation().equals(own)) {
                model(each)
                        .ifPresent(model -> refrigerants.add(new Hypothesis(
                                new Mistake(
                                        Kind.OTHER_REFRIGERANT,
                                        Mistake.Code.OTHER_REFRIGERANT,
                                        List.of(Figure.of("designation", each.designation()))),
                                false,
                                row -> Optional.of(row.expected(model)))));
            }
        }
        return refrigerants;
    }

    private Optional<FluidModel> model(Refrigerant refrigerant) {
        return others.computeIfAbsent(refrigerant.designation(), key -> {
            if (!refrigerant.hasComposition()) {
                return Optional.empty();
            }
            try {
                FluidModel model = FluidModel.of(refrigerant);
                return Optional.of(model.has(reference) ? model.with(reference) : model);
            } catch (IllegalArgumentException | ConvergenceException e) {
                return Optional.empty(); // listed without an equation
            }
        });
    }
}
