package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.explanation.Coded;
import org.satline.explanation.Step;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillRules;
import org.satline.filling.FillingCode;
import org.satline.filling.Provenance;
import org.satline.filling.RuleOutcome;
import org.satline.filling.Stamp;

/** Every code, word and step of the rooms filling and cylinder has its English text. */
class TextsOfCylindersTest {
    private static Properties texts(String file) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = CylinderCode.class.getResourceAsStream("/org/satline/wording/en/" + file)) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return texts;
    }

    private static List<String> without(Properties texts, String prefix, Coded... words) {
        return Stream.of(words)
                .map(word -> prefix + word.word())
                .filter(key -> texts.stringPropertyNames().stream()
                        .noneMatch(each -> each.equals(key) || each.startsWith(key + ".")))
                .toList();
    }

    @Test
    void ofFilling() throws IOException {
        Properties texts = texts("filling.properties");
        // stands among the duties
        assertThat(without(texts, "finding.", FillingCode.values())).containsExactly("finding.mixing");
        assertThat(without(texts, "filling.reason.", RuleOutcome.Reason.values()))
                .isEmpty();
        assertThat(without(texts, "filling.stamp.", Stamp.values())).isEmpty();
        assertThat(without(texts, "filling.kind.", CylinderSpecification.Kind.values()))
                .isEmpty();
        assertThat(without(texts, "filling.provenance.", Provenance.values())).isEmpty();
        assertThat(Stamp.values()).allSatisfy(stamp -> assertThat(stamp.word()).isEqualTo(stamp.field()));
        assertThat(FillRules.standard().jurisdiction("us").name()).isEqualTo("us");
    }

    @Test
    void ofCylinders() throws IOException {
        Properties texts = texts("cylinder.properties");
        assertThat(without(texts, "finding.", CylinderCode.values())).isEmpty();
        assertThat(without(texts, "cylinder.role.", Role.values())).isEmpty();
        assertThat(without(texts, "cylinder.valve.", Valve.values())).isEmpty();
        assertThat(without(texts, "cylinder.outcome.", ContentsFinding.Outcome.values()))
                .isEmpty();
    }

    @Test
    void ofSteps() throws IOException {
        Properties texts = texts("steps.properties");
        CheckedCylinder checked = Cylinders.receiver().checked();
        Stream<Step> steps = Stream.of(
                        ((FillAssessment.Allowed) checked.fill()).steps(),
                        checked.room().orElseThrow().steps(),
                        checked.vessel().orElseThrow().steps(),
                        checked.byPressure().orElseThrow().steps())
                .flatMap(List::stream);
        assertThat(steps).allSatisfy(step -> assertThat(texts).containsKey("step." + step.key()));
    }
}
