package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.satline.json.SatlineJson;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What tables adds goes through JSON as the results of core do. */
class CertificateJsonTest {
    private final SatlineJson json = new SatlineJson();

    @Test
    void aCertificateComesBackEqual() {
        Certificate certificate =
                Certificate.of(Catalogue.standard().find("R-407C")).orElseThrow();
        assertThat(json.read(json.write(certificate), Certificate.class)).isEqualTo(certificate);
    }

    @Test
    void aCurveIsItsRefrigerant() {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find("R-407C"));
        String text = json.write(curve);
        assertThat(text).isEqualTo("\"R-407C\"");
        assertThat(json.read(text, SaturationCurve.class).refrigerant()).isEqualTo(curve.refrigerant());
    }
}
