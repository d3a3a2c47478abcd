package org.satline.fleet;

/** A reading that was not used, with the reason. Mutable and public as the serializer of the engine asks for. */
public class RejectedReading {
    /** Why. */
    public RejectReason reason = RejectReason.FIELD_COUNT;
    /** As it came, shortened to {@value #LONGEST} characters; commas become semicolons. */
    public String text = "";

    /** Longest text that is kept. */
    public static final int LONGEST = 200;

    /** For the serializer. */
    public RejectedReading() {}

    /**
     * Makes a rejected reading.
     *
     * @param reason why
     * @param text as it came
     */
    public RejectedReading(RejectReason reason, String text) {
        this.reason = reason;
        String shortened = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        this.text = shortened.replace(',', ';').replace('\n', ' ').replace('\r', ' ');
    }

    /**
     * Returns the line of the file of rejected readings.
     *
     * @return reason and text
     */
    public String line() {
        return reason + "," + text;
    }
}
