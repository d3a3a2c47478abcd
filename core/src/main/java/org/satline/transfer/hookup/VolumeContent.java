package org.satline.transfer.hookup;

/** What a volume holds, by what decides. */
public enum VolumeContent {
    /** Air, alone or with refrigerant. */
    AIR("air"),
    /** Nothing: evacuated. */
    NOTHING("evacuated"),
    /** Refrigerant vapour without air. */
    VAPOUR("vapour"),
    /** Refrigerant of which at least a part is liquid, without air. */
    LIQUID("liquid");

    private final String code;

    VolumeContent(String code) {
        this.code = code;
    }

    /**
     * Returns the code word.
     *
     * @return stable, for files
     */
    public String code() {
        return code;
    }
}
