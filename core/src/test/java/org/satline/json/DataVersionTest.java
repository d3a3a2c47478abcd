package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeRow;
import org.satline.charge.Judgement;
import org.satline.charge.margin.MeteringDevice;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.measurement.Place;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.DataVersion;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.SealedResources;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What an answer says of the figures that it was made with, kept as JSON. */
class DataVersionTest {
    private static final Refrigerant R410A = Catalogue.standard().find("R-410A");
    private static final SaturationCurve CURVE = SaturationCurves.of(R410A);

    private static Judgement judgement() {
        ChargeRow row = ChargeRow.of(R410A, MeteringDevice.EXPANSION_VALVE)
                .suction(915_000, 285.2)
                .liquid(2_618_000, 306.4)
                .read(Place.OUTDOOR_AIR, 302.6)
                .target(5.6)
                .build();
        return ChargeJudge.usual().judge(row.chargeCase(CURVE));
    }

    private static FillAssessment assessment() {
        CylinderStamps stamps = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6));
        return FillAssessor.standard().assess(FillQuestion.of(stamps, CURVE));
    }

    @Test
    void everyVerdictAndFillAssessmentNamesIt() {
        assertThat(judgement().evidence().data()).isEqualTo(DataVersion.current());
        assertThat(assessment().answers().data()).isEqualTo(DataVersion.current());
        assertThat(DataVersion.current().release()).isEqualTo(R410A.dataVersion());
    }

    @Test
    void jsonKeepsItAndALaterReleaseMaySayMore() {
        SatlineJson json = new SatlineJson();
        DataVersion now = DataVersion.current();
        String data = "\"data\":{\"release\":\"" + now.release() + "\",\"digest\":\"" + now.digest() + "\"";
        for (String text : new String[] {json.write(judgement()), json.write(assessment())}) {
            assertThat(text).containsOnlyOnce(data);
        }
        String later = json.write(judgement()).replace(data, data + ",\"edition\":\"third\"");
        assertThat(json.read(later, Judgement.class)).isEqualTo(judgement());
        assertThatThrownBy(() -> json.strict().read(later, Judgement.class))
                .isInstanceOf(UnreadableJsonException.class);
    }

    /** Texts and forms alone leave it as it is; every other file of the jar counts. */
    @Test
    void theDigestCountsFilesWithFiguresAlone() {
        SealedResources files = SealedResources.core();
        String digest = DataVersion.current().digest();
        assertThat(files.digest(path -> !path.contains("/wording/") && !path.contains("/json/")))
                .isEqualTo(digest);
        for (String path : files.paths()) {
            boolean figures = !path.contains("/wording/") && !path.contains("/json/");
            assertThat(files.digest(
                            each -> !each.equals(path) && !each.contains("/wording/") && !each.contains("/json/")))
                    .as(path)
                    .satisfies(without -> assertThat(without.equals(digest)).isEqualTo(!figures));
        }
    }

    @Test
    void whatIsNoDigestIsRefused() {
        assertThatThrownBy(() -> new DataVersion("2026.1", "ABC")).isInstanceOf(IllegalArgumentException.class);
    }
}
