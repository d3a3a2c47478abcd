package org.satline.duty;

import org.satline.explanation.FindingCode;

/** What the law says about a transfer; {@link #rule()} is the row of the rules that says it. */
public enum DutyCode implements FindingCode {
    /** Two refrigerants would meet, or a mixture of unknown ones would go into a system. */
    MIXING("one-refrigerant"),
    /** Mixed recovered refrigerant would go into a system. */
    MIXED_RECOVERED("no-mixed-recovered"),
    /** Used refrigerant of one owner would go to another, or back to its own. */
    OTHER_OWNER("same-owner"),
    /** Used refrigerant would go into a source cylinder. */
    SOURCE_SPOILT("source-new-or-reclaimed"),
    /** Recovered refrigerant would go into a cylinder that may not be refilled. */
    NON_REFILLABLE_RECEIVER("refillable-receiver"),
    /** Refrigerant would be let out. */
    VENTING("no-venting"),
    /** Refrigerant that may be let out in stated end uses. */
    VENTING_EXEMPTION("venting-exemption"),
    /** Recovery is for certified persons. */
    CERTIFIED_PERSON("certified-person"),
    /** What may be done with what was recovered, where the rules of the EU hold. */
    RECYCLED_SAME_UNDERTAKING("recycled-same-undertaking");

    private final String rule;

    DutyCode(String rule) {
        this.rule = rule;
    }

    /**
     * The rule that says it.
     *
     * @return its name in the data of this room
     */
    public String rule() {
        return rule;
    }
}
