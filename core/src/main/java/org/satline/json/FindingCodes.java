package org.satline.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.charge.ChargeCode;
import org.satline.cylinder.CylinderCode;
import org.satline.duty.DutyCode;
import org.satline.duty.LeakCode;
import org.satline.equation.ModelCode;
import org.satline.explanation.CommonCode;
import org.satline.explanation.FindingCode;
import org.satline.filling.FillingCode;
import org.satline.safety.CautionId;
import org.satline.step.StepCode;
import org.satline.transfer.TransferCode;
import org.satline.transfer.hookup.PlanNote;
import org.satline.transfer.hookup.PlanReason;
import org.satline.visit.VisitCode;

/** Codes of findings as texts: the room, a point, the word. */
final class FindingCodes {
    private static final String CAUTION = "safety.";
    private static final Map<String, FindingCode> BY_TEXT = byText();

    private FindingCodes() {}

    private static Map<String, FindingCode> byText() {
        Map<String, FindingCode> codes = new LinkedHashMap<>();
        for (FindingCode[] room : List.<FindingCode[]>of(
                CommonCode.values(),
                ModelCode.values(),
                FillingCode.values(),
                CylinderCode.values(),
                DutyCode.values(),
                LeakCode.values(),
                TransferCode.values(),
                PlanReason.values(),
                PlanNote.values(),
                ChargeCode.values(),
                StepCode.values(),
                VisitCode.values())) {
            for (FindingCode code : room) {
                codes.put(text(code), code);
            }
        }
        return codes;
    }

    /** Every code that is no caution of the room {@code safety}. */
    static List<FindingCode> all() {
        return List.copyOf(BY_TEXT.values());
    }

    static Codec<FindingCode> codec() {
        return Codec.Text.of("code of a finding", FindingCodes::text, FindingCodes::code, "");
    }

    private static String text(FindingCode code) {
        if (code instanceof CautionId caution) {
            return CAUTION + caution.id();
        }
        String[] names = code.getClass().getName().split("\\.", -1);
        return names[names.length - 2] + "." + code.word();
    }

    private static FindingCode code(String text) {
        FindingCode known = BY_TEXT.get(text);
        if (known == null && text.startsWith(CAUTION)) {
            return new CautionId(text.substring(CAUTION.length()));
        }
        if (known == null) {
            throw new IllegalArgumentException("code of a finding is unknown; known are " + BY_TEXT.keySet());
        }
        return known;
    }
}
